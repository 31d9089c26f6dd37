import type { Counts } from "./book.ts";
import type { Outcome, Verdict } from "./finding.ts";

/**
 * What stands where a verdict would. *not due*: its day has not come · *on record*: it is in the book, and no rule judges
 * it · *rejected*: a result that says so itself, and that nothing has closed · *answered*: it did not pass, and exceptions
 * answer all that stands against it.
 */
export type Mark = Verdict | "not due" | "on record" | "rejected" | "answered";

/** How an outcome is shown and counted. What is rejected stays so until it is closed, or an exception accepts it. */
export function markOf(outcome: Pick<Outcome, "verdict" | "because" | "refused" | "answered">): Mark {
  if (outcome.answered !== undefined) return "answered";
  if (outcome.refused === true && outcome.verdict === "failed") return "rejected";
  return outcome.because?.type === "not due" ? "not due" : outcome.verdict;
}

/** How each mark is said of a number of things, in the order they are said. */
const words: Readonly<Record<Mark, string>> = {
  passed: "passed",
  failed: "failed",
  rejected: "rejected",
  answered: "answered by an exception",
  "not judged": "not judged",
  "not due": "not due",
  "on record": "on record and judged by nothing",
  computed: "computed with nothing asked of it",
  "not applicable": "not applicable",
};

/** How many of each mark there are. */
export type Tally = ReadonlyMap<Mark, number>;

export function tally(marks: Iterable<Mark>): Tally {
  const counts = new Map<Mark, number>();
  for (const mark of marks) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return counts;
}

/** Outcomes of a whole book by their mark. */
export const tallyOf = (counts: Counts): Tally =>
  new Map([
    ["passed", counts.passed],
    ["computed", counts.computed],
    ["failed", counts.failed],
    ["rejected", counts.rejected],
    ["answered", counts.answered],
    ["not judged", counts.notJudged],
    ["not due", counts.notDue],
    ["not applicable", counts.notApplicable],
  ]);

/**
 * What became of them all: "all passed", or each mark with its number, which add up. Of nothing there is nothing to say.
 * Where only presence was asked for, `passed` says so ("there").
 */
export function countWords(counts: Tally, passed = words.passed): string {
  const wordOf = (mark: Mark) => (mark === "passed" ? passed : words[mark]);
  const said = (Object.keys(words) as Mark[]).flatMap((mark) => {
    const count = counts.get(mark) ?? 0;
    return count === 0 ? [] : [{ mark, count }];
  });
  const [first, ...more] = said;
  if (first === undefined) return "";
  if (more.length === 0) return first.count === 1 ? wordOf(first.mark) : `all ${wordOf(first.mark)}`;
  return said.map(({ mark, count }) => `${count} ${wordOf(mark)}`).join(", ");
}

/**
 * The sentence every count is said with, without its full stop: "12 checks: 10 passed, 1 failed, 1 not judged". What gives
 * figures of which nothing is asked, and what does not apply, is no check and said apart ("3 more do not apply"). `name`
 * says how many of what there are: "12 checks", "1 joint".
 */
export function countSentence(
  marks: Iterable<Mark> | Tally,
  name: (count: number) => string,
  passed = words.passed,
): string {
  const counts = new Map(isTally(marks) ? marks : tally(marks));
  const none = counts.get("not applicable") ?? 0;
  const stated = counts.get("computed") ?? 0;
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
  if (all === 0) return name(0);
  if (none + stated === all) return `${name(all)}: ${countWords(counts, passed)}`;
  counts.delete("not applicable");
  counts.delete("computed");
  const figures =
    stated === 0 ? "" : `; ${stated} more ${stated === 1 ? "gives" : "give"} figures of which nothing is asked`;
  const more = none === 0 ? "" : `; ${none} more ${none === 1 ? "does" : "do"} not apply`;
  return `${name(all - none - stated)}: ${countWords(counts, passed)}${figures}${more}`;
}

const isTally = (marks: Iterable<Mark> | Tally): marks is Tally => marks instanceof Map;

const harmlessFirst: readonly Mark[] = [
  "not applicable",
  "computed",
  "passed",
  "on record",
  "answered",
  "not due",
  "not judged",
  "failed",
  "rejected",
];

/** How grave a mark is, beside others. */
export const gravity = (mark: Mark): number => harmlessFirst.indexOf(mark);

/** The gravest of several marks; *not applicable* when there is none. */
export function worst(marks: Iterable<Mark>): Mark {
  let most: Mark = "not applicable";
  for (const mark of marks) if (gravity(mark) > gravity(most)) most = mark;
  return most;
}
