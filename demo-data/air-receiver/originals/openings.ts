import { fields, heading, paragraph } from "../../paper/blocks.ts";
import { newSheet, type Paper, type Sheet } from "../../paper/paper.ts";
import { columns, table } from "../../paper/tables.ts";

const pressure = 1.1;
const stress = 168.66;
/** Analysis thickness of the shell, in mm: both vessels are of one plate. */
const shell = 6.7;

/** Openings of a vessel in its shell, sizes in mm. */
export interface Openings {
  /** Half the inside diameter of the shell, corroded. */
  readonly shellRadius: number;
  /** Nozzle, outside diameter, nominal wall, undertolerance of the wall, permissible stress of the nozzle. */
  readonly nozzles: readonly (readonly [string, number, number, number, number])[];
  readonly remark: string;
}

const ofReceiver: Openings = {
  shellRadius: 593,
  remark:
    "Forged necks P245GH: lower permissible stress of neck and shell used, 245 / 1.5 = 163.33 MPa at 20 °C. Distances between openings exceed the sum of the lengths that count.",
  nozzles: [
    ["N1, N2", 88.9, 8.0, 0.5, 163.33],
    ["N3", 60.3, 7.1, 0.5, 163.33],
    ["N4, N5", 33.7, 4.5, 0.6, 168.66],
    ["N6", 323.9, 12.5, 0.5, 163.33],
  ],
};

/** Pressure area and stress areas of one opening, in mm², and the force each side stands for, in N. */
function balance(shellRadius: number, outside: number, nominal: number, under: number, permitted: number) {
  const wall = nominal - 1 - under;
  const radius = outside / 2 - wall;
  const alongShell = Math.sqrt((2 * shellRadius + shell) * shell);
  const alongNozzle = Math.sqrt((2 * radius + wall) * wall);
  const loaded = shellRadius * (alongShell + outside / 2) + radius * (alongNozzle + shell);
  const inShell = alongShell * shell;
  const inNozzle = wall * (alongNozzle + shell);
  const carried = inShell * (stress - pressure / 2) + inNozzle * (Math.min(permitted, stress) - pressure / 2);
  return { wall, loaded, inShell, inNozzle, acting: pressure * loaded, carried };
}

/** The maker's check of the openings: pressure areas against stress areas. */
export function drawOpenings(paper: Paper, { shellRadius, nozzles, remark }: Openings = ofReceiver): Sheet {
  const sheet = newSheet(paper);
  fields(sheet, [
    ["Calculation pressure", "1.1 MPa"],
    ["Design stress of the shell", `${stress} MPa`],
    ["Shell, inside radius corroded", `${shellRadius} mm`],
    ["Shell, analysis thickness", `${shell.toFixed(1)} mm`],
  ]);
  paragraph(
    sheet,
    "Pressure area times pressure must not exceed the stress areas times their permissible stresses, each less half the pressure. Only the walls themselves are counted: no pads, no weld metal. Lengths that count: √((2·r + e)·e) along shell and nozzle.",
  );
  heading(sheet, "Balance");
  table(
    sheet,
    columns([
      "Nozzle",
      "Outside Ø",
      "Wall that counts",
      "Pressure area",
      "Shell",
      "Nozzle",
      "Acting",
      "Carried",
      "Result",
    ]),
    nozzles.map(([name, outside, nominal, under, permitted]) => {
      const { wall, loaded, inShell, inNozzle, acting, carried } = balance(
        shellRadius,
        outside,
        nominal,
        under,
        permitted,
      );
      return [
        name,
        `${outside} mm`,
        `${wall.toFixed(1)} mm`,
        `${Math.ceil(loaded)} mm²`,
        `${Math.floor(inShell)} mm²`,
        `${Math.floor(inNozzle)} mm²`,
        `${(acting / 1000).toFixed(1)} kN`,
        `${(carried / 1000).toFixed(1)} kN`,
        carried >= acting ? "sufficient" : "not sufficient",
      ];
    }),
    7.6,
  );
  paragraph(sheet, remark);
  return sheet;
}
