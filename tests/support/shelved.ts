import { cpSync, mkdirSync, renameSync, rmSync, writeFileSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { jsonFiles } from "./changes.ts";

interface RecordFile {
  readonly kind: string;
  readonly records?: readonly Item[];
}
type Item = Readonly<Record<string, unknown>> & { readonly id: string };

/** Kinds that a maker keeps once for all his books. */
export const common: ReadonlySet<string> = new Set([
  "person",
  "organisation",
  "welder-qualification",
  "ndt-personnel",
  "procedure",
  "welding-procedure",
  "procedure-qualification",
  "instrument",
  "material-certificate",
  "consumable-batch",
  "mill-approval",
]);

const read = (path: string) => JSON.parse(readFileSync(path, "utf8")) as RecordFile & Item;
const write = (path: string, content: unknown) => {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `${JSON.stringify(content, null, 2)}\n`);
};

/** Copies a book to `<dir>/book`, with its common records and the originals these name on the shelf `<dir>/shop`. */
export function shelved(book: string, dir: string): { readonly book: string; readonly shop: string } {
  const [own, shop] = [join(dir, "book"), join(dir, "shop")];
  cpSync(book, own, { recursive: true });
  const files = jsonFiles(own).map((path) => ({ path, at: relative(own, path), content: read(path) }));
  const textOn = files.filter(({ content }) => common.has(content.kind)).map(({ content }) => JSON.stringify(content));
  const lent = (id: string) => textOn.some((text) => text.includes(`"${id}"`));
  for (const { path, at, content } of files) {
    if (common.has(content.kind)) {
      write(join(shop, at), content);
      rmSync(path);
    } else if (content.kind === "original") {
      const records = content.records ?? [];
      write(path, { ...content, records: records.filter(({ id }) => !lent(id)) });
      write(join(shop, at), { ...content, records: records.filter(({ id }) => lent(id)) });
      for (const { path: file } of records.filter(({ id }) => lent(id))) {
        mkdirSync(dirname(join(shop, String(file))), { recursive: true });
        renameSync(join(own, String(file)), join(shop, String(file)));
      }
    }
  }
  write(join(own, "book.json"), { ...read(join(own, "book.json")), shelves: [{ name: "shop", folder: "../shop" }] });
  return { book: own, shop };
}
