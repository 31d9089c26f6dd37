import type { Fitting } from "../../generated/records.ts";
import { equipment } from "./boiler.ts";

type Sort = Fitting["sort"];
type Sizes = Omit<Fitting, "id" | "equipment" | "sort" | "tag" | "manufacturer" | "model" | "serial">;

const fitting = (
  id: string,
  sort: Sort,
  tag: string,
  manufacturer: string,
  model: string,
  serial: string,
  more: Sizes,
): Fitting => ({ id, equipment: equipment.id, sort, tag, manufacturer, model, serial, ...more });

const paper = (number: string, date: string): NonNullable<Sizes["certificate"]> => ({ number, type: "3.1", date });

/** Steel fittings of PN 40 on the boiler: what their makers allow at 250 °C. */
const pn40 = { pressureRating: "PN 40", allowablePressure: "32 bar", allowableTemperature: "250 °C" } as const;

type Trial = NonNullable<Fitting["functionTests"]>[number];
const functional = "2026-05-12";
const trial = (done: string, more: Partial<Trial>): { functionTests: Trial[] } => ({
  functionTests: [{ function: done, date: functional, by: "D2", ...more, result: "accepted" }],
});

const { levels } = equipment;

const onBranch = (branch: string, nominalSize: string) => ({ branch, nominalSize, ...pn40 });

const limiter = (typeExamination: string, circuit: string, sensor: string, switchingUnit: string) => ({
  lockOut: true,
  selfMonitoring: true,
  typeExamination,
  circuit,
  sensor,
  switchingUnit,
  failSafe: true,
});

export const fittings: readonly Fitting[] = [
  fitting("FT-01", "main-stop-valve", "HV-201", "QUERNLOCK", "bellows stop valve", "Q-26-1180", {
    ...onBranch("P18", "DN 100"),
    certificate: paper("QK-2618", "2026-03-17"),
  }),
  fitting("FT-02", "feed-stop-valve", "HV-202", "QUERNLOCK", "stop valve", "Q-26-1184", {
    ...onBranch("P21", "DN 40"),
    certificate: paper("QK-2619", "2026-03-17"),
  }),
  fitting("FT-03", "feed-check-valve", "NV-202", "QUERNLOCK", "spring check valve", "Q-26-1186", {
    ...onBranch("P21", "DN 40"),
    certificate: paper("QK-2620", "2026-03-17"),
  }),
  fitting("FT-04", "blow-down-valve", "HV-203", "QUERNLOCK", "quick-acting blow-down valve", "Q-26-1190", {
    ...onBranch("P22", "DN 40"),
    certificate: paper("QK-2621", "2026-03-18"),
  }),
  fitting("FT-05", "continuous-blow-down-valve", "CV-204", "QUERNLOCK", "regulating valve", "Q-26-1192", {
    ...onBranch("P26", "DN 15"),
    certificate: paper("QK-2622", "2026-03-18"),
  }),
  fitting("FT-06", "sampling-point", "SP-204", "QUERNLOCK", "needle valve with cooler", "Q-26-1193", {
    ...onBranch("P26", "DN 15"),
    certificate: paper("QK-2623", "2026-03-18"),
  }),
  fitting("FT-07", "air-vent", "HV-205", "QUERNLOCK", "stop valve", "Q-26-1195", {
    ...onBranch("P25", "DN 15"),
    certificate: paper("QK-2624", "2026-03-18"),
  }),
  ...[
    ["FT-08", "LG-201A", "P23", "Q-26-1201", "QK-2625"],
    ["FT-09", "LG-201B", "P24", "Q-26-1202", "QK-2626"],
  ].map(([id = "", tag = "", branch = "", serial = "", number = ""]) =>
    fitting(id, "water-level-indicator", tag, "QUERNLOCK", "reflex glass, two cocks and drain", serial, {
      ...onBranch(branch, "DN 25"),
      certificate: paper(number, "2026-03-19"),
      visibleMinimum: "1430 mm",
      visibleMaximum: "1580 mm",
    }),
  ),
  ...[
    ["FT-10", "LSA-201A", "P27", "Q-26-1210", "QK-2627", "K1", "1467 mm"],
    ["FT-11", "LSA-201B", "P28", "Q-26-1211", "QK-2628", "K2", "1466 mm"],
  ].map(([id = "", tag = "", branch = "", serial = "", number = "", circuit = "", level = ""]) =>
    fitting(id, "low-water-limiter", tag, "QUERNLOCK", "electrode, self-monitoring", serial, {
      ...onBranch(branch, "DN 100"),
      certificate: paper(number, "2026-03-20"),
      switchLevel: levels?.limiter ?? "",
      ...limiter("PQ-TE-0449", circuit, tag.replace("LSA", "LE"), tag.replace("LSA", "LS")),
      ...trial("water lowered until the burner went out; reset by hand only", { level }),
    }),
  ),
  fitting("FT-12", "high-water-limiter", "LSA-202", "QUERNLOCK", "electrode, self-monitoring", "Q-26-1214", {
    ...onBranch("P29", "DN 100"),
    certificate: paper("QK-2629", "2026-03-20"),
    switchLevel: levels?.highest ?? "",
    ...limiter("PQ-TE-0450", "K1", "LE-202", "LS-202"),
    ...trial("water raised until the feed pump stopped and the burner went out", { level: "1529 mm" }),
  }),
  fitting("FT-13", "level-controller", "LC-201", "QUERNLOCK", "capacitive probe, continuous", "Q-26-1216", {
    ...onBranch("P30", "DN 100"),
    certificate: paper("QK-2630", "2026-03-20"),
    switchLevel: levels?.normal ?? "",
    sensor: "LE-203",
    switchingUnit: "LC-201",
  }),
  fitting("FT-14", "pressure-gauge", "PI-201", "LARKMETRIC", "dial 160 mm, siphon and test connection", "LM-77120", {
    ...onBranch("P25", "DN 15"),
    certificate: paper("LK-26-0391", "2026-04-02"),
    gaugeRange: { minimum: "0 bar", maximum: "16 bar" },
    accuracyClass: "1.0 %",
    redMark: "10 bar",
  }),
  fitting("FT-15", "pressure-controller", "PC-201", "QUERNLOCK", "pressure transmitter with controller", "Q-26-1220", {
    ...onBranch("P25", "DN 15"),
    certificate: paper("QK-2631", "2026-03-20"),
    cutIn: "8.6 bar",
    cutOut: "9.2 bar",
    sensor: "PT-201",
    switchingUnit: "PC-201",
  }),
  fitting("FT-16", "pressure-limiter", "PSA-201", "QUERNLOCK", "bellows limiter", "Q-26-1222", {
    ...onBranch("P25", "DN 15"),
    certificate: paper("QK-2632", "2026-03-20"),
    settingPressure: "9.6 bar",
    ...limiter("PQ-TE-0451", "K1", "bellows PSA-201", "switch PSA-201"),
    ...trial("pressure raised until the burner went out; reset by hand only", {
      pressure: "9.6 bar",
      instrument: "PG-04",
    }),
  }),
  fitting("FT-17", "inspection-opening", "M1", "TARNEQUILL", "manhole door 320 × 420, inside", "417-M1", {
    branch: "P44",
    nominalSize: "320 × 420",
    allowablePressure: "10 bar",
    allowableTemperature: "185 °C",
    certificate: paper("TQ-26-417-M1", "2026-03-24"),
  }),
  fitting("FT-18", "explosion-door", "XD-201", "TARNEQUILL", "sprung door of the smoke box", "417-XD", {}),
  fitting("FT-19", "burner", "BU-201", "EMBERQUOIN", "EQ 3000, forced draught", "26-0418", {
    fuel: "gas",
    heatInputLeast: "600 kW",
    heatInputMost: "2950 kW",
    declaration: "DOC-11",
    ...trial("started, modulated and stopped; flame failure, air and gas pressure switches", {}),
  }),
  fitting("FT-20", "gas-train", "GT-201", "EMBERQUOIN", "two class A valves with valve proving", "26-0419", {
    nominalSize: "DN 65",
    declaration: "DOC-11",
    ...trial("tightness of the train at 150 mbar", {}),
  }),
  ...[
    ["FT-21", "P-201A", "RW 30417", "RW-26-114"],
    ["FT-23", "P-201B", "RW 30418", "RW-26-115"],
  ].map(([id = "", tag = "", serial = "", number = ""]) =>
    fitting(id, "feed-pump", tag, "RILLWICK", "RW 6-140, twelve stages", serial, {
      allowablePressure: "16 bar",
      allowableTemperature: "120 °C",
      certificate: paper(number, "2026-04-13"),
      declaration: "DOC-12",
      pumpPoints: [
        { point: "A", flow: "5600 kg/h", pressure: "10.6 bar" },
        { point: "B", flow: "4300 kg/h", pressure: "11.6 bar" },
        { point: "C", flow: "4800 kg/h", pressure: "11.1 bar" },
      ],
    }),
  ),
  fitting("FT-22", "control-panel", "CP-201", "QUERNLOCK", "safety circuits K1 and K2 hard-wired", "Q-26-1240", {
    declaration: "DOC-14",
    ...trial("every limiter breaks its circuit; insulation 48 MΩ at 500 V, earth 0.08 Ω", {}),
  }),
];
