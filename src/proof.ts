import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Definitions } from "./model/definitions.ts";
import { sha256 } from "./model/fingerprint.ts";
import type { Kind } from "./model/kind.ts";
import { byCodePoint } from "./model/order.ts";
import { ProgramError } from "./model/program-error.ts";
import { bundleHere } from "./root.ts";

/** What the paths of a rule or calculation are found to be when they are checked: what its place in the plan follows from. */
export interface CheckedPaths {
  readonly crosses: boolean;
  readonly whole: boolean;
  readonly calculations: readonly string[];
}

/** By "rule ID" and "calculation ID". */
export type AllCheckedPaths = Readonly<Record<string, CheckedPaths>>;

/**
 * What `npm run build` has proved of what is shipped, so that no start has to prove it again. It is written together with the
 * bundle and read there only: modules that were compiled since are never taken for proved, nor are data files that have changed.
 */
export interface Proof {
  /** Hashes of the files that were checked. */
  readonly schemas: string;
  readonly tables: string;
  /** Hash of the bundle's own files, its threads apart: of other code nothing was proved. */
  readonly code: string;
  readonly paths: AllCheckedPaths;
}

export const proofFile = "proof.json";
export const codeFile = "code.json";

let read: { readonly proof: Proof | undefined } | undefined;

/** The proof of this program; undefined where it is run from its modules or sources: then everything is checked. */
export function proofHere(): Proof | undefined {
  if (read === undefined) {
    const proof = fromBundle(proofFile) as Proof | undefined;
    read = { proof: bundleHere !== undefined && proof?.code === hashOfFiles(bundleHere, ".js") ? proof : undefined };
  }
  return read.proof;
}

function fromBundle(name: string): unknown {
  if (bundleHere === undefined || !existsSync(join(bundleHere, name))) return undefined;
  try {
    return JSON.parse(readFileSync(join(bundleHere, name), "utf8")) as unknown;
  } catch {
    throw new ProgramError(`${join(bundleHere, name)} cannot be read: npm run build writes it again`);
  }
}

/** One hash of all files of a folder with an ending, names and bytes. */
export function hashOfFiles(dir: string, ending = ".json"): string {
  const names = readdirSync(dir).filter((name) => name.endsWith(ending));
  return sha256(
    names
      .sort(byCodePoint)
      .flatMap((name) => [name, sha256(readFileSync(join(dir, name)))])
      .join("\n"),
  );
}

/** Folders of data that differ from those the program was built with; none where nothing was proved of what runs. */
export function changedSinceBuild(folders: Readonly<Record<"schemas" | "tables", string>>): readonly string[] {
  const proof = proofHere();
  if (proof === undefined) return [];
  return (["schemas", "tables"] as const).filter((name) => hashOfFiles(folders[name]) !== proof[name]);
}

const kindsProved = new WeakSet<ReadonlyMap<string, Kind>>();
const pathsProved = new WeakMap<Definitions, AllCheckedPaths>();

/** Notes that these kinds, and no others, are those of the proof. */
export const noteProvedKinds = (kinds: ReadonlyMap<string, Kind>): unknown => kindsProved.add(kinds);

/** Notes that these definitions are those shipped, with all their tables: proved, if their kinds are. */
export function noteShipped(definitions: Definitions, tables: string): void {
  const proof = proofHere();
  if (proof !== undefined && kindsProved.has(definitions.kinds) && hashOfFiles(tables) === proof.tables)
    pathsProved.set(definitions, proof.paths);
}

/** What is proved of the paths of these very definitions; a copy of them, changed or not, is to be checked. */
export const provedPaths = (definitions: Definitions): AllCheckedPaths | undefined => pathsProved.get(definitions);

type Code = (...args: never[]) => unknown;

/** The functions within a value, in the order in which they stand. */
export function functionsIn(value: unknown): readonly Code[] {
  const all: Code[] = [];
  JSON.stringify(value, (_name, one: unknown) => {
    if (typeof one !== "function") return one;
    all.push(one as Code);
    return undefined;
  });
  return all;
}

const codes = new WeakMap<Code, string>();

/** Notes the functions of the definitions that are shipped: their code is known as their modules have it. */
export function noteCode(shipped: unknown): void {
  const texts = fromBundle(codeFile) as readonly string[] | undefined;
  if (texts === undefined) return;
  for (const [index, one] of functionsIn(shipped).entries()) codes.set(one, texts[index] ?? "");
}

/** The code of a function that is part of what a definition says: the same, whether modules stand put together or not. */
export const codeOf = (one: Code): string => codes.get(one) ?? String(one);
