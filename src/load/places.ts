import type { Position } from "../model/place.ts";
import { stepsOf } from "../model/json.ts";

/** Offsets of a value, or of a member's name, in the text of a file; `end` is exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Where everything stands in one JSON text. Each object or list is looked into once, when a place in it is asked for. */
export interface Places {
  /** The value a JSON pointer names; if it is absent, the nearest value around it. */
  value(pointer: string): Span;
  /** The name of a member, quotes included; undefined for items of lists and for what is absent. */
  name(pointer: string): Span | undefined;
  /** Pointer of the innermost member or item that an offset lies in. */
  pointerAt(offset: number): string;
}

interface Children {
  /** Names of members; undefined for a list. */
  readonly names: readonly string[] | undefined;
  readonly nameSpans: readonly Span[];
  readonly values: readonly Span[];
}

const none: Children = { names: undefined, nameSpans: [], values: [] };

/** Places of a text that `JSON.parse` accepts. Of two members of one name the last counts, as it does for `JSON.parse`. */
export function placesOf(text: string): Places {
  const known = new Map<number, Children>();
  const root: Span = (() => {
    const start = skipBlanks(text, 0);
    return { start, end: skipValue(text, start) };
  })();

  const inside = (span: Span): Children => {
    let children = known.get(span.start);
    if (children === undefined) known.set(span.start, (children = childrenOf(text, span.start)));
    return children;
  };
  const find = (pointer: string): { value: Span; name: Span | undefined; found: boolean } => {
    let value = root;
    let name: Span | undefined;
    for (const step of stepsOf(pointer)) {
      const { names, nameSpans, values } = inside(value);
      const index = names === undefined ? (/^(0|[1-9]\d*)$/.test(step) ? Number(step) : -1) : names.lastIndexOf(step);
      const next = values[index];
      if (next === undefined) return { value, name, found: false };
      value = next;
      name = nameSpans[index];
    }
    return { value, name, found: true };
  };

  return {
    value: (pointer) => find(pointer).value,
    name(pointer) {
      const { name, found } = find(pointer);
      return found ? name : undefined;
    },
    pointerAt(offset) {
      let pointer = "";
      for (let value = root; ;) {
        const { names, nameSpans, values } = inside(value);
        const index = values.findIndex(
          ({ end }, i) => (nameSpans[i] ?? values[i] ?? value).start <= offset && offset < end,
        );
        const next = values[index];
        if (next === undefined) return pointer;
        pointer += `/${(names?.[index] ?? String(index)).replaceAll("~", "~0").replaceAll("/", "~1")}`;
        value = next;
      }
    },
  };
}

function childrenOf(text: string, start: number): Children {
  const open = text[start];
  if (open !== "{" && open !== "[") return none;
  const names: string[] = [];
  const nameSpans: Span[] = [];
  const values: Span[] = [];
  let at = skipBlanks(text, start + 1);
  while (at < text.length && text[at] !== "}" && text[at] !== "]") {
    if (open === "{") {
      const end = skipString(text, at);
      const name: unknown = JSON.parse(text.slice(at, end));
      names.push(String(name));
      nameSpans.push({ start: at, end });
      at = skipBlanks(text, skipBlanks(text, end) + 1);
    }
    const end = skipValue(text, at);
    values.push({ start: at, end });
    at = skipBlanks(text, end);
    if (text[at] === ",") at = skipBlanks(text, at + 1);
  }
  return { names: open === "{" ? names : undefined, nameSpans, values };
}

function skipBlanks(text: string, from: number): number {
  let at = from;
  for (let sign = text.charCodeAt(at); sign === 32 || sign === 10 || sign === 13 || sign === 9;) {
    sign = text.charCodeAt(++at);
  }
  return at;
}

function skipString(text: string, from: number): number {
  let at = from + 1;
  for (let sign = text.charCodeAt(at); at < text.length && sign !== 34; sign = text.charCodeAt(at))
    at += sign === 92 ? 2 : 1;
  return at + 1;
}

function skipValue(text: string, from: number): number {
  const first = text.charCodeAt(from);
  if (first === 34) return skipString(text, from);
  let at = from;
  if (first !== 123 && first !== 91) {
    while (at < text.length && !/[\s,\]}]/.test(text[at] ?? "")) at++;
    return at;
  }
  for (let depth = 0; at < text.length;) {
    const sign = text.charCodeAt(at);
    if (sign === 34) {
      at = skipString(text, at);
      continue;
    }
    if (sign === 123 || sign === 91) depth++;
    else if ((sign === 125 || sign === 93) && --depth === 0) return at + 1;
    at++;
  }
  return at;
}

/** Lines of a text, for line and column of an offset and for showing a line. Lines end with LF or CR LF. */
export interface Lines {
  readonly position: (span: Span) => Position;
  readonly line: (number: number) => string | undefined;
}

export function linesOf(text: string): Lines {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  const endOf = (index: number) => {
    const next = starts[index + 1];
    if (next === undefined) return text.length;
    return text[next - 2] === "\r" && next - 2 >= (starts[index] ?? 0) ? next - 2 : next - 1;
  };
  const lineOf = (offset: number) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  return {
    position({ start, end }) {
      const index = lineOf(start);
      const length = Math.max(0, Math.min(end, endOf(index)) - start);
      return { line: index + 1, column: start - (starts[index] ?? 0) + 1, length };
    },
    line(number) {
      const start = starts[number - 1];
      return start === undefined ? undefined : text.slice(start, endOf(number - 1));
    },
  };
}
