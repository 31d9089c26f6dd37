import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, count, date, optional, text, thing, things } from "../../model/input.ts";
import { rowsOfKind } from "../../model/kind-text.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { aKind, AKind, kindName } from "../shared/words.ts";

const steps = commonPractice("a revision is drawn up, checked, approved and then used, until the next one replaces it");
const owner = "document control";
const kinds = ["drawing", "document", "procedure", "welding-procedure"];

/** Nothing is approved before it is written. */
export const approvedAfterDated: readonly Rule[] = kinds.map((kind) =>
  rule({
    id: `${kind}-approved-after`,
    title: `A revision of ${aKind(kind)} is approved after it was drawn up`,
    basis: steps,
    kind: rowsOfKind(kind, "revisions"),
    severity: "nonconformity",
    owner,
    inputs: { dated: date("date"), approved: date("approved") },
    *check({ dated, approved }, subject) {
      if (canPrecede(dated, approved) === "no")
        yield {
          at: "approved",
          accuses: ["dated", "approved"],
          message: `${kindName(kind)} ${subject.name} was approved on ${approved.text}, before it was drawn up on ${dated.text}`,
          why: "both days are entered for one revision",
          hint: "correct the wrong one against the title block",
        };
    },
    examples: [
      { name: "on one day", given: { dated: "2026-05-04", approved: "2026-05-04" }, objections: [] },
      {
        name: "a day before",
        given: { dated: "2026-05-04", approved: "2026-05-03" },
        objections: [`${kindName(kind)} X-01 was approved on 2026-05-03, before it was drawn up on 2026-05-04`],
      },
    ],
  }),
);

/** What a revision in force may be used for. A drawing shows what is made, a procedure how: neither is for record alone. */
const usable: Readonly<Record<string, readonly string[]>> = {
  drawing: ["for-construction", "as-built"],
  document: ["for-construction", "for-record"],
  procedure: ["for-construction"],
  "welding-procedure": ["for-construction"],
};
const over = ["superseded", "withdrawn"];

export const revisionsInOrder: readonly Rule[] = kinds.map((kind) =>
  rule({
    id: `${kind}-revisions-in-order`,
    title: `Revisions of ${aKind(kind)} follow each other, and the last alone is in force, for what it can be used for`,
    basis: steps,
    kind,
    when: [{ path: "revisions", exists: true }],
    severity: "nonconformity",
    owner,
    inputs: {
      revisions: anyOf(
        things("revisions[]", {
          revision: text("revision"),
          dated: date("date"),
          approved: date("approved"),
          status: text("status"),
        }),
      ),
    },
    *check({ revisions }, subject) {
      for (const [index, one] of revisions.entries()) {
        const { revision, dated, approved, status } = one;
        const before = revisions[index - 1];
        const isLast = index === revisions.length - 1;
        if (
          before !== undefined &&
          (canPrecede(before.dated, dated) === "no" || canPrecede(before.approved, approved) === "no")
        )
          yield {
            at: one,
            name: `order ${revision}`,
            accuses: [
              [one, "dated"],
              [one, "approved"],
              [before, "dated"],
              [before, "approved"],
            ],
            message: `${kindName(kind)} ${subject.name} has revision ${revision}, of ${dated.text} and approved on ${approved.text}, after revision ${before.revision} of ${before.dated.text}, approved on ${before.approved.text}`,
            why: "revisions are listed oldest first",
            hint: "correct the wrong day, or the order",
          };
        const fault = !isLast
          ? over.includes(status)
            ? undefined
            : `is "${status}", and revision ${revisions[index + 1]?.revision ?? ""} replaced it`
          : status === "superseded"
            ? "is superseded, and no later one is listed"
            : over.includes(status) || usable[kind]?.includes(status) === true
              ? undefined
              : `is "${status}", which ${aKind(kind)} in use is not`;
        if (fault !== undefined)
          yield {
            at: [one, "status"],
            name: `status ${revision}`,
            message: `revision ${revision} of ${kindName(kind)} ${subject.name} ${fault}`,
            why: `revisions: ${revisions.map((row) => `${row.revision}, ${row.status}`).join("; ")}`,
            hint: "correct the status, or list the revision that is missing",
          };
      }
    },
    examples: [
      { name: "the second in force", given: sheets("superseded", usable[kind]?.[0] ?? ""), objections: [] },
      { name: "withdrawn", given: sheets("superseded", "withdrawn"), objections: [] },
      {
        name: "both in force",
        given: sheets(usable[kind]?.[0] ?? "", usable[kind]?.[0] ?? ""),
        objections: [
          `revision A of ${kindName(kind)} X-01 is "${usable[kind]?.[0] ?? ""}", and revision B replaced it`,
        ],
      },
      {
        name: "none in force",
        given: sheets("superseded", "superseded"),
        objections: [`revision B of ${kindName(kind)} X-01 is superseded, and no later one is listed`],
      },
      {
        name: "of another use",
        given: sheets("superseded", kind === "drawing" ? "for-record" : "as-built"),
        objections: [
          `revision B of ${kindName(kind)} X-01 is "${kind === "drawing" ? "for-record" : "as-built"}", which ${aKind(kind)} in use is not`,
        ],
      },
      {
        name: "the second approved before the first",
        given: sheets("superseded", usable[kind]?.[0] ?? "", "2026-03-15"),
        objections: [
          `${kindName(kind)} X-01 has revision B, of 2026-03-12 and approved on 2026-03-15, after revision A of 2026-03-10, approved on 2026-03-16`,
        ],
      },
    ],
  }),
);

function sheets(first: string, second: string, approved = "2026-05-08") {
  return {
    revisions: [
      { revision: "A", dated: "2026-03-10", approved: "2026-03-16", status: first },
      { revision: "B", dated: "2026-03-12", approved, status: second },
    ],
  };
}

/** Who draws up does not approve. */
export const approvedByAnother: readonly Rule[] = kinds.map((kind) =>
  rule({
    id: `${kind}-approved-by-another`,
    title: `${AKind(kind)} is drawn up and approved by two people`,
    basis: ownChoice("nobody passes judgement on the own work"),
    kind: rowsOfKind(kind, "revisions"),
    severity: "query",
    owner,
    inputs: { first: text("preparedBy"), second: text("approvedBy") },
    *check({ first: one, second: other }, subject) {
      if (one === other)
        yield {
          at: "second",
          message: `${kindName(kind)} ${subject.name} was drawn up and approved by ${one} alone`,
          why: "both fields name the same person",
          hint: "have another person approve it, or correct the slip",
        };
    },
    examples: [
      { name: "two people", given: { first: "R1", second: "K1" }, objections: [] },
      {
        name: "one person",
        given: { first: "R1", second: "R1" },
        objections: [`${kindName(kind)} X-01 was drawn up and approved by R1 alone`],
      },
    ],
  }),
);

/** As many sheets as the record states are on the original it was read from. */
export const sheetsScanned: readonly Rule[] = kinds.map((kind) =>
  rule({
    id: `${kind}-sheets`,
    title: `${AKind(kind)} was scanned with all its sheets`,
    basis: ownChoice("what stands on a sheet that is missing was read by nobody"),
    kind,
    when: [
      { path: "revisions[].sheets", exists: true },
      { path: "source.original.pages", exists: true },
    ],
    severity: "query",
    owner,
    inputs: {
      revisions: anyOf(things("revisions[]", { sheets: optional(count("sheets")) })),
      page: optional(count("source.page")),
      to: optional(count("source.to")),
      original: optional(thing("source.original", { pages: count("pages") })),
    },
    *check({ revisions, page = 1, to, original }, subject) {
      const last = revisions.at(-1);
      if (last?.sheets === undefined || original === undefined) return;
      const there = (to ?? original.pages) - page + 1;
      if (to === undefined ? last.sheets > there : last.sheets !== there)
        yield {
          at: [last, "sheets"],
          accuses: [],
          message: `${kindName(kind)} ${subject.name} has ${sheetsOf(last.sheets)}; ${to === undefined ? `from page ${page} on, original ${original.$.name} has ${sheetsOf(there)}` : `it was read from ${sheetsOf(there)} of original ${original.$.name}`}`,
          why: "a sheet is missing, or their number was entered wrongly",
          hint: "scan the missing sheets, or correct the number or the pages that are cited",
          related: [{ at: [original, "pages"], message: `${original.pages} pages here` }],
        };
    },
    examples: [
      {
        name: "all of them",
        given: { revisions: [{ sheets: 2 }], page: 1, to: 2, original: { pages: 2 } },
        objections: [],
      },
      {
        name: "bound with others",
        given: { revisions: [{ sheets: 1 }], page: 3, original: { pages: 6 } },
        objections: [],
      },
      {
        name: "one missing",
        given: { revisions: [{ sheets: 3 }], original: { $: "ORG-1", pages: 1 } },
        objections: [`${kindName(kind)} X-01 has 3 sheets; from page 1 on, original ORG-1 has 1 sheet`],
      },
      {
        name: "two cited",
        given: { revisions: [{ sheets: 1 }], page: 1, to: 2, original: { $: "ORG-1", pages: 2 } },
        objections: [`${kindName(kind)} X-01 has 1 sheet; it was read from 2 sheets of original ORG-1`],
      },
    ],
  }),
);

const sheetsOf = (number: number) => `${number} sheet${number === 1 ? "" : "s"}`;
