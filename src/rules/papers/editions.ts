import { ownChoice } from "../../model/basis.ts";
import { isoName } from "../../model/imperfections.ts";
import { date, table, text } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import type { Owner } from "../../model/vocabulary.ts";

interface Cited {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** Where standard and edition stand together; of the record itself if left out. */
  readonly at?: string;
  readonly day: string;
  readonly what: string;
  readonly owner: Owner;
}

const cited: readonly Cited[] = [
  {
    id: "acceptance-edition",
    title: "A report judges to an edition of the standard that there was",
    kind: "ndt-report",
    at: "acceptance",
    day: "date",
    what: "report",
    owner: "testing",
  },
  {
    id: "tester-standard-edition",
    title: "A tester's certificate is issued to an edition of the standard that there was",
    kind: "ndt-personnel",
    at: "standard",
    day: "issued",
    what: "tester's certificate",
    owner: "testing",
  },
  {
    id: "welder-standard-edition",
    title: "A welder is qualified to an edition of the standard that there was",
    kind: "welder-qualification",
    at: "standard",
    day: "testDate",
    what: "welder qualification",
    owner: "welding coordination",
  },
  {
    id: "certificate-standard-edition",
    title: "A material certificate is issued to an edition of the standard of inspection documents that there was",
    kind: "material-certificate",
    at: "documentStandard",
    day: "issued",
    what: "certificate",
    owner: "purchasing",
  },
  {
    id: "table-edition",
    title: "A reference table is of an edition that was published when it was compared",
    kind: "reference-table",
    day: "date",
    what: "table",
    owner: "design",
  },
];

const yearOf = (text: string): number | undefined => {
  const year = /\b(?:19|20|21)\d\d\b/.exec(text)?.[0];
  return year === undefined ? undefined : Number(year);
};

/** An edition that is cited was published by then; a national one may bear the year after the international. */
export const citedEditions: readonly Rule[] = cited.map(({ id, title, kind, at, day, what, owner }) => {
  const path = (name: string) => (at === undefined ? name : `${at}.${name}`);
  return rule({
    id,
    title,
    basis: ownChoice("nobody judges by what is not published; years of editions from memory"),
    kind,
    when: [{ path: path("edition"), exists: true }],
    severity: "query",
    owner,
    inputs: {
      standard: text(path("standard")),
      edition: text(path("edition")),
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
  });
});
