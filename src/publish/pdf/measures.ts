import type { Face } from "./fonts.ts";

/** Millimetres in points. */
export const mm = (value: number): number => (value * 72) / 25.4;

/** How running text is set: family, size and distance of lines, all in points. */
export interface TextStyle {
  readonly family: "serif" | "sans" | "mono";
  readonly size: number;
  readonly leading: number;
  readonly strong?: boolean;
  readonly italic?: boolean;
  readonly soft?: boolean;
}

const serif = (size: number, leading: number): TextStyle => ({ family: "serif", size, leading });
const sans = (size: number, leading: number): TextStyle => ({ family: "sans", size, leading });

export const styles = {
  bookTitle: serif(32, 36),
  title: serif(19, 22),
  under: serif(10.5, 14),
  h2: { ...serif(11.5, 14), strong: true },
  h3: { ...serif(10, 13.5), strong: true },
  text: serif(10, 13.5),
  /** Smaller than running text, so that the longest chains fit on a sheet. */
  chain: serif(9.2, 12),
  table: sans(8.5, 11),
  head: sans(7.5, 9.5),
  note: { ...sans(7.5, 9.8), soft: true },
  remark: { ...sans(8, 10.5), soft: true },
  caption: serif(9.5, 12),
  facts: sans(9, 12),
  result: sans(9, 12),
} as const satisfies Record<string, TextStyle>;

/** Size of the monospaced face beside text of another size, so that both look equally large. */
export const monoShare = 0.84;

export const rules = { ends: 0.8, head: 0.4, group: 0.3, frame: 0.6 } as const;

/** Text, gap, notes: columns of the block in points. */
export const textWidth = mm(120);
export const noteWidth = mm(40);
export const noteLeft = mm(126);
export const fullWidth = mm(166);
/** Width of the block on a page turned landscape. */
export const turnedWidth = mm(250);

/** Where things stand on a sheet of paper, in points from its top left corner. */
export interface SheetShape {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly headTop: number;
  readonly headRule: number;
  readonly top: number;
  readonly bottom: number;
  readonly foot: number;
}

export const upright: SheetShape = {
  width: 595.28,
  height: 841.89,
  left: mm(25),
  right: mm(191),
  headTop: mm(11),
  headRule: mm(17),
  top: mm(24),
  bottom: mm(274),
  foot: mm(281),
};

/** Turned so that the upper edge lies in the binding: the punched margin is at the top. */
export const turned: SheetShape = {
  width: 841.89,
  height: 595.28,
  left: mm(23.5),
  right: mm(273.5),
  headTop: mm(21),
  headRule: mm(27),
  top: mm(33),
  bottom: mm(188),
  foot: mm(194),
};

/** The face a style is set in. */
export function faceOf({ family, strong, italic }: TextStyle): Face {
  if (family === "mono") return "mono";
  if (strong === true) return family === "serif" ? "serif-strong" : "sans-strong";
  if (italic === true) return family === "serif" ? "serif-italic" : "sans-italic";
  return family;
}
