import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";

/** One change to a book on disk. Records are found by kind and id, wherever they stand. */
export type Change =
  | { readonly set: string; readonly at: string; readonly to: unknown }
  | { readonly remove: string; readonly at?: string }
  | { readonly add: unknown; readonly file: string }
  | { readonly file: string; readonly find: string; readonly replace: string }
  | { readonly file: string; readonly bytes: string }
  | { readonly file: string; readonly leadsTo: string }
  | { readonly file: string; readonly gone: true };

interface Json {
  [name: string]: unknown;
}

/** Record files of a book folder, with full paths. */
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

/**
 * Makes one change and returns the file it changed. Throws when what it changes is not there: a planted fault must be
 * planted.
 */
export function applyChange(dir: string, change: Change): string {
  if ("set" in change) return setValue(dir, change.set, change.at, change.to);
  if ("remove" in change)
    return change.at === undefined ? takeOut(dir, change.remove) : cut(dir, change.remove, change.at);
  const path = join(dir, change.file);
  if ("add" in change) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, `${JSON.stringify(change.add, null, 2)}\n`);
  } else if ("find" in change) {
    const text = readFileSync(path, "utf8");
    if (!text.includes(change.find)) throw new Error(`${change.file} has no ${change.find}`);
    writeFileSync(
      path,
      text.replace(change.find, () => change.replace),
    );
  } else if ("bytes" in change) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, Buffer.from(change.bytes, "base64"));
  } else {
    if ("gone" in change || statSync(path, { throwIfNoEntry: false }) !== undefined) rmSync(path);
    if ("leadsTo" in change) symlinkSync(change.leadsTo, path);
  }
  return change.file;
}

function setValue(dir: string, name: string, at: string, to: unknown): string {
  const found = findRecord(dir, name);
  const { holder, name: last } = parentOf(found.record, at);
  if (Array.isArray(holder)) holder[last === "-" ? holder.length : Number(last)] = to;
  else holder[last] = to;
  save(found);
  return relative(dir, found.path);
}

function takeOut(dir: string, name: string): string {
  const found = findRecord(dir, name);
  if (found.list === null || found.list.length === 1) rmSync(found.path);
  else {
    found.list.splice(found.list.indexOf(found.record), 1);
    save(found);
  }
  return relative(dir, found.path);
}

function cut(dir: string, name: string, at: string): string {
  const found = findRecord(dir, name);
  const { holder, name: last } = parentOf(found.record, at);
  const held = Array.isArray(holder) ? Number(last) < holder.length : Object.hasOwn(holder, last);
  if (!held) throw new Error(`${name} has no ${at}`);
  if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else Reflect.deleteProperty(holder, last);
  save(found);
  return relative(dir, found.path);
}
