import { commonPractice, excerptSeen, fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, count, date, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "leak-test", owner: "testing" } as const;

export const leaksLeft = rule({
  ...shared,
  id: "leaks-left",
  title: "An accepted leak test left no leak",
  basis: commonPractice("a leak that was found is closed and tested again"),
  severity: "nonconformity",
  inputs: { leaks: count("leaks"), result: text("result") },
  *check({ leaks, result }, test) {
    if (leaks > 0 && result === "accepted")
      yield {
        at: "leaks",
        message: `leak test ${test.name} is accepted with ${leaks === 1 ? "1 leak" : `${leaks} leaks`}`,
        why: "result: accepted",
        hint: "have them closed and tested again, or correct the number",
      };
  },
  examples: [
    { name: "none", given: { leaks: 0, result: "accepted" }, objections: [] },
    { name: "rejected for it", given: { leaks: 2, result: "rejected" }, objections: [] },
    {
      name: "one left",
      given: { leaks: 1, result: "accepted" },
      objections: ["leak test X-01 is accepted with 1 leak"],
    },
  ],
});

export const leakTestJoints = rule({
  ...shared,
  id: "leak-test-joints",
  title: "The joints of a leak test are those of the parts it tested",
  basis: ownChoice("what a joint joins stands in its record"),
  when: [{ path: "parts", exists: true }],
  severity: "query",
  inputs: {
    parts: list(text("parts[]")),
    named: list(text("joints[]")),
    joints: list(thing("joints[]", { parts: list(text("parts[]")) })),
  },
  *check({ parts, joints }, test) {
    const strange = joints.filter((joint) => !joint.parts.some((part) => parts.includes(part)));
    const [first] = strange;
    if (first !== undefined)
      yield {
        at: "named",
        accuses: [],
        message: `leak test ${test.name} names joint ${first.$.name}, which is of none of its parts ${parts.join(", ")}`,
        why: `it joins ${first.parts.join(", ")}`,
        hint: "compare parts and joints with the report",
      };
  },
  examples: [
    {
      name: "of its part",
      given: { parts: ["P10"], named: ["N6"], joints: [{ parts: ["P02", "P10"] }] },
      objections: [],
    },
    {
      name: "of other parts",
      given: { parts: ["P10"], named: ["C1"], joints: [{ $: "C1", parts: ["P01", "P03"] }] },
      objections: ["leak test X-01 names joint C1, which is of none of its parts P10"],
    },
  ],
});

export const leakTestMedium = rule({
  ...shared,
  id: "leak-test-medium",
  title: "A leak test by tracer gas has one that its instrument tells from air",
  basis: commonPractice("helium is what is looked for; air and nitrogen are everywhere"),
  when: [{ path: "method", equals: "tracer gas" }],
  severity: "nonconformity",
  inputs: { medium: text("medium") },
  *check({ medium }, test) {
    if (medium.includes("helium")) return;
    yield {
      at: "medium",
      message: `leak test ${test.name} looks for a tracer gas and was made with ${medium}`,
      why: "there is none in it",
      hint: "compare method and medium with the report",
    };
  },
  examples: [
    { name: "helium in air", given: { medium: "air with helium" }, objections: [] },
    {
      name: "air alone",
      given: { medium: "air" },
      objections: ["leak test X-01 looks for a tracer gas and was made with air"],
    },
  ],
});

/** min */
const soakLeast = 15;

export const leakTestSoak = rule({
  ...shared,
  id: "leak-test-soak",
  title: "Pressure stands for 15 min before bubbles are looked for",
  basis: excerptSeen("ASME BPVC Section V", "Article 10, Appendix I, I-1031: soak time", "2015"),
  when: [{ path: "method", equals: "bubbles" }],
  severity: "query",
  inputs: { soak: quantity("soak", "min") },
  *check({ soak }, test) {
    if (soak.high + soak.halfUnit >= soakLeast) return;
    yield {
      at: "soak",
      message: `the pressure of leak test ${test.name} stood for ${soak.text} before leaks were looked for; 15 min are usual`,
      why: "a small leak takes time to show",
      hint: "compare with the report, or answer this query with what the procedure asks for",
    };
  },
  examples: [
    { name: "a quarter of an hour", given: { soak: "15 min" }, objections: [] },
    {
      name: "shorter",
      given: { soak: "2 min" },
      objections: ["the pressure of leak test X-01 stood for 2 min before leaks were looked for; 15 min are usual"],
    },
  ],
});

/** bar, and share of the allowable pressure, from which gas under pressure is a test of strength and not of leaks. */
const [low, share] = [0.5, 0.25];

export const leakTestPressure = rule({
  ...shared,
  id: "leak-test-pressure",
  title: "A leak test is made at a low pressure: gas under more is a pneumatic test of strength",
  basis: fromMemory(
    "ASME BPVC Section V",
    undefined,
    "Article 10: not above a quarter of the design pressure; 0.5 bar is low by common practice; more gas stores more energy, and such a test has precautions of its own",
  ),
  severity: "query",
  inputs: {
    pressure: quantity("pressure", "bar"),
    allowable: optional(quantity("book.equipment.limits.maximumAllowablePressure", "bar")),
  },
  *check({ pressure, allowable }, test) {
    const most = Math.max(low, share * (allowable?.value ?? 0));
    if (pressure.low - pressure.halfUnit <= most) return;
    yield {
      at: "pressure",
      message: `leak test ${test.name} was made with gas at ${pressure.text}; above ${Number(most.toFixed(2))} bar that is a pneumatic test of strength`,
      why: allowable === undefined ? "no allowable pressure is stated" : `allowable pressure ${allowable.text}`,
      hint: "compare with the report; if it is so, answer this query with who agreed to it and which precautions were taken",
    };
  },
  examples: [
    { name: "low", given: { pressure: "0.5 bar" }, objections: [] },
    { name: "a quarter of what it is made for", given: { pressure: "2.75 bar", allowable: "11 bar" }, objections: [] },
    {
      name: "more",
      given: { pressure: "5 bar", allowable: "11 bar" },
      objections: ["leak test X-01 was made with gas at 5 bar; above 2.75 bar that is a pneumatic test of strength"],
    },
  ],
});

export const leakTestBeforeWater = rule({
  ...shared,
  id: "leak-test-before-water",
  title: "Joints are tested for leaks with gas before water was in them",
  basis: commonPractice("water that stands in a fine leak keeps gas from showing it"),
  severity: "query",
  inputs: {
    day: date("date"),
    tests: anyOf(things("book.pressure-test", { day: date("date"), medium: optional(text("medium")) })),
  },
  *check({ day, tests }, test) {
    const before = tests.find((one) => canPrecede(day, one.day) === "no" && one.medium?.startsWith("water") === true);
    if (before === undefined) return;
    yield {
      at: "day",
      accuses: [],
      message: `leak test ${test.name} was made on ${day.text}, after the pressure test with water of ${before.day.text}`,
      why: before.$.name,
      hint: "compare the days; if it is so, answer this query with how the joints were dried",
      related: [{ at: before, message: `with water on ${before.day.text}` }],
    };
  },
  examples: [
    { name: "before", given: watered("2026-06-20"), objections: [] },
    {
      name: "after",
      given: watered("2026-06-24"),
      objections: ["leak test X-01 was made on 2026-06-24, after the pressure test with water of 2026-06-23"],
    },
  ],
});

function watered(day: string) {
  return { day, tests: [{ $: "HYD-01", day: "2026-06-23", medium: "water" }] };
}
