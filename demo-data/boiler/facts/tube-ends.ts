import type { TubeEndGroup } from "../../generated/records.ts";
import { parts } from "./parts.ts";

type Measured = NonNullable<TubeEndGroup["measured"]>[number];

/** Bore of a tube before it is expanded, from its outside diameter as measured and its nominal wall. */
interface Tube {
  readonly part: string;
  readonly wall: number;
  readonly stays: boolean;
}

const tubes: Readonly<Record<string, readonly [plain: Tube, stays: Tube]>> = {
  P12: [
    { part: "P12", wall: 3.6, stays: false },
    { part: "P13", wall: 6.3, stays: true },
  ],
  P14: [
    { part: "P14", wall: 3.6, stays: false },
    { part: "P15", wall: 6.3, stays: true },
  ],
};

/** Ends that were measured in each field, counted from the top and from the left as the plate is drawn; the stay tubes apart. */
const places: Readonly<Record<"2" | "3", readonly [plain: readonly string[], stays: readonly string[]]>> = {
  "2": [
    ["row 2, tube 3", "row 4, tube 7", "row 6, tube 1", "row 7, tube 5"],
    ["row 3, tube 2", "row 5, tube 10"],
  ],
  "3": [
    ["row 2, tube 4", "row 5, tube 8", "row 9, tube 1", "row 13, tube 3"],
    ["row 4, tube 7", "row 12, tube 2"],
  ],
};

/** Bore of the hole, outside diameter of the tube, and share of the wall that expanding took, in mm and percent, as they came. */
const ends: readonly (readonly [hole: number, outside: number, taken: number])[] = [
  [51.52, 51.04, 6.4],
  [51.56, 51.02, 6.9],
  [51.5, 51.06, 6.1],
  [51.58, 51.03, 7.2],
  [51.54, 51.05, 6.6],
  [51.57, 51.01, 6.8],
  [51.53, 51.03, 6.2],
  [51.55, 51.06, 7.0],
  [51.51, 51.02, 6.5],
  [51.56, 51.05, 7.1],
  [51.52, 51.01, 6.3],
];

/** Each group takes them from another place on, and its field is as hard to roll as it is. */
function measured({ wall, stays }: Tube, pass: "2" | "3", group: number): Measured[] {
  return places[pass][stays ? 1 : 0].map((position, index) => {
    const [hole, outside, given] = ends[(3 * group + index) % ends.length] ?? [51.5, 51, 6.5];
    const taken = given + (group % 3) * 0.1;
    // A welded end is rolled lightly, only to close the gap behind its weld.
    const share = stays ? taken / 2 : taken;
    const before = outside - 2 * wall;
    const after = before + (hole - outside) + (2 * wall * share) / 100;
    const reduction = ((Number(after.toFixed(2)) - before - (hole - outside)) / (outside - before)) * 100;
    return {
      position,
      holeDiameter: `${hole.toFixed(2)} mm`,
      tubeOutside: `${outside.toFixed(2)} mm`,
      insideBefore: `${before.toFixed(2)} mm`,
      insideAfter: `${after.toFixed(2)} mm`,
      wallReduction: `${reduction.toFixed(1)} %`,
    };
  });
}

/** Days on which the last end of each field was finished, by its name on the drawing. */
const finished: Readonly<Record<string, readonly [day: string, end: NonNullable<TubeEndGroup["end"]>]>> = {
  "front, pass 2": ["2026-04-15", "gas-outlet"],
  "chamber, pass 2": ["2026-04-14", "gas-inlet"],
  "front, pass 3": ["2026-04-17", "gas-inlet"],
  "rear, pass 3": ["2026-04-16", "gas-outlet"],
};

/** Two groups for each field of the plates: its plain tubes, which are expanded, and its stay tubes, which are welded too. */
export const tubeEndGroups: readonly TubeEndGroup[] = parts
  .flatMap((plate) => (plate.tubeFields ?? []).map((field) => ({ plate, field })))
  .flatMap(({ plate, field }, place) =>
    (tubes[field.tube ?? ""] ?? []).map((tube, sort): TubeEndGroup => {
      const [date, end] = finished[field.field] ?? ["2026-04-17", "gas-outlet"];
      return {
        id: `TE-${String(2 * place + sort + 1).padStart(2, "0")}`,
        field: `${plate.id}#${field.field}`,
        tube: tube.part,
        end,
        joining: tube.stays ? "expanded-and-welded" : "expanded",
        count: (tube.stays ? field.stayTubes : field.tubes) ?? 0,
        procedure: "PRC-TX@5",
        ...(tube.stays && { weldingProcedure: "WPS-19@1", welders: ["W19"], position: "PH" as const }),
        expander: tube.stays ? "three rollers, torque cut-off at step 3" : "three rollers, torque cut-off at step 5",
        operators: ["S1"],
        date,
        instruments: ["BG-01"],
        measured: measured(tube, field.field.endsWith("2") ? "2" : "3", 2 * place + sort),
        reductionAsked: tube.stays ? { minimum: "2 %", maximum: "4 %" } : { minimum: "5 %", maximum: "8 %" },
        projection: end === "gas-inlet" ? "3 mm" : "5 mm",
        result: "accepted",
        signatures: [{ role: "shop", person: "S1", date }],
      };
    }),
  );
