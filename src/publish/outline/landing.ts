import type { Block, Inline, Target } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { withOwn } from "./own.ts";

/**
 * Pages on which every link lands: one to a page or file that is not in the publication becomes words that say so, one to
 * a place its page does not have leads to the page. Whatever a book contains, and whatever a page was made to link to, the
 * publication is whole. `files` are the paths of the issue besides its pages.
 */
export function withLandings(pages: readonly Page[], files: ReadonlySet<string>): Page[] {
  const byUrl = new Map(pages.map((page) => [page.url, page]));
  const anchors = new Map<string, ReadonlySet<string>>();
  const anchorsOf = (page: Page, blocks?: readonly Block[]): ReadonlySet<string> => {
    const known = anchors.get(page.url) ?? new Set(anchorsIn(blocks ?? page.blocks));
    anchors.set(page.url, known);
    return known;
  };
  const landing = ({ page: url, anchor }: Target): Target | undefined => {
    const page = byUrl.get(url);
    if (page === undefined) return undefined;
    return anchor === undefined || anchorsOf(page).has(anchor)
      ? { page: url, ...(anchor !== undefined && { anchor }) }
      : { page: url };
  };
  const link = (inline: Exclude<Inline, string>): Inline => {
    if (inline.type === "link") {
      const to = landing(inline.to);
      return to === undefined ? `${inline.text} (no page of this book)` : { ...inline, to };
    }
    if (inline.type === "file" && !files.has(inline.path.split("#")[0] ?? ""))
      return `${inline.text} (no file of this book)`;
    return inline;
  };
  const land = (value: unknown): unknown => {
    if (Array.isArray(value)) return kept(value, (value as readonly unknown[]).map(land));
    if (typeof value !== "object" || value === null) return value;
    if ("type" in value && (value.type === "link" || value.type === "file"))
      return link(value as Exclude<Inline, string>);
    if ("type" in value && value.type === "contents")
      return {
        ...value,
        entries: (value as Extract<Block, { type: "contents" }>).entries.filter(({ to }) => byUrl.has(to.page)),
      };
    if ("type" in value && value.type === "scan") {
      const scan = value as Extract<Block, { type: "scan" }>;
      return scan.absent !== undefined || files.has(scan.path) ? scan : { ...scan, absent: noFile };
    }
    const entries = Object.entries(value);
    const landed = entries.map(([name, member]): unknown => (drawn.has(name) ? member : land(member)));
    return landed.every((member, index) => member === entries[index]?.[1])
      ? value
      : Object.fromEntries(entries.map(([name], index) => [name, landed[index]]));
  };
  return pages.map((page) =>
    withOwn(page, {
      ...(page.under !== undefined && { under: land(page.under) as typeof page.under }),
      get blocks() {
        const { blocks } = page;
        // Whoever links here later need not make the page again.
        anchorsOf(page, blocks);
        return land(blocks) as readonly Block[];
      },
    }),
  );
}

/** What the place of an original says when its file is not there. */
export const noFile = "The file is not in this book.";

/** Figures and formulas hold no links, and are large. */
const drawn: ReadonlySet<string> = new Set(["figure", "formula", "substituted", "display", "symbol"]);

const kept = (before: readonly unknown[], after: readonly unknown[]) =>
  after.every((item, index) => item === before[index]) ? before : after;

/** Every anchor a block sets: its own, and those of its rows, facts, links and findings. */
function* anchorsIn(value: unknown): Generator<string> {
  if (Array.isArray(value)) for (const item of value) yield* anchorsIn(item);
  else if (typeof value === "object" && value !== null)
    for (const [name, member] of Object.entries(value))
      if (name === "anchor" && typeof member === "string") yield member;
      else if (name !== "to" && !drawn.has(name)) yield* anchorsIn(member);
}
