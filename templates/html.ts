import { spellControlsInLines } from "../src/model/spelled.ts";

const markup = Symbol("markup");

/** Markup that may be printed as it is. Only `html` and `trusted` make it; a string is always text. */
export interface Html {
  readonly [markup]: string;
}

/** What may stand in a hole of a template: text is escaped, lists are joined, what is absent prints nothing. */
export type Hole = Html | string | number | false | null | undefined | readonly Hole[];

/**
 * Tag for templates: every hole is escaped unless it is markup itself. Attribute values must stand in double quotes. The
 * indentation of a template is not printed.
 */
export function html(parts: TemplateStringsArray, ...holes: readonly Hole[]): Html {
  const [first = "", ...rest] = plainParts(parts);
  return trusted(rest.reduce((text, part, index) => text + print(holes[index]) + part, first));
}

const known = new WeakMap<TemplateStringsArray, readonly string[]>();

function plainParts(parts: TemplateStringsArray): readonly string[] {
  const found = known.get(parts) ?? parts.map((part) => part.replaceAll(/\s*\n\s*/g, "\n"));
  known.set(parts, found);
  return found;
}

/** Declares a string to be markup. Only for text that was escaped by whoever made it. */
export const trusted = (text: string): Html => ({ [markup]: text });

/** The finished markup as a string. */
export const textOf = (value: Html): string => value[markup];

/** An attribute with its leading space, or nothing when it has no value. */
export function attribute(name: string, value: string | number | undefined): Html {
  return value === undefined ? trusted("") : trusted(` ${name}="${escape(String(value))}"`);
}

function print(hole: Hole): string {
  if (hole === false || hole === null || hole === undefined) return "";
  if (typeof hole === "string") return escape(hole);
  if (typeof hole === "number") return String(hole);
  if (isList(hole)) return hole.map(print).join("");
  return hole[markup];
}

// `Array.isArray` does not narrow a readonly array.
const isList = (hole: Html | readonly Hole[]): hole is readonly Hole[] => Array.isArray(hole);

const entities: ReadonlyMap<string, string> = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
  ["'", "&#39;"],
]);

/** Text safe in content and in quoted attributes. */
const escape = (text: string): string =>
  harmless.test(text) ? text : spellControlsInLines(text).replaceAll(/[&<>"']/g, (sign) => entities.get(sign) ?? sign);

/** Nearly all text: nothing to escape and nothing that cannot be shown. */
const harmless = /^[ !#-%(-;=?-~]*$/;
