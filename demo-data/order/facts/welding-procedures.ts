import type { WeldingProcedure } from "../../generated/records.ts";
import { rod, wire } from "./fillers.ts";

export const welding: readonly WeldingProcedure[] = [
  {
    id: "WPS-03",
    title: "Butt welds of shell and ends, MAG",
    revisions: [
      {
        revision: "1",
        date: "2024-02-20",
        status: "superseded",
        reason: "first issue",
        preparedBy: "M1",
        checkedBy: "D2",
        approvedBy: "R1",
        approved: "2024-02-26",
        sheets: 1,
        qualifications: ["WPQR-03"],
        processes: ["135"],
        mechanisation: "partly mechanised",
        jointTypes: ["butt"],
        materialGroups: ["1.1"],
        thickness: { minimum: "5.0 mm", maximum: "12.0 mm" },
        outsideDiameter: { minimum: "500 mm" },
        positions: ["PA"],
        details: ["ss nb"],
        gap: { minimum: "2 mm", maximum: "3 mm" },
        fillers: [wire],
        shieldingGas: "EN ISO 14175 - M21",
        current: "DC+",
        transferModes: ["dip", "spray"],
        heatInput: { minimum: "0.80 kJ/mm", maximum: "1.30 kJ/mm" },
        preheat: "10 °C",
        interpass: "220 °C",
        postWeldHeatTreatment: false,
      },
      {
        revision: "2",
        date: "2026-05-12",
        status: "for-construction",
        reason: "thickness range of the qualification used to its end",
        preparedBy: "M1",
        checkedBy: "D2",
        approvedBy: "R1",
        approved: "2026-05-19",
        sheets: 1,
        qualifications: ["WPQR-03"],
        processes: ["135"],
        mechanisation: "partly mechanised",
        jointTypes: ["butt"],
        materialGroups: ["1.1"],
        thickness: { minimum: "5.0 mm", maximum: "16.0 mm" },
        outsideDiameter: { minimum: "500 mm" },
        positions: ["PA"],
        details: ["ss nb"],
        gap: { minimum: "2 mm", maximum: "3 mm" },
        fillers: [wire],
        shieldingGas: "EN ISO 14175 - M21",
        current: "DC+",
        transferModes: ["dip", "spray"],
        heatInput: { minimum: "0.80 kJ/mm", maximum: "1.30 kJ/mm" },
        preheat: "10 °C",
        interpass: "220 °C",
        postWeldHeatTreatment: false,
        runs: [
          run("root", "135", "1.2 mm", [130, 165], [18, 21], [140, 190], "dip"),
          run("fill", "135", "1.2 mm", [220, 260], [25, 29], [250, 330], "spray"),
          run("cap", "135", "1.2 mm", [220, 260], [25, 29], [250, 330], "spray"),
        ],
      },
    ],
  },
  mag("WPS-04", "Branch weld of the inspection opening, MAG", "branch", "3.0 mm"),
  tig("WPS-05", "Branch welds of nozzles up to DN 80, TIG", "branch", ["ss nb"], "30 mm", "2026-05-12", "2026-05-19"),
  tig("WPS-09", "Repair of butt welds, TIG", "butt", ["ss nb", "bs"], "500 mm", "2026-05-12", "2026-05-19"),
  mag("WPS-10", "Butt welds of small shells and ends, MAG", "butt", "5.0 mm"),
];

type Run = NonNullable<NonNullable<NonNullable<WeldingProcedure["revisions"]>[number]["runs"]>[number]>;
type Range = readonly [number, number];

function run(
  name: string,
  process: "135" | "141",
  diameter: string,
  current: Range,
  voltage: Range,
  speed: Range,
  transferMode?: "dip" | "spray",
): Run {
  const range = ([minimum, maximum]: Range, unit: string) => ({
    minimum: `${minimum} ${unit}`,
    maximum: `${maximum} ${unit}`,
  });
  return {
    run: name,
    process,
    ...(transferMode !== undefined && { transferMode }),
    fillerDiameter: diameter,
    current: range(current, "A"),
    voltage: range(voltage, "V"),
    travelSpeed: range(speed, "mm/min"),
  };
}

/** Seams stand open for their root; a nozzle that is welded by TIG is set in a little closer. */
function gapOf(joint: "branch" | "butt") {
  return joint === "butt" ? { minimum: "2 mm", maximum: "3 mm" } : { minimum: "1.5 mm", maximum: "2.5 mm" };
}

function tig(
  id: string,
  title: string,
  joint: "branch" | "butt",
  details: ("ss nb" | "bs")[],
  diameter: string,
  date: string,
  approved: string,
): WeldingProcedure {
  return {
    id,
    title,
    revisions: [
      {
        revision: "1",
        date,
        status: "for-construction",
        reason: "first issue, TQ423",
        preparedBy: "M1",
        checkedBy: "D2",
        approvedBy: "R1",
        approved,
        sheets: 1,
        qualifications: ["WPQR-05"],
        processes: ["141"],
        mechanisation: "manual",
        jointTypes: [joint],
        materialGroups: ["1.1"],
        thickness: { minimum: "3.0 mm", maximum: "10.0 mm" },
        outsideDiameter: { minimum: diameter },
        positions: ["PA"],
        details,
        gap: gapOf(joint),
        fillers: [rod],
        shieldingGas: "EN ISO 14175 - I1",
        current: "DC-",
        heatInput: { minimum: "0.60 kJ/mm", maximum: "1.40 kJ/mm" },
        preheat: "10 °C",
        interpass: "200 °C",
        postWeldHeatTreatment: false,
        runs: [
          run("root", "141", "2.4 mm", [110, 140], [11, 14], [55, 95]),
          run("fill", "141", "2.4 mm", [130, 165], [12, 15], [55, 95]),
          run("cap", "141", "2.4 mm", [130, 165], [12, 15], [55, 95]),
        ],
      },
    ],
  };
}

/** By MAG, from the least diameter that the qualification reaches. */
function mag(id: string, title: string, joint: "branch" | "butt", least: string): WeldingProcedure {
  return {
    id,
    title,
    revisions: [
      {
        revision: "1",
        date: "2026-05-12",
        status: "for-construction",
        reason: "first issue, TQ423",
        preparedBy: "M1",
        checkedBy: "D2",
        approvedBy: "R1",
        approved: "2026-05-19",
        sheets: 1,
        qualifications: ["WPQR-03"],
        processes: ["135"],
        mechanisation: "partly mechanised",
        jointTypes: [joint],
        materialGroups: ["1.1"],
        thickness: { minimum: least, maximum: "16.0 mm" },
        outsideDiameter: { minimum: "150 mm" },
        positions: ["PA"],
        details: ["ss nb"],
        gap: { minimum: "2 mm", maximum: "3 mm" },
        fillers: [wire],
        shieldingGas: "EN ISO 14175 - M21",
        current: "DC+",
        transferModes: ["dip", "spray"],
        heatInput: { minimum: "0.80 kJ/mm", maximum: "1.30 kJ/mm" },
        preheat: "10 °C",
        interpass: "220 °C",
        postWeldHeatTreatment: false,
        runs: [
          run("root", "135", "1.2 mm", [130, 165], [18, 21], [140, 190], "dip"),
          run("fill", "135", "1.2 mm", [220, 260], [25, 29], [250, 330], "spray"),
          run("cap", "135", "1.2 mm", [220, 260], [25, 29], [250, 330], "spray"),
        ],
      },
    ],
  };
}
