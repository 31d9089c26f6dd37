import type { Block, FindingItem } from "../blocks.ts";
import type { Piece } from "./flow.ts";
import { mm, rules, styles, textWidth, type TextStyle } from "./measures.ts";
import {
  baselineIn,
  drawRule,
  landing,
  shifted,
  spaced,
  stack,
  together,
  withNotes,
  type PageSetter,
} from "./paragraphs.ts";
import { setLine, setLines } from "./text.ts";

const message: TextStyle = { family: "serif", size: 11, leading: 14 };
const severity: TextStyle = { family: "sans", size: 8.5, leading: 14, strong: true };
const pad = mm(1.8);

/** Findings between rules: severity and message, then its rows; never parted while they fit on a sheet. */
export function findingPieces(setter: PageSetter, block: Extract<Block, { type: "findings" }>): readonly Piece[] {
  const last = block.findings.length - 1;
  const pieces = block.findings.flatMap((finding, index) =>
    landing(setter, findingPiece(setter, finding, index === 0, index === last), finding.anchor),
  );
  return spaced(pieces, mm(1.4));
}

function findingPiece(setter: PageSetter, finding: FindingItem, first: boolean, last: boolean): readonly Piece[] {
  const word = setLine(setter, [capitalized(finding.severity)], severity);
  const indent = word.width + mm(2);
  const said = stack(setLines(setter, finding.message, message, textWidth, indent), message);
  const head: Piece = {
    height: pad + said.height + mm(0.6),
    draw(canvas, x, y) {
      drawRule(canvas, x, y, textWidth, first ? rules.ends : rules.group, !first);
      stack([word], severity).draw(canvas, x, y + pad + baselineIn(message) - baselineIn(severity));
      said.draw(canvas, x, y + pad);
    },
  };
  const end: Piece = {
    height: pad,
    draw: (canvas, x, y) => {
      if (last) drawRule(canvas, x, y + pad, textWidth, rules.ends);
    },
  };
  return withNotes(setter, together([head, ...finding.rows.map((row) => rowPiece(setter, row)), end]), finding.notes);
}

const capitalized = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

const labelWidth = mm(17);

function rowPiece(setter: PageSetter, { label, value }: FindingItem["rows"][number]): Piece {
  const style = styles.table;
  const name = stack(setLines(setter, [{ type: "soft", text: label }], style, labelWidth - mm(2)), style);
  const text = stack(setLines(setter, value, style, textWidth - labelWidth), style);
  const { height } = text.height > name.height ? text : name;
  return {
    height: height + mm(0.5),
    draw(canvas, x, y) {
      name.draw(canvas, x, y);
      shifted(text, labelWidth).draw(canvas, x, y);
    },
  };
}
