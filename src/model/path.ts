/**
 * The path language of definitions: how a rule, a calculation or a requirement says which values it reads.
 *
 *   path   := start step*
 *   start  := "book." kind | "profile." name | "table(" name ("," path)* ")" | "calculation(" id ")" | name
 *   step   := "." name | "[]" | "[" name "=" text "]" | "<" kind ":" field ">" | ".record" | ".calculation(" id ")"
 *
 * `a.b` follows a field or a link; `<weld-log:joint>` follows links back; the word `record` leads from a row to its record, and is never a field's name.
 */
export type Step =
  | { readonly type: "field"; readonly name: string }
  | { readonly type: "items" }
  | { readonly type: "filter"; readonly path: readonly Step[]; readonly equals: string }
  | { readonly type: "back"; readonly kind: string; readonly field: string }
  | { readonly type: "record" }
  | { readonly type: "calculation"; readonly id: string }
  | { readonly type: "all"; readonly kind: string }
  | { readonly type: "profile"; readonly name: string }
  | { readonly type: "table"; readonly name: string; readonly keys: readonly Path[] };

export interface Path {
  readonly text: string;
  readonly steps: readonly Step[];
}

// Fields are ASCII; symbols of calculations are letters of any script.
const name = /^\p{L}[\p{L}\p{N}_]*/u;
const backStep = /^<([a-z][a-z-]*):([A-Za-z0-9.[\]]+)>/;
const filterStep = /^\[([A-Za-z][A-Za-z0-9.]*)="([^"]*)"\]/;
const calculationStep = /^calculation\(([a-z0-9-]+)\)/;
const recordStep = /^record(?![\p{L}\p{N}_])/u;
const kindName = /^[a-z][a-z-]*/;

/** Parses a path of a definition. Throws a `SyntaxError` naming the path and the column: a definition is wrong, not the data. */
export function parsePath(text: string): Path {
  const steps: Step[] = [];
  let at = 0;
  const fail = (expected: string): never => {
    throw new SyntaxError(`path "${text}", column ${at + 1}: expected ${expected}`);
  };
  const take = (pattern: RegExp, expected: string): RegExpExecArray => {
    const match = pattern.exec(text.slice(at));
    if (match === null) return fail(expected);
    at += match[0].length;
    return match;
  };
  const word = (): void => {
    const rest = text.slice(at);
    if (recordStep.test(rest)) {
      at += "record".length;
      steps.push({ type: "record" });
      return;
    }
    const calculation = calculationStep.exec(rest);
    if (calculation !== null) {
      at += calculation[0].length;
      steps.push({ type: "calculation", id: calculation[1] ?? "" });
      return;
    }
    steps.push({ type: "field", name: take(name, "a field name")[0] });
  };

  if (text.startsWith("book.")) {
    at = 5;
    steps.push({ type: "all", kind: take(kindName, "a kind")[0] });
  } else if (text.startsWith("profile.")) {
    at = 8;
    steps.push({ type: "profile", name: take(name, "a parameter of the profile")[0] });
  } else if (text.startsWith("table(")) {
    const close = closing(text, 5);
    if (close < 0) fail("a closing bracket");
    const [table, ...keys] = splitArguments(text.slice(6, close));
    steps.push({ type: "table", name: table ?? "", keys: keys.map(parsePath) });
    at = close + 1;
  } else if (!text.startsWith("<") && text !== "") word();

  while (at < text.length) {
    const rest = text.slice(at);
    if (rest.startsWith("[]")) {
      at += 2;
      steps.push({ type: "items" });
    } else if (rest.startsWith("[")) {
      const match = take(filterStep, 'a filter such as [method="RT"]');
      steps.push({ type: "filter", path: parsePath(match[1] ?? "").steps, equals: match[2] ?? "" });
    } else if (rest.startsWith("<")) {
      const match = take(backStep, "a step back such as <weld-log:joint>");
      steps.push({ type: "back", kind: match[1] ?? "", field: match[2] ?? "" });
    } else if (rest.startsWith(".<")) at += 1;
    else if (rest.startsWith(".")) {
      at += 1;
      word();
    } else fail('"." or "[" or "<"');
  }
  return { text, steps };
}

function closing(text: string, open: number): number {
  let depth = 0;
  for (let i = open; i < text.length; i++) {
    if (text[i] === "(") depth++;
    else if (text[i] === ")" && --depth === 0) return i;
  }
  return -1;
}

function splitArguments(text: string): string[] {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let i = 0; i < text.length; i++) {
    if (text[i] === "(") depth++;
    else if (text[i] === ")") depth--;
    else if (text[i] === "," && depth === 0) {
      parts.push(text.slice(from, i).trim());
      from = i + 1;
    }
  }
  parts.push(text.slice(from).trim());
  return parts;
}

/** One step as it is written, for absences and messages. */
export function printStep(step: Step): string {
  switch (step.type) {
    case "field":
      return step.name;
    case "items":
      return "[]";
    case "filter":
      return `[${printSteps(step.path)}="${step.equals}"]`;
    case "back":
      return `<${step.kind}:${step.field}>`;
    case "record":
      return "record";
    case "calculation":
      return `calculation(${step.id})`;
    case "all":
      return `book.${step.kind}`;
    case "profile":
      return `profile.${step.name}`;
    case "table":
      return `table(${[step.name, ...step.keys.map((key) => key.text)].join(", ")})`;
  }
}

export function printSteps(steps: readonly Step[]): string {
  return steps
    .map((step, index) => {
      const text = printStep(step);
      return index === 0 || /^[[<]/.test(text) ? text : `.${text}`;
    })
    .join("");
}

/**
 * Steps as plain words for keys, which outlast a change of wording or of the path language: the kinds, fields and filter
 * values they name, such as `ndt-report RT`.
 */
export function wordsOfSteps(steps: readonly Step[]): string {
  return steps
    .map((step) => {
      switch (step.type) {
        case "field":
        case "profile":
        case "table":
          return step.name;
        case "back":
        case "all":
          return step.kind;
        case "filter":
          return step.equals;
        case "calculation":
          return step.id;
        case "items":
        case "record":
          return "";
      }
    })
    .filter((word) => word !== "")
    .join(" ");
}
