import { SaxesParser } from "saxes";
import { tooMuch, type SheetBudget } from "../limits.ts";
import { damaged, refuse, Unreadable } from "../unreadable.ts";
import type { Archive } from "./zip.ts";

export type Attributes = Readonly<Record<string, string | undefined>>;

/** What is done with the elements of a part; names come without their prefix. */
export interface Handler {
  open?(name: string, attributes: Attributes): void;
  text?(text: string): void;
  close?(name: string): void;
}

/**
 * Reads a part of XML from end to end. Throws Unreadable for XML that is not well formed, for what is not UTF-8, and for
 * a document type: with it come entities, which no spreadsheet program writes.
 */
export async function readPart(archive: Archive, part: string, budget: SheetBudget, handler: Handler): Promise<void> {
  const parser = new SaxesParser({ fragment: false });
  let depth = 0;
  parser.on("error", (error) => {
    throw damaged(`its part ${part} is no well-formed XML: ${error.message}`);
  });
  parser.on("doctype", () => {
    throw refuse(
      "the file declares entities of its own",
      `its part ${part} has a document type, which no spreadsheet program writes and a hostile file does`,
      "open it in a spreadsheet program and save it anew, if you trust where it comes from",
    );
  });
  parser.on("opentag", ({ name, attributes }) => {
    if (++depth > budget.limits.depth)
      throw tooMuch(`holds elements more than ${budget.limits.depth} deep (part ${part})`, "save it anew");
    // Without `xmlns`, attributes are texts.
    handler.open?.(local(name), attributes as Attributes);
  });
  parser.on("closetag", ({ name }) => {
    depth--;
    handler.close?.(local(name));
  });
  const onText = (text: string) => handler.text?.(text);
  parser.on("text", onText);
  parser.on("cdata", onText);
  const decoder = new TextDecoder("utf-8", { fatal: true });
  const decode = (bytes?: Uint8Array) => {
    try {
      return bytes === undefined ? decoder.decode() : decoder.decode(bytes, { stream: true });
    } catch {
      throw damaged(`its part ${part} is not in UTF-8`);
    }
  };
  await archive.read(part, (bytes) => parser.write(decode(bytes)));
  try {
    parser.write(decode()).close();
  } catch (error) {
    if (error instanceof Unreadable || !(error instanceof Error)) throw error;
    throw damaged(`its part ${part} is no well-formed XML: ${error.message}`);
  }
}

const local = (name: string) => name.slice(name.indexOf(":") + 1);

/** An attribute whatever its prefix: `r:id` and, in a strict workbook of another program, `d3p1:id`. */
export const attribute = (attributes: Attributes, name: string): string | undefined =>
  attributes[name] ?? Object.entries(attributes).find(([key]) => key.includes(":") && local(key) === name)?.[1];

/** A yes-or-no attribute as XML schemas write it. */
export const isOn = (value: string | undefined): boolean => value === "1" || value === "true" || value === "on";
