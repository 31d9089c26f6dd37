import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
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
 * The `index.ts` of each folder of definitions, by path in the repository: of the folders in it first, each with a list of
 * its own, then of its files in the order of the alphabet, then in the order of the file. `source` is `src/`, whose files say
 * what there is; `compiled` holds the same files as the compiler wrote them, whose values say what each export is. Throws
 * where two exports of a folder have one name.
 */
export async function generatedLists(source: string, compiled: string): Promise<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  for (const one of lists) await addList({ one, source, compiled, taken: new Set(), files }, one.folder, one.list);
  return files;
}

interface Making {
  readonly one: ListOfFolder;
  readonly source: string;
  readonly compiled: string;
  /** Definitions that are on a list: an export may hold others of the same file. */
  readonly taken: Set<unknown>;
  readonly files: Map<string, string>;
}

/** Adds the list of a folder and of those in it; false where nothing is defined there, and the folder is not the outermost. */
async function addList(making: Making, folder: string, list: string): Promise<boolean> {
  const { one, source, files } = making;
  const imports: string[] = [];
  const entries: string[] = [];
  for (const name of namesIn(join(source, folder), "folder")) {
    const inner = `${camel(name)}${list.charAt(0).toUpperCase()}${list.slice(1)}`;
    if (!(await addList(making, join(folder, name), inner))) continue;
    imports.push(importOf([inner], `./${name}/index.ts`));
    entries.push(`...${inner}`);
  }
  const names = new Map<string, string>();
  for (const path of namesIn(join(source, folder), "file")) {
    const found = await definedIn(making, join(folder, path));
    for (const { name } of found) {
      const before = names.get(name);
      if (before !== undefined)
        throw new Error(`\`${name}\` is exported by ${before} and by ${path} of src/${folder}/: rename one`);
      names.set(name, path);
    }
    entries.push(...found.map(({ name, many }) => (many ? `...${name}` : name)));
    if (found.length > 0)
      imports.push(
        importOf(
          found.map(({ name }) => name),
          `./${path}`,
        ),
      );
  }
  const outermost = folder === one.folder;
  if (entries.length === 0 && !outermost) return false;
  const up = `import type { ${one.type} } from "${"../".repeat(folder.split("/").length)}${one.model}";`;
  const body = entries.map((entry) => `  ${entry},\n`).join("");
  const inOne = `export const ${list}: readonly ${one.type}[] = [${entries.join(", ")}];`;
  const says = outermost
    ? one.says
    : `What ${one.folder}/ has of ${folder.split("/").slice(1).join(", ").replaceAll("-", " ")}.`;
  files.set(
    `src/${folder}/index.ts`,
    `// Made from the files of this folder by \`npm run types\`; change them, not this one.\n${up}\n${imports.join("\n")}\n\n${commentOf(says)}\n${
      inOne.length <= width ? inOne : `export const ${list}: readonly ${one.type}[] = [\n${body}];`
    }\n`,
  );
  return true;
}

/** What a file exports that belongs on the list, in its order; what an export before it holds too stands there once. */
async function definedIn(
  { one, source, compiled, taken }: Making,
  path: string,
): Promise<readonly { readonly name: string; readonly many: boolean }[]> {
  const values = (await import(pathToFileURL(join(compiled, path.replace(/\.ts$/, ".js"))).href)) as Readonly<
    Record<string, unknown>
  >;
  return [...readFileSync(join(source, path), "utf8").matchAll(/^export const (\w+)/gm)].flatMap(([, name = ""]) => {
    const value = values[name];
    const all: readonly unknown[] = Array.isArray(value) ? value : [value];
    const fresh = all.filter((each) => !taken.has(each));
    if (fresh.length === 0 || !all.every((each) => isOne(each, one))) return [];
    for (const each of all) taken.add(each);
    return [{ name, many: Array.isArray(value) }];
  });
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

/** Names in a folder, in the order of the alphabet, but for the list itself. */
const namesIn = (folder: string, sort: "folder" | "file"): readonly string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) =>
      sort === "folder"
        ? entry.isDirectory()
        : entry.isFile() && entry.name.endsWith(".ts") && entry.name !== "index.ts",
    )
    .map(({ name }) => name)
    .sort((a, b) => (a < b ? -1 : 1));

const camel = (name: string): string => name.replaceAll(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
