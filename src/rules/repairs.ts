import { commonPractice, fromMemory } from "../model/basis.ts";
import { canPrecede } from "../model/dates.ts";
import { count, date, list, optional, quantity, text, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";
import { rejected } from "../requirements/testing-conditions.ts";
import { isClosed, spansOf, union } from "./seam-lengths.ts";

const testing = fromMemory("EN 13445-5", "2021", "repair of welds and their testing again");

export const rejectionRepaired = rule({
  id: "rejection-repaired",
  title: "A rejected place is repaired, at that joint and after its rejection",
  basis: testing,
  kind: "ndt-report#rows",
  when: [rejected],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    joint: text("joint"),
    day: date("record.date"),
    repairs: list(thing("<repair:rejected>", { joint: text("joint"), day: date("date") })),
  },
  *check({ joint, day, repairs }, row) {
    for (const repair of repairs) {
      if (repair.joint !== joint)
        yield {
          at: [repair, "joint"],
          on: repair,
          name: "joint",
          message: `repair ${repair.$.id} is of joint ${repair.joint}; the row it names rejects joint ${joint}`,
          why: `rejected in ${row.id}`,
          hint: "correct the joint, or name the row that rejected it",
          related: [{ at: "joint", message: `joint ${joint} rejected here` }],
        };
      if (canPrecede(day, repair.day) === "no")
        yield {
          at: [repair, "day"],
          on: repair,
          name: "date",
          message: `repair ${repair.$.id} was made on ${repair.day.text}, before the place was rejected on ${day.text}`,
          why: `rejected in ${row.id}`,
          hint: "correct the wrong date against the report and the repair sheet",
          related: [{ at: "day", message: `rejected on ${day.text}` }],
        };
    }
  },
  examples: [
    {
      name: "on the same day",
      given: { joint: "C2", day: "2026-06-08", repairs: [{ joint: "C2", day: "2026-06-08" }] },
      objections: [],
    },
    {
      name: "before the rejection",
      given: { joint: "C2", day: "2026-06-08", repairs: [{ $: "C2R1", joint: "C2", day: "2026-06-07" }] },
      objections: ["repair C2R1 was made on 2026-06-07, before the place was rejected on 2026-06-08"],
    },
    {
      name: "another joint",
      given: { joint: "C2", day: "2026-06-08", repairs: [{ $: "C2R1", joint: "C1", day: "2026-06-09" }] },
      objections: ["repair C2R1 is of joint C1; the row it names rejects joint C2"],
    },
  ],
});

const length = {
  from: optional(quantity("from", "mm")),
  to: optional(quantity("to", "mm")),
};

/** That a test after a repair rejects again is judged where it rejects: that row owes a repair of its own. */
export const repairRetested = rule({
  id: "repair-retested",
  title: "A repair is tested again by the method that rejected the place, over its whole length",
  basis: testing,
  kind: "repair",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    ...length,
    day: date("date"),
    method: text("rejected.record.method"),
    joint: thing("joint", { length: quantity("length", "mm"), role: text("role") }),
    retests: list(
      thing("<ndt-report:rows[].repair>", {
        ...length,
        length: quantity("length", "mm"),
        method: text("record.method"),
        day: date("record.date"),
        joint: text("joint"),
      }),
    ),
  },
  *check({ from, to, day, method, joint, retests }, repair) {
    const why = `tested again: ${retests.map((one) => `${one.$.id}, ${one.method} on ${one.day.text}, ${one.length.text}`).join("; ")}`;
    const here = retests.filter((one) => one.joint === joint.$.id);
    const after = here.filter((one) => one.method === method && canPrecede(day, one.day) === "yes");
    if (after.length === 0) {
      const [first] = retests;
      const fault =
        here.length === 0
          ? `at joint ${first?.joint ?? ""}`
          : !here.some((one) => one.method === method)
            ? `by ${[...new Set(here.map((one) => one.method))].join(" and ")}`
            : `before it was made on ${day.text}`;
      yield {
        at: first === undefined ? "day" : first,
        message: `repair ${repair.id} of joint ${joint.$.id} was rejected by ${method}, and tested again only ${fault}`,
        why,
        hint: `have the repair tested by ${method} and enter that report, or correct the row that names the repair`,
        related: [{ at: "day", message: `repaired on ${day.text}` }],
      };
      return;
    }
    if (from === undefined || to === undefined) return;
    const closed = isClosed(joint.role);
    const spans = (
      one: { readonly from: typeof from | undefined; readonly to: typeof to | undefined },
      size = joint.length,
    ) => spansOf({ from: one.from, to: one.to, length: size }, joint.length, closed) ?? [];
    const own = spans({ from, to });
    const placed = after.filter((one) => one.from !== undefined && one.to !== undefined);
    const tested = placed.flatMap((one) => spans(one));
    const needed = union(own);
    const missing = union([...tested, ...own]) - union(tested);
    // Where a row does not say its place, its length has to do.
    const enough =
      placed.length < after.length
        ? Math.max(...after.map((one) => one.length.value)) >= needed - 1e-9
        : missing <= 1e-9;
    if (!enough)
      yield {
        at: "from",
        message: `repair ${repair.id} reaches from ${from.text} to ${to.text}; not all of it was tested again`,
        why,
        hint: `have the rest tested by ${method}`,
        related: after.map((one) => ({ at: one, message: `tested again over ${one.length.text}` })),
      };
  },
  examples: [
    { name: "the same method, the same day, the same length", given: retested({}), objections: [] },
    { name: "a longer stretch", given: retested({ from: "380 mm", to: "480 mm" }), objections: [] },
    {
      name: "another method",
      given: retested({ method: "MT" }),
      objections: ["repair X-01 of joint C2 was rejected by RT, and tested again only by MT"],
    },
    {
      name: "the day before",
      given: retested({ day: "2026-06-09" }),
      objections: [
        "repair X-01 of joint C2 was rejected by RT, and tested again only before it was made on 2026-06-10",
      ],
    },
    {
      name: "another joint",
      given: retested({ joint: "C1" }),
      objections: ["repair X-01 of joint C2 was rejected by RT, and tested again only at joint C1"],
    },
    {
      name: "not the whole of it",
      given: retested({ from: "400 mm", to: "455 mm", length: "55 mm" }),
      objections: ["repair X-01 reaches from 400 mm to 460 mm; not all of it was tested again"],
    },
    {
      name: "too short, its place not stated",
      given: retested({ from: undefined, to: undefined, length: "59 mm" }),
      objections: ["repair X-01 reaches from 400 mm to 460 mm; not all of it was tested again"],
    },
    {
      name: "long enough, its place not stated",
      given: retested({ from: undefined, to: undefined, length: "60 mm" }),
      objections: [],
    },
  ],
});

function retested(changes: Readonly<Record<string, string | undefined>>) {
  const row: Readonly<Record<string, string | undefined>> = {
    $: "RT-02#C2",
    method: "RT",
    day: "2026-06-10",
    joint: "C2",
    from: "400 mm",
    to: "460 mm",
    length: "60 mm",
    ...changes,
  };
  const given = Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));
  return {
    from: "400 mm",
    to: "460 mm",
    day: "2026-06-10",
    method: "RT",
    joint: { $: "C2", length: "3744 mm", role: "circumferential" },
    retests: [given],
  };
}

export const repairCycle = rule({
  id: "repair-cycle",
  title: "A place is not repaired again and again",
  basis: commonPractice("a further repair of the same place needs consent"),
  kind: "repair",
  severity: "query",
  owner: "welding coordination",
  inputs: {
    cycle: count("cycle"),
    most: quantity("profile.repairCyclesMost", "1"),
    approval: optional(text("approval")),
  },
  *check({ cycle, most, approval }, repair) {
    if (cycle > most.value && approval === undefined)
      yield {
        at: "cycle",
        message: `repair ${repair.id} is number ${cycle} of its place; ${most.text} are permitted without consent`,
        why: "each repair heats the steel again and widens the weld",
        hint: "add the consent of the welding coordinator and of the inspection body",
      };
  },
  examples: [
    { name: "the last permitted", given: { cycle: 2, most: "2" }, objections: [] },
    {
      name: "one more",
      given: { cycle: 3, most: "2" },
      objections: ["repair X-01 is number 3 of its place; 2 are permitted without consent"],
    },
    {
      name: "one more, with consent",
      given: { cycle: 3, most: "2", approval: "letter of 2026-06-09" },
      objections: [],
    },
  ],
});
