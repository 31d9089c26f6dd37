import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, exists, list, optional, quantity, text, thing } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { roundUp } from "../../model/print-number.ts";
import { atLeast, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const dressed = [{ path: "dressing", exists: true }] as const;
const shared = { kind: "repair", when: dressed, severity: "nonconformity" } as const;

/** Least walls that calculations of a part state. */
const needed = {
  shell: optional(quantity("calculation(cylindrical-shell).emin", "mm")),
  neck: optional(quantity("calculation(nozzle-neck).emin", "mm")),
  end: optional(quantity("calculation(torispherical-end).emin", "mm")),
  plate: optional(quantity("calculation(flat-plate).emin", "mm")),
};

export const dressedWall = rule({
  ...shared,
  id: "dressed-wall",
  title: "What is left of a wall that was dressed is as thick as the part must be",
  basis: commonPractice("a flaw may be ground out without welding while the wall keeps what it needs"),
  owner: "welding coordination",
  inputs: {
    left: quantity("dressing.leastThickness", "mm"),
    part: thing("dressing.part", {
      nominal: quantity("nominalThickness", "mm"),
      under: optional(quantity("thicknessUndertolerance", "mm")),
      ...needed,
    }),
    joined: list(text("joint.parts[]")),
  },
  *check({ left, part, joined }, repair) {
    const { nominal, under, shell, neck, end, plate } = part;
    if (!joined.includes(part.$.id)) {
      yield {
        at: "left",
        accuses: [],
        name: "part",
        message: `repair ${repair.name} measured the wall of part ${part.$.name}, which its joint does not join`,
        why: `parts of the joint: ${joined.join(", ")}`,
        hint: "compare with the repair sheet, and correct the part",
      };
      return;
    }
    const known = [shell, neck, end, plate].filter((one) => one !== undefined);
    const least = known.toSorted((one, other) => other.value - one.value)[0];
    if (least !== undefined) {
      const answer = atLeast(left, least);
      if (answer !== "yes")
        yield {
          at: "left",
          accuses: [],
          message: `repair ${repair.name} left ${left.text} of the wall of part ${part.$.name}; ${roundUp(least.value, 2)} mm is the least it must hold`,
          why: `nominal ${nominal.text}`,
          hint: "compare with the repair sheet; if it is true, have the place welded up, or raise a nonconformity report",
          unsure: answer === "unsure",
        };
    } else if (left.high < floorOf(nominal, under))
      yield {
        at: "left",
        accuses: [],
        message: `repair ${repair.name} left ${left.text} of the wall of part ${part.$.name}, which is ${nominal.text} thick; no calculation says what it must hold`,
        why: under === undefined ? "no undertolerance is stated" : `undertolerance ${under.text}`,
        hint: "have the designer state what the wall must hold, and answer this query with it",
        unsure: true,
      };
  },
  examples: [
    { name: "as thick as it must be", given: ground("6.5 mm", { shell: "6.5 mm" }), objections: [] },
    {
      name: "thinner",
      given: ground("6.4 mm", { shell: "6.5 mm" }),
      objections: ["repair X-01 left 6.4 mm of the wall of part P01; 6.5 mm is the least it must hold"],
    },
    { name: "within the undertolerance of what nobody calculated", given: ground("7.7 mm"), objections: [] },
    {
      name: "below it",
      given: ground("7.6 mm"),
      objections: [
        "repair X-01 left 7.6 mm of the wall of part P01, which is 8.0 mm thick; no calculation says what it must hold",
      ],
    },
    {
      name: "of another part",
      given: { ...ground("7.7 mm"), joined: ["P02", "P03"] },
      objections: ["repair X-01 measured the wall of part P01, which its joint does not join"],
    },
  ],
});

const floorOf = (nominal: Measure, under: Measure | undefined) => nominal.value - (under?.value ?? 0) - 1e-9;

function ground(left: string, more: Readonly<Record<string, string>> = {}) {
  return { left, part: { $: "P01", nominal: "8.0 mm", under: "0.3 mm", ...more }, joined: ["P01", "P03"] };
}

const surface: readonly string[] = ["MT", "PT"];

/** mm. */
const undercut = 0.5;

export const dressedTested = rule({
  ...shared,
  id: "dressed-tested",
  title: "A place that was dressed is tested on its surface afterwards",
  basis: commonPractice(
    "magnetic particles or penetrant show that nothing is left of a flaw that was ground out; an undercut up to 0.5 mm deep that no report rejected is seen to be gone",
  ),
  owner: "testing",
  inputs: {
    day: date("date"),
    depth: optional(quantity("depth", "mm")),
    rejected: exists("rejected"),
    retests: list(
      thing("<ndt-report:rows[].repair>", {
        method: text("record.method"),
        day: date("record.date"),
        result: text("result"),
      }),
    ),
  },
  owes: [owedBy("testing", "testing-complete", "retests")],
  *check({ day, depth, rejected, retests }, repair) {
    // An undercut that nobody rejected is seen to be gone; a crack is not.
    const shallow = !rejected && depth !== undefined && depth.high <= undercut;
    const methods = shallow ? [...surface, "VT"] : surface;
    const clear = retests.some(
      (test) => methods.includes(test.method) && test.result === "accepted" && canPrecede(day, test.day) === "yes",
    );
    if (clear) return;
    yield {
      at: "subject",
      accuses: [],
      message: `repair ${repair.name} was dressed on ${day.text}, and no surface test afterwards shows the place clear`,
      why: retests.map((test) => `${test.$.name}: ${test.method} on ${test.day.text}, ${test.result}`).join("; "),
      hint: "add the report of the surface test; if it was not made, have it made",
    };
  },
  examples: [
    { name: "the same day", given: tested("MT", "2026-06-12"), objections: [] },
    {
      name: "an undercut that was dressed before anybody rejected it, looked at",
      given: { ...tested("VT", "2026-06-12"), depth: "0.3 mm" },
      objections: [],
    },
    {
      name: "a rejected one, looked at",
      given: { ...tested("VT", "2026-06-12"), depth: "0.3 mm", rejected: true },
      objections: ["repair X-01 was dressed on 2026-06-12, and no surface test afterwards shows the place clear"],
    },
    {
      name: "a radiograph alone",
      given: tested("RT", "2026-06-13"),
      objections: ["repair X-01 was dressed on 2026-06-12, and no surface test afterwards shows the place clear"],
    },
    {
      name: "the day before",
      given: tested("PT", "2026-06-11"),
      objections: ["repair X-01 was dressed on 2026-06-12, and no surface test afterwards shows the place clear"],
    },
  ],
});

function tested(method: string, day: string) {
  return { day: "2026-06-12", retests: [{ $: "MT-03, row N05", method, day, result: "accepted" }] };
}
