import { isList } from "../../model/json.ts";
import type { Kind } from "../../model/kind.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { pathNamedBy } from "../../model/shelf.ts";
import type { Block, ContentsEntry, Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { adoptedBlocks } from "./adoption.ts";
import { inWords } from "./chain-block.ts";
import { comparedSentence } from "./comparison-words.ts";
import { nameOf, plain, type Context } from "./context.ts";
import { linkOf, signatureBlock } from "./evidence-blocks.ts";
import { findingsPage } from "./finding-blocks.ts";
import { equipmentFacts } from "./front-equipment.ts";
import { bookSentence } from "./findings-page.ts";
import { awaitedBlocks, basisSentence, historyBlocks, holdingFacts, reportBlocks } from "./front-state.ts";
import { shelfBlocks } from "./shelf-words.ts";
import { soughtIn } from "./sought.ts";
import { counted } from "./titles.ts";

export const cautions: readonly string[] = [
  "The checks in this book compare what was recorded, within itself and with the loaded rules. They are not a substitute for inspection, for the applicable code, for local law, or for the judgement of licensed people. They say nothing about steel that nobody measured.",
  "Pressure equipment can kill. Whoever uses this book keeps to the instructions, the inspection intervals and the limits that the law of the place and the competent body set, whatever this book says.",
];

/** What it is, its limits, who made and checked it, its state, and what stands between it and release: exceptions first. */
export function frontPage(
  context: Context,
  contents: readonly ContentsEntry[],
  sections: readonly { readonly title: string; readonly kinds: readonly Kind[] }[],
): Page {
  const { judged } = context;
  const equipment = [...(judged.graph.byKind.get("equipment")?.values() ?? [])];
  return {
    url: "index.html",
    kindLine: "Manufacturing data book",
    title: plain(judged.book.value["title"]),
    under: [underOf(context)],
    section: null,
    sought: [{ text: `book ${judged.book.id}` }, ...soughtIn(context, judged.book)],
    blocks: [
      ...awaitedBlocks(context),
      ...stateBlocks(context),
      ...exceptionBlocks(context),
      ...adoptedBlocks(context),
      ...reportBlocks(context),
      ...equipment.flatMap((one) => [
        { type: "heading", level: 2, text: "The equipment and its limits" } satisfies Block,
        ...equipmentFacts(context, one),
      ]),
      { type: "heading", level: 2, text: "What the book holds" },
      ...holdingFacts(context, sections),
      ...shelfBlocks(context),
      ...holdings(context),
      ...historyBlocks(context),
      ...signed(context),
      { type: "heading", level: 2, text: "How to verify this copy" },
      {
        type: "list",
        ordered: true,
        items: [
          [
            "Compare the evidence fingerprint below with the one on the signed paper sheet. It is also printed on every page, and covers records and originals.",
          ],
          [
            "In the folder of this book run ",
            { type: "code", text: "sha256sum -c hashes.sha256" },
            ". Every line must end in OK.",
          ],
          [
            "Run ",
            { type: "code", text: "sha256sum hashes.sha256" },
            " and compare with the fingerprint of the issue that was written down when it was received. It covers these pages, the PDF and the findings too, and so cannot be printed on them: it is written on the line below by hand.",
          ],
          [
            "To see which record or original moved, compare with ",
            { type: "link", to: { page: "integrity.html" }, text: "the list of files and their hashes" },
            ".",
          ],
        ],
      },
      { type: "fingerprint", label: "Evidence fingerprint (SHA-256)", groups: judged.fingerprint.match(/.{4}/g) ?? [] },
      {
        type: "fingerprint",
        label: "Fingerprint of this issue (SHA-256 of hashes.sha256), written by hand",
        groups: Array.from({ length: 16 }, () => "____"),
      },
      { type: "caution", text: cautions.map((text) => [text]) },
      { type: "heading", level: 2, text: "Contents" },
      { type: "contents", entries: contents },
    ],
  };
}

function underOf(context: Context): string {
  const { book, issue } = context.judged;
  const maker = name(context, book, "/maker");
  const client = name(context, book, "/client");
  const { revision, state, issueDate, dataCutOff } = issue.value;
  const which =
    state === "final" ? `the final issue of ${plain(issueDate)}` : `an interim issue of ${plain(issueDate)}`;
  return `Book ${plain(book.value["number"])}${maker === "" ? "" : `, made by ${maker}`}${client === "" ? "" : ` for ${client}`}. This is revision ${plain(revision)}, ${which}, with evidence recorded up to ${plain(dataCutOff)}.`;
}

export function name(context: Context, record: BookRecord, pointer: string): string {
  const organisation = linkOf(context, record, pointer);
  return organisation === undefined ? "" : plain(organisation.value["name"]);
}

function stateBlocks(context: Context): Block[] {
  const { counts, findings } = context.judged;
  const open = findings.filter(({ exception, severity }) => exception === null && severity !== "note");
  if (open.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Open" },
    {
      type: "paragraph",
      text: [
        `${inWords(open.length)} finding${open.length === 1 ? " is" : "s are"} open: ${counted(counts.nonconformity, "nonconformity", "nonconformities")}, ${counted(counts.gap, "gap")}, ${counted(counts.query, "query", "queries")}. `,
        { type: "link", to: { page: findingsPage }, text: "The list says who must act" },
        ".",
      ],
      ...(counts.notDue > 0 && {
        notes: [
          { text: [`${counted(counts.notDue, "check waits", "checks wait")} for evidence that is not due yet.`] },
        ],
      }),
    },
  ];
}

function exceptionBlocks(context: Context): Block[] {
  const { exceptions, findings } = context.judged;
  const heading: Block = { type: "heading", level: 2, text: "Exceptions" };
  if (exceptions.length === 0)
    return [
      heading,
      { type: "paragraph", text: ["No deviation, waiver, answered query or exception of the order is recorded."] },
    ];
  return [
    heading,
    {
      type: "paragraph",
      text: [`${inWords(exceptions.length)} exception${exceptions.length === 1 ? " is" : "s are"} on record.`],
    },
    {
      type: "list",
      ordered: true,
      items: exceptions.map(({ record, answers, lifts }): Text => {
        const named = findings.filter(({ key }) => answers.includes(key));
        const own = addressOf(record);
        const about = named.filter(({ exception }) => exception === own).map(({ message }) => message);
        const open = answers.length - about.length;
        const who = linkOf(context, record, "/by");
        return [
          nameOf(context, record),
          `: ${plain(record.value["reason"])} `,
          {
            type: "soft",
            text: `Authority: ${plain(record.value["authority"])}, ${who === undefined ? plain(record.value["by"]) : plain(who.value["name"])}, ${plain(record.value["date"])}${record.value["end"] === undefined ? "" : `, ends ${plain(record.value["end"])}`}. `,
          },
          lifts ? `It answers: ${about.join("; ")}.` : "It answers nothing.",
          open === 0 ? "" : ` Of what it names, ${counted(open, "finding is", "findings are")} not answered by it.`,
        ];
      }),
    },
  ];
}

function holdings(context: Context): Block[] {
  const { graph, loaded } = context.judged;
  const originals = [...(graph.byKind.get("original")?.values() ?? [])];
  const paths = new Set(loaded.files.map(({ path }) => path));
  const there = originals.filter((record) => paths.has(pathNamedBy(record, plain(record.value["path"])))).length;
  const held = `${there < originals.length ? `${there} of ` : ""}${counted(originals.length, "original")}`;
  return [
    {
      type: "paragraph",
      text: [
        `${held} and ${counted(loaded.files.filter(({ role }) => role === "record").length, "record file")} were held against each other and against the loaded rules. ${bookSentence(context)} ${comparedSentence(context)} `,
        { type: "link", to: { page: "not-checked.html" }, text: "What was not checked" },
        " is listed too.",
      ],
    },
    { type: "paragraph", text: basisSentence(context) },
  ];
}

/** A final issue is signed; an interim one is not for acceptance, so nobody signs it. */
function signed(context: Context): Block[] {
  const { issue, state } = context.judged;
  if (state === "interim") return [];
  const lines = isList(issue.value["signatures"]) ? signatureBlock(context, issue) : [signatureLines(context)];
  return [{ type: "heading", level: 2, text: "Signatures" }, ...lines];
}

function signatureLines(context: Context): Block {
  const { book } = context.judged;
  const rows = [
    {
      for: `Maker, quality${suffix(name(context, book, "/maker"))}`,
      that: "the records are complete and the originals are those of this equipment",
    },
    {
      for: `Inspection body${suffix(name(context, book, "/inspectionBody"))}`,
      that: "the inspections it was engaged for were carried out",
    },
    {
      for: `Client${suffix(name(context, book, "/client"))}`,
      that: "the book is received, with the reservations written here",
    },
  ];
  return { type: "signatures", rows: rows.map((row) => ({ ...row, date: "", by: "" })) };
}

const suffix = (text: string) => (text === "" ? "" : `, ${text}`);
