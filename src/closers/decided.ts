import { closer, type Closer } from "../model/closer.ts";
import { anyOf, optional, text, things } from "../model/input.ts";

/** A nonconformity report that names the record or row, is closed, and ends in one of some dispositions. */
function decidedBy(id: string, title: string, dispositions: readonly string[]): Closer {
  const hint = "raise a nonconformity report that names it, and have it decided";
  return closer({
    id,
    title,
    kinds: "any",
    owner: "quality",
    inputs: {
      reports: anyOf(
        things("<nonconformity-report:affected[]>", {
          state: optional(text("state")),
          disposition: optional(text("disposition")),
        }),
      ),
    },
    close({ reports }) {
      if (reports.length === 0)
        return { closes: false, begun: false, lacks: "no nonconformity report decides on it", hint };
      const decided = reports.filter(
        ({ state, disposition = "" }) => state === "closed" && dispositions.includes(disposition),
      );
      if (decided.length > 0)
        return {
          closes: true,
          said: `decided: ${decided.map(({ $, disposition = "" }) => `${$.name} (${disposition.replaceAll("-", " ")})`).join(", ")}`,
        };
      const said = reports.map(
        ({ $, state = "in no state", disposition }) =>
          `${$.name} is ${state}${disposition === undefined ? " without a decision" : `, with the decision “${disposition.replaceAll("-", " ")}”`}`,
      );
      return { closes: false, begun: false, lacks: `nonconformity report ${said.join("; ")}`, hint };
    },
    examples: [
      { name: "no report", given: { reports: [] }, expect: "no nonconformity report decides on it" },
      {
        name: "use as is, closed",
        given: { reports: [{ $: "NCR-01", state: "closed", disposition: "use-as-is" }] },
        expect: "decided: NCR-01 (use as is)",
      },
      {
        name: "decided, not closed",
        given: { reports: [{ $: "NCR-01", state: "agreed", disposition: "use-as-is" }] },
        expect: "nonconformity report NCR-01 is agreed, with the decision “use as is”",
      },
      {
        name: "raised",
        given: { reports: [{ $: "NCR-01", state: "raised" }] },
        expect: "nonconformity report NCR-01 is raised without a decision",
      },
    ],
  });
}

const kept = ["use-as-is", "regrade", "scrap", "return"];

/** What is to be repaired is not put right by the decision to repair it. */
export const conceded = decidedBy("concession", "a closed nonconformity report that leaves it as it is", kept);
export const decided = decidedBy("nonconformity", "a closed nonconformity report", [...kept, "rework", "repair"]);
