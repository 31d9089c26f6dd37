import type { BinaryNode, Formula, NumberNode, Operator } from "./ast.ts";

/** A formula as it is set on a page, before it is MathML or PDF text. Brackets that are needed are in it as groups. */
export type Display =
  | { readonly type: "number"; readonly text: string }
  | SymbolDisplay
  /** One sign: + − · / = ≤ < ≥ >. A minus that is the first item of a row is a sign, not a subtraction. */
  | { readonly type: "operator"; readonly text: string }
  | { readonly type: "fraction"; readonly numerator: Display; readonly denominator: Display }
  | { readonly type: "root"; readonly body: Display }
  | { readonly type: "power"; readonly base: Display; readonly exponent: Display }
  | { readonly type: "group"; readonly fence: "round" | "bars"; readonly body: Display }
  | { readonly type: "call"; readonly name: string; readonly args: readonly Display[] }
  | { readonly type: "words"; readonly text: string }
  | { readonly type: "row"; readonly items: readonly Display[] };

/** A symbol with its indices as plain text: `R`, `p0.2/t`. */
export interface SymbolDisplay {
  readonly type: "symbol";
  readonly base: string;
  readonly sub?: string;
  readonly sup?: string;
}

/** Display forms by symbol; a symbol that is not listed follows the rule of `symbolDisplay`. */
export type DisplayForms = ReadonlyMap<string, string>;

interface Setting {
  readonly leaf: (name: string) => Display;
  readonly functionName: (name: string) => string;
}

const noForms: DisplayForms = new Map();

/**
 * Display form of one symbol. A form `base_sub^sup` is split at its signs; a form without them is one letter and the
 * rest its index (`Rp0.2/t`); end it with `_` to keep it whole (`Re_`). Without a form: letters, then `_index` or digits.
 */
export function symbolDisplay(name: string, form?: string): SymbolDisplay {
  if (form === undefined) {
    const [head = name, ...rest] = name.split("_");
    if (head === "") return symbolOf(name, "", "");
    const [, base = head, digits = ""] = /^(\p{L}+)(\d*)$/u.exec(head) ?? [];
    return symbolOf(base, [digits, ...rest].filter(Boolean).join(","), "");
  }
  const [, base = form, sub = "", sup = ""] = /^([^_^]+)(?:_([^^]*))?(?:\^(.*))?$/u.exec(form) ?? [];
  if (/[_^]/.test(form)) return symbolOf(base, sub, sup);
  const [first = form, ...rest] = form;
  return symbolOf(first, rest.join(""), "");
}

function symbolOf(base: string, sub: string, sup: string): SymbolDisplay {
  return { type: "symbol", base, ...(sub !== "" && { sub }), ...(sup !== "" && { sup }) };
}

/** The formula in symbols. */
export function typeset(formula: Formula, forms: DisplayForms = noForms): Display {
  return set(formula, { leaf: (name) => symbolDisplay(name, forms.get(name)), functionName: nameBy(forms) }, "open");
}

/** The same setting with values, already formatted, in place of the symbols. A symbol without a value stays a symbol. */
export function substitute(
  formula: Formula,
  values: ReadonlyMap<string, string>,
  forms: DisplayForms = noForms,
): Display {
  const leaf = (name: string): Display => {
    const text = values.get(name);
    return text === undefined ? symbolDisplay(name, forms.get(name)) : { type: "number", text };
  };
  return set(formula, { leaf, functionName: nameBy(forms) }, "open");
}

/** Two settings with a sign between them: `t = …`, `P ≤ …`. */
export function related(left: Display, sign: "=" | "≤" | "<" | "≥" | ">" | "≠", right: Display): Display {
  return rowOf(left, operator(sign), right);
}

const nameBy = (forms: DisplayForms) => (name: string) => forms.get(name) ?? (name === "log10" ? "lg" : name);

/** How much room there is: a fraction is set upright in the open, and inside another one only if it holds more than signs. */
type Room = "open" | "fraction" | "line";

function set(formula: Formula, setting: Setting, room: Room): Display {
  switch (formula.type) {
    case "number":
      return { type: "number", text: numberText(formula) };
    case "symbol":
      return setting.leaf(formula.name);
    case "negate":
      return rowOf(operator("−"), bracketed(formula.operand, setting, room, ["+", "-", "negate"]));
    case "binary":
      return setBinary(formula, setting, room);
    case "call": {
      const [first, second] = formula.args;
      const body = first === undefined || second !== undefined ? undefined : set(first, setting, room);
      if (formula.name === "sqrt" && body !== undefined) return { type: "root", body };
      if (formula.name === "abs" && body !== undefined) return { type: "group", fence: "bars", body };
      const args = formula.args.map((arg) => set(arg, setting, room));
      return { type: "call", name: setting.functionName(formula.name), args };
    }
  }
}

function setBinary(formula: BinaryNode, setting: Setting, room: Room): Display {
  const { operator: sign, left, right } = formula;
  switch (sign) {
    case "+":
      return rowOf(set(left, setting, room), operator("+"), bracketed(right, setting, room, ["negate"]));
    case "-":
      return rowOf(set(left, setting, room), operator("−"), bracketed(right, setting, room, ["+", "-", "negate"]));
    case "*":
      return rowOf(
        bracketed(left, setting, room, ["+", "-"]),
        operator("·"),
        bracketed(right, setting, room, ["+", "-", "/", "negate"]),
      );
    case "/":
      return setQuotient(left, right, setting, room);
    case "^":
      return {
        type: "power",
        base: bracketed(left, setting, room, ["+", "-", "*", "/", "^", "fraction", "negate", "unit"]),
        exponent: set(right, setting, "line"),
      };
  }
}

function setQuotient(left: Formula, right: Formula, setting: Setting, room: Room): Display {
  if (room === "open" || (room === "fraction" && !(isPlain(left) && isPlain(right)))) {
    const inner: Room = room === "open" ? "fraction" : "line";
    return { type: "fraction", numerator: set(left, setting, inner), denominator: set(right, setting, inner) };
  }
  return rowOf(
    bracketed(left, setting, "line", ["+", "-", "/"]),
    operator("/"),
    bracketed(right, setting, "line", ["+", "-", "*", "/", "negate"]),
  );
}

const isPlain = (formula: Formula): boolean =>
  formula.type === "number" ||
  formula.type === "symbol" ||
  (formula.type === "binary" && formula.operator === "^" && isPlain(formula.left) && isPlain(formula.right));

/** What can bind too loosely for a place: an operation in one line, a fraction, a leading minus, a number with unit. */
type Loose = Operator | "fraction" | "negate" | "unit";

function bracketed(part: Formula, setting: Setting, room: Room, loose: readonly Loose[]): Display {
  const inside = set(part, setting, room);
  const own = loosenessOf(part, inside);
  const needed = (own !== undefined && loose.includes(own)) || (loose.includes("negate") && leadsWithMinus(inside));
  return needed ? { type: "group", fence: "round", body: inside } : inside;
}

function loosenessOf(part: Formula, shown: Display): Loose | undefined {
  if (shown.type === "fraction") return "fraction";
  if (part.type === "number") return part.unit === undefined ? undefined : "unit";
  return part.type === "binary" ? part.operator : undefined;
}

function leadsWithMinus(shown: Display): boolean {
  if (shown.type === "number") return /^[-−]/.test(shown.text);
  const [first] = shown.type === "row" ? shown.items : [];
  return first !== undefined && (first.type === "operator" || leadsWithMinus(first));
}

const numberText = ({ text, unit }: NumberNode) => (unit === undefined ? text : `${text}\u00a0${unit}`);

const operator = (text: string): Display => ({ type: "operator", text });

/** Rows inside a row are joined to one, except a sign that belongs to its operand. */
function rowOf(...parts: readonly Display[]): Display {
  const items = parts.flatMap((part, at) =>
    part.type === "row" && (at === 0 || !isSigned(part)) ? part.items : [part],
  );
  return { type: "row", items };
}

const isSigned = (row: Extract<Display, { type: "row" }>) => row.items[0]?.type === "operator";
