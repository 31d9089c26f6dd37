import { blocks } from "../model/finding.ts";
import { reportJson } from "../report/json.ts";
import { reportOf } from "../report/report.ts";
import { reportSarif } from "../report/sarif.ts";
import { reportText } from "../report/text.ts";
import { bookFolder, judgeOrSay } from "./books.ts";
import { bookArgument, formatOption, type Command } from "./command.ts";

export const check: Command = {
  name: "check",
  summary: "judge the records of a book and list what blocks its release",
  arguments: [bookArgument],
  options: { format: formatOption(["text", "json", "sarif"]) },
  help: [
    "Reads every record, follows every link, recomputes every derived value and applies every rule and requirement. " +
      "Each finding says where, what, why, on which basis and what to do; its key and digest are what an exception cites.",
    "Exit 0: nothing blocks. Exit 1: a nonconformity, a gap or a query blocks. Exit 2: the book cannot be judged at all.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.arguments[0], effects);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    const { builtIns, tool } = effects.engine;
    const { rules, calculations, facts } = judged.definitions;
    const report = reportOf(judged, tool);
    switch (given.options.get("format")) {
      case "json":
        effects.print(reportJson(report));
        break;
      case "sarif":
        effects.print(reportSarif(report, [...builtIns, ...rules, ...calculations, ...facts]));
        break;
      default:
        effects.print(reportText(report, effects.ink));
    }
    return judged.findings.some(blocks) ? 1 : 0;
  },
};
