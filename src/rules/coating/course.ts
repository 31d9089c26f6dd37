import { commonPractice, excerptSeen, fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { anyOf, count, date, list, optional, quantity, text, things } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "coating-report", owner: "quality" } as const;
/** Of each way of preparing steel its grades, least first. */
const grades: readonly (readonly string[])[] = [
  ["Sa 1", "Sa 2", "Sa 2½", "Sa 3"],
  ["St 2", "St 3"],
];

export const coatingPrepared = rule({
  ...shared,
  id: "coating-prepared",
  title: "Steel is prepared to the grade that the procedure of its coat asks for",
  basis: fromMemory(
    "ISO 8501-1",
    undefined,
    "grades of blast cleaning (Sa) and of cleaning by hand or power tool (St)",
  ),
  severity: "nonconformity",
  inputs: { found: text("preparation"), asked: text("preparationAsked") },
  *check({ found, asked }, report) {
    const way = grades.find((all) => all.includes(asked)) ?? [];
    // Steel that is blasted thoroughly is cleaner than by any tool.
    const blasted = asked.startsWith("St") && found.startsWith("Sa") && found !== "Sa 1";
    if (!blasted && way.indexOf(found) < way.indexOf(asked))
      yield {
        at: "found",
        message: `the steel under coat ${report.name} was prepared to ${found}; ${asked} is asked for`,
        why: way.includes(found) ? "a lesser grade" : "another way of preparing, which no grade compares",
        hint: "compare with the report and the procedure; if it is so, raise a nonconformity report",
        related: [{ at: "asked", message: `${asked} here` }],
      };
  },
  examples: [
    { name: "as asked", given: { found: "Sa 2½", asked: "Sa 2½" }, objections: [] },
    { name: "better", given: { found: "Sa 3", asked: "Sa 2½" }, objections: [] },
    { name: "blasted instead of brushed", given: { found: "Sa 2½", asked: "St 3" }, objections: [] },
    {
      name: "less",
      given: { found: "Sa 2", asked: "Sa 2½" },
      objections: ["the steel under coat X-01 was prepared to Sa 2; Sa 2½ is asked for"],
    },
    {
      name: "by hand instead of blasted",
      given: { found: "St 3", asked: "Sa 2½" },
      objections: ["the steel under coat X-01 was prepared to St 3; Sa 2½ is asked for"],
    },
  ],
});

/** ms; a week. */
const rusts = 7 * 24 * 3_600_000;

export const coatingInOrder = rule({
  ...shared,
  id: "coating-in-order",
  title: "Steel is prepared before its first layer, each layer follows the one before, and the film is measured last",
  basis: ownChoice("a coat is made in this order"),
  severity: "nonconformity",
  inputs: {
    prepared: date("prepared"),
    layers: anyOf(things("layers[]", { layer: text("layer"), day: optional(date("applied")) })),
    measured: date("date"),
  },
  *check({ prepared, layers, measured }, report) {
    const dated = layers.flatMap(({ layer, day, $ }) =>
      day === undefined ? [] : [{ said: `layer ${layer} was applied`, day, at: $ }],
    );
    const all = [
      { said: "the steel was prepared", day: prepared },
      ...dated,
      { said: "the film was measured", day: measured },
    ];
    const second = all.slice(1).find((one, index) => {
      const before = all[index];
      return before !== undefined && canPrecede(before.day, one.day) === "no";
    });
    const first = second === undefined ? undefined : all[all.indexOf(second) - 1];
    const [begun] = dated;
    if (begun !== undefined && begun.day.from - prepared.to > rusts)
      yield {
        at: "prepared",
        accuses: [],
        name: "rust",
        unsure: true,
        message: `the steel under coat ${report.name} was prepared on ${prepared.text} and first coated on ${begun.day.text}`,
        why: "bare steel rusts again within days",
        hint: "compare the days with the report, or answer this query with how it was kept",
      };
    if (first === undefined || second === undefined) return;
    yield {
      at: "measured",
      accuses: [],
      message: `${second.said} on ${second.day.text} in coat ${report.name}, before ${first.said} on ${first.day.text}`,
      why: all.map(({ said, day }) => `${said} on ${day.text}`).join("; "),
      hint: "compare the days with the report",
    };
  },
  examples: [
    {
      name: "one after the other",
      given: made("2026-06-29", "2026-06-29", "2026-07-01", "2026-07-03"),
      objections: [],
    },
    {
      name: "measured before the second layer",
      given: made("2026-06-29", "2026-06-29", "2026-07-04", "2026-07-03"),
      objections: ["the film was measured on 2026-07-03 in coat X-01, before layer 2 was applied on 2026-07-04"],
    },
    {
      name: "left bare for a month",
      given: made("2026-05-29", "2026-06-29", "2026-07-01", "2026-07-03"),
      objections: ["the steel under coat X-01 was prepared on 2026-05-29 and first coated on 2026-06-29"],
    },
    {
      name: "coated before it was prepared",
      given: made("2026-06-30", "2026-06-29", "2026-07-01", "2026-07-03"),
      objections: ["layer 1 was applied on 2026-06-29 in coat X-01, before the steel was prepared on 2026-06-30"],
    },
  ],
});

function made(prepared: string, first: string, second: string, measured: string) {
  const layers = [
    { layer: "1", day: first },
    { layer: "2", day: second },
  ];
  return { prepared, layers, measured };
}

export const coatedAfterTests = rule({
  ...shared,
  id: "coated-after-tests",
  title: "Parts are coated after their joints were tested and after the pressure test",
  basis: commonPractice("a coat hides what a test is to show"),
  severity: "nonconformity",
  inputs: {
    prepared: date("prepared"),
    layers: anyOf(list(date("layers[].applied"))),
    reports: anyOf(
      things("parts[].<joint:parts[]>.<ndt-report:rows[].joint>", {
        day: date("record.date"),
        method: text("record.method"),
        joint: text("joint"),
      }),
    ),
    leaks: anyOf(things("book.leak-test", { day: date("date") })),
    tests: anyOf(things("book.pressure-test", { day: date("date") })),
  },
  *check({ layers, reports, leaks, tests }, report) {
    const [first] = [...layers].sort((a, b) => a.from - b.from);
    if (first === undefined) return;
    const isLate = ({ day }: { readonly day: DateValue }) => canPrecede(day, first) === "no";
    // What was tested in that way before may be looked at once more.
    const again = ({ method, joint }: (typeof reports)[number]) =>
      reports.some((other) => other.method === method && other.joint === joint && !isLate(other));
    const late = [...tests, ...leaks, ...reports.filter((one) => !again(one))].filter(isLate);
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
    { name: "no layer yet", given: { ...coated("2026-07-02", "2026-06-23"), layers: [] }, objections: [] },
  ],
});

function coated(tested: string, pressed: string) {
  return {
    prepared: "2026-06-29",
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
