import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRef, PDFString } from "pdf-lib";

/** A book read back object by object, by other code than wrote it. */
export interface ReadBack {
  readonly pages: number;
  /** Page, counted from 1, of each named destination. */
  readonly destinations: ReadonlyMap<string, number>;
  readonly links: readonly { readonly page: number; readonly dest?: string; readonly uri?: string }[];
  readonly outline: readonly { readonly level: number; readonly title: string; readonly dest: string }[];
  readonly id: string;
}

const textOf = (object: unknown): string => {
  if (object instanceof PDFHexString || object instanceof PDFString) return object.decodeText();
  throw new TypeError(`expected a string, found ${String(object)}`);
};

export async function readBack(bytes: Uint8Array): Promise<ReadBack> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: true });
  const pages = document.getPages();
  const numbers = new Map(pages.map((page, index) => [page.ref, index + 1]));
  const { catalog, context } = document;
  const dict = (object: unknown): PDFDict | undefined => {
    const found = object instanceof PDFRef ? context.lookup(object) : object;
    return found instanceof PDFDict ? found : undefined;
  };
  const destinations = new Map<string, number>();
  const walkNames = (node: PDFDict | undefined): void => {
    const names = node?.lookup(PDFName.of("Names"));
    if (names instanceof PDFArray)
      for (let at = 0; at + 1 < names.size(); at += 2) {
        const to = names.lookup(at + 1, PDFArray).get(0);
        destinations.set(textOf(names.lookup(at)), to instanceof PDFRef ? (numbers.get(to) ?? 0) : 0);
      }
    const kids = node?.lookup(PDFName.of("Kids"));
    if (kids instanceof PDFArray) for (const kid of kids.asArray()) walkNames(dict(kid));
  };
  walkNames(dict(dict(catalog.get(PDFName.of("Names")))?.get(PDFName.of("Dests"))));
  const links = pages.flatMap((page, index) =>
    (page.node.Annots()?.asArray() ?? []).map((annotation) => {
      const link = dict(annotation);
      const dest = link?.lookup(PDFName.of("Dest"));
      const uri = dict(link?.get(PDFName.of("A")))?.lookup(PDFName.of("URI"));
      return {
        page: index + 1,
        ...(dest !== undefined && { dest: textOf(dest) }),
        ...(uri !== undefined && { uri: textOf(uri) }),
      };
    }),
  );
  const outline: { level: number; title: string; dest: string }[] = [];
  const walkOutline = (item: PDFDict | undefined, level: number): void => {
    for (
      let node = dict(item?.get(PDFName.of("First")));
      node !== undefined;
      node = dict(node.get(PDFName.of("Next")))
    ) {
      outline.push({
        level,
        title: textOf(node.lookup(PDFName.of("Title"))),
        dest: textOf(node.lookup(PDFName.of("Dest"))),
      });
      walkOutline(node, level + 1);
    }
  };
  walkOutline(dict(catalog.get(PDFName.of("Outlines"))), 1);
  const id = context.trailerInfo.ID;
  return { pages: pages.length, destinations, links, outline, id: id instanceof PDFArray ? id.toString() : "" };
}
