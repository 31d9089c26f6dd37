import type { Beginning } from "../begin/starter.ts";
import { schemaFolder } from "../load/own-schemas.ts";
import { jsonText, plain } from "../report/plain.ts";
import { reportHere } from "../report/report.ts";
import { summaryText } from "../report/text.ts";
import { counted } from "../report/words.ts";
import { judgeOrSay, shownPath } from "./books.ts";
import { takenJson, takenText, type Taken } from "./carried-text.ts";
import type { Effects, Exit } from "./command.ts";

/** Judges the book that was just begun, and says what was written and what it lacks. */
export function tellNew(
  dir: string,
  { register, profile }: Pick<Beginning, "register" | "profile">,
  texts: ReadonlyMap<string, string>,
  format: string | undefined,
  effects: Effects,
  taken?: Taken,
): Exit {
  const judged = judgeOrSay(dir, effects);
  if (judged === undefined) return 2;
  const report = reportHere(judged, effects.engine.tool);
  const path = shownPath(dir, effects.cwd);
  const own = [...texts.keys()].filter((name) => !name.startsWith(`${schemaFolder}/`));
  if (format === "json") {
    const { number, fingerprint } = report.book;
    const book = { number, register: register.id, profile, fingerprint };
    effects.print(
      jsonText({
        tool: report.tool,
        format: 1,
        path,
        files: own,
        book,
        counts: report.counts,
        ...(taken !== undefined && { taken: takenJson(taken) }),
      }),
    );
    return 0;
  }
  effects.print(
    [
      `begun in ${plain(path)}: ${own.length > 8 ? counted(own.length, "file") : own.join(", ")}, and ${counted(texts.size - own.length, "schema")} for editors in ${schemaFolder}/`,
      `register ${register.id} (${register.title}), profile ${profile}: databook explain says what they ask for`,
      "",
      ...(taken === undefined ? [] : [takenText(taken)]),
      summaryText(report, effects.ink),
      `every finding, with what to do: databook check ${plain(path)}`,
      "",
    ].join("\n"),
  );
  return 0;
}
