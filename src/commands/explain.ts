import { nearestIds } from "../link/alike.ts";
import { plain } from "../report/plain.ts";
import { bookFolder, judgeOrSay } from "./books.ts";
import { didYouMean } from "./choose.ts";
import { formatOption, UsageError, type Command, type Effects } from "./command.ts";
import { blankRecord } from "./explain-blank.ts";
import { ofBook } from "./explain-book.ts";
import { explainJson } from "./explain-json.ts";
import { explainText, listText } from "./explain-text.ts";
import { explained, listNamed, lists, named, names, type Explained } from "./explained.ts";

export const explain: Command = {
  name: "explain",
  summary: "list every name that a reader meets, or explain one of them",
  arguments: [
    {
      name: "name",
      required: false,
      means:
        "kind, calculation, rule, requirement, register, scope, profile, parameter, table, milestone, owner or unit; or one of the lists: " +
        lists.join(", "),
    },
  ],
  options: {
    blank: { means: "of a kind: print the smallest record to copy" },
    book: { value: "DIR", means: "leave out what cannot apply to that book" },
    format: formatOption(["text", "json"]),
  },
  help: [
    "A kind: its fields with types, units and when they are owed. A calculation: formulas, limits, inputs and worked examples " +
      "with their sources. A rule: what it reads, how grave its objections are, and examples on each side of every limit. A register: " +
      "its rows by milestone. A profile or a parameter: values, basis and cautious side. A table: which grades, editions and bands it knows.",
    "With --book: its own register and profile, and nothing that was found not to apply to everything the book holds. What it holds " +
      "nothing of yet is kept: nobody can say. A kind goes without fields that its register says such equipment has none of, or that only " +
      "such definitions read as what the equipment is rules out; a line names them. What a record of the book states always stays.",
  ],
  async run({ arguments: [name], options }, effects) {
    const everything = explained(effects.engine.definitions(), effects.engine.builtIns);
    const book = options.get("book");
    const all = book === undefined ? everything : await inBook(everything, book, effects);
    if (all === undefined) return 2;
    const list = name === undefined ? all : listNamed(all, name);
    const chosen = list ?? named(all, name ?? "");
    if (name !== undefined && list === undefined && names(chosen).length === 0) throw unknown(name, all, everything);
    if (options.has("blank")) effects.print(blank(name, chosen));
    else if (options.get("format") === "json") effects.print(explainJson(chosen));
    else effects.print(list === undefined ? explainText(chosen, effects.ink) : listText(chosen, effects.ink));
    return 0;
  },
};

async function inBook(all: Explained, book: string, effects: Effects): Promise<Explained | undefined> {
  const judged = judgeOrSay(await bookFolder(book, effects), effects);
  return judged === undefined ? undefined : ofBook(all, judged);
}

function unknown(name: string, all: Explained, everything: Explained): UsageError {
  if (names(named(everything, name)).length > 0)
    return new UsageError(`"${plain(name)}" does not apply to this book; leave out --book to have it explained`);
  const near = nearestIds(name, [...names(all), ...lists]);
  return new UsageError(
    `nothing is called "${plain(name)}"${near.length > 0 ? didYouMean(near) : "; list all names with: databook explain"}`,
  );
}

function blank(name: string | undefined, { kinds }: Explained): string {
  const [kind] = kinds;
  if (name === undefined || kind?.name !== name || kind.derived)
    throw new UsageError("--blank is for a kind that records are written of; list them with: databook explain kinds");
  return `${JSON.stringify(blankRecord(kind), null, 2)}\n`;
}
