import type { JudgedBook } from "../model/book.ts";
import { blocks } from "../model/finding.ts";
import type { LastChange } from "../publish/outline/live.ts";
import type { Answer, LiveServer } from "../publish/live/server.ts";
import type { Earlier } from "../report/earlier.ts";
import { placeFindings, reportHere } from "../report/report.ts";
import { sinceSentence } from "../report/short.ts";
import { sinceOf, type Since } from "../report/since.ts";
import { fatalText, findingText, summaryText } from "../report/text.ts";
import { bookFolder } from "./books.ts";
import { bookArgument, UsageError, type Command, type Effects, type Exit, type ReadBook } from "./command.ts";
import { faultText } from "./fault-text.ts";

const firstPort = 8470;

export const watch: Command = {
  name: "watch",
  summary: "judge the book again at each save, and keep its pages open in a browser",
  readsBook: true,
  arguments: [bookArgument],
  options: {
    port: { value: "N", means: `port on this machine, or the next free one; ${firstPort} if not given` },
  },
  help: [
    "Prints the address to open. The first page is the list of findings, those of the last change first; every open page renews " +
      "itself after each save. Pages are made when they are asked for, so nothing is written; nothing here is an issue, and every page says so.",
    "Only this machine is answered. Ends with Ctrl+C.",
    "Exit, by what was judged last: 0 nothing blocks. 1 findings block. 2 the book cannot be judged.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.arguments[0], effects);
    const port = portOf(given.options.get("port"));
    const { serveLive, wordsPage } = await import("../publish/live/index.ts");
    const { watchFolder } = await import("./watch-folder.ts");
    const judging = newJudging(dir, effects, wordsPage);
    let server: LiveServer | undefined;
    const folder = watchFolder(dir, async (gone) => {
      if (gone) effects.say("the folder of the book is gone; waiting until it is back\n");
      await judging.again();
      folder.also(judging.shelves());
      server?.renew();
    });
    try {
      await folder.ready;
      await folder.now();
      server = await serveLive((path) => judging.answer(path), port);
      effects.print(`open ${server.url}\n`);
      await effects.interrupted(folder.failed);
    } finally {
      await folder.close();
      await server?.close();
    }
    return judging.exit();
  },
};

function portOf(text: string | undefined): number {
  const port = text === undefined ? firstPort : /^\d{1,5}$/.test(text) ? Number(text) : 0;
  if (port < 1 || port > 65_535)
    throw new UsageError(`--port is "${text ?? ""}"; expected a whole number from 1 to 65535`);
  return port;
}

interface Judging {
  again(): Promise<void>;
  answer(path: string): Promise<Answer>;
  /** Folders beside the book that it read the last time. */
  shelves(): readonly string[];
  exit(): Exit;
}

/** Reads and judges the book each time it is told to, and answers from what came of the last time. */
function newJudging(
  dir: string,
  effects: Effects,
  wordsPage: (status: number, title: string, lines: readonly string[]) => Answer,
): Judging {
  const { engine, ink } = effects;
  const judge = engine.judgingAgain();
  let read: ReadBook | undefined;
  let before: Earlier | undefined;
  let change: LastChange = { fresh: new Set(), gone: [] };
  let exit: Exit = 2;
  let shelves: readonly string[] = [];
  let answer: Judging["answer"] = () => Promise.resolve(wordsPage(503, "The book is being judged", []));

  const unjudged = (why: string): void => {
    exit = 2;
    effects.print(why);
    answer = () => Promise.resolve(wordsPage(503, "The book cannot be judged", [why]));
  };

  const compare = (judged: JudgedBook): void => {
    const report = reportHere(judged, engine.tool);
    if (before === undefined) effects.print(`${summaryText(report, ink)}\n`);
    else {
      const since = sinceOf(report, judged, before);
      effects.print(
        [
          ...since.fresh.map(({ placed }) => `${findingText(placed, ink)}\n`),
          `${sinceSentence(since)}\n${summaryText(report, ink)}\n`,
        ].join("\n"),
      );
      // A save that moves no finding leaves the marks of the one before.
      if (since.fresh.length + since.gone.length > 0) change = changeOf(since);
    }
    before = { ...report.book, findings: report.findings.map(({ finding }) => finding) };
  };

  return {
    async again() {
      try {
        effects.progress("reading");
        read = engine.readBook(dir, read === undefined ? {} : { since: read });
        shelves = (read.shelves ?? []).map((shelf) => shelf.dir);
        if (read.fatal.length > 0) {
          unjudged(fatalText(placeFindings(read.fatal, read.locator)));
          return;
        }
        effects.progress("judging");
        const judged = judge(read);
        compare(judged);
        exit = judged.findings.some(blocks) ? 1 : 0;
        answer = await engine.liveSite(judged, change);
      } catch (error) {
        // Whoever edits a file half way must not have to start again.
        unjudged(`${faultText(error)}\n`);
      }
    },
    answer: (path) => answer(path),
    shelves: () => shelves,
    exit: () => exit,
  };
}

const changeOf = (since: Since): LastChange => ({
  sentence: sinceSentence(since),
  fresh: new Set(since.fresh.map(({ placed }) => placed.finding.key)),
  gone: since.gone.map(({ earlier: { severity, message }, now }) => ({ severity, message, now })),
});
