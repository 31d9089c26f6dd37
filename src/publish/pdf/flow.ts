import { newCanvas, type Canvas } from "./canvas.ts";
import type { Fonts } from "./fonts.ts";
import { mm, noteLeft, turned, upright, type SheetShape } from "./measures.ts";

/** Something of a known height that is never parted. */
export interface Piece {
  /** Left out at the top of a sheet. */
  readonly space?: number;
  readonly height: number;
  draw(canvas: Canvas, x: number, y: number): void;
  /** Brings its own distance to whatever follows. */
  readonly leads?: boolean;
  /** Not parted from the piece after it. */
  readonly keep?: boolean;
  /** Stands in the margin, level with the piece. */
  readonly notes?: Drawn;
  /** Runs across text and notes. */
  readonly wide?: boolean;
  /** Needs a page turned landscape. */
  readonly turned?: boolean;
  /** Destinations that lie here. */
  readonly dests?: readonly string[];
  /** Repeated above the piece when a new sheet begins with it. */
  readonly again?: Drawn;
  /** Drawn below the piece when the sheet ends with it. */
  readonly closing?: Drawn;
}

export interface Drawn {
  readonly height: number;
  draw(canvas: Canvas, x: number, y: number): void;
}

/** A finished or unfinished sheet of the book. */
export interface Sheet {
  readonly canvas: Canvas;
  /** Middle of the foot: the section it belongs to. */
  readonly foot: string;
}

export interface Place {
  readonly sheet: number;
  /** From the top of the sheet, in points. */
  readonly y: number;
}

/** Fills sheets from top to bottom. */
export interface Flow {
  readonly places: ReadonlyMap<string, Place>;
  /**
   * Begins a page of the book: on a new sheet, or, when it may follow, below what the sheet holds already, if there is
   * room to speak of.
   */
  begin(dest: string, foot: string, follows?: boolean): void;
  add(pieces: Iterable<Piece>): void;
  /** Closes the last sheet. */
  end(): void;
}

const noteGap = mm(2);
/** A page that follows another on its sheet stands this far below it, and wants at least this much room. */
const followGap = mm(14);
const followRoom = mm(95);

/** `closed` receives each sheet, in order, as soon as nothing more is drawn on it. */
export function newFlow(fonts: Fonts, closed: (sheet: Sheet) => void): Flow {
  let count = 0;
  let canvas = newCanvas(fonts, upright);
  const places = new Map<string, Place>();
  let shape: SheetShape = upright;
  let foot = "";
  let sheetFoot = "";
  let y = 0;
  let noteBottom = 0;
  let last: Piece | undefined;
  /** A page that may follow on this sheet, until its first pieces show whether they do. */
  let following: { readonly dest: string; readonly from: number } | undefined;

  const finish = () => {
    if (count > 0) closed({ canvas, foot: sheetFoot });
  };
  const open = (next: SheetShape) => {
    finish();
    count += 1;
    shape = next;
    sheetFoot = foot;
    canvas = newCanvas(fonts, shape);
    y = noteBottom = shape.top;
    last = undefined;
  };
  const startOf = (piece: Piece, before: Piece | undefined, from: number, notesEnd: number) => {
    const start = from === shape.top || before?.leads === true ? from : from + (piece.space ?? 0);
    return piece.wide === true || piece.notes !== undefined
      ? Math.max(start, notesEnd > shape.top ? notesEnd + noteGap : 0)
      : start;
  };
  const endOf = (chunk: readonly Piece[], from: number, notesEnd: number): number => {
    let at = from;
    let notes = notesEnd;
    let before = last;
    for (const piece of chunk) {
      const start = startOf(piece, before, at, notes);
      before = piece;
      at = start + piece.height;
      if (piece.notes !== undefined) notes = start + piece.notes.height;
    }
    return Math.max(at, chunk.some((piece) => piece.notes !== undefined) ? notes : 0);
  };
  const turnOver = (next: SheetShape, piece: Piece | undefined) => {
    last?.closing?.draw(canvas, shape.left, y);
    open(next);
    if (piece?.again !== undefined) {
      piece.again.draw(canvas, shape.left, y);
      y += piece.again.height;
    }
  };
  const put = (piece: Piece) => {
    const start = startOf(piece, last, y, noteBottom);
    for (const dest of piece.dests ?? []) if (!places.has(dest)) places.set(dest, { sheet: count - 1, y: start });
    piece.draw(canvas, shape.left, start);
    y = start + piece.height;
    if (piece.notes !== undefined) {
      piece.notes.draw(canvas, shape.left + noteLeft, start);
      noteBottom = start + piece.notes.height;
    }
    last = piece;
  };
  const follow = (fits: (from: number) => boolean, wanted: SheetShape) => {
    if (following === undefined) return;
    const { dest, from } = following;
    following = undefined;
    last = undefined;
    if (wanted === shape && fits(from)) {
      canvas.line([shape.left, from - followGap / 2], [shape.right, from - followGap / 2], { weight: 0.6 });
      y = noteBottom = from;
    } else open(wanted);
    places.set(dest, { sheet: count - 1, y: y === shape.top ? 0 : y });
  };
  const place = (chunk: readonly Piece[]) => {
    const wanted = chunk.some((piece) => piece.turned) ? turned : upright;
    follow((from) => endOf(chunk, from, from) <= shape.bottom + 0.01, wanted);
    const [first] = chunk;
    const empty = y === shape.top;
    if (wanted !== shape) {
      // A sheet that holds nothing yet is turned instead of left empty.
      if (empty && last === undefined && count > 0) {
        shape = wanted;
        canvas = newCanvas(fonts, shape);
        y = noteBottom = shape.top;
      } else turnOver(wanted, first);
    } else if (!empty && endOf(chunk, y, noteBottom) > shape.bottom + 0.01) turnOver(wanted, first);
    for (const piece of chunk) {
      if (y > shape.top && startOf(piece, last, y, noteBottom) + piece.height > shape.bottom + 0.01)
        turnOver(shape, piece);
      put(piece);
    }
  };
  return {
    places,
    end() {
      follow(() => true, shape);
      finish();
    },
    begin(dest, wanted, follows = false) {
      follow(() => true, shape);
      const from = Math.max(y, noteBottom) + followGap;
      if (
        follows &&
        count > 0 &&
        wanted === sheetFoot &&
        shape === upright &&
        y > shape.top &&
        from + followRoom < shape.bottom
      ) {
        following = { dest, from };
        return;
      }
      foot = wanted;
      open(upright);
      places.set(dest, { sheet: count - 1, y: 0 });
    },
    add(pieces) {
      let chunk: Piece[] = [];
      for (const piece of pieces) {
        chunk.push(piece);
        if (piece.keep === true) continue;
        place(chunk);
        chunk = [];
      }
      if (chunk.length > 0) place(chunk);
    },
  };
}
