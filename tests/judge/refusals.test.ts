import { recordOfSubject } from "../../src/model/subject.ts";
import { address } from "../support/address.ts";
import { describe, expect, test } from "vitest";
import { chains } from "../../src/definitions.ts";
import { chainLinks } from "../../src/judge/chain-links.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { addressOf } from "../../src/model/record.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots, sound } from "../support/demo-book.ts";

const judgedWith = (...changes: readonly Change[]): JudgedBook => {
  const { judged } = judgeChanged(demoBook, changes);
  if (judged === null) throw new Error("the changed book cannot be judged");
  return judged;
};
const linksOf = (judged: JudgedBook, kind: string, id: string) => {
  const record = judged.graph.byKind.get(kind)?.get(id);
  if (record === undefined) throw new Error(`no ${kind} ${id}`);
  return new Map(chainLinks(judged, chains, record).map((link) => [link.step.what, link]));
};
const marksOf = (judged: JudgedBook, kind: string, id: string) =>
  [...linksOf(judged, kind, id)].map(([what, { mark }]) => [what, mark] as const);
const roots = (judged: JudgedBook) => newRoots(judged, sound).map(({ message }) => message);

const rejected: Change = { set: "ndt-report:RT-01", at: "/rows/0/result", to: "rejected" };
const l2 = "L2";

describe("a rejected value", () => {
  test("is closed by its repair and the test of it, and says by which", () => {
    const refusal = sound.refusals.get(address("ndt-report:RT-03/rows/0/result"));
    expect(refusal).toMatchObject({ state: "closed", said: "repaired and re-tested: C2R1, RT-05" });
    // The indication follows the row it lies in.
    expect(sound.refusals.get(address("ndt-report:RT-03/rows/0/indications/0/verdict"))).toMatchObject({
      state: "closed",
      said: "repaired and re-tested: C2R1, RT-05",
    });
  });

  test("without a repair is one finding that names report, row and joint, and stops no other joint", () => {
    const judged = judgedWith(rejected);
    expect(roots(judged)).toEqual(["RT-01, row L1-1: joint L1 is rejected, and no repair is recorded"]);
    expect(judged.refusals.get(address("ndt-report:RT-01/rows/0/result"))?.state).toBe("open");
    expect(marksOf(judged, "joint", "L1").filter(([, mark]) => mark === "rejected")).toEqual([
      ["Tests required and done", "rejected"],
      ["Repairs and their re-tests", "rejected"],
    ]);
    // RT-01 tested L2 too: what was rejected of L1 is not said of L2.
    expect(marksOf(judged, "joint", l2)).toEqual(marksOf(sound, "joint", l2));
  });

  test("does not count as tested length while it is open: the extent waits for it", () => {
    const outcome = judgedWith(rejected).outcomes.find(
      ({ definition, subject }) => definition === "radiographic-extent" && subject?.id === "L1",
    );
    expect(outcome?.verdict).toBe("not judged");
  });

  test("rejected again after its repair, it is said of the last test alone", () => {
    const judged = judgedWith({ set: "ndt-report:RT-05", at: "/rows/0/result", to: "rejected" });
    expect(roots(judged)).toEqual(["RT-05, row C2-4: joint C2 is rejected, and no repair is recorded"]);
    expect(judged.refusals.get(address("ndt-report:RT-03/rows/0/result"))?.state).toBe("open");
  });

  test("closed by a nonconformity report that leaves it as it is", () => {
    const use = (state: string): readonly Change[] => [
      rejected,
      { set: "nonconformity-report:NCR-01", at: "/affected", to: ["joint:C2", "ndt-report:RT-01#L1-1"] },
      { set: "nonconformity-report:NCR-01", at: "/disposition", to: "use-as-is" },
      { set: "nonconformity-report:NCR-01", at: "/state", to: state },
    ];
    expect(judgedWith(...use("closed")).refusals.get(address("ndt-report:RT-01/rows/0/result"))).toMatchObject({
      state: "closed",
      said: "decided: NCR-01 (use as is)",
    });
    expect(judgedWith(...use("agreed")).refusals.get(address("ndt-report:RT-01/rows/0/result"))?.state).toBe("open");
  });
});

describe("a link of a chain", () => {
  test("passes where each record it reaches was read by a passed outcome of its own rules", () => {
    const passed = [...linksOf(sound, "joint", "C2").values()].filter(({ mark }) => mark === "passed");
    expect(passed.length).toBeGreaterThan(0);
    for (const link of passed) {
      expect(link.reached.filter(({ judged }) => !judged)).toEqual([]);
    }
  });

  test("whose rules are taken away is on record, and blocks nothing; what is judged of the record stands behind them", () => {
    const bare = chains.map((chain) => ({ ...chain, links: chain.links.map((link) => ({ ...link, judgedBy: [] })) }));
    // Judged anew, since the links of a book are walked once.
    const judged = judgedWith();
    const record = judged.graph.byKind.get("joint")?.get("C2");
    const links = record === undefined ? [] : chainLinks(judged, bare, record);
    expect(new Set(links.slice(0, -1).map(({ mark }) => mark))).toEqual(new Set(["on record", "not applicable"]));
    expect(links.at(-1)).toMatchObject({ step: { what: "Further checks of this joint" }, mark: "passed" });
  });

  test("shows what did not pass of anything it reaches, whoever judged it", () => {
    // A root gap wider than the procedure allows: no link names the rule.
    const judged = judgedWith({ set: "weld-log:WL-C1", at: "/fitUp/gap", to: "9.0 mm" });
    const failed = judged.outcomes.filter(
      ({ definition, verdict }) => definition === "fit-up-gap" && verdict === "failed",
    );
    expect(failed).toHaveLength(1);
    const link = linksOf(judged, "joint", "C1").get("Weld log");
    expect(link?.mark).toBe("failed");
    expect(link?.outcomes).toEqual(expect.arrayContaining(failed));
  });

  test("together they show every outcome about their record", () => {
    for (const { kind } of chains)
      for (const record of sound.graph.byKind.get(kind)?.values() ?? []) {
        const shown = new Set(chainLinks(sound, chains, record).flatMap(({ outcomes }) => outcomes));
        const own = sound.outcomes.filter(
          ({ subject }) => subject !== null && recordOfSubject(subject) === addressOf(record),
        );
        expect(own.filter((outcome) => !shown.has(outcome)).map(({ definition }) => definition)).toEqual([]);
      }
  });

  test("every passed outcome keeps the record it is about among those it read", () => {
    const without = sound.outcomes.filter(
      ({ verdict, subject, reads }) =>
        verdict === "passed" && subject !== null && !reads.includes(recordOfSubject(subject)),
    );
    expect(without.map(({ definition, subject }) => `${definition} ${subject?.id ?? ""}`)).toEqual([]);
  });
});
