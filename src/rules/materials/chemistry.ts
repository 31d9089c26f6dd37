import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { tested } from "../../requirements/conditions.ts";

const ladle = fromMemory(
  "EN 10028-2 and its sister standards",
  undefined,
  "limits of the ladle analysis; each row of the table says its own basis",
);

/** What a row of the table limits: an element, or a sum of elements written with "+". */
const partsOf = (element: string): readonly string[] => element.split("+");

const limitOfGrade = {
  element: text("element"),
  bound: text("bound"),
  content: quantity("content", "%"),
  report: text("report"),
};
const figure = { element: text("element"), value: optional(quantity("value", "%")) };

/** A limit of the grade with the figures it is about, and what came of it. */
interface Held {
  readonly limit: Thing<typeof limitOfGrade>;
  readonly least: boolean;
  readonly found: readonly Thing<typeof figure>[];
  readonly missing: readonly string[];
  /** As on the certificate; the sum of several. */
  readonly value: string;
  readonly verdict: "passed" | "failed" | "not judged";
}

// What floating point adds to a sum of figures with four decimals.
const guard = 1e-9;

/**
 * Each limit against the certificate. Values are compared as printed, unrounded: rounding to the digits of the limit would
 * be the laxer reading, and the digits of a limit are not always known.
 */
function heldAgainst(
  limits: readonly Thing<typeof limitOfGrade>[],
  chemistry: readonly Thing<typeof figure>[],
): readonly Held[] {
  return limits.map((limit) => {
    const { element, bound, content } = limit;
    const least = bound === "least";
    const parts = partsOf(element);
    const found = parts.flatMap((part) => chemistry.find((one) => one.element === part) ?? []);
    const figures = found.flatMap(({ value }) => value ?? []);
    const missing = parts.filter((part) => !found.some((one) => one.element === part && one.value !== undefined));
    const low = figures.reduce((sum, value) => sum + value.low, 0);
    const high = figures.reduce((sum, value) => sum + value.high, 0);
    const holds = least ? low >= content.value - guard : high <= content.value + guard;
    const fails = least ? high < content.value - guard : low > content.value + guard;
    const [first, ...more] = figures;
    const value = first !== undefined && more.length === 0 ? first.text : `${Number(high.toFixed(6))} %`;
    return { limit, least, found, missing, value, verdict: holds ? "passed" : fails ? "failed" : "not judged" };
  });
}

const rangeOf = ({ limit, least }: Pick<Held, "limit" | "least">) =>
  `${least ? "at least" : "at most"} ${limit.content.text}`;

export const chemistryLimits = rule({
  id: "chemistry-limits",
  title: "Every element the grade limits is reported, and lies within its limits",
  basis: ladle,
  kind: "material-certificate#rows",
  when: [tested],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    limits: list(thing("table(grade-chemistry, standard, edition, grade).limits[]", limitOfGrade)),
    // Without any analysis each element lacks.
    chemistry: anyOf(things("chemistry[]", figure)),
    grade: text("grade"),
  },
  *check({ limits, chemistry, grade }, row) {
    const named = new Set<string>();
    for (const held of heldAgainst(limits, chemistry)) {
      const { limit, found, missing, value, verdict } = held;
      const { element, bound } = limit;
      const [first] = found;
      if (missing.length > 0 || verdict === "passed" || first === undefined) continue;
      yield {
        // A figure known only as "less than" may leave both limits of an element open.
        name: named.has(element) ? `${element} ${bound}` : element,
        at: [first, "value"],
        accuses: found.map((one) => [one, "value"] as const),
        message: `${element} is ${value} on ${row.name}; ${grade} wants ${rangeOf(held)}`,
        why: "ladle analysis as printed, unrounded",
        hint: "compare with the certificate; if it says so, raise a nonconformity report with the mill",
        unsure: verdict === "not judged",
      };
      named.add(element);
    }
  },
  // An element that is not reported is not within its limit.
  *lacks({ limits, chemistry }) {
    for (const held of heldAgainst(limits, chemistry))
      for (const part of held.limit.report === "always" ? held.missing : []) {
        const row = chemistry.find((one) => one.element === part);
        const why = `${held.limit.element}: ${rangeOf(held)}`;
        yield row === undefined
          ? { at: "subject", path: `chemistry[element="${part}"]`, why }
          : { at: row, path: "value", why };
      }
  },
  lacksDue: "material-received",
  *compares({ limits, chemistry }) {
    for (const { limit, least, found, missing, value, verdict } of heldAgainst(limits, chemistry))
      if (missing.length === 0)
        yield {
          name: limit.element,
          at: found.map((one) => [one, "value"] as const),
          value,
          [least ? "least" : "most"]: limit.content.text,
          verdict,
        };
  },
  examples: [
    {
      name: "on the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "C", bound: "most", content: "0.20 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.20 %" }],
      },
      objections: [],
    },
    {
      name: "over the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "C", bound: "most", content: "0.20 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.204 %" }],
      },
      objections: ["C is 0.204 % on X-01; P265GH wants at most 0.20 %"],
    },
    {
      name: "on the least",
      given: {
        grade: "P265GH",
        limits: [{ element: "Al", bound: "least", content: "0.020 %", report: "always" }],
        chemistry: [{ element: "Al", value: "0.020 %" }],
      },
      objections: [],
    },
    {
      name: "under the least",
      given: {
        grade: "P265GH",
        limits: [{ element: "Al", bound: "least", content: "0.020 %", report: "always" }],
        chemistry: [{ element: "Al", value: "0.012 %" }],
      },
      objections: ["Al is 0.012 % on X-01; P265GH wants at least 0.020 %"],
    },
    {
      name: "known only as less than, below the limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Nb", bound: "most", content: "0.030 %", report: "always" }],
        chemistry: [{ element: "Nb", value: "<0.003 %" }],
      },
      objections: [],
    },
    {
      name: "not reported",
      given: {
        grade: "P265GH",
        limits: [{ element: "Mo", bound: "most", content: "0.08 %", report: "always" }],
        chemistry: [{ element: "C", value: "0.14 %" }],
      },
      objections: [],
      lacks: ['chemistry[element="Mo"]'],
    },
    {
      name: "no analysis at all",
      given: {
        grade: "P265GH",
        limits: [
          { element: "C", bound: "most", content: "0.20 %", report: "always" },
          { element: "Nb", bound: "most", content: "0.030 %", report: "if added" },
          { element: "Mo+Ni", bound: "most", content: "0.30 %", report: "always" },
        ],
        chemistry: [],
      },
      objections: [],
      lacks: ['chemistry[element="C"]', 'chemistry[element="Mo"]', 'chemistry[element="Ni"]'],
    },
    {
      name: "an element without its figure, beside one that is too high",
      given: {
        grade: "P265GH",
        limits: [
          { element: "C", bound: "most", content: "0.20 %", report: "always" },
          { element: "P", bound: "most", content: "0.025 %", report: "always" },
        ],
        chemistry: [{ element: "C" }, { element: "P", value: "0.031 %" }],
      },
      objections: ["P is 0.031 % on X-01; P265GH wants at most 0.025 %"],
      lacks: ["value"],
    },
    {
      name: "known only as less than, above both limits",
      given: {
        grade: "P265GH",
        limits: [
          { element: "Mn", bound: "least", content: "0.80 %", report: "always" },
          { element: "Mn", bound: "most", content: "1.40 %", report: "always" },
        ],
        chemistry: [{ element: "Mn", value: "<2.0 %" }],
      },
      objections: [
        "Mn is <2.0 % on X-01; P265GH wants at least 0.80 %",
        "Mn is <2.0 % on X-01; P265GH wants at most 1.40 %",
      ],
    },
    {
      name: "a sum on its limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Cr+Ni", bound: "most", content: "0.30 %", report: "always" }],
        chemistry: [
          { element: "Cr", value: "0.10 %" },
          { element: "Ni", value: "0.20 %" },
        ],
      },
      objections: [],
    },
    {
      name: "a sum over its limit",
      given: {
        grade: "P265GH",
        limits: [{ element: "Cr+Ni", bound: "most", content: "0.30 %", report: "always" }],
        chemistry: [
          { element: "Cr", value: "0.11 %" },
          { element: "Ni", value: "0.20 %" },
        ],
      },
      objections: ["Cr+Ni is 0.31 % on X-01; P265GH wants at most 0.30 %"],
    },
  ],
});
