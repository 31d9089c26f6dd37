import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";

/** One change to a book on disk. Records are found by kind and id, wherever they stand. */
export type Change =
  | { readonly set: string; readonly at: string; readonly to: unknown }
  | { readonly remove: string; readonly at?: string }
  | { readonly add: unknown; readonly file: string }
  | { readonly file: string; readonly find: string; readonly replace: string }
  | { readonly file: string; readonly bytes: string }
  | { readonly file: string; readonly gone: true };

interface Json {
  [name: string]: unknown;
}

export function jsonFiles(dir: string): string[] {
  return readdirSync(dir).flatMap((name) => {
    const path = join(dir, name);
    if (statSync(path).isDirectory()) return name === "files" ? [] : jsonFiles(path);
    return name.endsWith(".json") ? [path] : [];
  });
}

interface Found {
  readonly path: string;
  readonly content: Json;
  readonly record: Json;
  readonly list: Json[] | null;
}

/** The record `kind:id` in a book folder. */
export function findRecord(dir: string, name: string): Found {
  const [kind, id] = name.split(":");
  for (const path of jsonFiles(dir)) {
    const content = JSON.parse(readFileSync(path, "utf8")) as Json;
    const list = Array.isArray(content["records"]) ? (content["records"] as Json[]) : null;
    const record = (list ?? [content]).find((one) => content["kind"] === kind && one["id"] === id);
    if (record !== undefined) return { path, content, record, list };
  }
  throw new Error(`the book holds no ${name}`);
}

export function allRecords(dir: string): { readonly kind: string; readonly id: string; readonly file: string }[] {
  return jsonFiles(dir).flatMap((path) => {
    const content = JSON.parse(readFileSync(path, "utf8")) as Json;
    const list = Array.isArray(content["records"]) ? (content["records"] as Json[]) : [content];
    return list.map((record) => ({
      kind: String(content["kind"]),
      id: String(record["id"]),
      file: relative(dir, path),
    }));
  });
}

const save = ({ path, content }: Pick<Found, "path" | "content">) =>
  writeFileSync(path, `${JSON.stringify(content, null, 2)}\n`);

function parentOf(record: Json, pointer: string): { readonly holder: Json | unknown[]; readonly name: string } {
  const steps = pointer.split("/").slice(1);
  const name = steps.pop() ?? "";
  let holder: Json | unknown[] = record;
  for (const step of steps) holder = (Array.isArray(holder) ? holder[Number(step)] : holder[step]) as Json | unknown[];
  return { holder, name };
}

/** Makes one change. Throws when what it changes is not there: a planted fault must be planted. */
export function applyChange(dir: string, change: Change): void {
  if ("set" in change) {
    const found = findRecord(dir, change.set);
    const { holder, name } = parentOf(found.record, change.at);
    if (Array.isArray(holder)) holder[name === "-" ? holder.length : Number(name)] = change.to;
    else holder[name] = change.to;
    save(found);
  } else if ("remove" in change) {
    const found = findRecord(dir, change.remove);
    if (change.at === undefined) {
      if (found.list === null || found.list.length === 1) rmSync(found.path);
      else {
        found.list.splice(found.list.indexOf(found.record), 1);
        save(found);
      }
      return;
    }
    const { holder, name } = parentOf(found.record, change.at);
    if (Array.isArray(holder)) holder.splice(Number(name), 1);
    else if (Object.hasOwn(holder, name)) Reflect.deleteProperty(holder, name);
    else throw new Error(`${change.remove} has no ${change.at}`);
    save(found);
  } else if ("add" in change) {
    mkdirSync(dirname(join(dir, change.file)), { recursive: true });
    writeFileSync(join(dir, change.file), `${JSON.stringify(change.add, null, 2)}\n`);
  } else if ("find" in change) {
    const path = join(dir, change.file);
    const text = readFileSync(path, "utf8");
    if (!text.includes(change.find)) throw new Error(`${change.file} has no ${change.find}`);
    writeFileSync(path, text.replace(change.find, change.replace));
  } else if ("bytes" in change) writeFileSync(join(dir, change.file), Buffer.from(change.bytes, "base64"));
  else rmSync(join(dir, change.file));
}
