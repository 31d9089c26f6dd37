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

/** Place, bore of the hole, outside diameter of the tube, and share of the wall that expanding took, in mm and percent. */
const places: readonly (readonly [place: string, hole: number, outside: number, taken: number])[] = [
  ["row 2, tube 3", 51.52, 51.04, 6.4],
  ["row 4, tube 7", 51.56, 51.02, 6.9],
  ["row 6, tube 1", 51.5, 51.06, 6.1],
  ["row 7, tube 5", 51.58, 51.03, 7.2],
];

function measured({ wall, stays }: Tube): Measured[] {
  return places.slice(0, stays ? 2 : 4).map(([position, hole, outside, taken]) => {
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
        measured: measured(tube),
        reductionAsked: tube.stays ? { minimum: "2 %", maximum: "4 %" } : { minimum: "5 %", maximum: "8 %" },
        projection: end === "gas-inlet" ? "3 mm" : "5 mm",
        result: "accepted",
        signatures: [{ role: "shop", person: "S1", date }],
      };
    }),
  );
