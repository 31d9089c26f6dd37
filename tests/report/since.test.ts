import { address } from "../support/address.ts";
import { describe, expect, test } from "vitest";
import type { Finding, Outcome } from "../../src/model/finding.ts";
import { readEarlier } from "../../src/report/earlier.ts";
import { reportJson } from "../../src/report/json.ts";
import { reportOf } from "../../src/report/report.ts";
import { shortText, sinceText } from "../../src/report/short.ts";
import { sinceOf } from "../../src/report/since.ts";
import { finding, judgedBook, lapsed } from "./judged.ts";

const tool = "databook 0.1.0";
const report = (...findings: readonly Finding[]) => reportOf(judgedBook({ findings }), tool);
const one = (key: string, more: Partial<Finding> = {}) => finding({ key, message: `${key} is wrong`, ...more });

function compare(before: readonly Finding[], now: readonly Finding[], outcomes: readonly Outcome[] = []) {
  const current = report(...now);
  const earlier = readEarlier(reportJson(report(...before)), current);
  if (typeof earlier === "string") throw new Error(earlier);
  const since = sinceOf(current, { outcomes, graph: judgedBook().graph }, earlier);
  return { current, since };
}

const keysOf = ({ since }: ReturnType<typeof compare>) => ({
  fresh: since.fresh.map(({ placed, again }) => `${placed.finding.key}${again ? " again" : ""}`),
  still: since.still.map(({ placed, changed }) => `${placed.finding.key}${changed ? " changed" : ""}`),
  gone: since.gone.map(({ earlier, now }) => `${earlier.key}: ${now}`),
});

describe("short", () => {
  test("one line each, whoever has most to do first, answered ones last", () => {
    const text = shortText(
      report(
        one("a", { owner: "purchasing", severity: "gap", due: "welding" }),
        one("b", { owner: "testing" }),
        one("c", { owner: "testing", severity: "query" }),
        one("d", { owner: "testing", severity: "note" }),
        one("e", { exception: address("waiver:WV-01") }),
      ),
    );
    expect(text.split("\n").slice(0, 12)).toEqual([
      "testing (3)",
      "  nonconformity: b is wrong (weld-log/seams.json:41)",
      "  query: c is wrong (weld-log/seams.json:41)",
      "  note: d is wrong (weld-log/seams.json:41)",
      "",
      "purchasing (1)",
      "  gap: a is wrong (weld-log/seams.json:41, due at welding)",
      "",
      "answered by an exception (1)",
      "  nonconformity: e is wrong (weld-log/seams.json:41) · answered by waiver WV-01",
      "",
      "TQ423-01 revision 0, final, profile cautious, evidence 4f53cda18c2baa0c",
    ]);
  });
});

describe("since", () => {
  test("many new notes of one check are one, as they are without it", () => {
    const notes = ["a", "b", "c", "d", "e"].map((key) => one(key, { severity: "note" }));
    for (const short of [false, true]) {
      const { current, since } = compare([one("z")], [one("z"), ...notes]);
      const text = sinceText(current, since, short);
      expect(text).toContain("new: 5");
      expect(text).toContain("a is wrong, and 4 more notes say the same of others");
      expect(text).not.toMatch(/^(?! {2}see).*c is wrong/m);
    }
    const { current, since } = compare(notes, notes);
    expect(sinceText(current, since, true)).toContain("still open: 5\n\n");
    expect(sinceText(current, since, true)).toContain("a is wrong, and 4 more notes say the same of others");
  });

  test("new, still open and gone are told apart by key", () => {
    const compared = compare(
      [one("a"), one("b"), one("c")],
      [one("b"), one("c", { digest: "fedcba9876543210" }), one("d")],
    );
    expect(keysOf(compared)).toEqual({ fresh: ["d"], still: ["b", "c changed"], gone: ["a: not found any more"] });
  });

  test("an exception closes a finding without putting it right, and its end opens it again", () => {
    const answered = { exception: address("deviation:DV-01") };
    expect(keysOf(compare([one("a"), one("b", answered), one("c", answered)], [one("a", answered), one("b")]))).toEqual(
      {
        fresh: ["b again"],
        still: [],
        gone: ["a: answered by deviation DV-01"],
      },
    );
  });

  test("what is gone because nobody looked again says so", () => {
    const outcome = (verdict: Outcome["verdict"]): Outcome => ({
      definition: lapsed.rule,
      subject: lapsed.subject,
      verdict,
      findings: [],
      reads: [],
    });
    const gone = (...verdicts: readonly Outcome["verdict"][]) =>
      compare([one("a")], [], verdicts.map(outcome)).since.gone.map(({ now, unsettled }) => [now, unsettled]);
    expect(gone("not judged")).toEqual([["not judged now: its check waits for something else", true]]);
    expect(gone("passed", "not judged")).toEqual(gone("not judged"));
    expect(gone("not applicable")).toEqual([["its check does not apply any more", true]]);
    expect(gone("passed")).toEqual([["not found any more", false]]);
    const lost = compare([one("a", { subject: { kind: "joint", id: "L9" } })], []).since.gone;
    expect(lost.map(({ now }) => now)).toEqual(["the book holds no joint L9 any more"]);
  });

  test("text says all three, in full where it is new, and JSON holds the same", () => {
    const { current, since } = compare([one("a"), one("b")], [one("b"), one("d")]);
    const whole = sinceText(current, since, false);
    expect(whole).toContain("since revision 0, final, evidence up to 2026-06-18");
    expect(whole).toContain("new: 1\n\nweld-log/seams.json:41:7 nonconformity welder-qualified\n  d is wrong");
    expect(whole).toContain("still open: 1\n\nshop (1)\n  nonconformity: b is wrong");
    expect(whole).toContain("gone: 1\n\n  nonconformity: a is wrong · not found any more");
    expect(sinceText(current, since, true)).toContain("new: 1\n\nshop (1)\n  nonconformity: d is wrong");
    const json = JSON.parse(reportJson(current, since)) as { since: Record<string, unknown> };
    expect(json.since).toMatchObject({
      new: [{ key: "d", answeredThen: false }],
      stillOpen: [{ key: "b", changed: false }],
      gone: [{ key: "a", now: "not found any more", putRight: true }],
    });
  });
});

describe("what is no earlier report of this book", () => {
  const current = report(lapsed);
  const changed = (change: (value: Record<string, unknown>) => void) => {
    const value = JSON.parse(reportJson(current)) as Record<string, unknown>;
    change(value);
    return readEarlier(JSON.stringify(value), current);
  };
  test.each([
    ["no JSON", "{", "is not JSON; expected what check --format json printed, or the findings.json of an issue"],
    ["a list", "[]", "holds no findings of a book; expected"],
    ["null", "null", "holds no findings of a book; expected"],
    ["nothing", "", "is not JSON; expected"],
  ])("%s", (_, text, problem) => {
    expect(readEarlier(text, current)).toContain(problem);
  });
  test("another format, another book, a damaged finding", () => {
    expect(changed((value) => (value["format"] = 2))).toBe("is of format 2; this program reads format 1");
    expect(changed((value) => (value["book"] = { number: "TQ500-01", id: "TQ500" }))).toBe(
      "is of book TQ500-01 (id TQ500), this one is TQ423-01 (id TQ423); name findings of the same book",
    );
    expect(changed((value) => (value["findings"] = [{ key: "a" }]))).toBe(
      "is damaged: the 1st of its 1 findings lacks its key, rule, severity, message, owner or digest",
    );
    expect(changed((value) => (value["findings"] = [null]))).toContain("is damaged");
  });
});
