import type { Finding } from "../model/finding.ts";
import { atPointer, isObject, type Json, holderOf, stepsOf } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf } from "../model/record.ts";
import { stablePath } from "../model/stable.ts";
import { findingOf } from "./file-rules.ts";
import { linesOf, type Places } from "./places.ts";

/** A number as it stands in a text, and where. */
export interface WrittenNumber {
  readonly offset: number;
  readonly text: string;
}

/** Whether a number is kept as it was written: finite, with all its digits, and not a zero with a sign. */
export function isKept(text: string): boolean {
  const value = Number(text);
  return Number.isFinite(value) && !Object.is(value, -0) && digitsOf(text) === digitsOf(String(value));
}

/** Significant digits and the power of ten behind them, the same for every way to write one number. */
function digitsOf(text: string): string {
  const [, sign = "", whole = "", part = "", power = "0"] =
    /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([+-]?\d+))?$/.exec(text) ?? [];
  const digits = `${whole}${part}`.replace(/^0+/, "");
  const kept = digits.replace(/0+$/, "");
  return kept === "" ? "0" : `${sign}${kept}e${Number(power) - part.length + digits.length - kept.length}`;
}

interface Given {
  readonly file: string;
  readonly text: string;
  readonly places: () => Places;
  readonly numbers: readonly WrittenNumber[];
  readonly root: Json;
  readonly kind: Kind | undefined;
}

interface Lost {
  readonly findings: readonly Finding[];
  /** Whether this place holds such a number: what its schema says of it is said already. */
  at(pointer: string): boolean;
  /** Whether one stands in the record at this pointer. */
  inside(record: string): boolean;
}

/**
 * Numbers that would not be kept as written, as findings; in the value they stand as the text they were written in, so that
 * pages print what the record says and nothing reads another.
 */
export function lostNumbers({ file, text, places, numbers, root, kind }: Given): Lost {
  if (numbers.length === 0) return { findings: [], at: () => false, inside: () => false };
  const lines = linesOf(text);
  const pointers = new Set<string>();
  const findings = numbers.map(({ offset, text: written }) => {
    const pointer = places().pointerAt(offset);
    pointers.add(pointer);
    replace(root, pointer, written);
    const at = /^\/records\/\d+/.exec(pointer)?.[0] ?? "";
    const inner = pointer.slice(at.length);
    const value = atPointer(root, at);
    const id = isObject(value) && Object.hasOwn(value, "id") ? value["id"] : undefined;
    const record = kind !== undefined && typeof id === "string" ? { kind: kind.name, id } : undefined;
    const where = kind !== undefined && isObject(value) ? stablePath(kind, value, inner) : pointer;
    return findingOf({
      rule: "file-number",
      place: { file, pointer, position: lines.position({ start: offset, end: offset + written.length }) },
      message: messageOf(written),
      why: "programs keep some fifteen digits of a number in JSON, and would read another number than was written",
      hint: 'a measured value is text with its unit, and keeps every digit: "12.5 mm"; write a count as a plain whole number',
      about: `${where}: ${written}`,
      ...(record !== undefined && { record, name: where, accuses: [addressOf(record, inner)] }),
    });
  });
  return {
    findings,
    at: (pointer) => pointers.has(pointer),
    inside: (record) => [...pointers].some((pointer) => pointer.startsWith(`${record}/`)),
  };
}

function messageOf(written: string): string {
  const shown = written.length > 40 ? `${written.slice(0, 39)}…` : written;
  const value = Number(written);
  if (!Number.isFinite(value)) return `${shown} is a number too large to be kept`;
  if (Object.is(value, -0) && digitsOf(written) === "0") return `${shown} is a zero with a minus`;
  if (value === 0) return `${shown} is a number too small to be kept`;
  return `${shown} is a number with more digits than are kept`;
}

function replace(root: Json, pointer: string, written: string): void {
  const holder = atPointer(root, holderOf(pointer));
  const name = stepsOf(pointer).at(-1);
  if (typeof holder === "object" && holder !== null && name !== undefined)
    (holder as Record<string, Json>)[name] = written;
}
