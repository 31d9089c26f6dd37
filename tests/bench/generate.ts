import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

interface Json {
  [name: string]: unknown;
}

/**
 * Writes a large book: the demonstration with its joints, weld logs and test reports copied until it holds at least
 * `joints` joints. Returns how many there are. Everything else stays as it is, so the copies are judged like real ones.
 */
export function generateBook(from: string, to: string, joints: number): number {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(to, { recursive: true });
  cpSync(from, to, { recursive: true });
  const all = jsonFiles(to).flatMap((path) => recordsOf(path));
  const of = (kind: string) => all.filter((one) => one.kind === kind).map(({ record }) => record);
  const originals = of("joint");
  const copies = Math.ceil((joints - originals.length) / originals.length);
  for (let copy = 1; copy <= copies; copy++) {
    const tail = `.${String(copy).padStart(4, "0")}`;
    const renamed = new Set(
      [...originals, ...of("weld-log"), ...of("ndt-report"), ...of("repair")].map((record) => String(record["id"])),
    );
    for (const kind of ["joint", "weld-log", "ndt-report", "repair"]) {
      const records = of(kind).map((record) => renameIn(record, renamed, tail) as Json);
      if (records.length === 0) continue;
      mkdirSync(join(to, "copies", kind), { recursive: true });
      writeFileSync(
        join(to, "copies", kind, `${String(copy).padStart(4, "0")}.json`),
        `${JSON.stringify({ kind, records }, null, 2)}\n`,
      );
    }
  }
  return originals.length * (copies + 1);
}

/** Every mention of a copied record, alone, before `#`, or after `kind:`, gets the tail. */
function renameIn(value: unknown, ids: ReadonlySet<string>, tail: string): unknown {
  if (typeof value === "string") {
    const match = /^(?:([a-z-]+):)?([A-Z0-9.-]+)(#.+)?$/.exec(value);
    if (match === null || !ids.has(match[2] ?? "")) return value;
    const row = match[3] === undefined ? "" : ids.has(match[3].slice(1)) ? `${match[3]}${tail}` : match[3];
    return `${match[1] === undefined ? "" : `${match[1]}:`}${match[2] ?? ""}${tail}${row}`;
  }
  if (Array.isArray(value)) return value.map((one) => renameIn(one, ids, tail));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, renameIn(member, ids, tail)]));
}

export function jsonFiles(dir: string): string[] {
  return readdirSync(dir, { withFileTypes: true }).flatMap((entry) => {
    const path = join(dir, entry.name);
    if (entry.isDirectory()) return entry.name === "files" ? [] : jsonFiles(path);
    return entry.name.endsWith(".json") ? [path] : [];
  });
}

function recordsOf(path: string): { readonly kind: string; readonly record: Json }[] {
  const content = JSON.parse(readFileSync(path, "utf8")) as Json;
  const kind = String(content["kind"]);
  return (Array.isArray(content["records"]) ? (content["records"] as Json[]) : [content]).map((record) => ({
    kind,
    record,
  }));
}
