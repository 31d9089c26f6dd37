import type { Block } from "../blocks.ts";
import { calculationPieces } from "./calculation.ts";
import { figurePieces } from "./figures.ts";
import { factPieces } from "./facts.ts";
import { findingPieces } from "./findings.ts";
import type { Piece } from "./flow.ts";
import { headingPieces } from "./headings.ts";
import { chainPieces, judgedPieces } from "./judged.ts";
import { cautionPieces, fingerprintPieces, listPieces, signaturePieces } from "./lists.ts";
import { mm, styles, textWidth } from "./measures.ts";
import { linePieces, spaced, withNotes, type PageSetter } from "./paragraphs.ts";
import { prosePieces } from "./prose.ts";
import { contentsPieces, scanPieces } from "./scans.ts";
import { tablePieces } from "./table.ts";
import { setLines } from "./text.ts";

/** The blocks of a page as pieces, from top to bottom. Anchors without a block of their own lie on the next piece. */
export function* layOut(setter: PageSetter, blocks: readonly Block[]): Generator<Piece> {
  let waiting: readonly string[] = [];
  for (const block of blocks) {
    if (block.type === "anchor") {
      waiting = [...waiting, setter.destOf(block.anchor)];
      continue;
    }
    for (const piece of piecesOf(setter, block)) {
      if (waiting.length === 0) yield piece;
      else yield { ...piece, dests: [...waiting, ...(piece.dests ?? [])] };
      waiting = [];
    }
  }
  if (waiting.length > 0) yield { height: 0, dests: waiting, draw: () => undefined };
}

function piecesOf(setter: PageSetter, block: Exclude<Block, { type: "anchor" }>): Iterable<Piece> {
  switch (block.type) {
    case "heading":
      return headingPieces(setter, block);
    case "paragraph": {
      const pieces = linePieces(setLines(setter, block.text, styles.text, textWidth), styles.text);
      return withNotes(setter, spaced(pieces, mm(1.6)), block.notes);
    }
    case "prose":
      return withNotes(setter, prosePieces(setter, block.markdown), block.notes);
    case "facts":
      return withNotes(setter, factPieces(setter, block), block.notes);
    case "list":
      return withNotes(setter, listPieces(setter, block.ordered, block.items), block.notes);
    case "table":
      return tablePieces(setter, block);
    case "calculation":
      return calculationPieces(setter, block);
    case "judged":
      return judgedPieces(setter, block);
    case "chain":
      return chainPieces(setter, block);
    case "findings":
      return findingPieces(setter, block);
    case "figure":
      return figurePieces(setter, block);
    case "scan":
      return scanPieces(setter, block);
    case "signatures":
      return signaturePieces(setter, block);
    case "contents":
      return contentsPieces(setter, block.entries);
    case "fingerprint":
      return fingerprintPieces(setter, block);
    case "caution":
      return cautionPieces(setter, block);
  }
}
