import { describe, expect, test } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { fieldAt } from "../../src/model/kind.ts";
import { readBook } from "../../src/pipeline.ts";
import { explained, missedTable, nameOfSlip } from "../support/missed.ts";
import { slipsOf } from "../support/slips.ts";
import { sweeper } from "../support/sweep.ts";

/** Share of gross slips that a book must not survive. */
const least = 0.85;
/** One place in so many is tried here; the bench tries all. */
const step = 7;

describe("slips in the receiver's records, copied into all that would copy them", () => {
  const read = readBook("demo-data/air-receiver/book");
  const gross = slipsOf(read.records, read.kinds, 1).slips.filter((slip) => slip.class === "gross");
  const sample = gross.filter((_, index) => index % step === 0);
  const sweep = sweeper(read, shippedDefinitions(read.kinds));
  const swept = sample.map((slip) => sweep(slip, "copied"));
  const unfound = swept.filter(({ found }) => found === "unfound").map(({ slip }) => nameOfSlip(slip));

  test("are tried in many fields", () => expect(new Set(sample.map(({ field }) => field)).size).toBeGreaterThan(50));

  test("are found, but for few", () => expect(1 - unfound.length / sample.length).toBeGreaterThanOrEqual(least));

  test("have their reason where nothing finds them", () =>
    expect(unfound.filter((name) => !explained.has(name))).toEqual([]));

  test("are found at the value itself more often than elsewhere", () => {
    const count = (where: string) => swept.filter(({ found }) => found === where).length;
    expect(count("own")).toBeGreaterThan(count("elsewhere"));
  });
});

describe("the table of slips that nothing finds", () => {
  const kinds = loadKinds(["schemas"]);
  const names = [...missedTable.values()].flat();

  test("names each of them once", () => expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]));

  test("names fields that there are", () => {
    const gone = names.filter((name) => {
      const [, kind = "", path = ""] = /^([a-z-]+) (\S+): /.exec(name) ?? [];
      const found = kinds.get(kind);
      return found === undefined || fieldAt(found, path) === undefined;
    });
    expect(gone).toEqual([]);
  });

  test("gives reasons in words", () => {
    for (const reason of missedTable.keys()) expect(reason.split(" ").length).toBeGreaterThan(3);
  });
});
