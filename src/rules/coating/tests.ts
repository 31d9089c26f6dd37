import { commonPractice, excerptSeen } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, count, date, list, quantity, text, things } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "coating-report", owner: "quality" } as const;

export const coatedAfterTests = rule({
  ...shared,
  id: "coated-after-tests",
  title: "Parts are coated after their joints were tested and after the pressure test",
  basis: commonPractice("a coat hides what a test is to show"),
  severity: "nonconformity",
  inputs: {
    layers: anyOf(list(date("layers[].applied"))),
    reports: anyOf(
      things("parts[].<joint:parts[]>.<ndt-report:rows[].joint>", {
        day: date("record.date"),
        method: text("record.method"),
        joint: text("joint"),
      }),
    ),
    leaks: anyOf(things("parts[].<leak-test:parts[]>", { day: date("date") })),
    leaksOfJoints: anyOf(things("parts[].<joint:parts[]>.<leak-test:joints[]>", { day: date("date") })),
    tests: anyOf(things("book.pressure-test", { day: date("date") })),
  },
  *check({ layers, reports, leaks, leaksOfJoints, tests }, report) {
    const [first] = [...layers].sort((a, b) => a.from - b.from);
    if (first === undefined) return;
    const isLate = ({ day }: { readonly day: DateValue }) => canPrecede(day, first) === "no";
    // What was tested in that way before may be looked at once more.
    const again = ({ method, joint }: (typeof reports)[number]) =>
      reports.some((other) => other.method === method && other.joint === joint && !isLate(other));
    const late = [...tests, ...leaks, ...leaksOfJoints, ...reports.filter((one) => !again(one))].filter(isLate);
    const [one] = late;
    if (one === undefined) return;
    const others = new Set(late.map(({ $ }) => $.name)).size - 1;
    yield {
      at: "layers",
      accuses: [],
      message: `coat ${report.name} was begun on ${first.text}, before the test of ${one.day.text}`,
      why: `${one.$.name}${others === 0 ? "" : ` and ${others} more`}`,
      hint: "compare the days; if it is so, state in a nonconformity report what the coat may hide",
      related: late.map((test) => ({ at: test, message: `tested on ${test.day.text}` })),
    };
  },
  examples: [
    { name: "after both", given: coated("2026-06-17", "2026-06-23"), objections: [] },
    {
      name: "before the pressure test",
      given: coated("2026-06-17", "2026-06-30"),
      objections: ["coat X-01 was begun on 2026-06-29, before the test of 2026-06-30"],
    },
    {
      name: "before a joint of it was tested",
      given: coated("2026-07-02", "2026-06-23"),
      objections: ["coat X-01 was begun on 2026-06-29, before the test of 2026-07-02"],
    },
    {
      name: "before a leak test of a part of it",
      given: { ...coated("2026-06-17", "2026-06-23"), leaks: [{ $: "LT-01", day: "2026-07-04" }] },
      objections: ["coat X-01 was begun on 2026-06-29, before the test of 2026-07-04"],
    },
    { name: "no layer yet", given: { ...coated("2026-07-02", "2026-06-23"), layers: [] }, objections: [] },
  ],
});

function coated(tested: string, pressed: string) {
  return {
    layers: ["2026-07-01", "2026-06-29"],
    reports: [{ $: "RT-01", day: tested, method: "RT", joint: "L1" }],
    tests: [{ $: "HYD-01", day: pressed }],
  };
}

/** µm up to which a wet sponge finds a pore. */
const spongeReaches = 500;

export const coatingPores = rule({
  ...shared,
  id: "coating-pores",
  title: "An accepted coat has no pores left, looked for by a method that reaches through it",
  basis: excerptSeen("ASTM D5162", "4.3: low voltage for films up to 0.5 mm, high voltage for thicker ones", "2015"),
  when: [{ path: "poreTest", exists: true }],
  severity: "nonconformity",
  inputs: {
    method: text("poreTest"),
    pores: count("pores"),
    read: anyOf(list(quantity("zones[].readings[]", "µm"))),
    result: text("result"),
  },
  owes: [owedBy("quality", "final-inspection", "pores")],
  *check({ method, pores, read, result }, report) {
    const greatest = [...read].sort((a, b) => b.value - a.value)[0];
    if (pores > 0 && result === "accepted")
      yield {
        at: "pores",
        name: "pores",
        message: `coat ${report.name} is accepted with ${pores === 1 ? "1 pore" : `${pores} pores`}`,
        why: `looked for by ${method}`,
        hint: "have them mended and tested again, or raise a nonconformity report",
      };
    if (method.startsWith("low voltage") && greatest !== undefined && greatest.value > spongeReaches)
      yield {
        at: "method",
        name: "method",
        unsure: true,
        message: `pores of coat ${report.name} were looked for by ${method}; the film is up to ${greatest.text} thick`,
        why: "a low voltage does not reach through more than 500 µm",
        hint: "compare with the report, or test by high voltage",
      };
  },
  examples: [
    {
      name: "none",
      given: { method: "low voltage, wet sponge", pores: 0, read: ["500 µm"], result: "accepted" },
      objections: [],
    },
    {
      name: "rejected for them",
      given: { method: "high voltage", pores: 3, read: ["900 µm"], result: "rejected" },
      objections: [],
    },
    {
      name: "three left in a thick film",
      given: { method: "low voltage, wet sponge", pores: 3, read: ["900 µm"], result: "accepted" },
      objections: [
        "coat X-01 is accepted with 3 pores",
        "pores of coat X-01 were looked for by low voltage, wet sponge; the film is up to 900 µm thick",
      ],
    },
  ],
});
