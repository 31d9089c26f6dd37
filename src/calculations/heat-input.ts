import { commonPractice, excerptSeen } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

export const heatInput = calculation({
  id: "heat-input",
  title: "Heat input of a weld run",
  basis: excerptSeen("EN 1011-1", "heat input from current, voltage, speed and thermal efficiency"),
  covers:
    "Heat input of a run from mean voltage, mean current and travel speed, against the range of the welding procedure. Pulsed and waveform-controlled sources are not covered: their energy is measured.",
  appliesTo: { kind: "weld-log#runs", when: [{ path: "travelSpeed", exists: true }] },
  inputs: {
    k: { path: "table(arc-efficiency, process).efficiency", unit: "1", means: "thermal efficiency of the process" },
    U: { path: "voltage", unit: "V", means: "arc voltage" },
    I: { path: "current", unit: "A", means: "welding current" },
    v: { path: "travelSpeed", unit: "mm/min", means: "travel speed" },
    Qr: {
      path: "heatInput",
      unit: "kJ/mm",
      means: "heat input as logged",
      need: "optional",
      display: "Q_log",
    },
    Qmin: {
      path: "record.weldingProcedure.heatInput.minimum",
      unit: "kJ/mm",
      means: "least heat input of the procedure, where it states one",
      need: "optional",
      display: "Q_min",
    },
    Qmax: {
      path: "record.weldingProcedure.heatInput.maximum",
      unit: "kJ/mm",
      means: "greatest heat input of the procedure, where it states one",
      need: "optional",
      display: "Q_max",
    },
    tol: {
      path: "profile.heatInputTolerance",
      unit: "kJ/mm",
      means: "how far a logged heat input may lie from the recomputed one",
      display: "Δ",
    },
  },
  owes: [owedBy("welding coordination", "welding", "U", "I")],
  steps: [
    {
      symbol: "Q",
      unit: "kJ/mm",
      means: "heat input",
      formula: "k*U*I*60 / (1000*v)",
      empirical: true,
      round: { decimals: 2, direction: "nearest" },
    },
  ],
  limits: [
    {
      left: "Q",
      relation: "<=",
      right: "'10 kJ/mm'",
      means: "the heat input is one of arc welding: at most 10 kJ/mm",
      wrong: "the heat input is {left}, above the {right} that arc welding never reaches",
      basis: commonPractice("arc welding stays far below 10 kJ/mm; more means that a unit was mixed up"),
    },
  ],
  accept: [
    {
      left: "Q",
      relation: ">=",
      right: "Qmin",
      means: "the heat input is not below the range of the procedure",
      accuses: "v",
      needs: "Qmin",
    },
    {
      left: "Q",
      relation: "<=",
      right: "Qmax",
      means: "the heat input is not above the range of the procedure",
      accuses: "v",
      needs: "Qmax",
    },
    {
      name: "logged heat input",
      left: "abs(Qr - Q)",
      relation: "<=",
      right: "tol",
      means: "the logged heat input follows from the logged voltage, current and speed",
      wrong: "the logged heat input is {Qr}, but voltage, current and speed give {Q}: {left} apart, above {right}",
      accuses: "Qr",
      needs: "Qr",
    },
  ],
  compared: [{ symbol: "Q", unsafe: "any", within: 0.05 }],
  owner: "welding coordination",
  examples: [
    {
      source: "worked by hand: 0.8·24·180·60/(1000·300)",
      class: "constructed",
      given: { k: 0.8, U: 24, I: 180, v: 300, Qmin: 0.5, Qmax: 0.6912, Qr: 0.69, tol: 0.05 },
      expect: { Q: 0.6912 },
      within: 1e-9,
    },
    {
      source: "constructed: at the lower end of the range, then logged without the efficiency",
      class: "constructed",
      given: { k: 0.8, U: 24, I: 180, v: 300, Qmin: 0.6912, Qmax: 1, Qr: 0.864, tol: 0.05 },
      expect: { Q: 0.6912 },
      within: 1e-9,
    },
    {
      source: "constructed: too cold for the procedure",
      class: "constructed",
      given: { k: 0.8, U: 24, I: 180, v: 300, Qmin: 0.7, Qmax: 1, tol: 0.05 },
      expect: { Q: 0.6912 },
      within: 1e-9,
    },
    {
      source: "constructed: too hot for the procedure",
      class: "constructed",
      given: { k: 1, U: 30, I: 600, v: 400, Qmin: 1, Qmax: 2.5, tol: 0.05 },
      expect: { Q: 2.7 },
      within: 1e-9,
    },
    {
      source: "constructed: the speed in mm/s, entered as mm/min",
      class: "constructed",
      given: { k: 0.8, U: 24, I: 180, v: 5, Qmin: 0.5, Qmax: 1, tol: 0.05 },
      expect: { Q: 41.472 },
      within: 1e-9,
      outside: ["the heat input is one of arc welding: at most 10 kJ/mm"],
    },
  ],
});
