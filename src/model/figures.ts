import { createHash } from "node:crypto";
import type { Basis } from "./basis.ts";
import type { BoundInput, Done, Judged } from "./book.ts";
import type { CalculationInput, Claim, ListArgument } from "./calculation.ts";
import type { Kind } from "./kind.ts";
import { byCodePoint } from "./order.ts";
import { addressOf } from "./record.ts";
import { stablePath } from "./stable.ts";
import { nameOfClaim } from "./claim.ts";
import { sealed } from "./seal.ts";

const known = new WeakMap<Done, string>();

/**
 * What a designer signs for who adopts a recomputation, in twelve signs such as `7K3M-Q2PX-9D4T`: a digest of the
 * calculation, its source and edition, what it was done for (`kind:id`, with the name of a row), every
 * input, every result, and what each acceptance came to. Values are taken in the units of the calculation, unrounded to nine significant
 * digits: other digits of the same value, another machine or another form of pages give the same digest, another value
 * another. What is said beside the values (a title, how well the source is known) is no part of it. It is made when somebody
 * asks for it: of most results nobody does.
 */
export function figuresOf(kinds: ReadonlyMap<string, Kind>, done: Done): string {
  let digest = known.get(done);
  if (digest === undefined) known.set(done, (digest = digestOf(done, subjectName(kinds, done))));
  return digest;
}

function digestOf(done: Done, subject: string): string {
  const { calculation, steps, limits, accept, crossCheck } = done;
  const claim = (of: Claim, { verdict }: Judged) => `${nameOfClaim(of)} ${verdict === "passed" ? "holds" : "fails"}`;
  const lines = [
    "figures 1",
    `${calculation.id} ${subject}`,
    sourceOf(calculation.basis),
    ...Object.entries(calculation.inputs).flatMap(([symbol, input]) => inputLine(symbol, input, done)),
    ...steps.map(({ step, value }) => `= ${symbolLine(step.symbol, step, value)}`),
    ...limits.map((one) => claim(one.limit, one)),
    ...accept.map((one) => claim(one.acceptance, one)),
    ...(crossCheck === undefined ? [] : [`second method ${crossCheck.verdict === "passed" ? "agrees" : "differs"}`]),
  ];
  return sealed(createHash("sha256").update(lines.join("\n"), "utf8").digest("hex"));
}

/** What it was done for, named so that a row before it changes nothing. */
function subjectName(kinds: ReadonlyMap<string, Kind>, { subject, pointer }: Done): string {
  const kind = kinds.get(subject.kind);
  return `${addressOf(subject)} ${kind === undefined ? pointer : stablePath(kind, subject.value, pointer)}`.trimEnd();
}

const noRows: ReadonlyMap<string, string> = new Map();

/** What was read of rows, which stand in no order that means anything: what is read of each may say one. */
export function rowsRead(given: ReadonlyMap<string, ListArgument>): ReadonlyMap<string, string> {
  const rows = [...given].flatMap(([symbol, value]) =>
    typeof value === "object" ? [[symbol, value.map(canonical).sort(byCodePoint).join(" ")] as const] : [],
  );
  return rows.length === 0 ? noRows : new Map(rows);
}

/** A source and its edition, without how well it is known. */
function sourceOf(basis: Basis): string {
  if ("document" in basis) return `${basis.document}:${basis.edition ?? ""}`;
  return basis.class === "user table" ? `${basis.standard}:${basis.edition}` : "no document";
}

function inputLine(symbol: string, input: CalculationInput, { rows, inputs }: Done): readonly string[] {
  const read = rows.get(symbol);
  if (read !== undefined) return [`${symbol} ${read}`];
  const value = inputs.get(symbol)?.value;
  return value === undefined ? [] : [symbolLine(symbol, input, value)];
}

function symbolLine(
  symbol: string,
  { unit, options }: { readonly unit: string; readonly options?: readonly string[] },
  value: NonNullable<BoundInput["value"]>,
): string {
  return `${symbol} ${options?.[value] ?? `${canonicalNumber(value)} ${unit}`}`;
}

/** Nine significant digits: what the last places of a sum differ by between machines is gone, and no figure of a page. */
const canonicalNumber = (value: number): string => value.toExponential(8);

/** A value as a definition reads it from a row: numbers and bounds of a quantity, the text of a day, words, or more rows. */
function canonical(value: unknown): string {
  if (typeof value === "number") return canonicalNumber(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(" ")}]`;
  if (typeof value !== "object" || value === null) return value === undefined ? "none" : JSON.stringify(value);
  const entries = Object.entries(value);
  const written = entries.some(([name]) => name === "halfUnit") ? new Set(["text", "halfUnit", "decimals"]) : new Set();
  const told = entries.filter(([name]) => !written.has(name)).sort(([a], [b]) => byCodePoint(a, b));
  return `{${told.map(([name, one]) => `${name} ${canonical(one)}`).join(" ")}}`;
}
