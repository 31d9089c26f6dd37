/** A nozzle of the shell: its neck, its welding-neck flange, and the two joints that hold them. */
export interface Nozzle {
  readonly mark: string;
  readonly use: string;
  readonly size: string;
  readonly shell: "P01" | "P02";
  readonly part: string;
  readonly flange: string;
  readonly diameter: string;
  readonly wall: string;
  readonly undertolerance: string;
  readonly length: string;
  readonly projection: string;
}

interface Pipe {
  readonly size: string;
  readonly diameter: string;
  readonly wall: string;
  readonly undertolerance: string;
}

const dn15: Pipe = { size: "DN 15 PN 40", diameter: "21.3 mm", wall: "5.0 mm", undertolerance: "0.6 mm" };
const dn25: Pipe = { size: "DN 25 PN 40", diameter: "33.7 mm", wall: "6.3 mm", undertolerance: "0.8 mm" };
const dn40: Pipe = { size: "DN 40 PN 40", diameter: "48.3 mm", wall: "7.1 mm", undertolerance: "0.9 mm" };
const dn65: Pipe = { size: "DN 65 PN 40", diameter: "76.1 mm", wall: "8.8 mm", undertolerance: "1.1 mm" };
const dn100: Pipe = { size: "DN 100 PN 40", diameter: "114.3 mm", wall: "11.0 mm", undertolerance: "1.4 mm" };

const rows: readonly (readonly [use: string, shell: Nozzle["shell"], pipe: Pipe])[] = [
  ["steam outlet", "P02", dn100],
  ["safety valve 1", "P01", dn65],
  ["safety valve 2", "P01", dn65],
  ["feedwater", "P01", dn40],
  ["blow-down", "P02", dn40],
  ["level indicator 1", "P01", dn25],
  ["level indicator 2", "P01", dn25],
  ["vent", "P02", dn15],
  ["sample and continuous blow-down", "P02", dn15],
  ["head inspection opening 1", "P01", dn100],
  ["head inspection opening 2", "P01", dn100],
  ["head inspection opening 3", "P02", dn100],
  ["head inspection opening 4", "P02", dn100],
];

export const nozzles: readonly Nozzle[] = rows.map(([use, shell, pipe], index) => ({
  mark: `N${index + 1}`,
  use,
  shell,
  ...pipe,
  part: `P${18 + index}`,
  flange: `P${31 + index}`,
  length: "160 mm",
  projection: "120 mm",
}));
