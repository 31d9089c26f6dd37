import { fromMemory } from "../../model/basis.ts";
import { anyOf, date, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { modesOf, transferOfRun } from "../welding-range/transfer.ts";
import { repair } from "./welder-examples.ts";
import { fillerBatch, joint, months, objectionsTo, weldAt, welder } from "./welder-fault.ts";
import { welderRanges } from "./welder-range.ts";
import { periodsOf } from "./welder-validity.ts";

export const repairWelderQualified = rule({
  id: "repair-welder-qualified",
  title: "A repair is made by a welder qualified for it on that day",
  basis: fromMemory("EN ISO 9606-1", "2017", "ranges of qualification and period of validity"),
  kind: "repair",
  when: [weldedRepair],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...months,
    ...welderRanges,
    day: date("date"),
    process: text("process"),
    depth: optional(quantity("depth", "mm")),
    fillers: anyOf(list(text("batches[].fillerGroup"))),
    batches: anyOf(things("batches[]", fillerBatch)),
    transferModes: anyOf(list(text("weldingProcedure.transferModes[]"))),
    windows: anyOf(things("weldingProcedure.runs[]", transferOfRun)),
    welders: list(thing("welders[]", welder)),
    joint: thing("joint", joint),
  },
  owes: [owedBy("welding coordination", "testing-complete", "welders.qualifications")],
  *check(values) {
    const { day, process, depth, fillers, welders, joint: at } = values;
    // How far the excavation goes decides the thickness; whether it breaks through is not recorded, so the detail counts.
    const used = { batches: values.batches, transferModes: modesOf(values) };
    const weld = weldAt(at, process, depth, false, fillers, used);
    for (const objection of objectionsTo(welders, () => weld, at.positions, day, periodsOf(values), values))
      yield { ...objection, at: "day", related: [{ at: "welders", message: `repair of joint ${at.$.name}` }] };
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
