import { usesOf, type Use } from "../link/uses.ts";
import type { JudgedBook } from "../model/book.ts";
import { atPointer, isObject, type Json, stepsOf, pointerStep } from "../model/json.ts";
import { fieldAt, type Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import { type BookRecord, addressOf } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { kindWords, lowerTitle, recordWords } from "../model/titles.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import type { Ink } from "../report/text.ts";

/** Where the traced record was used, kind by kind; what is only named is not judged by that, and no verdict stands here. */
export function usesText(judged: JudgedBook, record: BookRecord, ink: Ink): string {
  const { kinds } = judged.definitions;
  const uses = sorted(usesOf(judged.graph, kinds, record));
  if (uses.length === 0) return `${ink.bold("used in")}\n\nno record names it\n`;
  const names = [...new Set(uses.map((use) => use.record.kind))];
  const parts = names.map((name) => {
    const own = uses.filter((use) => use.record.kind === name);
    return [`${kindWords(kinds, name)}: ${own.length}`, ...own.map((use) => `  ${useText(use, kinds)}`)].join("\n");
  });
  const about = new Map(uses.flatMap((use) => use.about).map((one) => [addressOf(one), one]));
  const sums = [...new Set([...about.values()].map(({ kind }) => kind))].sort(byCodePoint).map((kind) => {
    const ids = [...about.values()].filter((one) => one.kind === kind).map(({ id }) => id);
    return `${kindWords(kinds, kind)} ${ids.sort(byCodePoint).map(plain).join(", ")}`;
  });
  return `${[
    ink.bold(`used in ${counted(uses.length, "record")}`),
    ...parts,
    ...(sums.length === 0 ? [] : [`these are about: ${sums.join("; ")}`]),
  ].join("\n\n")}\n`;
}

export function usesJson(judged: JudgedBook, record: BookRecord): readonly object[] {
  return sorted(usesOf(judged.graph, judged.definitions.kinds, record)).map(
    ({ record: { kind, id }, links, about }) => ({
      kind,
      id,
      at: links.map(({ pointer }) => pointer),
      about: about.map((one) => ({ kind: one.kind, id: one.id })),
    }),
  );
}

const sorted = (uses: readonly Use[]) =>
  [...uses].sort((a, b) => byCodePoint(a.record.kind, b.record.kind) || byCodePoint(a.record.id, b.record.id));

function useText({ record, links, about }: Use, kinds: ReadonlyMap<string, Kind>): string {
  const kind = kinds.get(record.kind);
  const places = [...new Set(links.map(({ pointer, path }) => placeText(record, kind, pointer, path)))];
  const of = about.map((one) => recordWords(kinds, one)).map(plain);
  return `${plain(record.id)}${of.length === 0 ? "" : `, of ${of.join(", ")}`}: ${places.map(plain).join("; ")}`;
}

/** "runs root, welders": the fields on the way to a link, rows by their names. */
function placeText(record: BookRecord, kind: Kind | undefined, pointer: string, path: string): string {
  const steps = stepsOf(pointer);
  const words: string[] = [];
  let at = "";
  let way = "";
  for (const step of steps) {
    const isIndex = /^\d+$/.test(step) && way !== "";
    const list = kind === undefined ? undefined : fieldAt(kind, way);
    at += pointerStep(step);
    if (!isIndex) {
      way = way === "" ? step : `${way}.${step}`;
      const field = kind === undefined ? undefined : fieldAt(kind, way);
      words.push(field === undefined ? step : lowerTitle(field.title));
      continue;
    }
    const row: Json | undefined = atPointer(record.value, at);
    const name = list === undefined || !isObject(row) ? undefined : rowName(list, row);
    if (name !== undefined) words.push(`${words.pop() ?? ""} ${name}`);
    way += "[]";
  }
  // A field may bear the title of what it holds.
  const distinct = words.filter((word, at) => word !== words[at - 1]);
  return distinct.length === 0 ? path : distinct.join(", ");
}
