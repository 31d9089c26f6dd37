import { fromMemory } from "../model/basis.ts";
import { anyOf, date, list, optional, quantity, text, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { joint, months, objectionsTo, weldAt, welder } from "./welder-fault.ts";
import { periodsOf } from "./welder-validity.ts";

export const welderQualified = rule({
  id: "welder-qualified",
  title: "A weld is made by a welder qualified for it on that day",
  basis: fromMemory("EN ISO 9606-1", "2017", "ranges of qualification and period of validity; operators: EN ISO 14732"),
  kind: "weld-log#runs",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    day: date("date"),
    process: text("process"),
    layer: text("layer"),
    position: optional(text("position")),
    deposited: optional(quantity("depositedThickness", "mm")),
    fillers: anyOf(list(text("batches[].fillerGroup"))),
    welders: list(thing("welders[]", welder)),
    joint: thing("record.joint", joint),
  },
  *check({
    day,
    process,
    layer,
    position,
    deposited,
    fillers,
    welders,
    joint: at,
    confirmationMonths,
    revalidationMonths,
    retestMonths,
  }) {
    const weld = weldAt(at, process, deposited, layer === "fill" || layer === "cap", fillers);
    const periods = periodsOf({ confirmationMonths, revalidationMonths, retestMonths });
    for (const objection of objectionsTo(
      welders,
      weld,
      position === undefined ? at.positions : [position],
      day,
      periods,
    ))
      yield { ...objection, at: "day", related: [{ at: "welders", message: `joint ${at.$.id}, ${layer}` }] };
  },
  examples: [
    { name: "on the last day of the first half-year", given: run({}), objections: [] },
    {
      name: "a day later, not confirmed",
      given: run({ day: "2026-07-16" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-07-16"],
    },
    {
      name: "confirmed on the last day of the half-year",
      given: run({ day: "2026-07-16" }, { confirmations: ["2026-07-15"] }),
      objections: [],
    },
    {
      name: "confirmed a day late, which revives nothing",
      given: run({ day: "2026-08-01" }, { confirmations: ["2026-07-16"] }),
      objections: ["welder W07 was not qualified for process 135 on 2026-08-01"],
    },
    { name: "on the day of the test", given: run({ day: "2026-01-15" }), objections: [] },
    {
      name: "a day before the test",
      given: run({ day: "2026-01-14" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-01-14"],
    },
    { name: "on the printed last day", given: run({ day: "2026-03-31" }, { validTo: "2026-03-31" }), objections: [] },
    {
      name: "after the printed last day",
      given: run({ day: "2026-04-01" }, { validTo: "2026-03-31" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-04-01"],
    },
    { name: "twice the tested thickness", given: run({ deposited: "16.0 mm" }), objections: [] },
    {
      name: "thicker",
      given: run({ deposited: "16.1 mm" }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 16.1 mm, position PA"],
    },
    {
      name: "tested at 12 mm: no upper end",
      given: run({ deposited: "40 mm" }, { thickness: "12.0 mm" }),
      objections: [],
    },
    { name: "the sister process", given: run({ process: "138" }), objections: [] },
    {
      name: "another process",
      given: run({ process: "141" }),
      objections: ["welder W07 holds no qualification for process 141, butt weld, 8.0 mm, position PA"],
    },
    {
      name: "a position the test does not cover",
      given: run({ position: "PC" }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 8.0 mm, position PC"],
    },
    {
      name: "round a fixed pipe, tested upwards",
      given: run({ position: "PH" }, { positions: ["PH"], product: "pipe", outsideDiameter: "60.3 mm" }),
      objections: [],
    },
  ],
});

export const repairWelderQualified = rule({
  id: "repair-welder-qualified",
  title: "A repair is made by a welder qualified for it on that day",
  basis: fromMemory("EN ISO 9606-1", "2017", "ranges of qualification and period of validity"),
  kind: "repair",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    day: date("date"),
    process: text("process"),
    depth: optional(quantity("depth", "mm")),
    fillers: anyOf(list(text("batches[].fillerGroup"))),
    welders: list(thing("welders[]", welder)),
    joint: thing("joint", joint),
  },
  *check({ day, process, depth, fillers, welders, joint: at, confirmationMonths, revalidationMonths, retestMonths }) {
    // How far the excavation goes decides the thickness; whether it breaks through is not recorded, so the detail counts.
    const weld = weldAt(at, process, depth, false, fillers);
    const periods = periodsOf({ confirmationMonths, revalidationMonths, retestMonths });
    for (const objection of objectionsTo(welders, weld, at.positions, day, periods))
      yield { ...objection, at: "day", related: [{ at: "welders", message: `repair of joint ${at.$.id}` }] };
  },
  examples: [
    { name: "qualified", given: repair({}), objections: [] },
    {
      name: "lapsed",
      given: repair({ day: "2026-07-16" }),
      objections: ["welder W07 was not qualified for process 135 on 2026-07-16"],
    },
    {
      name: "too shallow for the test",
      given: repair({ depth: "2.9 mm" }),
      objections: ["welder W07 holds no qualification for process 135, butt weld, 2.9 mm, position PA"],
    },
  ],
});

/** A run welded on the last day of the first half-year after the test. */
function run(
  changes: Readonly<Record<string, string>>,
  certificate: Readonly<Record<string, string | readonly string[]>> = {},
) {
  return {
    ...repair(changes, certificate),
    layer: "root",
    position: changes["position"] ?? "PA",
    deposited: changes["deposited"] ?? "8.0 mm",
  };
}

function repair(
  changes: Readonly<Record<string, string>>,
  certificate: Readonly<Record<string, string | readonly string[]>> = {},
) {
  const own = Object.fromEntries(
    Object.entries(changes).filter(([name]) => name !== "position" && name !== "deposited"),
  );
  const held = {
    $: "WQ-12",
    standard: "EN ISO 9606-1",
    process: "135",
    product: "plate",
    weldType: "butt",
    fillerGroup: "FM1",
    thickness: "8.0 mm",
    positions: ["PA", "PF"],
    detail: "ss nb",
    testDate: "2026-01-15",
    route: "9.3b",
    ...certificate,
  };
  return {
    confirmationMonths: "6",
    revalidationMonths: "24",
    retestMonths: "36",
    day: "2026-07-15",
    process: "135",
    fillers: ["FM1"],
    welders: [{ $: "W07", qualifications: [held] }],
    joint: { $: "L1", detail: "bs", positions: ["PA"], thicknesses: ["8.0 mm", "8.0 mm"] },
    ...own,
  };
}
