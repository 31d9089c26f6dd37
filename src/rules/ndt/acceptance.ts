import { fromMemory, ownChoice } from "../../model/basis.ts";
import { isoName } from "../../model/imperfections.ts";
import { date, table, text } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

export const acceptanceLevel = rule({
  id: "acceptance-level",
  title: "The acceptance level of a report answers its quality level, by a standard of its method",
  basis: fromMemory("EN ISO 17635", undefined, "correlation of quality levels, testing and acceptance levels"),
  kind: "ndt-report",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    quality: text("qualityLevel"),
    standard: text("acceptance.standard"),
    level: text("acceptance.level"),
    answers: table("acceptance-of-quality"),
  },
  *check({ method, quality, standard, level, answers }, report) {
    const row = answers(isoName(standard), quality);
    const of = row.text("method");
    const levels = row.texts("levels");
    if (of === "none" || of === undefined)
      yield {
        at: "standard",
        name: "standard",
        message: `report ${report.name} judges by ${standard}; no table at hand says which of its levels answers quality level ${quality}`,
        why: `${method}, level ${level}`,
        hint: "answer this query with the correlation that was agreed, or correct the standard",
        unsure: true,
      };
    else if (of !== method)
      yield {
        at: "standard",
        name: "standard",
        message: `report ${report.name} judges a test by ${method} to ${standard}, which is a standard for ${of}`,
        why: `${standard} has acceptance levels of another method`,
        hint: "compare with the report; correct it, or have the results judged again",
      };
    else if (!levels.includes(level))
      yield {
        at: "level",
        name: "level",
        message: `report ${report.name} judges to level ${level} of ${standard}; quality level ${quality} is answered by ${levels.join(" or ")}`,
        why: "a laxer level accepts what the quality level does not",
        hint: "compare with the report; else have the results judged again to the level that answers it",
      };
  },
  examples: [
    { name: "the level", given: judged("RT", "C", "EN ISO 10675-1", "2"), objections: [] },
    { name: "a stricter one", given: judged("RT", "C", "ISO 10675-1", "1"), objections: [] },
    {
      name: "a laxer one",
      given: judged("RT", "B", "EN ISO 10675-1", "2"),
      objections: ["report X-01 judges to level 2 of EN ISO 10675-1; quality level B is answered by 1"],
    },
    { name: "ultrasonic, level B", given: judged("UT", "B", "EN ISO 11666", "2"), objections: [] },
    {
      name: "ultrasonic, level 3 of level B",
      given: judged("UT", "B", "EN ISO 11666:2018", "3"),
      objections: ["report X-01 judges to level 3 of EN ISO 11666:2018; quality level B is answered by 2"],
      source: "EN ISO 11666, scope: acceptance levels 2 and 3 answer quality levels B and C",
    },
    {
      name: "level 2 without its X",
      given: judged("MT", "C", "EN ISO 23278", "2"),
      objections: ["report X-01 judges to level 2 of EN ISO 23278; quality level C is answered by 1 or 2X"],
    },
    { name: "visual", given: judged("VT", "C", "EN ISO 5817", "C"), objections: [] },
    {
      name: "of another method",
      given: judged("MT", "C", "EN ISO 23277", "2X"),
      objections: ["report X-01 judges a test by MT to EN ISO 23277, which is a standard for PT"],
    },
    {
      name: "a standard no table has",
      given: judged("RT", "C", "ASME VIII-1 UW-51", "full"),
      objections: [
        "report X-01 judges by ASME VIII-1 UW-51; no table at hand says which of its levels answers quality level C",
      ],
    },
  ],
});

function judged(method: string, quality: string, standard: string, level: string) {
  return { method, quality, standard, level };
}

interface Cited {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  readonly at: string;
  readonly day: string;
  readonly what: string;
}

const cited: readonly Cited[] = [
  {
    id: "acceptance-edition",
    title: "A report judges to an edition of the standard that there was",
    kind: "ndt-report",
    at: "acceptance",
    day: "date",
    what: "report",
  },
  {
    id: "tester-standard-edition",
    title: "A tester's certificate is issued to an edition of the standard that there was",
    kind: "ndt-personnel",
    at: "standard",
    day: "issued",
    what: "tester's certificate",
  },
];

const yearOf = (text: string): number | undefined => {
  const year = /\b(?:19|20|21)\d\d\b/.exec(text)?.[0];
  return year === undefined ? undefined : Number(year);
};

/** An edition that is cited was published by then; a national one may bear the year after the international. */
export const citedEditions: readonly Rule[] = cited.map(({ id, title, kind, at, day, what }) =>
  rule({
    id,
    title,
    basis: ownChoice("nobody judges by what is not published; years of editions from memory"),
    kind,
    when: [{ path: `${at}.edition`, exists: true }],
    severity: "query",
    owner: "testing",
    inputs: {
      standard: text(`${at}.standard`),
      edition: text(`${at}.edition`),
      day: date(day),
      editions: table("standard-editions"),
    },
    *check({ standard, edition, day: on, editions }, subject) {
      const year = yearOf(edition);
      const known = editions(isoName(standard)).texts("editions");
      const issued = Number(on.day.slice(0, 4));
      const subjectName = `${what} ${subject.name}`;
      if (year !== undefined && year > issued)
        yield {
          at: "edition",
          message: `${subjectName} of ${on.day} cites ${standard}:${edition}, an edition that was not published yet`,
          why: `${on.day} lies before ${year}`,
          hint: "compare with the paper and correct the edition or the date",
        };
      else if (
        year === undefined ||
        (known.length > 0 && !known.some((one) => year === Number(one) || year === Number(one) + 1))
      )
        yield {
          at: "edition",
          message: `${subjectName} cites ${standard}:${edition}; no such edition is known here`,
          why: `known are ${known.join(", ") || "none"}`,
          hint: "compare with the paper and correct the edition, or answer this query if there is one",
        };
    },
    examples: [
      { name: "an edition", given: { standard: "EN ISO 5817", edition: "2014", day: "2026-03-01" }, objections: [] },
      {
        name: "the national year",
        given: { standard: "EN ISO 5817", edition: "2024-01", day: "2026-03-01" },
        objections: [],
      },
      {
        name: "of a standard without a list",
        given: { standard: "ASME V", edition: "2023", day: "2026-03-01" },
        objections: [],
      },
      {
        name: "a year without one",
        given: { standard: "EN ISO 5817", edition: "2011", day: "2026-03-01" },
        objections: [`${what} X-01 cites EN ISO 5817:2011; no such edition is known here`],
      },
      {
        name: "later than the paper",
        given: { standard: "EN ISO 5817", edition: "2023", day: "2022-03-01" },
        objections: [`${what} X-01 of 2022-03-01 cites EN ISO 5817:2023, an edition that was not published yet`],
      },
    ],
  }),
);
