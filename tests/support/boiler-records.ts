import type { Change } from "./changes.ts";
import { equipment, set, steam } from "./steam-receiver.ts";

const tubePart = { drawing: "DRG-01@B", pressureBearing: true, quantity: 1, outsideDiameter: "51.0 mm" };

/** A tube plate with one field, its tubes, and their ends: as little as the rules about tube ends need. */
const parts = [
  {
    id: "P90",
    name: "tube plate",
    role: "tube-plate",
    drawing: "DRG-01@B",
    pressureBearing: true,
    quantity: 1,
    nominalThickness: "20.0 mm",
    tubeFields: [
      {
        field: "pass 2",
        tube: "P91",
        pattern: "triangular",
        pitch: "72 mm",
        holeDiameter: "51.5 mm",
        expandedLength: "18 mm",
        tubes: 44,
        stayTubes: 16,
      },
    ],
  },
  { ...tubePart, id: "P91", name: "tube", role: "tube", nominalThickness: "3.6 mm" },
  { ...tubePart, id: "P93", name: "stay tube", role: "stay-tube", nominalThickness: "6.3 mm" },
];

const measured = (position: string, insideAfter: string, wallReduction: string) => ({
  position,
  holeDiameter: "51.50 mm",
  tubeOutside: "51.00 mm",
  insideBefore: "43.80 mm",
  insideAfter,
  wallReduction,
});

const group = { field: "P90#pass 2", end: "gas-outlet", date: "2026-06-16", result: "accepted" };
const tubeEnds = [
  {
    ...group,
    id: "TE-01",
    tube: "P91",
    joining: "expanded",
    count: 44,
    procedure: "PRC-EXP@1",
    operators: ["S1"],
    instruments: ["CA-05"],
    measured: [measured("row 1, tube 3", "44.95 mm", "9 %"), measured("row 4, tube 6", "44.90 mm", "8 %")],
  },
  {
    ...group,
    id: "TE-02",
    tube: "P93",
    joining: "welded",
    count: 16,
    weldingProcedure: "WPS-TE@1",
    position: "PH",
    operators: ["W03"],
    welders: ["W03"],
  },
];

/** The procedure for welding stay tubes, the test it rests on, and the certificate of the welder. */
const range = {
  processes: ["141"],
  thickness: { minimum: "5 mm", maximum: "8 mm" },
  outsideDiameter: { minimum: "44.5 mm", maximum: "57 mm" },
  positions: ["PH"],
};
const joints = { ...range, jointTypes: ["tube-to-tube-plate"], materialGroups: ["1.1"] };
const tube = { product: "pipe", positions: ["PH"], detail: "ml", testDate: "2026-03-03" };
const weldingOfEnds: readonly Change[] = [
  {
    add: {
      kind: "procedure-qualification",
      id: "WPQR-TE",
      ...tube,
      certificate: "PQ-WPQR-3601",
      standard: { standard: "EN ISO 15614-8", edition: "2016" },
      processes: ["141"],
      jointType: "tube-to-tube-plate",
      approvedBy: "PENQUILLITH",
      approved: "2026-03-20",
      range: joints,
    },
    file: "procedures/test-of-ends.json",
  },
  {
    add: {
      kind: "welding-procedure",
      id: "WPS-TE",
      title: "Stay tubes in tube plates",
      revisions: [
        {
          revision: "1",
          date: "2026-05-04",
          status: "for-construction",
          preparedBy: "M1",
          approvedBy: "D2",
          approved: "2026-05-06",
          qualifications: ["WPQR-TE"],
          ...joints,
        },
      ],
    },
    file: "procedures/welding-of-ends.json",
  },
  {
    add: {
      kind: "welder-qualification",
      id: "WQ-TE",
      ...tube,
      person: "W03",
      certificate: "PQ-W-20901",
      standard: { standard: "EN ISO 15614-8", edition: "2016" },
      designation: "tubes in tube plate, 141 t6.3 D51 PH",
      process: "141",
      weldType: "tube-to-tube-plate",
      fillerGroup: "FM1",
      thickness: "6.3 mm",
      outsideDiameter: "51 mm",
      body: "PENQUILLITH",
      thirdPartyApproval: true,
      route: "9.3b",
      range: { ...range, weldTypes: ["tube-to-tube-plate"] },
    },
    file: "people/welder-of-ends.json",
  },
];

const procedure = {
  id: "PRC-EXP",
  type: "expanding",
  title: "Expanding of tubes",
  number: "PRC-EXP",
  revisions: [
    {
      revision: "1",
      date: "2026-05-04",
      status: "for-construction",
      preparedBy: "M1",
      approvedBy: "D2",
      approved: "2026-05-06",
    },
  ],
};

/** A fitting that bears pressure. */
const fitting = (id: string, sort: string, more: object = {}) => ({
  id,
  sort,
  equipment: "TQ423-01",
  tag: id,
  manufacturer: "HAMMERQUIST",
  model: "standard",
  allowablePressure: "25 bar",
  allowableTemperature: "225 °C",
  ...more,
});
const trial = (what: string, more: object) => ({
  functionTests: [{ function: what, date: "2026-06-25", by: "D2", result: "accepted", ...more }],
});
const chain = (mark: string) => ({ sensor: `${mark} element`, switchingUnit: `${mark} unit` });
const limiting = (mark: string) => ({ lockOut: true, failSafe: true, ...chain(mark) });
const lowLimiter = (id: string, branch: string) =>
  fitting(id, "low-water-limiter", {
    switchLevel: "1465 mm",
    branch,
    circuit: `circuit of ${id}`,
    ...limiting(id),
    ...trial("cuts the heat", { level: "1466 mm" }),
  });
const indicator = (id: string) =>
  fitting(id, "water-level-indicator", { visibleMinimum: "1440 mm", visibleMaximum: "1560 mm" });

const fittings = [
  fitting("PG-01", "pressure-gauge", { gaugeRange: { maximum: "25 bar" }, redMark: "11 bar" }),
  indicator("LG-01"),
  indicator("LG-02"),
  lowLimiter("LW-01", "P04"),
  lowLimiter("LW-02", "P05"),
  fitting("HW-01", "high-water-limiter", { switchLevel: "1530 mm", ...limiting("HW-01") }),
  fitting("PC-01", "pressure-controller", { cutOut: "9.8 bar", cutIn: "9.2 bar", ...chain("PC-01") }),
  fitting("PL-01", "pressure-limiter", {
    settingPressure: "10.4 bar",
    ...limiting("PL-01"),
    ...trial("cuts the heat", { pressure: "10.4 bar" }),
  }),
  fitting("FP-01", "feed-pump", {
    pumpPoints: [
      { point: "1", flow: "1500 kg/h", pressure: "11.5 bar" },
      { point: "2", flow: "1200 kg/h", pressure: "12.5 bar" },
    ],
  }),
  fitting("BU-01", "burner", { fuel: "oil", heatInputLeast: "200 kW", heatInputMost: "900 kW" }),
  fitting("MV-01", "main-stop-valve"),
];

/** The receiver filled with steam, with the tube ends and fittings of a boiler beside its own records. */
export const boiler: readonly Change[] = [
  ...steam,
  set(equipment, "/type", "steam-boiler"),
  set(equipment, "/heatingSurface", "34 m²"),
  set(equipment, "/levels", {
    highestHeatedSurface: "1360 mm",
    lowestPermissible: "1460 mm",
    limiter: "1465 mm",
    normal: "1482 mm",
    highest: "1530 mm",
    steamTakeOff: "1880 mm",
  }),
  set("book:TQ423-MDB", "/register", "shell-boiler"),
  { add: { kind: "part", records: parts }, file: "design/boiler-parts.json" },
  { add: { kind: "tube-end-group", records: tubeEnds }, file: "testing/tube-ends.json" },
  ...weldingOfEnds,
  { add: { kind: "fitting", records: fittings }, file: "completion/fittings.json" },
  { add: { kind: "procedure", ...procedure }, file: "procedures/expanding.json" },
];
