import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import ts from "typescript";

const guide = readFileSync(join(import.meta.dirname, "../../DEVELOPERS.md"), "utf8");

/** The code block of a language under a heading of DEVELOPERS.md. */
export function guideBlock(heading: string, language: string): string {
  const start = guide.indexOf(`\n## ${heading}\n`);
  const section = guide.slice(start + 1, guide.indexOf("\n## ", start + 1));
  const found = new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(section)?.[1];
  if (start < 0 || found === undefined) throw new Error(`DEVELOPERS.md has no ${language} under "${heading}"`);
  return found;
}

/** What a TypeScript block of the guide defines, run with the names that its text says are imported. */
export function guideDefinition(heading: string, imports: Readonly<Record<string, unknown>>): unknown {
  const source = guideBlock(heading, "ts").replace(/^export const (\w+) =/m, "const defined =");
  const { outputText } = ts.transpileModule(source, { compilerOptions: { target: ts.ScriptTarget.ES2022 } });
  const names = Object.keys(imports);
  const make = runInThisContext(`(function (${names.join(", ")}) { ${outputText}\n return defined; })`) as (
    ...values: readonly unknown[]
  ) => unknown;
  return make(...names.map((name) => imports[name]));
}
