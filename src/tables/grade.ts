import type { Basis } from "../model/basis.ts";

/** A steel grade of one standard in one edition, as the tables below are made from it. */
export interface Grade {
  readonly standard: string;
  readonly edition: string;
  /** Neighbouring editions in which every value here is the same. */
  readonly sameIn?: readonly string[];
  readonly name: string;
  readonly number: string;
  /** Material group after ISO/TR 15608, as listed, never computed from the yield strength. */
  readonly group: string;
  /** Delivery conditions the standard knows for it. */
  readonly delivery: readonly string[];
  readonly chemistry: {
    readonly basis: Basis;
    /** Element (or sum of elements), side of the limit, content; "if added": need not be reported otherwise. */
    readonly limits: readonly (readonly [string, "least" | "most", string, "if added"?])[];
  };
  readonly strength: {
    readonly basis: Basis;
    /** By nominal thickness in mm; strengths in MPa; least elongation after fracture by direction. */
    readonly bands: readonly (Band & {
      readonly yieldStrength: number;
      readonly tensileStrength: readonly [number, number];
      readonly elongation: { readonly longitudinal?: string; readonly transverse?: string };
    })[];
  };
  /** Least 0.2 % proof strength in MPa at temperatures in °C. Absent: not known here. */
  readonly proofStrength?: {
    readonly basis: Basis;
    readonly temperatures: readonly number[];
    readonly bands: readonly (Band & { readonly values: readonly number[] })[];
  };
  /** Least mean impact energy in J of three full-size notched bars at a temperature in °C. */
  readonly impact?: {
    readonly basis: Basis;
    readonly rows: readonly { readonly temperature: number; readonly direction: string; readonly energy: number }[];
  };
}

interface Band {
  readonly over: number;
  readonly upTo: number;
}
