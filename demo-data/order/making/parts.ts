import type { Joint, Part } from "../../generated/records.ts";

/** Parts and joints as the vessels of the order have them; sizes are each vessel's own. */

type Sizes = Pick<Part, "insideDiameter" | "outsideDiameter" | "length" | "crownRadius" | "knuckleRadius">;

/** What the butt welds of one shell have in common. */
export interface Welded {
  /** What the marks beside its welds begin with. */
  readonly stamp: string;
  readonly outsideDiameter: string;
  readonly procedure: string;
}

const arrangement = "DRG-01@B";

/** A course of a shell of 8 mm plate. */
export const course = (id: string, name: string, sizes: Sizes, measuredThickness: string[]): Part => ({
  id,
  name,
  role: "shell-course",
  drawing: arrangement,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "plate" },
  nominalThickness: "8.0 mm",
  measuredThickness,
  thicknessUndertolerance: "0.3 mm",
  corrosionAllowance: "1.0 mm",
  ...sizes,
  weldCoefficient: "0.85",
  requiredCertificateType: "3.1",
  madeBy: "TARNEQUILL",
});

/** A part whose wall was measured on a report of its own; all else of it is on the drawing. */
export const measuredOn = (report: string, part: Part): Part => ({
  ...part,
  sources: { "/measuredThickness": { original: `ORG-${report}`, page: 1 } },
});

/** A torispherical end, 8 mm nominal, as its maker delivers it. */
export const end = (id: string, name: string, sizes: Sizes, measuredThickness: string[]): Part => ({
  id,
  name,
  role: "end",
  drawing: arrangement,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10028-2", edition: "2017", grade: "P265GH", form: "formed-end" },
  nominalThickness: "8.0 mm",
  minimumThickness: "7.0 mm",
  measuredThickness,
  thicknessUndertolerance: "1.0 mm",
  corrosionAllowance: "1.0 mm",
  ...sizes,
  weldCoefficient: "1.00",
  requiredCertificateType: "3.1",
  madeBy: "BOWLTHORNE",
});

/** A piece of pipe with an outside thread R 1, set in as a nozzle. */
export const pipeNozzle = (id: string, name: string, drawing: string, length: string): Part => ({
  id,
  name,
  role: "nozzle-neck",
  drawing,
  pressureBearing: true,
  quantity: 1,
  material: { standard: "EN 10216-2", edition: "2013+A1:2019", grade: "P265GH", form: "tube", options: "TC1" },
  nominalThickness: "4.5 mm",
  thicknessUndertolerance: "0.6 mm",
  corrosionAllowance: "1.0 mm",
  outsideDiameter: "33.7 mm",
  length,
  requiredCertificateType: "3.1",
});

const contract = "order PW-1187, technical part, 4.2";

/** A butt weld of the shell, turned under the torch. */
export const seam = (
  { stamp, outsideDiameter, procedure }: Welded,
  id: string,
  role: "longitudinal" | "circumferential",
  joined: string[],
  length: string,
  crossings: readonly (readonly [joint: string, at: string])[] = [],
): Joint => ({
  id,
  mark: `${stamp} ${id}`,
  type: "butt",
  role,
  pressureBearing: true,
  parts: joined,
  thicknesses: joined.map(() => "8.0 mm"),
  depositedThickness: "8.0 mm",
  outsideDiameter,
  length,
  detail: "ss nb",
  processes: ["135"],
  positions: ["PA"],
  weldingProcedure: procedure,
  drawing: "DRG-02@B",
  weldCoefficient: "0.85",
  qualityLevel: "C",
  requiredTests: [
    { method: "VT", extent: "100 %", basis: "EN 13445-5, all welds (from memory)" },
    { method: "RT", extent: "10 %", basis: contract },
  ],
  ...(crossings.length > 0 && { crossings: crossings.map(([joint, at]) => ({ joint, at })) }),
  postWeldHeatTreatment: false,
});

/** The weld of a nozzle in the shell; a pipe of DN 25 leaves a yoke no room. */
export const branch = (
  stamp: string,
  id: string,
  shell: string,
  nozzle: string,
  thickness: string,
  diameter: string,
  length: string,
): Joint => {
  const [large, small] = [Number.parseFloat(diameter) > 150, Number.parseFloat(diameter) < 50];
  return {
    id,
    mark: `${stamp} ${id}`,
    type: "branch",
    role: "nozzle",
    pressureBearing: true,
    parts: [shell, nozzle],
    thicknesses: ["8.0 mm", thickness],
    depositedThickness: "8.0 mm",
    outsideDiameter: diameter,
    length,
    detail: "ss nb",
    processes: [large ? "135" : "141"],
    positions: ["PA"],
    weldingProcedure: large ? "WPS-04@1" : "WPS-05@1",
    drawing: "DRG-02@B",
    qualityLevel: "C",
    requiredTests: [
      { method: "VT", extent: "100 %", basis: "EN 13445-5, all welds (from memory)" },
      { method: small ? "PT" : "MT", extent: "25 %", basis: contract },
    ],
    postWeldHeatTreatment: false,
  };
};
