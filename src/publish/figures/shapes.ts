import type { Target } from "../blocks.ts";

/** Geometry once, drawn as SVG and as PDF vectors. Units are px at 96/inch in SVG; the PDF scales to its width. */
export interface Figure {
  readonly title: string;
  readonly description: string;
  /** Drawn twice: about 900 and 350 units wide. The PDF prints the wide one. */
  readonly wide: Drawing;
  readonly narrow: Drawing;
}

export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** One ink. Weights: 0.6 ticks, dimensions, limits · 1 axis · 2 data, seams · 3 value stroke. */
export type Shape =
  | {
      readonly type: "line";
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly weight: number;
      readonly broken?: boolean;
      /** Open arrow heads of a dimension line. */
      readonly arrows?: "both" | "end";
    }
  | {
      readonly type: "path";
      readonly points: readonly (readonly [number, number])[];
      readonly weight: number;
      readonly closed?: boolean;
      readonly broken?: boolean;
    }
  | { readonly type: "ring"; readonly at: readonly [number, number]; readonly radius: number; readonly weight: number }
  /** A region hatched at 45°, never filled. */
  | { readonly type: "hatch"; readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  | {
      readonly type: "text";
      readonly at: readonly [number, number];
      readonly text: string;
      readonly size: number;
      readonly anchor: "start" | "middle" | "end";
      readonly turned?: boolean;
      readonly strong?: boolean;
      readonly to?: Target;
    };
