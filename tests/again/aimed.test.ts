import { expect, test } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { judge, judgeAgain, judgeRemembering } from "../../src/judge/judge.ts";
import type { LoadedBook } from "../../src/model/book.ts";
import { isObject, type Json } from "../../src/model/json.ts";
import { readBook } from "../../src/pipeline.ts";
import { demoBook } from "../support/demo-book.ts";
import { withAt } from "../support/edits.ts";
import { differing } from "../support/judged-text.ts";

const { kinds, texts: _texts, ...sound } = readBook(demoBook);
const definitions = shippedDefinitions(kinds);

type Edit = readonly [record: string, pointer: string, value: Json];

/** A book with other values in some records. */
function edited(book: LoadedBook, ...edits: readonly Edit[]): LoadedBook {
  const records = book.records.map((record) => {
    let { value } = record;
    for (const [name, pointer, to] of edits) {
      const next = name === `${record.kind}:${record.id}` ? withAt(value, pointer, to) : value;
      if (isObject(next)) value = next;
    }
    return value === record.value ? record : { ...record, value };
  });
  return { ...book, records };
}

const sheet = "calculation-sheet";

/** Ways on which a memory was once found to say what no longer held. */
const ways: readonly { readonly name: string; readonly before: readonly Edit[]; readonly then: readonly Edit[] }[] = [
  {
    name: "a sheet with a wrong input becomes the source of another",
    before: [
      [`${sheet}:CAL-01`, "/inputs/0/value", "70 °C"],
      [`${sheet}:CAL-01`, "/subject", "part:NOPE-1"],
    ],
    then: [[`${sheet}:CAL-01`, "/subject", "part:P01"]],
  },
  {
    name: "a sheet becomes one of another calculation and back",
    before: [
      [`${sheet}:CAL-01`, "/inputs/0/value", "70 °C"],
      [`${sheet}:CAL-01`, "/calculation", "design-stress"],
    ],
    then: [[`${sheet}:CAL-01`, "/calculation", "cylindrical-shell"]],
  },
  {
    name: "a sheet that was about nothing copies a wrong value",
    before: [
      [`${sheet}:CAL-13`, "/inputs/0/value", "21 bar"],
      [`${sheet}:CAL-13`, "/subject", "safety-valve:NOPE-1"],
    ],
    then: [[`${sheet}:CAL-13`, "/subject", "safety-valve:SV-01"]],
  },
  {
    name: "a record that a failed rule read is another where the rule read nothing",
    before: [["instrument:TH-05", "/calibrations/0/validTo", "2019-02-22"]],
    then: [["instrument:TH-05", "/range/maximum", "300 °C"]],
  },
];

test.each(ways)("$name", ({ before, then }) => {
  const first = edited(sound, ...before);
  const second = edited(first, ...then);
  // Each edit meets a record, and says another thing.
  expect(first.records.filter((one, index) => one !== sound.records[index])).not.toEqual([]);
  expect(differing(judge(first, definitions), judge(sound, definitions))).not.toEqual([]);
  expect(
    differing(judge(second, definitions), judgeAgain(judgeRemembering(first, definitions).memory, second).judged),
  ).toEqual([]);
});
