import { fromMemory } from "../../model/basis.ts";
import { quantity, table, type Condition } from "../../model/input.ts";
import { atLeast, atMost } from "../../model/quantity.ts";
import { owedBy, type Owes } from "../../model/owes.ts";
import { rule, type Rule } from "../../model/rule.ts";

/** One figure of a surface test that has limits: where it stands, which row of the table and which columns hold them. */
interface Figure {
  readonly id: string;
  readonly title: string;
  /** None: whatever test states it. */
  readonly method?: string;
  readonly path: string;
  readonly unit: string;
  readonly condition: string;
  readonly from?: string;
  readonly to?: string;
  readonly called: string;
  /** Whether it is read in ultraviolet light. */
  readonly fluorescent?: boolean;
  /** It is owed of every test of its method. */
  readonly owed?: true;
  readonly good: string;
  readonly low?: string;
  readonly high?: string;
  readonly hint: string;
}

const again = "compare with the report; if it is true, have the test repeated under conditions that are permitted";

const figures: readonly Figure[] = [
  {
    id: "penetrant-temperature",
    title: "A penetrant test is made on a surface that is neither cold nor hot",
    method: "PT",
    path: "surfaceTemperature",
    unit: "°C",
    condition: "surface of PT",
    from: "temperatureFrom",
    to: "temperatureTo",
    called: "a surface temperature",
    owed: true,
    good: "10 °C",
    low: "9 °C",
    high: "51 °C",
    hint: "compare with the report; outside these limits a procedure for that temperature is to be proved, or the test repeated",
  },
  {
    id: "penetration-time",
    title: "Penetrant is left to work as long as it needs",
    method: "PT",
    path: "penetrationTime",
    unit: "min",
    condition: "penetration",
    from: "timeFrom",
    to: "timeTo",
    called: "a penetration time",
    owed: true,
    good: "5 min",
    low: "4 min",
    high: "61 min",
    hint: again,
  },
  {
    id: "development-time",
    title: "Developer is left to work as long as it needs",
    method: "PT",
    path: "developmentTime",
    unit: "min",
    condition: "development",
    from: "timeFrom",
    to: "timeTo",
    called: "a development time",
    owed: true,
    good: "10 min",
    low: "9 min",
    high: "31 min",
    hint: again,
  },
  {
    id: "penetrant-light",
    title: "A penetrant test is read in enough light",
    method: "PT",
    path: "illuminance",
    unit: "lx",
    fluorescent: false,
    condition: "light of PT",
    from: "lightFrom",
    called: "light",
    owed: true,
    good: "500 lx",
    low: "499 lx",
    hint: again,
  },
  {
    id: "visual-light",
    title: "A visual test is made in enough light",
    method: "VT",
    path: "illuminance",
    unit: "lx",
    condition: "light of VT",
    from: "lightFrom",
    called: "light",
    good: "350 lx",
    low: "349 lx",
    hint: again,
  },
  {
    id: "magnetic-light",
    title: "A magnetic particle test is read in enough light",
    method: "MT",
    path: "illuminance",
    unit: "lx",
    fluorescent: false,
    condition: "light of MT",
    from: "lightFrom",
    called: "light",
    owed: true,
    good: "500 lx",
    low: "499 lx",
    hint: again,
  },
  {
    id: "magnetic-field",
    title: "A magnetic particle test has a field that shows flaws",
    method: "MT",
    path: "fieldStrength",
    unit: "kA/m",
    condition: "field",
    from: "fieldFrom",
    to: "fieldTo",
    called: "a field",
    good: "2.4 kA/m",
    low: "1.9 kA/m",
    high: "6.1 kA/m",
    hint: again,
  },
  {
    id: "fluorescent-darkness",
    title: "A fluorescent test is read in the dark",
    path: "illuminance",
    unit: "lx",
    fluorescent: true,
    condition: "darkness",
    to: "lightTo",
    called: "light",
    owed: true,
    good: "20 lx",
    high: "21 lx",
    hint: again,
  },
  {
    id: "ultraviolet-light",
    title: "A fluorescent test is read in enough ultraviolet light",
    path: "irradiance",
    unit: "W/m²",
    condition: "ultraviolet",
    from: "irradianceFrom",
    called: "ultraviolet light",
    fluorescent: true,
    owed: true,
    good: "10 W/m²",
    low: "9 W/m²",
    hint: again,
  },
];

/** Limits as the examples expect them, typed by hand. */
const limitsOf: Readonly<Record<string, string>> = {
  "penetrant-temperature": "10 °C to 50 °C is permitted",
  "penetration-time": "5 min to 60 min is permitted",
  "development-time": "10 min to 30 min is permitted",
  "penetrant-light": "at least 500 lx is asked for",
  "visual-light": "at least 350 lx is asked for",
  "magnetic-light": "at least 500 lx is asked for",
  "fluorescent-darkness": "at most 20 lx is permitted",
  "ultraviolet-light": "at least 10 W/m² is asked for",
  "magnetic-field": "2 kA/m to 6 kA/m is permitted",
};

/** Where the light depends on how indications are seen, which is owed of the methods that may be seen in both ways. */
const seenBy = (fluorescent: boolean): readonly Condition[] => [
  { path: "method", equals: ["MT", "PT"] },
  { path: "seenBy", equals: fluorescent ? "fluorescence" : "colour contrast" },
];

/** Figures of surface tests against their limits: one rule for each. */
export const surfaceConditions: readonly Rule[] = figures.map((figure) => {
  const { id, title, method, path, unit, condition, from, to, called, fluorescent, owed, hint } = figure;
  const when: readonly Condition[] = [
    ...(method === undefined ? [] : [{ path: "method", equals: method }]),
    ...(fluorescent === undefined ? [] : seenBy(fluorescent)),
    ...(owed ? [] : [{ path, exists: true }]),
  ];
  const read = [...(owed ? ["value"] : []), ...(fluorescent === undefined ? [] : ["seenBy"])];
  const owes: readonly Owes[] = read.length === 0 ? [] : [owedBy("testing", "testing-complete", ...read)];
  return rule({
    id,
    title,
    basis: fromMemory(
      "EN ISO 3452-1, EN ISO 17637, EN ISO 17638",
      undefined,
      "conditions of the test; the table says of each which were seen",
    ),
    kind: "ndt-report",
    when,
    severity: "nonconformity",
    owner: "testing",
    inputs: { value: quantity(path, unit), limits: table("surface-conditions") },
    owes,
    *check({ value, limits }, report) {
      const row = limits(condition);
      const [low, high] = [from && row.quantity(from), to && row.quantity(to)];
      const under = low && atLeast(value, low) !== "yes";
      const over = high && atMost(value, high) !== "yes";
      if (under || over)
        yield {
          at: "value",
          message: `report ${report.name} states ${called} of ${value.text}; ${said(low || undefined, high || undefined)}`,
          why: `${method ?? "a fluorescent test"}: outside of this it does not show what it is made for`,
          hint,
          unsure: (low && atLeast(value, low)) === "unsure" || (high && atMost(value, high)) === "unsure",
        };
    },
    examples: [
      { name: "at a limit, or within", given: { value: figure.good }, objections: [] },
      ...[figure.low ?? "", figure.high ?? ""]
        .filter((value) => value !== "")
        .map((value) => ({
          name: `outside: ${value}`,
          given: { value },
          objections: [`report X-01 states ${called} of ${value}; ${limitsOf[id] ?? ""}`],
        })),
    ],
  });
});

function said(low: { readonly text: string } | undefined, high: { readonly text: string } | undefined): string {
  if (low === undefined) return `at most ${high?.text ?? ""} is permitted`;
  return high === undefined ? `at least ${low.text} is asked for` : `${low.text} to ${high.text} is permitted`;
}
