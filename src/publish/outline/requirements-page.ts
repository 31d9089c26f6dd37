import { describeBasis } from "../../model/basis.ts";
import { registerOf } from "../../model/requirement.ts";
import type { Owed } from "../../model/book.ts";
import type { Cell, Mark, Row } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { grouped, nameOf, type Context } from "./context.ts";
import { termOf } from "./values.ts";
import { plainTable, wordsCell } from "./plain-table.ts";

const marks: Readonly<Record<Owed["state"], Mark>> = {
  met: "passed",
  missing: "failed",
  waived: "not judged",
  "not due": "not due",
  "not judged": "not judged",
  "not applicable": "not applicable",
};

const nothing: Cell = { type: "empty" };
const count = (value: number): Cell => ({ type: "number", text: String(value) });

/** The register, row by row: what it asks, of how many, and what became of it. */
export function requirementsPage(context: Context, number: string, section: number): Page {
  const { owed, definitions, book } = context.judged;
  const register = registerOf(book.value["register"], definitions.registers);
  const byRequirement = grouped(owed, ({ requirement }) => requirement);
  const rows = (register?.requirements ?? []).map((requirement): Row => {
    const about = byRequirement.get(requirement) ?? [];
    const applying = about.filter(({ state }) => state !== "not applicable");
    const met = applying.filter(({ state }) => state === "met").length;
    const worst =
      applying.find(({ state }) => state !== "met")?.state ?? (applying.length === 0 ? "not applicable" : "met");
    const missing = applying
      .filter(({ state }) => state !== "met")
      .flatMap((one) => (one.subject === null ? [] : [nameOf(context, one.subject)]));
    return {
      anchor: requirement.id,
      cells: [
        { type: "text", text: [requirement.title] },
        wordsCell(termOf(requirement.due)),
        ...(applying.length === 0 ? [nothing, nothing] : [count(met), count(applying.length)]),
        missing.length === 0
          ? { type: "empty" }
          : { type: "text", text: missing.slice(0, 6).flatMap((one, index) => (index === 0 ? [one] : [", ", one])) },
        { type: "mark", mark: marks[worst] },
      ],
    };
  });
  const bases = [...new Set((register?.requirements ?? []).map(({ basis }) => describeBasis(basis)))];
  return {
    url: "requirements.html",
    number,
    title: "What this book must contain, and whether it does",
    under: [register?.title ?? "No register"],
    section,
    blocks: [
      plainTable(
        `${number}.1`,
        "Register of requirements",
        { Requirement: 5, "Due at": 2, "Met#": 0.8, "Of#": 0.8, "Not met by": 3, Verdict: 1.6 },
        rows,
      ),
      { type: "heading", level: 2, text: "Where the requirements come from" },
      { type: "list", ordered: false, items: bases.map((basis) => [basis]) },
    ],
  };
}
