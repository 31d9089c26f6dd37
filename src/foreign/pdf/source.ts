import type { Source } from "../copied.ts";
import { isName, isText, type PdfValue } from "./values.ts";

/** A name as PDF source, whatever signs it holds. */
export const nameSource = (name: string): string =>
  /^[A-Za-z0-9_.+*:@-]*$/.test(name)
    ? `/${name}`
    : `/${name.replaceAll(/[^A-Za-z0-9_.+*:@-]/g, (sign) => `#${(sign.charCodeAt(0) & 0xff).toString(16).padStart(2, "0")}`)}`;

/** A number as PDF source: no exponent, and no more than other readers can hold. */
export function numberSource(value: number): string {
  const held = Math.min(Math.max(value, -2e9), 2e9);
  return Number.isInteger(held) ? String(held) : String(Number(held.toFixed(6)));
}

/** A value without parts; undefined for anything else. */
export function plainSource(value: PdfValue): string | undefined {
  if (typeof value === "number") return numberSource(value);
  if (typeof value === "boolean") return String(value);
  if (isName(value)) return nameSource(value.name);
  if (isText(value)) return `<${value.bytes.toString("hex")}>`;
  return undefined;
}

/** Pieces joined, with neighbouring texts made one. */
export function joined(pieces: readonly Source[]): Source {
  const out: (string | number)[] = [];
  for (const piece of pieces)
    for (const item of piece) {
      const last = out.at(-1);
      if (typeof item === "string" && typeof last === "string") out[out.length - 1] = last + item;
      else out.push(item);
    }
  return out;
}
