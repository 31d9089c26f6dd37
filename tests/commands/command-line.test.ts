import { describe, expect, test } from "vitest";
import { UsageError } from "../../src/commands/command.ts";
import { parseCommandLine, usageOf } from "../../src/commands/command-line.ts";
import { commands } from "../../src/commands/index.ts";
import { judgedBook } from "../report/judged.ts";
import { runOn } from "./fakes.ts";

const parse = (text: string) => parseCommandLine(text === "" ? [] : text.split(" "), commands);

function given(text: string) {
  const line = parse(text);
  if (line.type !== "run") throw new Error(`"${text}" runs nothing`);
  return { name: line.command.name, places: line.given.arguments, options: Object.fromEntries(line.given.options) };
}

describe("command line", () => {
  test.each([
    ["check", { name: "check", places: [], options: {} }],
    ["check book --format json", { name: "check", places: ["book"], options: { format: "json" } }],
    ["check --format=sarif book", { name: "check", places: ["book"], options: { format: "sarif" } }],
    ["build --out a/b book", { name: "build", places: ["book"], options: { out: "a/b" } }],
    ["trace joint L1 --book x", { name: "trace", places: ["joint", "L1"], options: { book: "x" } }],
    ["originals book --add", { name: "originals", places: ["book"], options: { add: "" } }],
    ["originals --add book", { name: "originals", places: ["book"], options: { add: "" } }],
    ["verify -- -odd", { name: "verify", places: ["-odd"], options: {} }],
    ["build --out=-odd", { name: "build", places: [], options: { out: "-odd" } }],
  ])("%s", (text, expected) => expect(given(text)).toEqual(expected));

  test.each([
    ["", "no command given; see: databook --help"],
    ["chekc", `there is no command "chekc"; did you mean check?`],
    ["publish", `there is no command "publish"; see: databook --help`],
    ["--format json check", `the command comes before "--format"; see: databook --help`],
    ["check --fromat json", `check has no option "--fromat"; did you mean --format?`],
    ["check -x", `check has no option "-x"; see: databook check --help`],
    ["check --__proto__", `check has no option "--__proto__"; see: databook check --help`],
    ["check --format", "--format needs a value: --format FORM"],
    ["build --out --format json", "--out needs a value: --out DIR"],
    ["build --out=", "--out needs a value: --out DIR"],
    ["check --format jsn", `--format is "jsn"; expected text, json, sarif; did you mean json?`],
    ["build --format sarif", `--format is "sarif"; expected text, json`],
    ["check --format json --format text", "--format is given twice; give it once"],
    ["originals --add=yes", `--add is a switch and takes no value, but has "yes"`],
    ["check one two", `check cannot use "two"; use: databook check [book] [--short] [--since FILE] [--format FORM]`],
    [
      "trace joint",
      "trace needs the id: its id, such as L1, or what it alone states, such as a heat number; use: databook trace <kind> <id> [--book DIR] [--format FORM]",
    ],
    [
      "verify",
      "verify needs the issue: folder of the issue, wherever it lies now; use: databook verify <issue> [--expect HASH] [--format FORM]",
    ],
  ])("%s is refused", (text, message) => {
    expect(() => parse(text)).toThrow(new UsageError(message));
  });
});

describe("help", () => {
  const run = (...words: readonly string[]) => runOn({ judged: judgedBook() }, ...words);

  test.each([["--help"], ["-h"], ["help"]])("%s lists every command, on standard output", async (word) => {
    const { exit, out, err } = await run(word);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    for (const { name, summary } of commands) expect(out.replaceAll(/\s+/g, " ")).toContain(`${name} ${summary}`);
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(92);
  });

  test.each(commands.map((command) => [command.name, command] as const))(
    "help of %s names all it takes",
    async (name, command) => {
      const { exit, out } = await run(name, "--help");
      expect(exit).toBe(0);
      expect(out.replaceAll(/\s+/g, " ")).toContain(`usage: ${usageOf(command)}`);
      for (const option of Object.keys(command.options)) expect(out).toContain(`--${option}`);
      for (const argument of command.arguments)
        expect(out.replaceAll(/\s+/g, " ")).toContain(`${argument.name} ${argument.means}`);
      for (const paragraph of command.help) expect(out.replaceAll(/\s+/g, " ")).toContain(paragraph);
      expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
      expect(out.split("\n").length).toBeLessThan(60);
      expect((await run("help", name)).out).toBe(out);
    },
  );

  test("--version names tool and version", async () => {
    expect(await run("--version")).toMatchObject({ exit: 0, out: "databook 0.1.0\n" });
  });

  test("bad usage is exit 2, said on standard error", async () => {
    expect(await run("chekc")).toMatchObject({
      exit: 2,
      out: "",
      err: `there is no command "chekc"; did you mean check?\n`,
    });
    expect(await run()).toMatchObject({ exit: 2, out: "" });
  });
});
