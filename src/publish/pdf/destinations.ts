import type { PDFContext, PDFRef } from "pdf-lib";
import { byteText, literal, refText, source } from "./objects.ts";

/** A point on a page, in PDF coordinates. */
export interface Destination {
  readonly page: PDFRef;
  readonly top: number;
}

const leafSize = 64;

/** Writes the name tree of all destinations, sorted by bytes as readers search it. */
export function writeDestinations(context: PDFContext, destinations: ReadonlyMap<string, Destination>): PDFRef {
  const named = [...destinations].map(([name, to]) => ({ name, bytes: byteText(name), to }));
  named.sort((a, b) => (a.bytes < b.bytes ? -1 : a.bytes > b.bytes ? 1 : 0));
  const kids: string[] = [];
  for (let at = 0; at < named.length; at += leafSize) {
    const leaf = named.slice(at, at + leafSize);
    const names = leaf
      .map(({ name, to }) => `${literal(name)}[${refText(to.page)}/XYZ 0 ${Math.round(to.top)} null]`)
      .join("");
    const limits = `${literal(leaf[0]?.name ?? "")}${literal(leaf.at(-1)?.name ?? "")}`;
    kids.push(refText(context.register(source(`<</Limits[${limits}]/Names[${names}]>>`))));
  }
  return context.register(source(`<</Kids[${kids.join(" ")}]>>`));
}
