import { atPointer, headOf, stepsOf } from "../model/json.ts";
import { grouped } from "../model/grouped.ts";
import { oneOf, placeWords } from "../model/words.ts";
import type { Absence, World } from "./world.ts";

type WordsOf = (absence: Absence) => string;

/**
 * What one row of a paper lacks, in the order given: "grade; chemistry with element C, Mn and P; yield strength and elongation
 * of tensile 1; value of chemistry Si and Al".
 */
export function lackWords(world: World, lacks: readonly Absence[], wordsOf: WordsOf): string {
  const places = grouped(lacks, ({ owner, step, filters }) =>
    JSON.stringify([owner?.pointer, filters === "" ? "" : `${step}${filters.replaceAll(/"[^"]*"/g, "")}`]),
  );
  const said = [...places.values()].map((same) => ({ words: lackedAt(same, wordsOf), ...entryOf(world, same) }));
  return [...grouped(said, ({ words, list }) => `${words} ${list}`).values()]
    .map(([first, ...more]) =>
      first === undefined || first.entry === ""
        ? (first?.words ?? "")
        : `${first.words} of ${spokenList([`${first.list} ${first.entry}`, ...more.map(({ entry }) => entry)])}`,
    )
    .join("; ");
}

/** What lacks in one place: entries of one list by what tells them apart, or fields. */
function lackedAt([first, ...more]: readonly Absence[], wordsOf: WordsOf): string {
  if (first === undefined) return "";
  const others =
    first.filters === "" ? more.map(wordsOf) : more.map(({ filters }) => /"([^"]*)"\]$/.exec(filters)?.[1] ?? filters);
  return spokenList([wordsOf(first), ...others]);
}

/** The entry of a list within the row in which it lacks: "tensile" and "1"; empty for the row itself. */
function entryOf({ kinds }: World, [first]: readonly Absence[]): { readonly list: string; readonly entry: string } {
  const none = { list: "", entry: "" };
  if (first?.owner == null) return none;
  const { record, pointer } = first.owner;
  const [rows = "", , name] = stepsOf(pointer);
  const list = name === undefined ? undefined : kinds.get(record.kind)?.fields.get(rows)?.item?.fields?.get(name);
  if (list === undefined || atPointer(record.value, pointer) === undefined) return none;
  const row = placeWords(kinds, record, headOf(pointer, 2)).short;
  const inner = placeWords(kinds, record, pointer).short.slice(`${row}, `.length);
  return { list: oneOf(list), entry: inner.slice(`${oneOf(list)} `.length) };
}

/** "C", "C and Mn", "C, Mn and P". */
const spokenList = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
