import { atPointer, pointerStep, stepsOf } from "./json.ts";
import type { Field, Kind } from "./kind.ts";
import type { BookRecord } from "./record.ts";
import { rowName } from "./stable.ts";
import { kindWords, lowerTitle } from "./titles.ts";

/** A field inside a sentence: "nominal thickness"; of an event or a person its heading is quoted, `date "approved"`. */
export function fieldWords({ title, type }: Pick<Field, "title" | "type">): string {
  const words = lowerTitle(title);
  if (type === "date" && /(ed|done|cut)$/.test(words)) return `date "${words}"`;
  return type === "link" && / by$/.test(words) ? `name "${words}"` : words;
}

/** What stands in a record, in words. */
export interface PlaceWords {
  /** The field, such as "nominal thickness"; empty for a record or row itself. */
  readonly field: string;
  /** The record or row it stands in: "part P03", "weld log WL-L1, run fill". */
  readonly of: string;
  /** As `of`, without the kind: "WL-L1, run fill". */
  readonly short: string;
}

/** A place of a record as people say it: titles of kinds and fields, rows by what identifies them. */
export function placeWords(
  kinds: ReadonlyMap<string, Kind>,
  record: Pick<BookRecord, "kind" | "id" | "value">,
  pointer: string,
): PlaceWords {
  const kind = kinds.get(record.kind);
  let fields = kind?.fields;
  let field: Field | undefined;
  let at = "";
  let rows = "";
  let names: string[] = [];
  for (const step of stepsOf(pointer)) {
    at += pointerStep(step);
    if (field?.type === "list" && /^\d+$/.test(step)) {
      rows += rowWords(field, rowName(field, atPointer(record.value, at)) ?? String(Number(step) + 1));
      field = field.item;
      names = [];
    } else {
      field = fields?.get(step);
      names.push(field === undefined ? said(step) : fieldWords(field));
    }
    fields = field?.fields;
  }
  const short = `${record.id}${rows}`;
  // A field may bear the title of what it holds, or what it holds may say it: "day of the comparison".
  const distinct = names.filter(
    (name, at) =>
      name !== names[at - 1] &&
      !/ of (?:the )?(.+)$/
        .exec(names[at + 1] ?? "")
        ?.slice(1)
        .includes(name),
  );
  return { field: distinct.reverse().join(" of "), of: `${kindWords(kinds, record.kind)} ${short}`, short };
}

/** "the nominal thickness of part P03"; "part P03" for a record itself. */
export function thePlace(...at: Parameters<typeof placeWords>): string {
  const { field, of } = placeWords(...at);
  return field === "" ? of : `the ${field} of ${of}`;
}

/** One item of a list: "tube field" of "Tube fields". */
export const oneOf = (list: Pick<Field, "title">): string => singular(lowerTitle(list.title));

function rowWords(list: Field, name: string): string {
  const word = oneOf(list);
  return word === "revision" ? ` revision ${said(name)}` : `, ${word} ${said(name)}`;
}

const singular = (title: string) =>
  title
    .replace(/ies$/, "y")
    .replace(/(?<=(s|x|ch))es$/, "")
    .replace(/(?<!s)s$/, "");

/** A name as a record bears it: in quotes where it would run into the sentence. */
function said(name: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{N}./:+-]*$/u.test(name) && !/[a-z][A-Z]/.test(name) ? name : `"${name}"`;
}
