import { describe, expect, test } from "vitest";
import { traceRecord } from "../../src/pipeline.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, interimBook, judgeChanged, judgedOnce, sound } from "../support/demo-book.ts";

/** Marks of a record's chain by what each link is about. */
async function marks(judged: JudgedBook | null, kind: string, id: string): Promise<Readonly<Record<string, string>>> {
  const chain = judged === null ? undefined : await traceRecord(judged, kind, id);
  return Object.fromEntries((chain?.links ?? []).map(({ what, mark }) => [what, mark]));
}

const changed = (...changes: readonly Change[]) => judgeChanged(demoBook, changes).judged;

describe("a chain that ends at something missing says so, and not that nothing is asked for", () => {
  test("a certificate that is not there", async () => {
    const book = changed({ remove: "material-certificate:CRT-003" });
    expect(await marks(book, "part", "P01")).toMatchObject({ "Chemistry and strength": "not judged" });
    expect(await marks(book, "joint", "L1")).toMatchObject({ "Parts and heats": "not judged" });
  });

  test("a row of a certificate that is not there", async () => {
    const row = { set: "material-certificate:CRT-003", at: "/rows/0/heat", to: "84731" } as const;
    expect(await marks(changed(row), "part", "P01")).toMatchObject({ "Chemistry and strength": "not judged" });
  });

  test("a weld log that is not there", async () => {
    expect(await marks(changed({ remove: "weld-log:WL-L1" }), "joint", "L1")).toMatchObject({
      "Weld log": "not judged",
      "Welder, on that day": "not judged",
      "Filler and gas": "not judged",
    });
  });

  test("a pressure test that is not there", async () => {
    const book = changed({ remove: "pressure-test:HYD-01" });
    expect(await marks(book, "joint", "L1")).toMatchObject({ "Pressure test": "not judged" });
  });

  test("what is not due yet is not due", async () => {
    const book = judgedOnce(interimBook);
    expect(await marks(book, "joint", "C2")).toMatchObject({
      "Welder, on that day": "not due",
      "Tester, on that day": "not due",
      "Measuring equipment, on that day": "not due",
      "Pressure test": "not due",
    });
  });

  test("what nobody asks for does not apply", async () => {
    expect(await marks(sound, "joint", "L1")).toMatchObject({ "Repairs and their re-tests": "not applicable" });
  });
});

describe("what a record rests on shows in its chain", () => {
  test("a rejected heat treatment, in the parts it was for", async () => {
    const book = changed({ set: "heat-treatment:HT-01", at: "/result", to: "rejected" });
    expect(await marks(book, "part", "P03")).toMatchObject({ "Heat treatment": "rejected" });
  });

  test("a gauge out of its calibration, in the pressure test of every joint", async () => {
    const book = changed({ set: "instrument:PG-03", at: "/calibrations/0/validTo", to: "2026-06-10" });
    expect(await marks(book, "joint", "C1")).toMatchObject({ "Pressure test": "failed" });
    expect(await marks(book, "pressure-test", "HYD-01")).toMatchObject({ "Gauges, instrument": "failed" });
  });

  test("a fit-up that was not accepted, in the joint", async () => {
    const book = changed({ set: "weld-log:WL-L1", at: "/fitUp/accepted", to: false });
    expect(await marks(book, "joint", "L1")).toMatchObject({ "Weld log": "rejected" });
  });
});
