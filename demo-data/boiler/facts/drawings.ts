import type { Drawing } from "../../generated/records.ts";
import { equipment } from "./boiler.ts";
import { joints } from "./joints.ts";
import { parts } from "./parts.ts";

type Revision = NonNullable<Drawing["revisions"]>[number];

const { limits, directive } = equipment;

/** Figures of the equipment as a drawing, the plate and the papers restate them. */
export const restated = {
  serial: equipment.serial,
  ...(equipment.year !== undefined && { year: equipment.year }),
  ...limits,
  ...(equipment.volume !== undefined && { volume: equipment.volume }),
  ...(equipment.testPressure !== undefined && { testPressure: equipment.testPressure }),
  ...(equipment.fluid?.group !== undefined && { fluidGroup: equipment.fluid.group }),
  ...(directive?.category !== undefined && { category: directive.category }),
} as const;

/** Day of issue and of approval of each revision, in their order. */
const issued: readonly (readonly [revision: string, date: string, approved: string])[] = [
  ["A", "2026-01-19", "2026-01-21"],
  ["B", "2026-01-27", "2026-01-29"],
  ["C", "2026-02-04", "2026-02-06"],
];

const drawn = (reasons: readonly string[], sheets: number): Revision[] =>
  reasons.flatMap((reason, index) => {
    const [revision, date, approved] = issued[index] ?? [];
    if (revision === undefined || date === undefined || approved === undefined) return [];
    const last = index === reasons.length - 1;
    return [
      {
        revision,
        date,
        status: last ? "as-built" : "superseded",
        reason,
        preparedBy: "R1",
        checkedBy: "R2",
        approvedBy: "K1",
        approved,
        sheets,
      },
    ];
  });

const first = "first issue";
const shownOn = (id: string): string[] =>
  parts.filter(({ drawing }) => drawing?.startsWith(`${id}@`)).map((one) => one.id);

const detail = (id: string, title: string, of: readonly string[], reasons: readonly string[] = [first]): Drawing => ({
  id,
  number: `TQ417-04-DRG-0${id.slice(-2)}`,
  title,
  type: "detail",
  revisions: drawn(reasons, 1),
  parts: [...of],
});

export const drawings: readonly Drawing[] = [
  {
    ...detail("DRG-01", "General arrangement", shownOn("DRG-01"), [
      first,
      "nozzles N10 to N13 added",
      "manhole M1 moved to course 2",
    ]),
    type: "arrangement",
    revisions: drawn([first, "nozzles N10 to N13 added", "manhole M1 moved to course 2"], 3),
    designData: restated,
  },
  {
    id: "DRG-02",
    number: "TQ417-04-DRG-002",
    title: "Weld map",
    type: "weld-map",
    revisions: drawn([first, "joints N10 to N13 and F10 to F13 added", "joint M01 moved to course 2"], 2),
    joints: joints.map(({ id }) => id),
  },
  detail("DRG-03", "Furnace, hoop, reversal chamber, tubes", shownOn("DRG-03"), [first, "hoop 200 mm wide"]),
  detail("DRG-04", "Tube plates, back plate, stays", shownOn("DRG-04"), [first, "third row of stays above the nest"]),
  detail("DRG-05", "Nozzles, flanges, manhole", shownOn("DRG-05"), [first, "inspection openings N10 to N13 added"]),
  detail("DRG-06", "Development and cutting plan of the plates", ["P01", "P02", "P05", "P06", "P07", "P08"]),
  detail("DRG-07", "Tube ends: holes, expansion, stay tubes", ["P03", "P04", "P09", "P12", "P13", "P14", "P15"]),
  detail("DRG-08", "Bar stays, lengths and fillet welds", ["P16", "P17"]),
  detail("DRG-09", "Saddles and lifting lugs", ["P45", "P46"]),
  detail("DRG-10", "Water levels, level indicators and limiters", ["P01", "P23", "P24"]),
  detail("DRG-11", "Access tube and its opening in the rear tube plate", ["P04", "P10", "P11"]),
  {
    ...detail("DRG-12", "Nameplate", ["P47"]),
    type: "nameplate",
    designData: {
      ...restated,
      ...(directive?.module !== undefined && { module: directive.module }),
      bodyNumber: "0000",
    },
  },
];
