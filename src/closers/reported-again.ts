import { closer, type Closer } from "../model/closer.ts";
import { anyOf, date, list, optional, text, things } from "../model/input.ts";
import { closed, holds, lacks } from "./repeated.ts";

/** A later report of one kind about the same joints or parts. */
const reportedAgain = (id: string, kind: string, what: string, about: "joints" | "parts", path: string) =>
  closer({
    id,
    title: `a later ${what} of the same ${about} that is accepted`,
    kinds: [kind],
    owner: "quality",
    inputs: {
      named: anyOf(list(text(path))),
      day: date("date"),
      others: anyOf(
        things(`book.${kind}`, {
          named: anyOf(list(text(path))),
          day: optional(date("date")),
          result: optional(text("result")),
        }),
      ),
    },
    close({ named, day, others }, subject) {
      // A report that names nothing is repeated by none.
      const same = named.length > 0 ? others.filter((one) => holds(one.named, named)) : [];
      return closed(
        day,
        same.map(({ $, day: on, result }) => ({ $, day: on, results: [result] })),
        subject,
      );
    },
    examples: [
      { name: "again", given: again("2026-06-09", "C1", "C2"), expect: "repeated: X-02" },
      { name: "only one of them", given: again("2026-06-09", "C1"), expect: lacks },
      { name: "earlier", given: again("2026-06-07", "C1", "C2"), expect: lacks },
    ],
  });

/** One of 2026-06-08 about C1 and C2, and another. */
function again(day: string, ...named: readonly string[]) {
  return { named: ["C1", "C2"], day: "2026-06-08", others: [{ $: "X-02", named, day, result: "accepted" }] };
}

export const reportsRepeated: readonly Closer[] = [
  reportedAgain("later-coat", "coating-report", "report of a coat", "parts", "parts[]"),
  reportedAgain("later-hardness", "hardness-report", "test of hardness", "joints", "rows[].joint"),
  reportedAgain("later-leak-test", "leak-test", "leak test", "joints", "joints[]"),
  reportedAgain("later-analysis", "alloy-report", "analysis", "parts", "rows[].part"),
];
