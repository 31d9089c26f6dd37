import type { AnswerSource } from "../../model/answer.ts";
import { describeBasis, isVerified } from "../../model/basis.ts";
import type { InForce } from "../../model/in-force.ts";
import { withNeeded, type Scope } from "../../model/scope.ts";
import type { Block, Row } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { plain, type Context } from "./context.ts";
import { answersBlocks } from "./answers-table.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { counted } from "./titles.ts";
import { numbering } from "./record-blocks.ts";

/** Which tool, definitions, profile and tables judged the book. */
export function judgedWithPage(
  context: Context,
  number: string,
  section: number,
  { tool, hash, answers }: { readonly tool: string; readonly hash: string; readonly answers: readonly AnswerSource[] },
): Page {
  const { definitions, inForce, parameters, profile, book } = context.judged;
  const meaning = (name: string) =>
    definitions.profiles.flatMap(({ parameters: own }) => own[name]?.means ?? [])[0] ?? "";
  const read = [...parameters].filter(([name]) => !inForce.outParameters.has(name));
  const parameterRows = read.map(([name, { value, basis, overridden }]): Row => ({
    cells: [
      { type: "text", text: [`${meaning(name)} `, { type: "code", text: name }] },
      { type: "text", text: [{ type: "whole", text: value }] },
      wordsCell(overridden ? "the book" : `profile ${profile}`),
      wordsCell(describeBasis(basis)),
    ],
  }));
  const definitionRows = [
    ...definitions.rules.map((one) => ({ sort: "rule", ...one })),
    ...definitions.facts.map((one) => ({ sort: "fact", ...one })),
    ...definitions.calculations.map((one) => ({ sort: "calculation", ...one })),
  ].map((one): Row => ({
    cells: [wordsCell(one.id), wordsCell(one.sort), wordsCell(one.title), wordsCell(describeBasis(one.basis))],
  }));
  const examples = definitions.calculations.flatMap((one) =>
    one.examples.map((example): Row => ({
      cells: [
        wordsCell(one.id),
        wordsCell(example.class),
        wordsCell(example.source),
        wordsCell(
          Object.entries(example.expect)
            .map(([symbol, value]) => `${symbol} = ${value}`)
            .join(", "),
        ),
        { type: "number", text: String(example.within) },
      ],
    })),
  );
  const next = numbering(number);
  const bases = [...definitions.rules, ...definitions.facts, ...definitions.calculations].map(({ basis }) => basis);
  const weak = bases.filter((basis) => !isVerified(basis)).length;
  return {
    url: "judged-with.html",
    number,
    title: "Judged with",
    under: [
      `${tool}; ${bases.length} definitions, whose own fingerprint is ${hash.slice(0, 16)}; record format ${plain(book.value["format"])}.`,
    ],
    section,
    blocks: [
      {
        type: "paragraph",
        text: [
          `${bases.length - weak} definitions rest on a published text, a contract, a checked table or a derivation; ${weak} rest on less, and say so wherever they are printed.`,
        ],
      },
      ...scopesBlocks(inForce),
      { type: "heading", level: 2, text: "Parameters" },
      plainTable(
        next(),
        `Parameters in force, profile ${profile}`,
        { Parameter: 5, Value: 1, From: 1.4, Basis: 4 },
        parameterRows,
      ),
      { type: "heading", level: 2, text: "Tables" },
      plainTable(
        next(),
        "Tables of standards",
        { Table: 2, Title: 4, "Rows#": 0.7, "Basis of its rows": 4 },
        definitions.tables.map((table): Row => ({
          cells: [
            wordsCell(table.id),
            wordsCell(table.title),
            { type: "number", text: String(table.rows.length) },
            wordsCell([...new Set(table.rows.map(({ basis }) => describeBasis(basis)))].join("; ")),
          ],
        })),
      ),
      { type: "heading", level: 2, text: "Definitions" },
      plainTable(next(), "Rules, facts and calculations", { Name: 2.4, Sort: 1, Title: 4, Basis: 4 }, definitionRows),
      { type: "heading", level: 2, text: "How the calculations are verified" },
      plainTable(
        next(),
        "Worked examples each calculation reproduces",
        { Calculation: 2, Class: 1.2, Source: 4, Expected: 3, "Within#": 1 },
        examples,
      ),
      ...answersBlocks(context, next, answers),
    ],
  };
}

/** By which scopes the book was judged, and which were left out: nothing of them is recorded in it. */
function scopesBlocks({ definitions, out, outParameters }: InForce): readonly Block[] {
  const { scopes: all = [] } = definitions.whole ?? definitions;
  // What others need comes first.
  const needs = ({ id }: Scope) => withNeeded(all, [id]).size;
  const scopes = [...all].sort((one, other) => needs(one) - needs(other));
  const without = new Set(out);
  const words = (list: readonly Scope[]) => list.map(({ title }) => title.toLowerCase()).join("; ");
  const own: Block = { type: "paragraph", text: [`Judged as: ${words(scopes.filter((one) => !without.has(one)))}.`] };
  if (out.length === 0) return scopes.length === 0 ? [] : [own];
  const whole = definitions.whole ?? definitions;
  const rules = whole.rules.length - definitions.rules.length;
  const calculations = whole.calculations.length - definitions.calculations.length;
  const left = [
    counted(rules, "rule", "rules"),
    counted(calculations, "calculation", "calculations"),
    counted(outParameters.size, "parameter", "parameters"),
  ];
  return [
    own,
    {
      type: "paragraph",
      text: [
        `Not applied: ${words(scopes.filter((one) => without.has(one)))}. The register does not name these scopes and the book records nothing of them; ${left.join(", ")} of theirs stand in none of the tables below.`,
      ],
    },
  ];
}
