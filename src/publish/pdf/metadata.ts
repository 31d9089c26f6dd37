import { Buffer } from "node:buffer";
import type { PDFContext, PDFRef } from "pdf-lib";
import { spellControls } from "../../model/spelled.ts";
import type { Publication } from "../publication.ts";
import { refText, source, textString } from "./objects.ts";

interface Described {
  readonly title: string;
  readonly subject: string;
  readonly keywords: readonly string[];
}

function describe(book: Publication): Described {
  return {
    title: `${book.number} ${book.title}, ${book.state}`,
    subject: `Manufacturing data book for ${book.client}, evidence fingerprint ${book.fingerprint}`,
    keywords: [
      "manufacturing data book",
      book.number,
      book.state,
      ...(book.interim ? ["interim, not for acceptance"] : []),
      ...(book.demonstration ? ["demonstration, invented data"] : []),
    ],
  };
}

/** The day of issue; an issue that states none gets no date at all. */
const dayOf = (book: Publication) => /^\d{4}-\d{2}-\d{2}/.exec(book.issueDate)?.[0];

/** Writes the information dictionary; every date in it is the date of issue. */
export function writeInformation(context: PDFContext, book: Publication): PDFRef {
  const { title, subject, keywords } = describe(book);
  const day = dayOf(book);
  const date = `(D:${day?.replaceAll("-", "") ?? ""}000000Z)`;
  const entries = [
    `/Title ${textString(title)}`,
    `/Author ${textString(book.maker)}`,
    `/Subject ${textString(subject)}`,
    `/Keywords ${textString(keywords.join("; "))}`,
    `/Creator ${textString(book.tool)}`,
    `/Producer ${textString(`${book.tool}, pdf-lib`)}`,
    ...(day === undefined ? [] : [`/CreationDate ${date}/ModDate ${date}`]),
  ];
  return context.register(source(`<<${entries.join("")}>>`));
}

const escapes: ReadonlyMap<string, string> = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
]);

/** Text for XML; signs that XML cannot hold, or that act, are spelled out. */
const escaped = (text: string) => spellControls(text).replace(/[&<>]/g, (sign) => escapes.get(sign) ?? sign);

/** Writes the XMP packet, uncompressed so that any program finds it. */
export function writeXmp(context: PDFContext, book: Publication): PDFRef {
  const { title, subject, keywords } = describe(book);
  const day = dayOf(book);
  const dates =
    day === undefined
      ? ""
      : `<xmp:CreateDate>${day}T00:00:00Z</xmp:CreateDate><xmp:ModifyDate>${day}T00:00:00Z</xmp:ModifyDate>`;
  const inLanguage = (name: string, text: string) =>
    `<${name}><rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt></${name}>`;
  const bag = keywords.map((word) => `<rdf:li>${escaped(word)}</rdf:li>`).join("");
  const xmp = [
    `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>`,
    `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">`,
    `<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">`,
    `<dc:format>application/pdf</dc:format>${inLanguage("dc:title", title)}${inLanguage("dc:description", subject)}`,
    `<dc:creator><rdf:Seq><rdf:li>${escaped(book.maker)}</rdf:li></rdf:Seq></dc:creator>`,
    `<dc:language><rdf:Bag><rdf:li>${escaped(book.language)}</rdf:li></rdf:Bag></dc:language>`,
    `<dc:subject><rdf:Bag>${bag}</rdf:Bag></dc:subject>`,
    `<pdf:Keywords>${escaped(keywords.join("; "))}</pdf:Keywords><pdf:Producer>${escaped(book.tool)}, pdf-lib</pdf:Producer>`,
    `<xmp:CreatorTool>${escaped(book.tool)}</xmp:CreatorTool>${dates}`,
    `</rdf:Description></rdf:RDF></x:xmpmeta>`,
    `<?xpacket end="r"?>`,
  ].join("\n");
  // As bytes: a string would be cut to one byte for each character.
  return context.register(context.stream(Buffer.from(xmp, "utf8"), { Type: "Metadata", Subtype: "XML" }));
}

/** Source of the catalog. */
export function catalogText(
  book: Publication,
  refs: Readonly<Record<"pages" | "outlines" | "destinations" | "xmp", PDFRef>>,
): string {
  return (
    `<</Type/Catalog/Version/1.7/Pages ${refText(refs.pages)}/Outlines ${refText(refs.outlines)}/PageMode/UseOutlines` +
    `/Names<</Dests ${refText(refs.destinations)}>>/PageLabels<</Nums[0<</S/D>>]>>/Lang ${textString(book.language)}` +
    `/ViewerPreferences<</DisplayDocTitle true>>/Metadata ${refText(refs.xmp)}>>`
  );
}
