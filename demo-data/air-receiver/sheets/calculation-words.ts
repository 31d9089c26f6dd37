/** What the maker prints on a calculation sheet beside the figures. */
export interface CalculationWords {
  readonly title: string;
  readonly symbols: Readonly<Record<string, string>>;
  readonly lines: readonly string[];
}

const pressures = {
  p: "calculation pressure",
  z: "weld joint coefficient",
  f: "design stress",
  c: "corrosion allowance",
};
const wall = { Di: "inside diameter", en: "nominal thickness", δ: "undertolerance" };

export const calculationWords: Readonly<Record<string, CalculationWords>> = {
  "design-stress": {
    title: "Nominal design stress",
    symbols: {
      tE: "calculation temperature of the equipment",
      ReH: "least yield strength at 20 °C, thickness up to 16 mm",
      Rm: "least tensile strength at 20 °C",
      SY: "safety factor on the proof strength",
      ST: "safety factor on the tensile strength",
      t: "calculation temperature",
      Rp02: "least 0.2 % proof strength at t",
      f: "design stress at t",
      f20: "design stress at 20 °C",
    },
    lines: [
      "Rp0.2/t between 50 °C: 256 MPa and 100 °C: 241 MPa",
      "Rp0.2/t = 256 + (241 − 256) · (60 − 50) / (100 − 50) = 253.0 MPa",
      "f = min(Rp0.2/t / 1.5; Rm / 2.4) = min(168.66; 170.83) = 168.66 MPa",
      "f20 = min(265 / 1.5; 410 / 2.4) = min(176.66; 170.83) = 170.84 MPa",
    ],
  },
  "cylindrical-shell": {
    title: "Cylindrical shell under internal pressure",
    symbols: {
      ...pressures,
      ...wall,
      e: "required thickness without allowances",
      ereq: "required nominal thickness",
      ea: "analysis thickness",
      pmax: "highest pressure the analysis thickness carries",
    },
    lines: [
      "e = p · Di / (2 · f · z − p) = 1.1 · 1184 / (2 · 168.66 · 0.85 − 1.1) = 4.56 mm",
      "ereq = e + c + δ = 4.56 + 1.0 + 0.3 = 5.86 mm, at most 8.0 mm",
      "ea = en − c − δ = 8.0 − 1.0 − 0.3 = 6.70 mm",
      "pmax = 2 · f · z · ea / (Di + ea) = 1.613 MPa",
    ],
  },
  "torispherical-end": {
    title: "Torispherical end under internal pressure",
    symbols: {
      ...pressures,
      ...wall,
      δ: "undertolerance of the plate and thinning by forming",
      R: "inside radius of the crown",
      r: "inside radius of the knuckle",
      Rp02: "least 0.2 % proof strength at the calculation temperature",
      SY: "safety factor on the proof strength",
      ed: "least thickness after forming that the drawing allows",
      es: "crown, membrane stress",
      ey: "knuckle, yielding",
      eb: "knuckle, plastic buckling",
      e: "required thickness without allowances",
      ereq: "required nominal thickness",
      ea: "analysis thickness",
    },
    lines: [
      "es = p · R / (2 · f · z − 0.5 · p) = 1.1 · 960 / (2 · 168.66 · 1.00 − 0.55) = 3.14 mm",
      "ey = β · p · (0.75 · R + 0.2 · Di) / f = 0.7155 · 1.1 · (720 + 236.8) / 168.66 = 4.47 mm",
      "fb = 253.0 / 1.5 = 168.66 MPa",
      "eb = (0.75 · R + 0.2 · Di) · (p / (111 · fb) · (Di / r)^0.825)^(1/1.5) = 4.02 mm",
      "ey is not above 0.005 · Di = 5.92 mm, so eb counts.  e = max(3.14; 4.47; 4.02) = 4.47 mm",
      "ereq = 4.47 + 1.0 + 1.0 = 6.47 mm, at most 8.0 mm",
    ],
  },
  "test-pressure": {
    title: "Hydrostatic test pressure",
    symbols: {
      PS: "maximum allowable pressure",
      PTs: "specified test pressure",
      kP: "factor on the pressure",
      kf: "factor with the stress ratio",
      kU: "highest share of the required test pressure",
      q: "lowest f20 / f of the main parts",
      PT: "required test pressure",
      PTu: "highest test pressure",
    },
    lines: [
      "q = 170.84 / 168.66 = 1.0129, all courses and ends alike",
      "1.43 · PS = 1.43 · 11 = 15.73 bar",
      "1.25 · PS · q = 1.25 · 11 · 1.0129 = 13.93 bar",
      "PT = max(15.73; 13.93) = 15.73 bar; specified 15.8 bar",
    ],
  },
  "test-stress": {
    title: "Stress in the shell at the hydrostatic test",
    symbols: {
      ...wall,
      PT: "specified test pressure",
      z: "weld joint coefficient",
      ReH: "least yield strength at 20 °C",
      kS: "permitted share of the yield strength",
      e: "least thickness as built",
      σ: "mean circumferential stress",
      σT: "permitted stress at the test",
    },
    lines: [
      "e = 8.0 − 0.3 = 7.70 mm",
      "σ = PT · (Di + e) / (2 · e · z) = 1.58 · 1191.7 / (2 · 7.70 · 0.85) = 143.9 MPa",
      "σT = 0.95 · 265 = 251.7 MPa",
    ],
  },
  "equipment-category": {
    title: "Category",
    symbols: {
      PS: "maximum allowable pressure",
      V: "volume",
      group: "fluid group",
      state: "state of the fluid",
      declared: "category applied",
      PSV: "pressure times volume",
      cat: "category from the table",
    },
    lines: [
      "PS · V = 11 · 3000 = 33000 bar·l, over 3000 bar·l: category IV (gas of group 2)",
      "Modules chosen: B (production type) and F",
    ],
  },
  "gas-safety-valve": {
    title: "Capacity of the safety valve",
    symbols: {
      pset: "set pressure",
      op: "certified overpressure",
      patm: "atmospheric pressure",
      pb: "back pressure while blowing",
      A: "least flow area",
      Kdr: "certified coefficient of discharge",
      k: "isentropic exponent",
      M: "molar mass",
      Z: "compressibility factor",
      T0: "relieving temperature",
      PS: "maximum allowable pressure",
      Qc: "certified capacity",
      pr: "pressure at full discharge",
      p0: "relieving pressure, absolute",
      C: "function of the isentropic exponent",
      rc: "critical pressure ratio",
      Kb: "factor for back pressure",
      Qm: "discharge capacity",
    },
    lines: [
      "p0 = 11 · 1.1 + 1.013 = 13.113 bar",
      "C = 3.948 · √(k · (2 / (k + 1))^((k + 1) / (k − 1))) = 2.703; critical flow, Kb = 1",
      "Qm = p0 · C · A · Kdr · √(M / (Z · T0)) = 13.113 · 2.703 · 314.2 · 0.70 · √(28.96 / 293.15) = 2450 kg/h",
    ],
  },
  "relief-capacity": {
    title: "Relief capacity against the source",
    symbols: { Q: "flow of the compressor K-311", Qs: "capacity of all safety valves" },
    lines: ["One valve, PSV-310: 2450 kg/h, more than 1800 kg/h"],
  },
  "pressure-hold": {
    title: "Evaluation of the hold",
    symbols: {
      PT: "required test pressure, at the top",
      PTs: "specified test pressure",
      PTr: "test pressure held",
      PTu: "highest test pressure",
      zA: "height of gauge A above the top",
      zB: "height of gauge B above the top",
      FSA: "range of gauge A",
      FSB: "range of gauge B",
      cA: "class of gauge A",
      cB: "class of gauge B",
      tmin: "least hold",
      hB: "water head on gauge B",
      pn: "pressure needed at the top",
      th: "hold found",
      Δc: "difference the classes explain",
      Tc: "coldest water",
    },
    lines: [
      "Both gauges at or above 15.8 bar at the top from 10:49 to 11:27: 38 min, readings at most 5 min apart",
      "Gauge B reads the water head of 1.2 m more: 0.0981 · 1.2 = 0.118 bar",
    ],
  },
};
