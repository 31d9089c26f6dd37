import { parseArgs } from "node:util";
import { nearestIds } from "../link/alike.ts";
import { UsageError, type Command, type Given } from "./command.ts";

export type CommandLine =
  | { readonly type: "run"; readonly command: Command; readonly given: Given }
  | { readonly type: "help"; readonly command?: Command }
  | { readonly type: "version" };

/** What a command line asks for. Throws a `UsageError` that names what is wrong and what was probably meant. */
export function parseCommandLine(words: readonly string[], commands: readonly Command[]): CommandLine {
  const [first, ...rest] = words;
  if (first === undefined) throw new UsageError("no command given; see: databook --help");
  if (first === "--help" || first === "-h") return { type: "help" };
  if (first === "--version") return { type: "version" };
  if (first === "help") {
    const about = rest[0];
    return about === undefined ? { type: "help" } : { type: "help", command: commandNamed(about, commands) };
  }
  if (first.startsWith("-")) throw new UsageError(`the command comes before "${first}"; see: databook --help`);
  const command = commandNamed(first, commands);
  if (rest.includes("--help") || rest.includes("-h")) return { type: "help", command };
  return { type: "run", command, given: readWords(rest, command) };
}

function commandNamed(name: string, commands: readonly Command[]): Command {
  const found = commands.find((command) => command.name === name);
  if (found !== undefined) return found;
  const near = nearestIds(
    name,
    commands.map((command) => command.name),
  );
  throw new UsageError(
    `there is no command "${name}"; ${near.length > 0 ? `did you mean ${near.join(" or ")}?` : "see: databook --help"}`,
  );
}

function readWords(words: readonly string[], command: Command): Given {
  const options = new Map<string, string>();
  const places: string[] = [];
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(
      Object.entries(command.options).map(([name, { value }]) => [
        name,
        { type: value === undefined ? "boolean" : "string" } as const,
      ]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind === "positional") places.push(token.value);
    if (token.kind !== "option") continue;
    // A lone value that looks like an option was meant as one: `--out --format json`.
    const value = token.value?.startsWith("-") === true && !token.inlineValue ? undefined : token.value;
    options.set(token.name, readOption(token.rawName, token.name, value, command, options));
  }
  const { arguments: wanted } = command;
  const missing = wanted.slice(places.length).find(({ required }) => required);
  if (missing !== undefined)
    throw new UsageError(`${command.name} needs the ${missing.name}: ${missing.means}; use: ${usageOf(command)}`);
  if (places.length > wanted.length)
    throw new UsageError(`${command.name} cannot use "${places[wanted.length] ?? ""}"; use: ${usageOf(command)}`);
  return { arguments: places, options };
}

function readOption(
  raw: string,
  name: string,
  value: string | undefined,
  command: Command,
  earlier: ReadonlyMap<string, string>,
): string {
  const option = Object.hasOwn(command.options, name) ? command.options[name] : undefined;
  if (option === undefined) {
    const near = nearestIds(name, Object.keys(command.options));
    const help = near.length > 0 ? `did you mean --${near.join(" or --")}?` : `see: databook ${command.name} --help`;
    throw new UsageError(`${command.name} has no option "${raw}"; ${help}`);
  }
  if (earlier.has(name)) throw new UsageError(`${raw} is given twice; give it once`);
  if (option.value === undefined) {
    if (value !== undefined) throw new UsageError(`${raw} is a switch and takes no value, but has "${value}"`);
    return "";
  }
  if (value === undefined || value === "") throw new UsageError(`${raw} needs a value: ${raw} ${option.value}`);
  if (option.choices !== undefined && !option.choices.includes(value)) {
    const near = nearestIds(value, option.choices);
    throw new UsageError(
      `${raw} is "${value}"; expected ${option.choices.join(", ")}${near.length > 0 ? `; did you mean ${near.join(" or ")}?` : ""}`,
    );
  }
  return value;
}

/** `databook check [book] [--format FORM]`. */
export function usageOf({ name, arguments: wanted, options }: Command): string {
  const places = wanted.map(({ name: place, required }) => (required ? `<${place}>` : `[${place}]`));
  const switches = Object.entries(options).map(
    ([option, { value }]) => `[--${option}${value === undefined ? "" : ` ${value}`}]`,
  );
  return ["databook", name, ...places, ...switches].join(" ");
}
