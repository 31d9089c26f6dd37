import { list, optional, quantity, text, thing, type Condition } from "../../model/input.ts";

export const document = "EN ISO 17636-1";
/** Rows of radiographic reports. */
export const radiographs: readonly Condition[] = [{ path: "record.method", equals: "RT" }];
/** Of films only: a detector has no density and no class of film. */
export const films: readonly Condition[] = [...radiographs, { path: "record.radiography.detector", exists: false }];

/** Through how many walls the rays go; one, where the report does not say. */
export const walls = (way: string | undefined) => (way?.startsWith("double wall") === true ? 2 : 1);

/** How the films of a row were exposed, and what the rays went through. */
export const exposure = {
  report: thing("record", {
    source: text("radiography.source"),
    made: text("radiography.techniqueClass"),
    way: optional(text("radiography.arrangement")),
  }),
  thicknesses: list(quantity("joint.thicknesses[]", "mm")),
} as const;

/** A row for examples. */
export function exposed(report: Readonly<Record<string, string>>, thicknesses: readonly string[] = ["8.0 mm"]) {
  return { report: { $: "RT-01", source: "X-ray 180 kV", made: "B", ...report }, thicknesses };
}
