import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";

/** A list of everything of one sort that the files of a folder define. */
interface ListOfFolder {
  readonly folder: string;
  /** Name of the list. */
  readonly list: string;
  readonly type: string;
  /** Where the type is defined, from `src/`. */
  readonly model: string;
  /** What the list is, for whoever opens it. */
  readonly says: string;
  /** Properties that a value of this sort has, and no other value of the folder. */
  readonly has: readonly string[];
}

const lists: readonly ListOfFolder[] = [
  {
    folder: "rules",
    list: "rules",
    type: "Rule",
    model: "model/rule.ts",
    says: "Every shipped rule, by trade.",
    has: ["id", "title", "check"],
  },
  {
    folder: "calculations",
    list: "calculations",
    type: "Calculation",
    model: "model/calculation.ts",
    says: "Every calculation.",
    has: ["id", "steps", "limits", "accept"],
  },
  {
    folder: "facts",
    list: "facts",
    type: "Fact",
    model: "model/fact.ts",
    says: "What several records state alike.",
    has: ["id", "statements"],
  },
  {
    folder: "chains",
    list: "chains",
    type: "Chain",
    model: "model/chain.ts",
    says: "The walks an inspector takes, kind by kind. A kind without one gets a chain of what it names and what it owes.",
    has: ["kind", "links"],
  },
  {
    folder: "closers",
    list: "closers",
    type: "Closer",
    model: "model/closer.ts",
    says: "What may close a rejected result; the `x-closed-by` of a schema names them.",
    has: ["id", "kinds", "close"],
  },
  {
    folder: "expiries",
    list: "expiries",
    type: "Rule",
    model: "model/rule.ts",
    says: "What a job takes from the last one must still hold on the day of its order: asked of a book that has just been begun, by the engine and with the periods of its profile. No book is judged by these: it asks whether each held when it was used.",
    has: ["id", "title", "check"],
  },
  {
    folder: "scopes",
    list: "scopes",
    type: "Scope",
    model: "model/scope.ts",
    says: "What definitions belong to, and registers are made of.",
    has: ["id", "needs", "signs"],
  },
  {
    folder: "verification",
    list: "answers",
    type: "AnswerSource",
    model: "model/answer.ts",
    says: "Answers that others printed, by source. A test holds ours against them; the book prints both.",
    has: ["source", "answers"],
  },
];

/**
 * The `index.ts` of each folder of definitions, by path in the repository: folders, then files, each in the order of the
 * alphabet, then in the order of the file. `source` is `src/`, whose files say what there is; `compiled` holds the same
 * files as the compiler wrote them, whose values say what each export is. Throws where two exports have one name.
 */
export async function generatedLists(source: string, compiled: string): Promise<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  for (const one of lists) {
    const taken = new Set<unknown>();
    const imports: string[] = [];
    const entries: string[] = [];
    const names = new Map<string, string>();
    for (const file of filesIn(join(source, one.folder))) {
      const path = relative(join(source, one.folder), file);
      if (path === "index.ts") continue;
      const values = (await import(
        pathToFileURL(join(compiled, one.folder, path.replace(/\.ts$/, ".js"))).href
      )) as Readonly<Record<string, unknown>>;
      const found: string[] = [];
      for (const [, name = ""] of readFileSync(file, "utf8").matchAll(/^export const (\w+)/gm)) {
        const value = values[name];
        const all: readonly unknown[] = Array.isArray(value) ? value : [value];
        const fresh = all.filter((each) => !taken.has(each));
        if (fresh.length === 0 || !all.every((each) => isOne(each, one))) continue;
        const before = names.get(name);
        if (before !== undefined)
          throw new Error(`\`${name}\` is exported by ${before} and by ${path} of src/${one.folder}/: rename one`);
        names.set(name, path);
        found.push(name);
        entries.push(Array.isArray(value) ? `...${name}` : name);
        for (const each of all) taken.add(each);
      }
      if (found.length > 0) imports.push(importOf(found, `./${path}`));
    }
    const up = `import type { ${one.type} } from "../${one.model}";`;
    const body = entries.map((entry) => `  ${entry},\n`).join("");
    const inOne = `export const ${one.list}: readonly ${one.type}[] = [${entries.join(", ")}];`;
    files.set(
      `src/${one.folder}/index.ts`,
      `// Made from the files of this folder by \`npm run types\`; change them, not this one.\n${up}\n${imports.join("\n")}\n\n${commentOf(one.says)}\n${
        inOne.length <= width ? inOne : `export const ${one.list}: readonly ${one.type}[] = [\n${body}];`
      }\n`,
    );
  }
  return files;
}

/** Characters on a line, as everywhere in this repository. */
const width = 120;

function commentOf(words: string): string {
  if (words.length + 7 <= width) return `/** ${words} */`;
  const lines = [""];
  for (const word of words.split(" ")) {
    const last = lines.length - 1;
    const longer = `${lines[last]} ${word}`;
    if (longer.length + 2 > width) lines.push(` ${word}`);
    else lines[last] = longer;
  }
  return `/**\n${lines.map((line) => ` *${line}`).join("\n")}\n */`;
}

function importOf(names: readonly string[], from: string): string {
  const inOne = `import { ${names.join(", ")} } from "${from}";`;
  return inOne.length <= width ? inOne : `import {\n${names.map((name) => `  ${name},\n`).join("")}} from "${from}";`;
}

const isOne = (value: unknown, { has }: ListOfFolder): boolean =>
  typeof value === "object" && value !== null && has.every((property) => property in value);

/** Files of a folder and of the folders in it, folders first. */
function filesIn(folder: string): readonly string[] {
  const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  return [
    ...entries.filter((entry) => entry.isDirectory()).flatMap(({ name }) => filesIn(join(folder, name))),
    ...entries.filter((entry) => entry.isFile() && entry.name.endsWith(".ts")).map(({ name }) => join(folder, name)),
  ];
}
