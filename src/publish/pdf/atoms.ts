import { spellControlsInLines } from "../../model/spelled.ts";
import type { Inline, Target, Text } from "../blocks.ts";
import type { LinkTo } from "./canvas.ts";
import type { Box } from "./formula-boxes.ts";
import { displayBox } from "./formula.ts";
import type { Face, Fonts } from "./fonts.ts";
import { faceOf, monoShare, type TextStyle } from "./measures.ts";

/** A piece of a line that is never broken: text of one face, or a drawn box. */
export interface Atom {
  readonly face: Face;
  readonly size: number;
  readonly soft: boolean;
  readonly text: string;
  readonly width: number;
  readonly link?: LinkTo;
  readonly box?: Box;
}

/** Atoms that stay together, and the space that stands before them if they do not open a line. */
export interface Word {
  readonly atoms: readonly Atom[];
  readonly width: number;
  readonly space: number;
  /** Whether the space belongs to the word before (same link on both sides). */
  readonly linked: boolean;
}

/** Name of the destination of a place in the book. */
export const destOf = ({ page, anchor }: Target): string => (anchor === undefined ? page : `${page}#${anchor}`);

type Dressed = Omit<Atom, "text" | "width" | "box">;

function dress(inline: Exclude<Inline, string>, style: TextStyle): Dressed {
  const plain: Dressed = { face: faceOf(style), size: style.size, soft: style.soft === true };
  switch (inline.type) {
    case "strong":
      return { ...plain, face: faceOf({ ...style, strong: true }), soft: false };
    case "em":
      return { ...plain, face: faceOf({ ...style, italic: true }) };
    case "soft":
      return { ...plain, soft: true };
    case "code":
      return { ...plain, face: "mono", size: style.size * monoShare };
    case "link":
      return { ...plain, soft: false, link: { dest: destOf(inline.to) } };
    case "file":
      return { ...plain, soft: false, link: { file: inline.path } };
    case "symbol":
    case "whole":
      return plain;
  }
}

/** Units after which a number may not be left behind at the end of a line. */
const unit =
  /^(?:mm[²³]?|cm|m[²³]?|µm|bar|MPa|kPa|Pa|N\/mm²|kN|N|kg\S{0,3}|g|t|°C|K|%|kJ\/mm|kJ|J|min|h|s|l|ml|A|V|HV|kW)[.,;:)]*$/;

/** Running text as words, ready to be set in lines. `known` tells whether a destination is in this book. */
export function wordsOf(fonts: Fonts, text: Text, style: TextStyle, known: (dest: string) => boolean): readonly Word[] {
  const words: { atoms: Atom[]; width: number; space: number; linked: boolean }[] = [];
  let open: (typeof words)[number] | undefined;
  let space = 0;
  let spaceLink: LinkTo | undefined;
  const add = (atom: Atom) => {
    if (open === undefined)
      words.push((open = { atoms: [], width: 0, space, linked: spaceLink !== undefined && spaceLink === atom.link }));
    open.atoms.push(atom);
    open.width += atom.width;
    space = 0;
  };
  for (const inline of text) {
    const dressed = typeof inline === "string" ? plainDress(style) : dress(inline, style);
    const { link, ...rest } = dressed;
    const look: Dressed = link === undefined || ("dest" in link && !known(link.dest)) ? rest : dressed;
    if (typeof inline !== "string" && inline.type === "symbol") {
      const box = displayBox(fonts, inline.display, style.family === "sans" ? style.size * 1.1 : style.size);
      add({ ...look, text: "", width: box.width, box });
      continue;
    }
    const raw = spellControlsInLines(typeof inline === "string" ? inline : inline.text);
    const keep = typeof inline !== "string" && inline.type === "whole";
    const parts = keep ? [raw.trim()] : raw.split(/([ \n\r\t]+)/);
    parts.forEach((part, index) => {
      if (part === "") return;
      const isSpace = !keep && index % 2 === 1;
      if (isSpace && !holdsUnit(parts[index - 1], parts[index + 1])) {
        open = undefined;
        space = fonts.width(look.face, look.size, " ");
        spaceLink = look.link;
        return;
      }
      const shown = isSpace ? "\u00a0" : part;
      const pieces = keep || !divided.test(shown) ? [shown] : shown.split(breakAfter);
      pieces.forEach((piece, at) => {
        if (at > 0) open = undefined;
        spaceLink = at > 0 ? look.link : spaceLink;
        add({ ...look, text: piece, width: fonts.width(look.face, look.size, piece) });
      });
    });
  }
  return words;
}

/** Most words hold none of the signs that `breakAfter` looks for. */
const divided = /[-–/—]/;

/** After a hyphen between letters or a slash of a longer path: never inside a number, a date or an id. */
const breakAfter = /(?<=[\p{Ll}]{2}[-–/])(?=\p{L}{2})|(?<=\/)(?=[^/]{4,}\/)|(?<=—)/u;

const month = /^(?:January|February|March|April|May|June|July|August|September|October|November|December)\b/;

const holdsUnit = (before: string | undefined, after: string | undefined) =>
  before !== undefined && after !== undefined && endsInDigit(before) && (unit.test(after) || month.test(after));

// A pattern would look through the whole word, and this is asked of every space of the book.
function endsInDigit(text: string): boolean {
  const last = text.charCodeAt(text.length - 1);
  return last >= 48 && last <= 57;
}

const plainDress = (style: TextStyle): Dressed => ({
  face: faceOf(style),
  size: style.size,
  soft: style.soft === true,
});
