import type { Command } from "./command.ts";
import { usageOf } from "./command-line.ts";

const width = 92;

/** Help of the whole tool. */
export function toolHelp(commands: readonly Command[], tool: string): string {
  return `${[
    `${tool}: certified manufacturing data books from JSON records`,
    "usage: databook <command> …",
    table(commands.map(({ name, summary }) => [name, summary])),
    "databook <command> --help says more about one. databook --version names the version.",
    wrap(
      "Exit: 0 nothing blocks, 1 findings block, 2 the work could not be done. Data goes to standard output, talk to standard " +
        "error. NO_COLOR turns emphasis off.",
    ),
    wrap(
      "The checks compare what was recorded with itself and with the loaded rules. They do not replace inspection, the " +
        "applicable code, local law, or the judgement of licensed people.",
    ),
  ].join("\n\n")}\n`;
}

/** Help of one command. */
export function commandHelp(command: Command): string {
  const places = command.arguments.map(({ name, means }) => [name, means] as const);
  const options = Object.entries(command.options).map(
    ([name, { value, means }]) => [`--${name}${value === undefined ? "" : ` ${value}`}`, means] as const,
  );
  return `${[`${command.name}: ${command.summary}`, usageLines(command), table([...places, ...options]), ...command.help.map((text) => wrap(text))].join("\n\n")}\n`;
}

/** An option and its value stay on one line. */
function usageLines(command: Command): string {
  const whole = usageOf(command).replaceAll(/\[[^\]]*\]/g, (option) => option.replaceAll(" ", "\u00a0"));
  return wrap(`usage: ${whole}`).replaceAll("\n", "\n  ").replaceAll("\u00a0", " ");
}

function table(rows: readonly (readonly [string, string])[]): string {
  const left = Math.max(...rows.map(([name]) => name.length)) + 2;
  return rows
    .map(
      ([name, text]) =>
        `  ${name.padEnd(left)}${wrap(text, width - left - 2).replaceAll("\n", `\n${" ".repeat(left + 2)}`)}`,
    )
    .join("\n");
}

function wrap(text: string, room = width): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line].join("\n");
}
