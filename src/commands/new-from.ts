import { join } from "node:path";
import { carry, type Carried } from "../begin/carry/carry.ts";
import { nextBook, shelvesFrom, type NextBook } from "../begin/next.ts";
import { guideText } from "../begin/shipped.ts";
import { shopMaps } from "../begin/shop-maps.ts";
import { starterFiles, type Beginning } from "../begin/starter.ts";
import { linkRecords } from "../link/graph.ts";
import { schemaFolder } from "../load/own-schemas.ts";
import { notRead } from "../model/not-read.ts";
import { plain } from "../report/plain.ts";
import { bookFolder, readOrSay } from "./books.ts";
import { UsageError, type Effects, type ReadBook } from "./command.ts";

/** The last book as it was read, with what the next one takes of it. */
export interface Last {
  readonly read: ReadBook;
  readonly carried: Carried;
  /** Maps of sheets, by their path in a book. */
  readonly maps: ReadonlyMap<string, string>;
}

/** Reads the last book and decides what comes along; undefined where it cannot be read, which was said. */
export async function lastBook(
  from: string,
  wanted: { readonly sameDesign: boolean; readonly serial?: string },
  effects: Effects,
): Promise<Last | undefined> {
  const dir = await bookFolder(from, effects);
  const read = readOrSay(dir, effects);
  if (read === undefined) return undefined;
  const { graph } = linkRecords(read.records, read.kinds);
  return { read, carried: carry(graph, read.kinds, wanted), maps: await shopMaps(dir) };
}

/** The folder of the next book; `dir` is where it will stand. */
export function filesOfNext({ read, carried }: Last, dir: string, beginning: Beginning, sameDesign: boolean): NextBook {
  const { serial, ...without } = beginning;
  // Where the design comes along, so does what the number identifies.
  const begun = sameDesign || serial === undefined ? without : beginning;
  const book = read.records.find(({ kind }) => kind === "book");
  const shelves = shelvesFrom(book?.value["shelves"], read.shelves ?? [], carried.records, dir);
  // The way to a shelf is another from here, and one of which nothing comes along is not named.
  const more = Object.fromEntries(Object.entries(carried.book).filter(([name]) => name !== "shelves"));
  if (shelves.length > 0) more["shelves"] = shelves;
  return nextBook(starterFiles(begun, read.kinds, guideText(), more), carried, read, schemaFolder);
}

/** What the next book would take from a shelf that is away is not known: it would begin without, and nobody would see. */
export function refuseWithoutShelves(read: ReadBook): void {
  const away = notRead(read).filter(({ place }) => !read.unreadable.includes(place.file));
  if (away.length === 0) return;
  const said = [...new Set(away.map(({ message }) => plain(message)))].join("; ");
  throw new UsageError(
    `${said}: what the next book takes from there is not known, and nothing was written; mend the way to it in ` +
      `${plain(join(read.dir, "book.json"))}, or take the entry out if the next book is to begin without`,
  );
}

/** The last day whose evidence counted in the last book: what comes along is of that day or earlier. */
export function cutOffOf(read: ReadBook): string {
  const day = read.records.find(({ kind }) => kind === "issue")?.value["dataCutOff"];
  return typeof day === "string" ? day : "";
}

/** A name the last book states, as the default of an option. */
export function stated(read: ReadBook, field: "register" | "profile" | "title"): string | undefined {
  const value = read.records.find(({ kind }) => kind === "book")?.value[field];
  return typeof value === "string" ? value : undefined;
}

/** What has ended by the day of the order, and of what nobody can say it. */
export interface Ended {
  readonly ended: readonly {
    readonly kind: string;
    readonly id: string;
    readonly message: string;
    readonly why: string;
  }[];
  readonly unsaid: readonly { readonly kind: string; readonly id: string; readonly title: string }[];
}

/** Asks the new book, with the engine, what of its records no longer holds on the day of its order. */
export function endedIn(dir: string, effects: Effects): Ended {
  const { engine } = effects;
  const read = readOrSay(dir, effects);
  if (read === undefined) throw new UsageError(`what was written to "${dir}" cannot be read again`);
  const judged = engine.judgeExpiries(read);
  const titles = new Map(engine.expiries.map(({ id, title }) => [id, title]));
  return {
    ended: judged.findings.flatMap(({ rule, subject, message, why }) =>
      titles.has(rule) && subject !== null ? [{ kind: subject.kind, id: subject.id, message, why }] : [],
    ),
    unsaid: judged.outcomes.flatMap(({ definition, subject, verdict }) =>
      titles.has(definition) && verdict === "not judged" && subject !== null
        ? [{ kind: subject.kind, id: subject.id, title: titles.get(definition) ?? definition }]
        : [],
    ),
  };
}
