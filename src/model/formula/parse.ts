import { ProgramError } from "../program-error.ts";
import type { Formula, Operator } from "./ast.ts";

interface Token {
  readonly type: "number" | "name" | "quoted" | "sign" | "end";
  readonly text: string;
  readonly at: number;
}

const lexemes: readonly (readonly [Token["type"], RegExp])[] = [
  ["number", /(\d+(?:\.\d+)?)/y],
  ["name", /([\p{L}_][\p{L}\p{M}\d_]*)/uy],

  ["quoted", /'([^']*)'/y],
  ["sign", /([-−+*·/^(),])/y],
];

const constantForm = /^(\d+(?:\.\d+)?) (\S+)$/;

const plainSigns = new Map([
  ["·", "*"],
  ["−", "-"],
]);

/**
 * Parses a formula such as `p*Di / (2*f*z - p)`: + − * / ^ (`·` and `−` too), a leading minus, brackets, function calls,
 * numbers, π, constants with unit as records write them (`'3 mm'`) and names of letters of any script, digits and `_`. `^` binds to the right and
 * tighter than a leading minus: `-a^2` is −(a²). Throws `ProgramError` that shows the place in the text.
 */
export function parseFormula(text: string): Formula {
  const tokens = tokensOf(text);
  let next = 0;
  const formula = parseSum();
  if (peek().type !== "end") throw unexpected("an operator");
  return formula;

  function parseSum(): Formula {
    let left = parseProduct();
    for (;;) {
      const operator = take("+", "-");
      if (operator === undefined) return left;
      left = { type: "binary", operator, left, right: parseProduct() };
    }
  }

  function parseProduct(): Formula {
    let left = parseSigned();
    for (;;) {
      const operator = take("*", "/");
      if (operator === undefined) return left;
      left = { type: "binary", operator, left, right: parseSigned() };
    }
  }

  function parseSigned(): Formula {
    return take("-") === undefined ? parsePower() : { type: "negate", operand: parseSigned() };
  }

  function parsePower(): Formula {
    const base = parseOperand();
    return take("^") === undefined ? base : { type: "binary", operator: "^", left: base, right: parseSigned() };
  }

  function parseOperand(): Formula {
    const token = peek();
    if (take("(") !== undefined) {
      const inner = parseSum();
      if (take(")") === undefined) throw unexpected(`")"`);
      return inner;
    }
    if (token.type === "number") {
      next++;
      return { type: "number", value: Number(token.text), text: token.text };
    }
    if (token.type === "quoted") {
      const [, number, unit] = constantForm.exec(token.text) ?? [];
      if (number === undefined || unit === undefined) throw unexpected("a number, a space and a unit in the quotes");
      next++;
      return { type: "number", value: Number(number), text: number, unit };
    }
    if (token.type !== "name") throw unexpected("a value");
    next++;
    if (token.text === "π") return { type: "number", value: Math.PI, text: token.text };
    return take("(") === undefined
      ? { type: "symbol", name: token.text }
      : { type: "call", name: token.text, args: parseArguments() };
  }

  function parseArguments(): readonly Formula[] {
    const args: Formula[] = [];
    do args.push(parseSum());
    while (take(",") !== undefined);
    if (take(")") === undefined) throw unexpected(`"," or ")"`);
    return args;
  }

  function peek(): Token {
    return tokens[next] ?? { type: "end", text: "", at: text.length };
  }

  function take<S extends Operator | "(" | ")" | ",">(...signs: readonly S[]): S | undefined {
    const token = peek();
    const found =
      token.type === "sign" ? signs.find((sign) => sign === (plainSigns.get(token.text) ?? token.text)) : undefined;
    if (found !== undefined) next++;
    return found;
  }

  function unexpected(expected: string): ProgramError {
    const token = peek();
    const found = token.type === "end" ? "the end" : `"${token.text}"`;
    return new ProgramError(`expected ${expected}, found ${found} at sign ${token.at + 1} of the formula "${text}"`);
  }
}

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < text.length;) {
    if (/\s/.test(text.charAt(at))) at++;
    else {
      const token = tokenAt(text, at);
      tokens.push(token.token);
      at = token.end;
    }
  }
  return tokens;
}

function tokenAt(text: string, at: number): { readonly token: Token; readonly end: number } {
  for (const [type, form] of lexemes) {
    form.lastIndex = at;
    const found = form.exec(text)?.[1];
    if (found !== undefined) return { token: { type, text: found, at }, end: form.lastIndex };
  }
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0);
  throw new ProgramError(`cannot read "${sign}" at sign ${at + 1} of the formula "${text}"`);
}
