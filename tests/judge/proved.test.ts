import { beforeAll, describe, expect, test } from "vitest";
import { createHash } from "node:crypto";
import { proofsOf, takenBy, type Taken } from "../../src/judge/proved.ts";
import { supposer } from "../../src/judge/suppose.ts";
import { judgeAgain, judgeRemembering } from "../../src/judge/judge.ts";
import { atPointer, type JsonObject } from "../../src/model/json.ts";
import { definitionOf } from "../../src/model/outcome-name.ts";
import { withAt } from "../support/edits.ts";
import { comparedAnew } from "../support/compared.ts";
import { demoBook, newRoots, readOnce, sound } from "../support/demo-book.ts";

/** Rules that hold the maker's sheets against the recomputation: they repeat what they were made with. */
const sheets = /^(?:value-copied|sheet-compared|figures-adopted)$/;

const done = sound.computed.flatMap((one) => (one.state === "done" ? [one] : []));
const taken = new Map(done.flatMap((one) => takenBy(sound, one).map((own) => [own.address, own] as const)));
const hash = ({ address }: Taken) => createHash("sha256").update(address).digest("hex");
const sample = [...taken.values()].sort((a, b) => (hash(a) < hash(b) ? -1 : 1)).slice(0, 14);

/** A tenth more, as `proved.ts` writes it. */
const more = (text: string) =>
  text.replace(/-?[0-9.]+/, (digits) => String(Number((Number(digits) * 1.1).toPrecision(9))));

describe("what would be said is what is said", () => {
  const suppose = supposer(sound);
  const { texts: _papers, ...plain } = readOnce(demoBook);
  const remembered = judgeRemembering(plain, sound.definitions.whole ?? sound.definitions);
  test.each(sample.map((one) => [one.address, one] as const))("of %s a tenth more", (_, { record, pointer }) => {
    const text = more(atPointer(record.value, pointer) as string);
    const before = JSON.stringify(record.value);
    const supposed = suppose(record, pointer, text).findings;
    expect(JSON.stringify(record.value)).toBe(before);
    const value = withAt(record.value, pointer, text) as JsonObject;
    const records = plain.records.map((one) => (one === record ? { ...one, value } : one));
    // The papers say the same, and were compared.
    const again = judgeAgain(remembered.memory, { ...plain, records: comparedAnew(records, sound.definitions.kinds) });
    const roots = newRoots(again.judged, sound).filter(
      ({ rule }) => !sheets.test(definitionOf(rule).id) && definitionOf(rule).part === undefined,
    );
    const said = roots.filter(({ rule }) => !builtIn.has(rule)).map(({ rule, key }) => `${rule}: ${key}`);
    // Where judging stops at a root, what rests on it is not said; supposing asks everything.
    expect([supposed.length > 0, said]).toEqual([said.length > 0, said]);
  });
});

/** What only forms and hashes of values say: no definition. */
const builtIn = new Set(["value-plausible", "read-back", "comparison-holds"]);

describe("how the values of the receiver are proved", () => {
  let proofs: ReturnType<typeof proofsOf>;
  beforeAll(() => {
    proofs = proofsOf(sound);
  });

  test("every quantity that a calculation takes is tried, but for those that are nothing", () => {
    const untried = [...taken.values()].filter(({ address }) => !proofs.has(address));
    expect(
      untried.map(({ record, pointer }) => (atPointer(record.value, pointer) as string).replace(/^-?[0.]+\b.*/, "0")),
    ).toEqual(untried.map(() => "0"));
    expect(proofs.size).toBeGreaterThan(200);
  });

  test("a thickness is confirmed by what was delivered", () => {
    expect(
      [...proofs].filter(([address]) => /^part:.*\/nominalThickness$/.test(address)).map(([, proof]) => proof.state),
    ).toContain("confirmed");
  });

  test("the same again, from the same book", () => {
    expect(proofsOf(sound)).toBe(proofs);
  });
});
