import type { ProcedureQualification } from "../../generated/records.ts";
import { arcFlux, arcWire, argon, mixedGas, rod, wire } from "./fillers.ts";
import { butt, fillet, tubesInPlate } from "./qualification-tests.ts";

type Printed = NonNullable<ProcedureQualification["range"]>;

const from = (minimum: string) => ({ minimum: `${minimum} mm` });
const between = (minimum: string, maximum: string) => ({ minimum: `${minimum} mm`, maximum: `${maximum} mm` });

const plate = { product: "plate", positions: ["PA"] } satisfies Partial<ProcedureQualification>;
const tube = { product: "pipe", positions: ["H-L045"], detail: "ss nb" } satisfies Partial<ProcedureQualification>;
const active = {
  processes: ["135"],
  mechanisation: "partly mechanised",
  fillers: [wire],
  shieldingGas: mixedGas,
  current: "DC+",
  interpass: "220 °C",
} satisfies Partial<ProcedureQualification>;
const tungsten = {
  processes: ["141"],
  mechanisation: "manual",
  fillers: [rod],
  shieldingGas: argon,
  current: "DC-",
  interpass: "200 °C",
} satisfies Partial<ProcedureQualification>;

const group = { materialGroups: ["1.1"], preheat: "10 °C" } satisfies Printed;
const allRound: NonNullable<Printed["positions"]> = ["PA", "PC", "PE", "PF", "PH", "H-L045"];
const byActive = { ...group, processes: ["135"], interpass: "220 °C" } satisfies Printed;
const byTungsten = {
  ...group,
  processes: ["141"],
  jointTypes: ["butt", "branch"],
  positions: allRound,
  interpass: "200 °C",
} satisfies Printed;

/** The tests the welding procedures rest on; each range is the one printed on the certificate. */
export const procedureQualifications: readonly ProcedureQualification[] = [
  butt(
    "WPQR-11",
    ["PQ-WPQR-3127", "2022-10-04", "2022-10-26"],
    { tensile: ["471 MPa", "468 MPa"], impact: ["62 J", "58 J", "66 J"], zone: ["71 J", "55 J", "64 J"] },
    {
      ...plate,
      processes: ["121"],
      testThickness: "14.0 mm",
      detail: "bs",
      mechanisation: "fully mechanised",
      fillers: [arcWire, arcFlux],
      current: "DC+",
      heatInput: "2.10 kJ/mm",
      interpass: "250 °C",
      range: {
        ...group,
        processes: ["121"],
        jointTypes: ["butt"],
        thickness: between("7.0", "28.0"),
        outsideDiameter: from("500"),
        positions: ["PA"],
        heatInput: { maximum: "2.62 kJ/mm" },
        interpass: "250 °C",
      },
    },
  ),
  butt(
    "WPQR-12",
    ["PQ-WPQR-3260", "2023-05-16", "2023-06-07"],
    { tensile: ["474 MPa", "479 MPa"], impact: ["81 J", "77 J", "84 J"], zone: ["92 J", "79 J", "88 J"] },
    {
      ...plate,
      ...active,
      transferModes: ["dip", "spray"],
      testThickness: "15.0 mm",
      detail: "ss nb",
      heatInput: "1.05 kJ/mm",
      range: {
        ...byActive,
        jointTypes: ["butt", "t-butt", "corner"],
        thickness: between("7.5", "30.0"),
        outsideDiameter: from("500"),
        positions: ["PA"],
        heatInput: { maximum: "1.31 kJ/mm" },
      },
    },
  ),
  butt(
    "WPQR-13",
    ["PQ-WPQR-3411", "2024-04-09", "2024-04-30"],
    { tensile: ["466 MPa", "470 MPa"], impact: ["73 J", "69 J", "78 J"], zone: ["86 J", "74 J", "67 J"] },
    {
      ...tube,
      ...active,
      transferModes: ["dip", "pulsed"],
      testThickness: "12.5 mm",
      testDiameter: "139.7 mm",
      heatInput: "1.05 kJ/mm",
      range: {
        ...byActive,
        jointTypes: ["butt", "corner", "branch"],
        thickness: between("6.3", "25.0"),
        outsideDiameter: from("69.9"),
        positions: allRound,
        heatInput: { maximum: "1.31 kJ/mm" },
      },
    },
  ),
  butt(
    "WPQR-14",
    ["PQ-WPQR-3433", "2024-06-18", "2024-07-10"],
    { tensile: ["459 MPa", "463 MPa"] },
    {
      ...tube,
      ...tungsten,
      testThickness: "6.3 mm",
      testDiameter: "60.3 mm",
      heatInput: "0.90 kJ/mm",
      range: { ...byTungsten, thickness: between("3.0", "12.0"), outsideDiameter: from("30.2") },
    },
  ),
  butt(
    "WPQR-15",
    ["PQ-WPQR-3434", "2024-06-19", "2024-07-10"],
    { tensile: ["462 MPa", "457 MPa"] },
    {
      ...tube,
      ...tungsten,
      testThickness: "6.3 mm",
      testDiameter: "21.3 mm",
      heatInput: "0.75 kJ/mm",
      range: { ...byTungsten, thickness: between("3.0", "12.0"), outsideDiameter: between("10.7", "42.6") },
    },
  ),
  fillet("WPQR-16", ["PQ-WPQR-3502", "2025-02-11", "2025-03-04"], {
    ...active,
    transferModes: ["spray"],
    testThickness: "30.0 mm",
    positions: ["PB"],
    detail: "ml",
    heatInput: "0.90 kJ/mm",
    range: {
      ...byActive,
      jointTypes: ["fillet", "attachment"],
      thickness: between("5.0", "60.0"),
      positions: ["PA", "PB"],
    },
  }),
  fillet("WPQR-17", ["PQ-WPQR-3503", "2025-02-12", "2025-03-04"], {
    ...active,
    transferModes: ["spray"],
    testThickness: "15.0 mm",
    positions: ["PB"],
    detail: "sl",
    throat: "4.0 mm",
    heatInput: "0.50 kJ/mm",
    range: {
      ...byActive,
      jointTypes: ["fillet", "attachment"],
      thickness: between("3.0", "30.0"),
      throat: between("3.0", "6.0"),
      positions: ["PA", "PB"],
    },
  }),
  tubesInPlate("WPQR-18", ["PQ-WPQR-3529", "2025-09-23", "2025-10-15"], {
    ...tungsten,
    testThickness: "6.3 mm",
    testDiameter: "51.0 mm",
    positions: ["PH"],
    detail: "ml",
    heatInput: "0.80 kJ/mm",
    range: {
      ...group,
      processes: ["141"],
      jointTypes: ["tube-to-tube-plate"],
      thickness: between("5.0", "8.0"),
      outsideDiameter: between("44.5", "57.0"),
      positions: ["PH"],
      heatInput: { maximum: "1.00 kJ/mm" },
      interpass: "200 °C",
    },
  }),
];
