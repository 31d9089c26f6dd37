import { commonPractice, fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, text, things } from "../../model/input.ts";
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
  basis: commonPractice("a coat is made in this order; bare steel is not left for more than a week"),
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
