import type { PDFContext, PDFRef } from "pdf-lib";
import type { Desk } from "../../foreign/desk.ts";
import type { Appendix } from "../publication.ts";
import { newCanvas, type Canvas } from "./canvas.ts";
import { takeIn, type Copy } from "./copies.ts";
import type { Sheet } from "./flow.ts";
import { mm, styles, textWidth, turned, upright } from "./measures.ts";
import { baselineIn, stack, type PageSetter } from "./paragraphs.ts";
import { copyDest } from "./scans.ts";
import { setLines } from "./text.ts";

/** Name under which a sheet draws the page of an original. */
export const copyName = "O";

/** A sheet that carries a page of an original, or says why it cannot. */
export interface CopySheet extends Sheet {
  readonly copy?: PDFRef;
}

const captionHeight = mm(11);

/**
 * Sheets with the pages of an original within the frame of the book. What of the file may come along, and whether it can,
 * is found at the desk: nothing here reads the file.
 */
export async function originalSheets(
  context: PDFContext,
  setter: PageSetter,
  original: Appendix,
  desk: Pick<Desk, "copy">,
  bytes: () => Uint8Array,
): Promise<readonly CopySheet[]> {
  const foot = `Original ${original.id}`;
  const refusal = (why: string, beside: boolean): readonly CopySheet[] => {
    const canvas = newCanvas(setter.fonts, upright);
    drawRefusal(setter, canvas, original, why, beside);
    return [{ canvas, foot }];
  };
  if (original.notShown !== undefined) return refusal(original.notShown.why, original.notShown.beside);
  const { nature, copied } = await desk.copy(original.path, bytes());
  if (copied === null) return refusal(nature.fault?.found ?? "a file of its form is not printed", nature.published);
  const copies = takeIn(context, copied);
  return copies.map((copy, index) => {
    const shape = copy.width > copy.height * 1.05 ? turned : upright;
    const canvas = newCanvas(setter.fonts, shape);
    drawCopy(setter, canvas, original, copy, { page: index + 1, pages: copies.length, leftOut: copied.leftOut });
    return { canvas, foot, copy: copy.ref };
  });
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

interface Which {
  readonly page: number;
  readonly pages: number;
  readonly leftOut: readonly string[];
}

function drawCopy(
  setter: PageSetter,
  canvas: Canvas,
  original: Appendix,
  copy: Copy,
  { page, pages, leftOut }: Which,
): void {
  const { left, right, top, bottom, height } = canvas.shape;
  // Said once, on the first page, where a reader begins.
  const remark =
    leftOut.length === 0 || page > 1
      ? undefined
      : stack(
          setLines(
            setter,
            [`Left out of this copy: ${leftOut.join("; ")}. The untouched file lies beside the book.`],
            styles.remark,
            right - left,
          ),
          styles.remark,
        );
  const upper = top + captionHeight + (remark === undefined ? 0 : remark.height);
  const scale = Math.min((right - left) / copy.width, (bottom - upper) / copy.height, 1);
  const percent = Math.max(1, Math.round(scale * 100));
  drawCaption(
    setter,
    canvas,
    original,
    `page ${page} of ${pages}`,
    `Copy at ${percent} % of its size. The file itself: `,
  );
  remark?.draw(canvas, left, top + mm(8.2));
  const [w, h] = [copy.width * scale, copy.height * scale];
  const x = left + (right - left - w) / 2;
  const y = height - upper - h;
  canvas.form(copyName, copy.matrix(scale, x, y));
  for (const { rect, page: to } of copy.links) {
    const [x0, y0] = copy.place(scale, x, y, [rect[0], rect[1]]);
    const [x1, y1] = copy.place(scale, x, y, [rect[2], rect[3]]);
    const area = { x: Math.min(x0, x1), y: height - Math.max(y0, y1) };
    const size = { width: Math.abs(x1 - x0), height: Math.abs(y1 - y0) };
    if (area.x >= left && area.y >= upper && area.x + size.width <= right && area.y + size.height <= bottom)
      canvas.link({ ...area, ...size, to: { dest: copyDest(original.path, to) } });
  }
  const corners = [
    [x, upper],
    [x + w, upper],
    [x + w, upper + h],
    [x, upper + h],
  ] as const;
  canvas.path(corners, { weight: 0.3, hair: true }, true);
}

function drawRefusal(setter: PageSetter, canvas: Canvas, original: Appendix, why: string, beside: boolean): void {
  drawCaption(setter, canvas, original, "not shown", beside ? "The file itself: " : "Not published: ");
  const { left, top } = canvas.shape;
  const hash = ["; its SHA-256 is ", { type: "code" as const, text: original.sha256 }, "."];
  const said = beside
    ? [
        `This original is not shown here: ${why}. It lies unchanged beside the book as `,
        { type: "code" as const, text: original.path },
        ...hash,
      ]
    : [`This original is not published: ${why}. Its record remains`, ...hash];
  stack(setLines(setter, said, styles.text, textWidth), styles.text).draw(canvas, left, top + mm(16));
}
