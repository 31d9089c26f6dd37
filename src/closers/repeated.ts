import { closer } from "../model/closer.ts";
import { canPrecede, type DateValue } from "../model/dates.ts";
import { anyOf, date, list, optional, text, things, type Handle } from "../model/input.ts";

export const lacks = "no later accepted one is recorded";
const hint = "enter the repetition that was accepted";

interface Again {
  readonly $: Handle;
  readonly day: DateValue | undefined;
  readonly results: readonly (string | undefined)[];
}

/** Later ones about the same thing, all of whose results are accepted. */
export function closed(day: DateValue, others: readonly Again[], subject: Handle) {
  const later = others.filter(
    (one) =>
      one.$.address !== subject.address &&
      one.day !== undefined &&
      canPrecede(day, one.day) === "yes" &&
      one.results.every((result) => result === "accepted"),
  );
  if (later.length === 0) return { closes: false, begun: false, lacks, hint } as const;
  return { closes: true, said: `repeated: ${later.map(({ $ }) => $.name).join(", ")}` } as const;
}

export const holds = (all: readonly string[], some: readonly string[]) => some.every((one) => all.includes(one));

export const measuredAgain = closer({
  id: "later-measurement",
  title: "a later measurement of the same feature that is accepted",
  kinds: ["dimension-check#rows"],
  owner: "quality",
  inputs: {
    feature: text("feature"),
    part: optional(text("part")),
    joint: optional(text("joint")),
    day: date("record.date"),
    others: anyOf(
      things("book.dimension-check.rows[]", {
        feature: text("feature"),
        part: optional(text("part")),
        joint: optional(text("joint")),
        day: optional(date("record.date")),
        result: optional(text("result")),
      }),
    ),
  },
  close({ feature, part, joint, day, others }, row) {
    const same = others.filter((one) => one.feature === feature && one.part === part && one.joint === joint);
    return closed(
      day,
      same.map(({ $, day: on, result }) => ({ $, day: on, results: [result] })),
      row,
    );
  },
  examples: [
    {
      name: "measured again",
      given: { feature: "bore", part: "P04", day: "2026-03-06", others: [bore("DIM-02#bore", "2026-03-09")] },
      expect: "repeated: DIM-02#bore",
    },
    {
      name: "of another part",
      given: { feature: "bore", part: "P05", day: "2026-03-06", others: [bore("DIM-02#bore", "2026-03-09")] },
      expect: lacks,
    },
    {
      name: "accepted before",
      given: { feature: "bore", part: "P04", day: "2026-03-06", others: [bore("DIM-02#bore", "2026-03-05")] },
      expect: lacks,
    },
  ],
});

function bore($: string, day: string) {
  return { $, feature: "bore", part: "P04", day, result: "accepted" };
}

export const treatedAgain = closer({
  id: "later-treatment",
  title: "a later heat treatment of the same joints and parts that is accepted",
  kinds: ["heat-treatment"],
  owner: "welding coordination",
  inputs: {
    joints: anyOf(list(text("joints[]"))),
    parts: anyOf(list(text("parts[]"))),
    day: date("finished"),
    others: anyOf(
      things("book.heat-treatment", {
        joints: anyOf(list(text("joints[]"))),
        parts: anyOf(list(text("parts[]"))),
        day: optional(date("finished")),
        result: optional(text("result")),
      }),
    ),
  },
  close({ joints, parts, day, others }, subject) {
    // A treatment that names nothing it treated is repeated by none.
    const named = joints.length + parts.length > 0;
    const same = named ? others.filter((one) => holds(one.joints, joints) && holds(one.parts, parts)) : [];
    return closed(
      day,
      same.map(({ $, day: on, result }) => ({ $, day: on, results: [result] })),
      subject,
    );
  },
  examples: [
    {
      name: "treated again",
      given: {
        joints: ["C2"],
        day: "2026-06-08",
        others: [{ $: "HT-02", joints: ["C1", "C2"], day: "2026-06-09", result: "accepted" }],
      },
      expect: "repeated: HT-02",
    },
    {
      name: "only one of its joints",
      given: {
        joints: ["C1", "C2"],
        day: "2026-06-08",
        others: [{ $: "HT-02", joints: ["C2"], day: "2026-06-09", result: "accepted" }],
      },
      expect: lacks,
    },
    {
      name: "which joints or parts is not said",
      given: {
        day: "2026-06-08",
        others: [{ $: "HT-02", joints: ["C2"], day: "2026-06-09", result: "accepted" }],
      },
      expect: lacks,
    },
  ],
});

export const testedAgain = closer({
  id: "later-pressure-test",
  title: "a later pressure test of the same equipment that is accepted, with the look at every joint",
  kinds: ["pressure-test"],
  owner: "quality",
  inputs: {
    equipment: text("equipment"),
    day: date("date"),
    others: anyOf(
      things("book.pressure-test", {
        equipment: optional(text("equipment")),
        day: optional(date("date")),
        result: optional(text("result")),
        seen: optional(text("visualExamination.result")),
      }),
    ),
  },
  close({ equipment, day, others }, subject) {
    const same = others.filter((one) => one.equipment === equipment);
    return closed(
      day,
      same.map(({ $, day: on, result, seen }) => ({ $, day: on, results: [result, seen] })),
      subject,
    );
  },
  examples: [
    { name: "repeated", given: tests("accepted"), expect: "repeated: PT-02" },
    { name: "repeated, and the look found something", given: tests("rejected"), expect: lacks },
  ],
});

function tests(seen: string) {
  return {
    equipment: "E-1",
    day: "2026-06-23",
    others: [{ $: "PT-02", equipment: "E-1", day: "2026-06-24", result: "accepted", seen }],
  };
}

export const triedAgain = closer({
  id: "later-trial",
  title: "a later trial of the same function that is accepted",
  kinds: ["fitting#functionTests"],
  owner: "quality",
  inputs: {
    function: text("function"),
    day: date("date"),
    others: anyOf(
      things("record.functionTests[]", {
        function: text("function"),
        day: optional(date("date")),
        result: optional(text("result")),
      }),
    ),
  },
  close({ function: tried, day, others }, row) {
    const same = others.filter((one) => one.function === tried);
    return closed(
      day,
      same.map(({ $, day: on, result }) => ({ $, day: on, results: [result] })),
      row,
    );
  },
  examples: [
    {
      name: "tried again",
      given: {
        function: "cuts the heat",
        day: "2026-06-23",
        others: [{ $: "LW-01#2", function: "cuts the heat", day: "2026-06-24", result: "accepted" }],
      },
      expect: "repeated: LW-01#2",
    },
    {
      name: "another function",
      given: {
        function: "cuts the heat",
        day: "2026-06-23",
        others: [{ $: "LW-01#2", function: "locks out", day: "2026-06-24", result: "accepted" }],
      },
      expect: lacks,
    },
  ],
});
