import { Buffer } from "node:buffer";
import { PDFRef, type PDFContext } from "pdf-lib";
import type { Appendix } from "../publication.ts";
import { newCanvas, type Canvas } from "./canvas.ts";
import type { Sheet } from "./flow.ts";
import { copyPdfPages, type Copy } from "./foreign-pages.ts";
import { copyImage } from "./images.ts";
import { mm, styles, textWidth, turned, upright } from "./measures.ts";
import { baselineIn, stack, type PageSetter } from "./paragraphs.ts";
import { setLines } from "./text.ts";

/** Name under which a sheet draws the page of an original. */
export const copyName = "O";

/** A sheet that carries a page of an original, or says why it cannot. */
export interface CopySheet extends Sheet {
  readonly copy?: PDFRef;
}

const captionHeight = mm(11);

/** Sheets with the pages of an original within the frame of the book. */
export async function originalSheets(
  context: PDFContext,
  setter: PageSetter,
  original: Appendix,
  bytes: () => Uint8Array,
): Promise<readonly CopySheet[]> {
  const before = context.largestObjectNumber;
  const foot = `Original ${original.id}`;
  const file = bytes();
  try {
    const copies = await copiesOf(context, original, file);
    return copies.map((copy, index) => {
      const shape = copy.width > copy.height * 1.05 ? turned : upright;
      const canvas = newCanvas(setter.fonts, shape);
      drawCopy(setter, canvas, original, copy, index + 1, copies.length);
      return { canvas, foot, copy: copy.ref };
    });
  } catch (error) {
    discard(context, before);
    const canvas = newCanvas(setter.fonts, upright);
    drawRefusal(setter, canvas, original, reasonOf(error, file));
    return [{ canvas, foot }];
  }
}

/** Forgets what was copied before the copying failed. */
function discard(context: PDFContext, before: number): void {
  for (let number = context.largestObjectNumber; number > before; number--) context.delete(PDFRef.of(number));
  context.largestObjectNumber = before;
}

async function copiesOf(context: PDFContext, original: Appendix, bytes: Uint8Array): Promise<readonly Copy[]> {
  const image = await copyImage(context, bytes);
  if (image !== undefined) return [image];
  if (!isPdf(bytes)) throw new RangeError(`a file of type ${original.mediaType} has no pages to print`);
  const copies = await copyPdfPages(context, bytes);
  if (copies.length === 0) throw new RangeError("it has no readable page");
  return copies;
}

/** A PDF says so within its first kilobyte. */
const isPdf = (bytes: Uint8Array) => new TextDecoder("latin1").decode(bytes.subarray(0, 1024)).includes("%PDF-");

function reasonOf(error: unknown, file: Uint8Array): string {
  const message = error instanceof Error ? error.message : String(error);
  // An encrypted file often fails as a broken one, before its trailer is read.
  if (Buffer.from(file.buffer, file.byteOffset, file.length).includes("/Encrypt")) return "the file is encrypted";
  if (error instanceof RangeError && !/call stack/i.test(message)) return message;
  return "the file is damaged or uses something this book cannot copy";
}

function drawCaption(setter: PageSetter, canvas: Canvas, original: Appendix, page: string, how: string): void {
  const { left, right, top } = canvas.shape;
  const number = setter.fonts.width("sans", styles.table.size, page);
  const title = setLines(
    setter,
    [
      { type: "strong", text: "Original " },
      { type: "link", to: original.page, text: original.id },
      `, ${original.title}`,
    ],
    styles.table,
    right - left - number - mm(8),
  ).slice(0, 1);
  stack(title, styles.table).draw(canvas, left, top);
  canvas.text(right - number, top + baselineIn(styles.table), "sans", styles.table.size, page);
  const where = [how, { type: "code" as const, text: original.path }];
  const line = setLines(setter, where, styles.remark, right - left).slice(0, 1);
  stack(line, styles.remark).draw(canvas, left, top + mm(4.2));
}

function drawCopy(
  setter: PageSetter,
  canvas: Canvas,
  original: Appendix,
  copy: Copy,
  page: number,
  pages: number,
): void {
  const { left, right, top, bottom, height } = canvas.shape;
  const upper = top + captionHeight;
  const scale = Math.min((right - left) / copy.width, (bottom - upper) / copy.height, 1);
  const percent = Math.max(1, Math.round(scale * 100));
  drawCaption(
    setter,
    canvas,
    original,
    `page ${page} of ${pages}`,
    `Copy at ${percent} % of its size. The file itself: `,
  );
  const [w, h] = [copy.width * scale, copy.height * scale];
  const x = left + (right - left - w) / 2;
  canvas.form(copyName, copy.matrix(scale, x, height - upper - h));
  const corners = [
    [x, upper],
    [x + w, upper],
    [x + w, upper + h],
    [x, upper + h],
  ] as const;
  canvas.path(corners, { weight: 0.3, hair: true }, true);
}

function drawRefusal(setter: PageSetter, canvas: Canvas, original: Appendix, reason: string): void {
  drawCaption(setter, canvas, original, "not shown", "The file itself: ");
  const { left, top } = canvas.shape;
  const said = [
    `This original cannot be shown here: ${reason}. It lies unchanged beside the book as `,
    { type: "code" as const, text: original.path },
    "; its SHA-256 is ",
    { type: "code" as const, text: original.sha256 },
    ".",
  ];
  stack(setLines(setter, said, styles.text, textWidth), styles.text).draw(canvas, left, top + mm(16));
}
