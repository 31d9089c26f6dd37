import { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import type { Box, Copied, CopiedPage, Source } from "../copied.ts";
import { damaged } from "../refused.ts";
import { appearanceOf } from "./appearances.ts";
import { newCopier, type Copier } from "./copier.ts";
import { withPdf, type PdfFile } from "./file.ts";
import { sorts } from "./left-out.ts";
import { linksOf, type Destinations } from "./links.ts";
import { numbersOf } from "./numbers.ts";
import { pagesOf, type PdfPage } from "./page-tree.ts";
import { form, pageGroup, resources } from "./shapes.ts";
import { numberSource, joined } from "./source.ts";
import { repacked, streamSource } from "./streams.ts";
import { isSigned, surveyDocument, surveyPage } from "./survey.ts";
import { isList, isStream, type PdfStream } from "./values.ts";

/**
 * The pages of a PDF as forms: their drawing, and what it needs, by an allow-list of shapes. Nothing that acts, asks or
 * runs comes along, because nothing looks for it. What is seen of annotations (stamps, filled fields, signatures) is drawn.
 */
export function copyPdf(bytes: Buffer, newBudget: () => Budget): Copied {
  return withPdf(bytes, newBudget, (file) => {
    const pages = pagesOf(file);
    const copier = newCopier(file);
    surveyDocument(file, copier.leftOut);
    const numbers = new Map(pages.flatMap(({ number }, index) => (number === undefined ? [] : [[number, index + 1]])));
    const to: Destinations = { file, pages: numbers, count: pages.length };
    const copied = pages.map((page) => copyPage(copier, page, to));
    return {
      objects: copier.objects,
      pages: copied,
      signed: isSigned(file),
      leftOut: Object.values(sorts).filter((sort) => copier.leftOut.has(sort)),
    };
  });
}

function copyPage(copier: Copier, page: PdfPage, to: Destinations): CopiedPage {
  const { file } = copier;
  const { entries } = page;
  surveyPage(file, page, copier.leftOut);
  const box = shownBox(file, page);
  const rotate = file.resolve(entries.get("Rotate"));
  const turn = typeof rotate === "number" ? (((Math.round(rotate / 90) * 90) % 360) + 360) % 360 : 0;
  const content = contentOf(copier, page);
  const group = copier.put(entries.get("Group"), pageGroup);
  const inner = copier.add({
    source: joined([
      [formHead(box), "/Resources "],
      copier.put(entries.get("Resources"), resources) ?? ["<<>>"],
      ...(group === undefined ? [] : [["/Group "], group]),
      content.source,
      [">>"],
    ]),
    bytes: content.bytes,
  });
  const object = withAppearances(copier, page, inner, box);
  return { object, box, turn, sort: "form", links: linksOf(to, page) };
}

const formHead = ({ x0, y0, x1, y1 }: Box) =>
  `<</Type/XObject/Subtype/Form/BBox[${[x0, y0, x1, y1].map(numberSource).join(" ")}]`;

/** A4, for the rare page that states no size and inherits none. */
const usual = [0, 0, 595, 842];

/** The part of the page that is shown: its crop box within its media box. */
function shownBox(file: PdfFile, { entries }: PdfPage): Box {
  const media = boxOf(numbersOf(file, entries.get("MediaBox")) ?? usual);
  const crop = boxOf(numbersOf(file, entries.get("CropBox")) ?? []);
  if (media === undefined) throw damaged("a page of it has no size");
  if (crop === undefined) return media;
  const box = {
    x0: Math.max(media.x0, crop.x0),
    y0: Math.max(media.y0, crop.y0),
    x1: Math.min(media.x1, crop.x1),
    y1: Math.min(media.y1, crop.y1),
  };
  return box.x1 - box.x0 > 1 && box.y1 - box.y0 > 1 ? box : media;
}

/** Sides beyond this are no paper; the largest sheet a PDF page can name is 14 400 points wide. */
const largest = 1e6;

function boxOf(numbers: readonly number[]): Box | undefined {
  const [a = 0, b = 0, c = 0, d = 0] = numbers;
  const box = { x0: Math.min(a, c), y0: Math.min(b, d), x1: Math.max(a, c), y1: Math.max(b, d) };
  const sound = numbers.length === 4 && Object.values(box).every((side) => Math.abs(side) <= largest);
  return sound && box.x1 - box.x0 >= 1 && box.y1 - box.y0 >= 1 ? box : undefined;
}

/** Content of a page: one stream is taken as it is, several are joined. */
function contentOf(copier: Copier, { entries }: PdfPage): { readonly source: Source; readonly bytes: Uint8Array } {
  const { file } = copier;
  const contents = file.resolve(entries.get("Contents"));
  if (contents === null) return { source: [], bytes: new Uint8Array() };
  const streams = (isList(contents) ? contents.map((item) => file.resolve(item)) : [contents]).map(
    (value): PdfStream => {
      if (!isStream(value)) throw damaged("the content of a page of it is missing");
      return value;
    },
  );
  const [only] = streams;
  if (only !== undefined && streams.length === 1) {
    const packed = streamSource(only, "data", copier);
    if (packed !== undefined) return packed;
  }
  const parts = streams.filter(({ entries: own }) => !own.has("F")).map((stream) => file.content(stream));
  if (parts.length < streams.length) copier.leftOut.add(sorts.files);
  if (parts.reduce((sum, part) => sum + part.length, 0) > file.budget.limits.stage) throw file.budget.tooMuch();
  return {
    source: ["/Filter/FlateDecode"],
    bytes: repacked(Buffer.concat(parts.flatMap((part) => [part, Buffer.from("\n")]))),
  };
}

/** The page with the looks of its annotations drawn over it. */
function withAppearances(copier: Copier, { entries }: PdfPage, inner: number, box: Box): number {
  const { file } = copier;
  const forms: Source[] = [["/P ", inner]];
  const drawn: string[] = [];
  const annotations = file.resolve(entries.get("Annots"));
  for (const annotation of isList(annotations) ? annotations : []) {
    const own = file.dict(annotation);
    const placed = own === undefined ? undefined : appearanceOf(file, own);
    const look = placed === undefined ? undefined : copier.put(placed.look, form);
    if (placed === undefined || look === undefined) continue;
    const name = `A${forms.length}`;
    forms.push([`/${name} `], look);
    drawn.push(`q ${placed.matrix.map((value) => String(Math.round(value * 1e5) / 1e5)).join(" ")} cm /${name} Do Q`);
  }
  if (drawn.length === 0) return inner;
  return copier.add({
    source: joined([[formHead(box), "/Resources<</XObject<<"], ...forms, [">>>>/Filter/FlateDecode>>"]]),
    bytes: repacked(Buffer.from(`q /P Do Q\n${drawn.join("\n")}`, "latin1")),
  });
}
