import { blocks } from "../model/finding.ts";
import { reportJson } from "../report/json.ts";
import { reportHere } from "../report/report.ts";
import { reportSarif } from "../report/sarif.ts";
import { shortText, sinceText } from "../report/short.ts";
import { sinceOf } from "../report/since.ts";
import { reportText } from "../report/text.ts";
import { bookFolder, judgeOrSay } from "./books.ts";
import { bookArgument, formatOption, UsageError, type Command } from "./command.ts";
import { earlierReport } from "./since.ts";

export const check: Command = {
  name: "check",
  summary: "judge the records of a book and list what blocks its release",
  readsBook: true,
  arguments: [bookArgument],
  options: {
    short: { means: "one line for each finding, grouped by who must act" },
    since: {
      value: "FILE",
      means:
        "what is new, still open and gone since that report: the findings.json of an issue, or what check --format json printed",
    },
    format: formatOption(["text", "json", "sarif"]),
  },
  help: [
    "Reads every record, follows every link, recomputes every derived value and applies every rule and requirement. " +
      "Each finding says where, what, why, on which basis and what to do; its key and digest are what an exception cites.",
    "With --since a finding is known by its key. What is gone says whether its check was done again: what waits now, does not " +
      "apply any more, or is answered by an exception has not been put right. JSON then carries the same three lists as keys.",
    "Exit 0: nothing blocks. Exit 1: a nonconformity, a gap or a query blocks. Exit 2: the book cannot be judged at all.",
  ],
  async run(given, effects) {
    const format = given.options.get("format") ?? "text";
    const [short, named] = [given.options.has("short"), given.options.get("since")];
    if (short && format !== "text")
      throw new UsageError(`--short is a form of the text; --format ${format} always holds every finding whole`);
    if (named !== undefined && format === "sarif")
      throw new UsageError("--since compares in text or json; leave out one of --since and --format sarif");
    const dir = await bookFolder(given.arguments[0], effects);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    const { builtIns, tool } = effects.engine;
    const { rules, calculations, facts } = judged.definitions;
    const report = reportHere(judged, tool);
    const since =
      named === undefined ? undefined : sinceOf(report, judged, await earlierReport(named, effects.cwd, report));
    switch (format) {
      case "json":
        effects.print(reportJson(report, since));
        break;
      case "sarif":
        effects.print(reportSarif(report, [...builtIns, ...rules, ...calculations, ...facts]));
        break;
      default:
        if (since !== undefined) effects.print(sinceText(report, since, short, effects.ink));
        else effects.print(short ? shortText(report, effects.ink) : reportText(report, effects.ink));
    }
    return judged.findings.some(blocks) ? 1 : 0;
  },
};
