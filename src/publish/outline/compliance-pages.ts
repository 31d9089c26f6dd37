import { describeBasis, isVerified } from "../../model/basis.ts";
import type { Owed } from "../../model/book.ts";
import { blocks as isOpen } from "../../model/finding.ts";
import type { Block, Cell, Mark, Page, Row, Text } from "../blocks.ts";
import { inWords } from "./chain-block.ts";
import { linkTo, nameOf, plain, recordOf, type Context } from "./context.ts";
import { counted } from "./front-page.ts";
import { findingGroups, findingsPage } from "./finding-blocks.ts";
import { inFives } from "./record-blocks.ts";

const text = (value: string): Cell => ({ type: "text", text: [value] });

/** All findings by who must act; answered ones and notes at the end. */
export function findingsPageOf(context: Context, number: string, section: number): Page {
  const { findings, counts } = context.judged;
  const open = findings.filter(isOpen);
  const lifted = findings.filter(({ exception }) => exception !== null);
  const notes = findings.filter(({ severity, exception }) => severity === "note" && exception === null);
  return {
    url: findingsPage,
    number,
    title: "Findings, by who must act",
    under: [
      open.length === 0
        ? "Nothing is open. Every check that applies has passed, or is answered by an exception listed below."
        : `${inWords(open.length)} finding${open.length === 1 ? " is" : "s are"} open: ${counted(counts.nonconformity, "nonconformity", "nonconformities")}, ${counted(counts.gap, "gap")} and ${counted(counts.query, "query", "queries")}.`,
    ],
    section,
    blocks: [
      ...findingGroups(context, open),
      ...(lifted.length === 0
        ? []
        : [
            { type: "heading", level: 2, text: "Answered by an exception" } satisfies Block,
            ...lowered(findingGroups(context, lifted)),
          ]),
      ...(notes.length === 0
        ? []
        : [
            { type: "heading", level: 2, text: "Notes, which never block" } satisfies Block,
            ...lowered(findingGroups(context, notes)),
          ]),
      { type: "heading", level: 2, text: "Checks in figures" },
      {
        type: "paragraph",
        text: [
          `${counts.passed} checks passed, ${counts.notJudged} could not be judged, ${counts.notDue} are not due, ${counts.notApplicable} do not apply to this equipment; ${counts.lifted} findings are answered by exceptions.`,
        ],
      },
    ],
  };
}

/** Groups under a heading of their own stand one level lower. */
function lowered(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => (block.type === "heading" ? { ...block, level: 3 } : block));
}

const marks: Readonly<Record<Owed["state"], Mark>> = {
  met: "passed",
  missing: "failed",
  waived: "not judged",
  "not due": "not due",
  "not judged": "not judged",
  "not applicable": "not applicable",
};

/** The register, row by row: what it asks, of how many, and what became of it. */
export function requirementsPage(context: Context, number: string, section: number): Page {
  const { owed, definitions, book } = context.judged;
  const register = definitions.registers.find(({ id }) => id === book.value["register"]) ?? definitions.registers[0];
  const rows = (register?.requirements ?? []).map((requirement): Row => {
    const about = owed.filter((one) => one.requirement === requirement);
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
        text(requirement.due),
        { type: "number", text: String(met) },
        { type: "number", text: String(applying.length) },
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
      {
        type: "table",
        number: `${number}.1`,
        title: "Register of requirements",
        columns: [
          { head: "Requirement", align: "left", width: 5 },
          { head: "Due at", align: "left", width: 2 },
          { head: "Met", align: "number", width: 0.8 },
          { head: "Of", align: "number", width: 0.8 },
          { head: "Not met by", align: "left", width: 3 },
          { head: "Verdict", align: "left", width: 1.6 },
        ],
        groups: inFives(rows),
        wide: true,
      },
      { type: "heading", level: 2, text: "Where the requirements come from" },
      { type: "list", ordered: false, items: bases.map((basis) => [basis]) },
    ],
  };
}

/** Which tool, definitions, profile and tables judged the book. */
export function judgedWithPage(
  context: Context,
  number: string,
  section: number,
  tool: string,
  definitionsHash: string,
): Page {
  const { definitions, parameters, profile, book } = context.judged;
  const parameterRows = [...parameters].map(([name, { value, basis, overridden }]): Row => ({
    cells: [
      text(name),
      { type: "text", text: [{ type: "whole", text: value }] },
      text(overridden ? "the book" : `profile ${profile}`),
      text(describeBasis(basis)),
    ],
  }));
  const definitionRows = [
    ...definitions.rules.map((one) => ({ sort: "rule", ...one })),
    ...definitions.facts.map((one) => ({ sort: "fact", ...one })),
    ...definitions.calculations.map((one) => ({ sort: "calculation", ...one })),
  ].map((one): Row => ({ cells: [text(one.id), text(one.sort), text(one.title), text(describeBasis(one.basis))] }));
  const examples = definitions.calculations.flatMap((one) =>
    one.examples.map((example): Row => ({
      cells: [
        text(one.id),
        text(example.class),
        text(example.source),
        text(
          Object.entries(example.expect)
            .map(([symbol, value]) => `${symbol} = ${value}`)
            .join(", "),
        ),
        { type: "number", text: String(example.within) },
      ],
    })),
  );
  const bases = [...definitions.rules, ...definitions.facts, ...definitions.calculations].map(({ basis }) => basis);
  const weak = bases.filter((basis) => !isVerified(basis)).length;
  return {
    url: "judged-with.html",
    number,
    title: "Judged with",
    under: [
      `${tool}; ${bases.length} definitions, whose own fingerprint is ${definitionsHash.slice(0, 16)}; record format ${plain(book.value["format"])}.`,
    ],
    section,
    blocks: [
      {
        type: "paragraph",
        text: [
          `${bases.length - weak} definitions rest on a published text, a contract, a checked table or a derivation; ${weak} rest on less, and say so wherever they are printed.`,
        ],
      },
      { type: "heading", level: 2, text: "Parameters" },
      {
        type: "table",
        number: `${number}.1`,
        title: `Parameters in force, profile ${profile}`,
        wide: true,
        columns: [
          { head: "Parameter", align: "left", width: 2 },
          { head: "Value", align: "left", width: 1 },
          { head: "From", align: "left", width: 1.4 },
          { head: "Basis", align: "left", width: 5 },
        ],
        groups: inFives(parameterRows),
      },
      { type: "heading", level: 2, text: "Tables" },
      {
        type: "table",
        number: `${number}.2`,
        title: "Tables of standards",
        wide: true,
        columns: [
          { head: "Table", align: "left", width: 2 },
          { head: "Title", align: "left", width: 4 },
          { head: "Rows", align: "number", width: 0.7 },
          { head: "Basis of its rows", align: "left", width: 4 },
        ],
        groups: inFives(
          definitions.tables.map((table): Row => ({
            cells: [
              text(table.id),
              text(table.title),
              { type: "number", text: String(table.rows.length) },
              text([...new Set(table.rows.map(({ basis }) => describeBasis(basis)))].slice(0, 4).join("; ")),
            ],
          })),
        ),
      },
      { type: "heading", level: 2, text: "Definitions" },
      {
        type: "table",
        number: `${number}.3`,
        title: "Rules, facts and calculations",
        wide: true,
        columns: [
          { head: "Name", align: "left", width: 2.4 },
          { head: "Sort", align: "left", width: 1 },
          { head: "Title", align: "left", width: 4 },
          { head: "Basis", align: "left", width: 4 },
        ],
        groups: inFives(definitionRows),
      },
      { type: "heading", level: 2, text: "How the calculations are verified" },
      {
        type: "table",
        number: `${number}.4`,
        title: "Worked examples each calculation reproduces",
        wide: true,
        columns: [
          { head: "Calculation", align: "left", width: 2 },
          { head: "Class", align: "left", width: 1.2 },
          { head: "Source", align: "left", width: 4 },
          { head: "Expected", align: "left", width: 3 },
          { head: "Within", align: "number", width: 1 },
        ],
        groups: inFives(examples),
      },
    ],
  };
}

/** What the checks leave out: said aloud, since silence is never a pass. */
export function notCheckedPage(context: Context, number: string, section: number): Page {
  const { outcomes, definitions, graph, loaded } = context.judged;
  const open = outcomes.filter(({ verdict, because }) => verdict === "not judged" && because?.type !== "not due");
  const judgedKinds = new Set([
    ...definitions.rules.map(({ kind }) => kind.split("#")[0]),
    ...definitions.calculations.map(({ appliesTo }) => appliesTo.kind.split("#")[0]),
  ]);
  const unjudged = [...graph.byKind.keys()].filter((kind) => !judgedKinds.has(kind) && kind !== "heat");
  const uncompared = graph.records.filter(
    (record) => record.value["source"] !== undefined && record.value["transcription"] === undefined,
  );
  const idle = definitions.calculations.filter(
    ({ id }) => !context.judged.computed.some(({ calculation }) => calculation.id === id),
  );
  // A part without an acceptance of its own was drawn, but its strength was not recomputed.
  const bare = [...(graph.byKind.get("part")?.values() ?? [])].filter(
    (part) =>
      part.value["pressureBearing"] === true &&
      !context.judged.computed.some(({ subject, accept }) => subject === part && accept.length > 0),
  );
  const names = (list: readonly string[]): Text => [list.length === 0 ? "None." : `${list.join(", ")}.`];
  return {
    url: "not-checked.html",
    number,
    title: "What was not checked",
    under: ["A check that was not made is not a check that passed."],
    section,
    blocks: [
      { type: "heading", level: 2, text: "Outside the loaded rules" },
      {
        type: "list",
        ordered: false,
        items: [
          [
            "Whether an original is genuine, and whether it describes this equipment: a person compares it with the thing.",
          ],
          [
            "Wind, earthquake, lifting, external piping loads and fatigue, unless a calculation of this book covers them by name.",
          ],
          [
            "Whether the code chosen is the right one for the place and use, and whether its edition is in force there.",
          ],
          ["Anything that is only on a scan and in no record."],
        ],
      },
      { type: "heading", level: 2, text: "Not judged in this book" },
      open.length === 0
        ? { type: "paragraph", text: ["Every check that applies was judged."] }
        : {
            type: "list",
            ordered: false,
            items: open
              .slice(0, 200)
              .map((outcome): Text => [
                `${context.titles.get(outcome.definition) ?? outcome.definition}, `,
                ...(outcome.subject === null ? ["the book"] : subjectText(context, outcome.subject)),
              ]),
          },
      { type: "heading", level: 2, text: "Pressure parts whose thickness was not recomputed" },
      {
        type: "paragraph",
        text:
          bare.length === 0
            ? ["None."]
            : [
                ...bare.flatMap((part, index): Text => [
                  index === 0 ? "" : ", ",
                  nameOf(context, part),
                  ` (${plain(part.value["name"])})`,
                ]),
                ". Openings and their reinforcement are recomputed only where the part lists them; where the maker calculated others, the document is among the records.",
              ],
      },
      { type: "heading", level: 2, text: "Kinds that are read, linked and checked for form only" },
      { type: "paragraph", text: names(unjudged.map((kind) => definitions.kinds.get(kind)?.title ?? kind)) },
      { type: "heading", level: 2, text: "Calculations that apply to nothing here" },
      { type: "paragraph", text: names(idle.map(({ title }) => title)) },
      { type: "heading", level: 2, text: "Records not yet compared with their original by a person" },
      {
        type: "paragraph",
        text:
          uncompared.length === 0
            ? ["None."]
            : uncompared
                .slice(0, 100)
                .flatMap((record, index): Text =>
                  index === 0 ? [linkTo(context, record)] : [", ", linkTo(context, record)],
                ),
      },
      { type: "heading", level: 2, text: "Files" },
      {
        type: "paragraph",
        text: [
          loaded.unreadable.length === 0
            ? "Every file of the book could be read."
            : `Not read: ${loaded.unreadable.join(", ")}.`,
        ],
      },
    ],
  };
}

function subjectText(context: Context, subject: { readonly kind: string; readonly id: string }): Text {
  const record = recordOf(context, subject);
  return record === undefined ? [`${subject.kind} ${subject.id}`] : [nameOf(context, record)];
}

/** All files with their hashes, and what they are summed up to. */
export function integrityPage(context: Context, number: string, section: number): Page {
  const { loaded, fingerprint } = context.judged;
  const files = [...loaded.files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const owner = new Map(
    [...(context.judged.graph.byKind.get("original")?.values() ?? [])].map((record) => [
      plain(record.value["path"]),
      record,
    ]),
  );
  return {
    url: "integrity.html",
    number,
    title: "Integrity",
    under: [
      "The evidence fingerprint is the SHA-256 over the list below, without issue.json: change one byte of a record or an original, and it changes.",
    ],
    section,
    blocks: [
      { type: "fingerprint", label: "Evidence fingerprint (SHA-256)", groups: fingerprint.match(/.{4}/g) ?? [] },
      {
        type: "table",
        number: `${number}.1`,
        title: "Records and originals",
        wide: true,
        columns: [
          { head: "File", align: "left", width: 4 },
          { head: "Record", align: "left", width: 1.5 },
          { head: "Bytes", align: "number", width: 1 },
          { head: "SHA-256, first 32 signs", align: "left", width: 4 },
        ],
        groups: inFives(
          files.map((file): Row => {
            const record = owner.get(file.path);
            return {
              cells: [
                {
                  type: "text",
                  text: [
                    {
                      type: "file",
                      path: file.role === "original" ? file.path : `evidence/${file.path}`,
                      text: file.path,
                    },
                  ],
                },
                record === undefined ? { type: "empty" } : { type: "text", text: [linkTo(context, record)] },
                { type: "number", text: String(file.size) },
                {
                  type: "text",
                  text: [{ type: "code", text: (file.sha256.slice(0, 32).match(/.{8}/g) ?? []).join(" ") }],
                },
              ],
            };
          }),
        ),
      },
    ],
  };
}
