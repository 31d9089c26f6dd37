import type { JudgedBook } from "../../src/model/book.ts";
import type { Outcome } from "../../src/model/finding.ts";
import { isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import { byCodePoint } from "../../src/model/order.ts";

/** What differs between two books in one kind of outcome: how many, and of what. */
export interface Difference {
  readonly definition: string;
  readonly kind: string;
  /** Verdict there, or "none" where nothing of the kind was asked. */
  readonly receiver: string;
  readonly rebuilt: string;
  readonly of: readonly string[];
}

/**
 * Compares two judged books outcome by outcome: the same definition, of the same thing. Originals are the same by the bytes of
 * their file, whatever they are called.
 */
export function differences(receiver: JudgedBook, rebuilt: JudgedBook): readonly Difference[] {
  const [there, here] = [verdictsOf(receiver, receiver), verdictsOf(rebuilt, receiver)];
  const found = new Map<string, { one: Omit<Difference, "of">; of: string[] }>();
  for (const key of new Set([...there.keys(), ...here.keys()])) {
    const [a, b] = [there.get(key) ?? "none", here.get(key) ?? "none"];
    if (a === b) continue;
    const [definition = "", kind = "", id = ""] = key.split("|");
    const group = JSON.stringify([definition, kind, a, b]);
    const known = found.get(group) ?? { one: { definition, kind, receiver: a, rebuilt: b }, of: [] };
    known.of.push(id);
    found.set(group, known);
  }
  return [...found]
    .sort(([a], [b]) => byCodePoint(a, b))
    .map(([, { one, of }]) => ({ ...one, of: of.sort(byCodePoint) }));
}

function verdictsOf(book: JudgedBook, names: JudgedBook): ReadonlyMap<string, string> {
  const known = originalsByHash(names);
  const renamed = new Map(
    [...originalsByHash(book)].flatMap(([hash, id]) => {
      const other = known.get(hash);
      return other === undefined ? [] : [[id, other] as const];
    }),
  );
  const nameOf = ({ subject }: Outcome) =>
    subject === null
      ? "|"
      : `${subject.kind}|${(subject.kind === "original" && renamed.get(subject.id)) || subject.id}`;
  return new Map(book.outcomes.map((outcome) => [`${outcome.definition}|${nameOf(outcome)}`, outcome.verdict]));
}

const originalsByHash = ({ loaded }: JudgedBook): ReadonlyMap<string, string> =>
  new Map(
    loaded.records.flatMap(({ kind, id, value: { sha256 } }) =>
      kind === "original" && typeof sha256 === "string" ? [[sha256, id] as const] : [],
    ),
  );

/** Values of a record that say what it says of the thing, in any order of rows: not where it was read, and by whom. */
export function saidOf(value: JsonObject): Json {
  const { imported: _i, transcription: _t, specimen: _s, photograph: _p, source, sources, ...rest } = value;
  const place = placeOf(source);
  return sorted({
    ...rest,
    ...(Object.keys(place).length > 0 && { source: place }),
    ...(isObject(sources) && {
      sources: Object.fromEntries(Object.entries(sources).map(([field, own]) => [field, placeOf(own)])),
    }),
  });
}

/** Where in a paper: the page, not what the paper is called. */
function placeOf(source: Json | undefined): JsonObject {
  const { original: _o, ...place } = isObject(source) ? source : {};
  return place;
}

function sorted(value: Json): Json {
  if (isObject(value))
    return Object.fromEntries(
      Object.entries(value)
        .sort(([a], [b]) => byCodePoint(a, b))
        .map(([name, one]) => [name, sorted(one)]),
    );
  if (!isList(value)) return value;
  const rows = value.map(sorted);
  return rows.some(isObject) ? rows.sort((a, b) => byCodePoint(JSON.stringify(a), JSON.stringify(b))) : rows;
}

/** Files of the originals of a book, but those of calculation papers: whoever adopts the recomputation has none. */
export function scansOf({ loaded }: JudgedBook): readonly string[] {
  const ofCalculations = new Set(
    loaded.records.flatMap(({ kind, value: { source } }) =>
      kind === "calculation-sheet" && isObject(source) ? [source["original"]] : [],
    ),
  );
  const left = new Set(
    loaded.records.flatMap(({ kind, id, value: { path } }) =>
      kind === "original" && ofCalculations.has(id) ? [path] : [],
    ),
  );
  return loaded.files.flatMap(({ role, path, lies }) => (role === "original" && !left.has(path) ? [lies ?? path] : []));
}
