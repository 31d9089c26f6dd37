import { existsSync, lstatSync, readdirSync, realpathSync, statSync, type Dirent } from "node:fs";
import { join, sep } from "node:path";
import type { Finding } from "../model/finding.ts";
import { isList, isObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { shelvesFolder } from "../model/shelf.ts";
import { findingOf, type Fault } from "./file-rules.ts";
import { isJunk } from "./junk.ts";
import { nameFault, quoted } from "./portable.ts";
import { refusal } from "./read-file.ts";

/** A shelf to be read: its folder, and whether that is the book's own copy. */
export interface NamedShelf {
  readonly name: string;
  readonly dir: string;
  readonly copy: boolean;
  /** Of a copy: the folder it stands for as it is written, where that is there too. */
  readonly beside?: string;
}

interface Named {
  readonly shelves: readonly NamedShelf[];
  readonly findings: readonly Finding[];
  /** Folders that belong to no shelf. */
  readonly unread: readonly string[];
}

const nameForm = /^[a-z0-9][a-z0-9-]{0,23}$/;

/**
 * The shelves a book names, and what is wrong with those that are not read. `dir` is the folder of the book. A book that
 * holds `shelves/<name>/` reads that copy. Entries that the schema refuses are passed over: it says so itself.
 */
export function shelvesOf(dir: string, book: BookRecord): Named {
  const root = realpathSync(dir);
  const entries = book.value["shelves"];
  const shelves: NamedShelf[] = [];
  const findings: Finding[] = [];
  const copies = copiesIn(root);
  const seen = new Map<string, string>();
  for (const [index, entry] of isList(entries) ? entries.entries() : []) {
    if (!isObject(entry)) continue;
    const { name, folder } = entry;
    if (typeof name !== "string" || typeof folder !== "string" || !nameForm.test(name)) continue;
    const object = (at: "name" | "folder", fault: Pick<Fault, "message" | "why" | "hint">) =>
      findings.push(
        findingOf({
          rule: "shelf-folder",
          place: { file: book.file, pointer: `${book.pointer}/shelves/${index}/${at}` },
          record: book,
          name: `shelves[${name}].${at}`,
          ...fault,
          accuses: [addressOf(book, `/shelves/${index}/${at}`)],
        }),
      );
    const odd = nameFault(name);
    // Of two shelves with one name the first is read; that rows bear one name is found with the links.
    if (shelves.some((one) => one.name === name)) continue;
    if (odd !== undefined) object("name", { message: `a shelf cannot be called ${quoted(name)}`, ...odd });
    else {
      const outside = folderOf(root, folder);
      const copy = copies.has(name);
      const found = copy ? standingFolder(join(root, shelvesFolder, name), `${shelvesFolder}/${name}`) : outside;
      const other = "dir" in found ? seen.get(found.dir) : undefined;
      if ("why" in found) object("folder", { ...found, message: `the shelf "${name}" ${found.message}` });
      else if (copy) shelves.push({ name, dir: found.dir, copy, ...("dir" in outside && { beside: folder }) });
      else if (other !== undefined)
        object("folder", {
          message: `the shelves "${other}" and "${name}" are one folder`,
          why: "each of its records would be in the book twice",
          hint: "remove one of the two",
        });
      else {
        seen.set(found.dir, name);
        shelves.push({ name, dir: found.dir, copy });
      }
    }
  }
  const named = new Set((isList(entries) ? entries : []).map((entry) => (isObject(entry) ? entry["name"] : undefined)));
  const unread = [...copies].filter((name) => !named.has(name)).map((name) => `${shelvesFolder}/${name}`);
  return { shelves, findings: [...findings, ...unread.map(notListed)], unread };
}

/** What the book's own folder of shelves holds. */
function copiesIn(root: string): ReadonlySet<string> {
  let entries: Dirent[];
  try {
    entries = readdirSync(join(root, shelvesFolder), { withFileTypes: true });
  } catch {
    return new Set();
  }
  const names = entries.filter(({ name }) => !isJunk(name)).map(({ name }) => name);
  return new Set(names.sort(byCodePoint));
}

const notListed = (path: string): Finding =>
  findingOf({
    rule: "shelf-listed",
    place: { file: path, pointer: "" },
    message: `${quoted(path)} belongs to no shelf that book.json names`,
    why: `the folder ${shelvesFolder}/ holds copies of shelves and nothing else; none of it was read`,
    hint: 'name the shelf in "shelves" of book.json, or move the records into another folder of the book',
  });

/** An original of the book's own that stands where those of a shelf go in an issue. */
export const inTheWay = (path: string, name: string): Finding =>
  findingOf({
    rule: "shelf-listed",
    place: { file: path, pointer: "" },
    message: `${quoted(path)} stands where the originals of the shelf "${name}" go in an issue`,
    why: `files/${shelvesFolder}/${name}/ holds originals of that shelf, and those lie in its own folder`,
    hint: "move the file into another folder below files/",
  });

type NoFolder = Pick<Fault, "message" | "why" | "hint">;

/** The folder behind a written path, or what is wrong with it. */
function folderOf(root: string, folder: string): { readonly dir: string } | NoFolder {
  const hint = 'write the way to it from the folder of the book, such as "../shop"';
  if (/^([/\\]|[A-Za-z]:)/.test(folder) || folder.includes("\\") || folder.includes("\0"))
    return {
      message: `names the folder ${quoted(folder)}, which is no way from the book; expected one such as "../shop"`,
      why: "an absolute path, or one with \\, leads nowhere on another machine",
      hint,
    };
  const target = join(root, ...folder.split("/"));
  if (liesIn(target, root))
    return target === root
      ? {
          message: "is the folder of the book itself",
          why: "its records are the book's own already",
          hint: "name a folder beside the book, or remove the shelf",
        }
      : {
          message: `lies in the book, in ${quoted(folder)}`,
          why: "what stands there is the book's own already",
          hint: `move the folder out of the book, or into ${shelvesFolder}/ under the name of the shelf`,
        };
  if (liesIn(root, target))
    return {
      message: `holds the book, as it is ${quoted(folder)}`,
      why: "its records would be the book's own once more",
      hint: "name a folder beside the book",
    };
  return standingFolder(target, folder);
}

const liesIn = (path: string, folder: string) =>
  path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);

function standingFolder(target: string, folder: string): { readonly dir: string } | NoFolder {
  const why = "what the book reaches there is missing, as long as it cannot be read";
  const dir = target.endsWith(sep) ? target.slice(0, -1) : target;
  try {
    if (lstatSync(dir).isSymbolicLink() || realpathSync(dir) !== dir)
      return {
        message: `lies behind a link, in ${quoted(folder)}`,
        why: "a link may lead somewhere else at any time, and archives lose it",
        hint: "name the folder itself",
      };
    if (statSync(dir).isDirectory()) return { dir };
    return { message: `is no folder: ${quoted(folder)} is a file`, why, hint: "name a folder of records" };
  } catch (error) {
    return {
      message: existsSync(dir)
        ? `cannot be read from ${quoted(folder)}: ${refusal(error)}`
        : `is not there: there is no folder ${quoted(folder)}`,
      why,
      hint: `put the folder there, correct the way to it, or put a copy into ${shelvesFolder}/ under the name of the shelf`,
    };
  }
}
