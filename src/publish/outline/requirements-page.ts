import { describeBasis } from "../../model/basis.ts";
import { registerOf } from "../../model/requirement.ts";
import { countSentence, countWords, markOf, tally, worst } from "../../model/mark.ts";
import type { Row, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { nameOf, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import { listed } from "./listed.ts";
import { counted } from "./titles.ts";
import { owedTable, owingMarks } from "./owed-table.ts";
import { termOf } from "./values.ts";
import { plainTable, wordsCell } from "./plain-table.ts";

/** What is asked for here is that it is there: what it says is judged elsewhere. */
const there = "there";

/** Where a row is not met by many, so many are named. */
const shownMissing = 6;

/** The register, row by row: what it asks, of how many, and what became of it. */
export function requirementsPage(context: Context, number: string, section: number): Page {
  const { owed, owing, definitions, book } = context.judged;
  const register = registerOf(book.value["register"], definitions.registers);
  const byRequirement = grouped(owed, ({ requirement }) => requirement);
  const rows = (register?.requirements ?? []).map((requirement): Row => {
    const about = byRequirement.get(requirement) ?? [];
    const applying = about.filter(({ state }) => state !== "not applicable");
    const marks = applying.map(({ outcome }) => markOf(outcome));
    const missing = applying.flatMap(({ state, subject }): Text[] =>
      state === "met" || subject === null ? [] : [[nameOf(context, subject)]],
    );
    return {
      anchor: requirement.id,
      cells: [
        { type: "text", text: [requirement.title] },
        wordsCell(termOf(requirement.due)),
        applying.length === 0 ? { type: "empty" } : { type: "number", text: String(applying.length) },
        applying.length === 0 ? { type: "empty" } : wordsCell(countWords(tally(marks), there)),
        missing.length === 0 ? { type: "empty" } : { type: "text", text: listed(missing, shownMissing) },
        worst(marks) === "passed" ? wordsCell(there) : { type: "mark", mark: worst(marks) },
      ],
    };
  });
  const bases = [...new Set((register?.requirements ?? []).map(({ basis }) => describeBasis(basis)))];
  return {
    url: "requirements.html",
    number,
    title: "What this book must contain, and whether it does",
    under: [
      `${register?.title ?? "No register"}. ${countSentence(
        [...owed.map(({ outcome }) => markOf(outcome)), ...owingMarks(owing)],
        (count) => counted(count, "requirement of a record", "requirements of records"),
        there,
      )}. What is there is judged by the rules, on the page of its record.`,
    ],
    section,
    blocks: [
      plainTable(
        `${number}.1`,
        "Register of requirements",
        { Requirement: 5, "Due at": 2, "Asked of#": 0.9, "Of these": 2, "Not met by": 3, Verdict: 1.6 },
        rows,
      ),
      ...(owing.length === 0
        ? []
        : [
            { type: "heading", level: 2, text: "What is read and owed" } as const,
            {
              type: "paragraph",
              text: ["What a rule or a calculation reads is owed to it; no row of the register asks for it again."],
            } as const,
            owedTable(context, `${number}.2`, there, shownMissing),
          ]),
      { type: "heading", level: 2, text: "Where the requirements come from" },
      { type: "list", ordered: false, items: bases.map((basis) => [basis]) },
    ],
  };
}
