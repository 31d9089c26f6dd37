import { createHash } from "node:crypto";
import type { JudgedBook } from "../../model/book.ts";
import type { AnswerSource } from "../../model/answer.ts";
import type { Chain } from "../../model/chain.ts";
import type { Kind } from "../../model/kind.ts";
import type { Block, ContentsEntry } from "../blocks.ts";
import { fileOf, originalState } from "./original-file.ts";
import { isWithheld, issuePath, type Appendix, type Page, type Publication } from "../publication.ts";
import { calculationKind, calculationPageOf } from "./calculation-page.ts";
import { calculationSummary } from "./calculation-summary.ts";
import { chainBlock } from "./chain-block.ts";
import { findingsPageOf } from "./findings-page.ts";
import { liveLine, type LastChange } from "./live.ts";
import { glancePages } from "./glance-page.ts";
import { integrityPage } from "./integrity-page.ts";
import { judgedWithPage } from "./judged-with-page.ts";
import { notCheckedPage } from "./not-checked-page.ts";
import { requirementsPage } from "./requirements-page.ts";
import { contextOf, plain, targetOf, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import { frontPage, name } from "./front-page.ts";
import { openingUrl } from "./opening.ts";
import { withLandings } from "./landing.ts";
import { withOwn } from "./own.ts";
import { groupPages } from "./group-pages.ts";
import { openingPage, recordPage, recordsOf } from "./section-pages.ts";
import { lowerTitle } from "../../model/titles.ts";
import { codeOf } from "../../proof.ts";

/**
 * Lays the whole book out as pages of blocks: the only place that decides what the book says. Pure. With `live` it is a
 * view of records in the making, which says on every page that it is no issue.
 */
export function outline(
  judged: JudgedBook,
  chains: readonly Chain[],
  tool: string,
  answers: readonly AnswerSource[] = [],
  live?: LastChange,
): Publication {
  const context = contextOf(judged, chains);
  const { present, sections } = context;
  const laid = sections.map((section, index) => {
    const kinds = present.filter((kind) => kind.section === section.id);
    return { section, kinds, pages: sectionPages(context, section, index, kinds, tool, answers, live) };
  });
  const contents = laid.flatMap(({ section, pages }, index): ContentsEntry[] => [
    { number: String(index + 1), title: section.title, to: { page: openingUrl(index) }, level: 1 },
    ...pages.slice(1).flatMap(contentsOf),
  ]);
  const { book, issue } = judged;
  const interim = judged.state === "interim";
  const revision = plain(issue.value["revision"]);
  const cutOff = plain(issue.value["dataCutOff"]);
  return {
    number: plain(book.value["number"]),
    title: plain(book.value["title"]),
    state: `revision ${revision}, ${judged.state}`,
    interim,
    ...(interim && {
      interimLine: `Interim issue ${revision}, not for acceptance. Evidence recorded up to ${cutOff}.`,
    }),
    ...(live !== undefined && { interimLine: liveLine(`Revision ${revision}, ${judged.state}`, cutOff) }),
    demonstration: book.value["demonstration"] === true,
    fingerprint: judged.fingerprint,
    issueDate: plain(issue.value["issueDate"]),
    dataCutOff: cutOff,
    maker: name(context, book, "/maker"),
    client: name(context, book, "/client"),
    language: plain(book.value["language"]) || "en",
    sections: sections.map((section, index) => ({
      number: String(index + 1),
      title: section.title,
      opening: openingUrl(index),
    })),
    pages: withLandings(
      [
        frontPage(
          context,
          contents,
          laid.map(({ section, kinds }) => ({ title: section.title, kinds })),
        ),
        ...laid.flatMap(({ pages }) => pages),
      ],
      new Set(judged.loaded.files.filter((file) => !isWithheld(file)).map(issuePath)),
    ),
    originals: originalsOf(context),
    tool,
  };
}

function sectionPages(
  context: Context,
  section: { readonly id: string; readonly title: string },
  index: number,
  kinds: readonly Kind[],
  tool: string,
  answers: readonly AnswerSource[],
  live: LastChange | undefined,
): Page[] {
  const number = String(index + 1);
  let last = 0;
  const next = () => `${number}.${++last}`;
  const own: Page[] = [];
  if (section.id === "compliance")
    own.push(
      findingsPageOf(context, next(), index, live),
      requirementsPage(context, next(), index),
      notCheckedPage(context, next(), index),
      judgedWithPage(context, next(), index, { tool, hash: definitionsHash(context.judged), answers }),
    );
  if (section.id === "integrity") own.push(integrityPage(context, next(), index));
  if (section.id === "design") own.push(...glancePages(context, next, index));
  const calculations = section.id === "design" ? calculationPages(context, next, index) : [];
  const records = kinds.flatMap((kind) => {
    const pages =
      kind.page === "each"
        ? recordsOf(context, kind).map((record) => recordPage(context, record, next(), index))
        : groupPages(context, kind, next, index);
    const printedAt = { page: openingUrl(index), anchor: kind.name };
    return kind.tableOnPaper ? pages.map((page) => withOwn(page, { screenOnly: true, printedAt })) : pages;
  });
  return [
    openingPage(context, section, number, index, kinds, [
      ...own,
      ...calculations.filter(({ screenOnly }) => screenOnly !== true),
    ]),
    ...own,
    ...calculations,
    ...records,
  ].map(numbered);
}

/** The line of a page in the contents; pages of single records are listed on paper only. */
function contentsOf(page: Page): ContentsEntry[] {
  if (page.screenOnly === true) return [];
  const { number = "", kindLine, title, url } = page;
  const named =
    kindLine === undefined || kindLine === calculationKind || title.startsWith(kindLine)
      ? title
      : `${title} (${lowerTitle(kindLine)})`;
  return [{ number, title: named, to: { page: url }, level: 2, ...(kindLine !== undefined && { paperOnly: true }) }];
}

/** A page for each recomputation; what applies to many records gets one page for all, and theirs on screen. */
function calculationPages(context: Context, next: () => string, section: number): Page[] {
  const byId = grouped(context.judged.computed, ({ calculation }) => calculation.id);
  return [...byId].flatMap(([id, all]) => {
    if (!context.summedUp.has(id)) return all.map((computed) => calculationPageOf(context, computed, next(), section));
    const number = next();
    const summary = calculationSummary(context, all, number, section);
    const each = all.map((computed, at) =>
      withOwn(calculationPageOf(context, computed, `${number}.${at + 1}`, section), {
        screenOnly: true,
        printedAt: { page: summary.url },
      }),
    );
    return [summary, ...each];
  });
}

/** Gives the headings of a page the page's number and their own, so that people can say where something stands. */
function numbered(page: Page): Page {
  // The numbers of an opening belong to the pages behind it.
  if (page.number === undefined || page.opening === true) return page;
  const { number } = page;
  return withOwn(page, {
    get blocks() {
      let last = 0;
      return page.blocks.map((block) =>
        block.type === "heading" && block.level === 2 ? { ...block, number: `${number}.${++last}` } : block,
      );
    },
  });
}

const isCode = (value: unknown): value is (...args: never[]) => unknown => typeof value === "function";

/** A fingerprint of the definitions themselves: another rule, formula, limit or table gives another. */
function definitionsHash(judged: JudgedBook): string {
  const { kinds, ...rest } = judged.definitions;
  const all = { ...rest, kinds: [...kinds.values()].map(({ single }) => single) };
  // The code of a rule is part of what it says.
  const text = JSON.stringify(all, (_name, value: unknown) => (isCode(value) ? codeOf(value) : value));
  return createHash("sha256").update(text, "utf8").digest("hex");
}

function originalsOf(context: Context): Appendix[] {
  return [...(context.judged.graph.byKind.get("original")?.values() ?? [])].flatMap((record): Appendix[] => {
    const { sha256, pages, title, mediaType } = record.value;
    const file = fileOf(context, record);
    if (file === undefined) return [];
    const { withheld, notShown } = originalState(context, record);
    return [
      {
        id: record.id,
        title: plain(title),
        path: issuePath(file),
        sha256: plain(sha256),
        pages: typeof pages === "number" ? pages : 0,
        mediaType: plain(mediaType),
        ...(notShown !== undefined && { notShown: { why: notShown, beside: withheld === undefined } }),
        page: targetOf(context, record),
      },
    ];
  });
}

/** The chain block of one record, as pages and `trace` print it; undefined when there is no such record. */
export function chainOf(
  judged: JudgedBook,
  chains: readonly Chain[],
  kind: string,
  id: string,
): Extract<Block, { type: "chain" }> | undefined {
  const record = judged.graph.byKind.get(kind)?.get(id);
  return record === undefined ? undefined : chainBlock(contextOf(judged, chains), record);
}
