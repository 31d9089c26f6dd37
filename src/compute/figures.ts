import { createHash } from "node:crypto";
import type { Basis } from "../model/basis.ts";
import type { BoundInput } from "../model/book.ts";
import type { Calculation, CalculationInput } from "../model/calculation.ts";
import { byCodePoint } from "../model/order.ts";
import type { BoundCalculation } from "./inputs.ts";
import { nameOfClaim } from "./claim.ts";
import type { Run } from "./run.ts";
import { sealed } from "./seal.ts";

/**
 * What a designer signs for who adopts a recomputation, in twelve signs such as `7K3M-Q2PX-9D4T`: a digest of the
 * calculation, its source and edition, what it was done for (`subject`, as `kind:id`, with the name of a row), every
 * input, every result, and what each acceptance came to. Values are taken in the units of the calculation, unrounded to nine significant
 * digits: other digits of the same value, another machine or another form of pages give the same digest, another value
 * another. What is said beside the values (a title, how well the source is known) is no part of it.
 */
export function figuresDigest(
  calculation: Calculation,
  subject: string,
  bound: Pick<BoundCalculation, "given" | "inputs">,
  run: Pick<Run, "steps" | "accept" | "limits" | "crossCheck">,
): string {
  const claims = (list: Run["accept"] | Run["limits"]) =>
    list.map(({ of, holds }) => `${nameOfClaim(of)} ${holds ? "holds" : "fails"}`);
  const lines = [
    "figures 1",
    `${calculation.id} ${subject}`,
    sourceOf(calculation.basis),
    ...Object.entries(calculation.inputs).flatMap(([symbol, input]) => inputLine(symbol, input, bound)),
    ...run.steps.map(({ step, value }) => `= ${symbolLine(step.symbol, step, value)}`),
    ...claims(run.limits),
    ...claims(run.accept),
    ...(run.crossCheck === undefined ? [] : [`second method ${run.crossCheck.agrees ? "agrees" : "differs"}`]),
  ];
  return sealed(createHash("sha256").update(lines.join("\n"), "utf8").digest("hex"));
}

/** A source and its edition, without how well it is known. */
function sourceOf(basis: Basis): string {
  if ("document" in basis) return `${basis.document}:${basis.edition ?? ""}`;
  return basis.class === "user table" ? `${basis.standard}:${basis.edition}` : "no document";
}

function inputLine(
  symbol: string,
  input: CalculationInput,
  { given, inputs }: Pick<BoundCalculation, "given" | "inputs">,
): readonly string[] {
  const rows = given.get(symbol);
  // Rows stand in no order that means anything: what is read of each may say one.
  if (typeof rows === "object") return [`${symbol} ${rows.map(canonical).sort(byCodePoint).join(" ")}`];
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
