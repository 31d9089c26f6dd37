import { maxDepth } from "./scan.ts";
import { faultyText, faultyWord } from "./syntax-words.ts";

/** What keeps a text from being JSON: where, and what to do, in plain words. */
export interface SyntaxFault {
  readonly offset: number;
  readonly length: number;
  readonly message: string;
  readonly hint: string;
}

interface Open {
  readonly sign: "{" | "[";
  readonly offset: number;
}

const blank = /[ \t\r\n]*/y;
const number = /-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?/y;
const word = /[^\s,:;{}[\]"]+/y;

/**
 * The first fault of a text as JSON (RFC 8259), or undefined when it is JSON. Accepts and refuses what `JSON.parse`
 * does, up to the depth allowed here, but says where and why.
 */
export function syntaxFault(text: string): SyntaxFault | undefined {
  const open: Open[] = [];
  let at = 0;
  let wants: "value" | "first" | "name" | "first name" | "colon" | "next" = "value";
  let lastEnd = 0;
  let comma = 0;

  const take = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0] ?? "";
  };
  const fault = (offset: number, length: number, message: string, hint: string): SyntaxFault => ({
    offset,
    length,
    message,
    hint,
  });
  const unclosed = (): SyntaxFault => {
    const inner = open.at(-1);
    if (inner === undefined) return fault(at, 0, "the file holds no value", "write one record, or remove the file");
    const [what, sign] = inner.sign === "{" ? ["object", "}"] : ["list", "]"];
    return fault(
      inner.offset,
      1,
      `the ${what} opened here is never closed`,
      `add the "${sign}" that closes it; the file may have been cut short`,
    );
  };
  const close = (sign: string): SyntaxFault | undefined => {
    const inner = open.at(-1);
    if (inner === undefined)
      return fault(at, 1, `"${sign}" closes nothing`, `remove it, or add the bracket that opens`);
    const expected = inner.sign === "{" ? "}" : "]";
    if (sign !== expected)
      return fault(
        at,
        1,
        `"${sign}" stands where "${expected}" is expected`,
        `close what was opened with "${inner.sign}" by "${expected}"`,
      );
    open.pop();
    at += 1;
    lastEnd = at;
    wants = "next";
    return undefined;
  };

  for (;;) {
    at += take(blank).length;
    const sign = text[at];
    if (sign === undefined) {
      return open.length === 0 && wants === "next" ? undefined : unclosed();
    }
    const closes = sign === "}" || sign === "]";

    if (wants === "colon") {
      if (sign !== ":") return fault(at, 1, `"${sign}" stands where ":" is expected`, 'write "name": value');
      at += 1;
      wants = "value";
    } else if (wants === "next") {
      if (open.length === 0) return afterEnd(text, at);
      if (closes) {
        const wrong = close(sign);
        if (wrong !== undefined) return wrong;
      } else if (sign === ",") {
        comma = at;
        at += 1;
        wants = open.at(-1)?.sign === "{" ? "name" : "value";
      } else return afterValue(text, at, lastEnd, open.at(-1)?.sign === "{");
    } else if (closes) {
      if (wants === "first" || wants === "first name") {
        const wrong = close(sign);
        if (wrong !== undefined) return wrong;
      } else if (text[comma] === "," && text.slice(comma + 1, at).trim() === "" && comma > 0) {
        return fault(
          comma,
          1,
          `the comma before "${sign}" has nothing behind it`,
          "remove the comma after the last entry",
        );
      } else return fault(at, 1, `"${sign}" stands where a value is expected`, "add the value, or remove its name");
    } else if (wants === "name" || wants === "first name") {
      if (sign !== '"') return nameFault(text, at, take(word));
      const end = textEnd(text, at);
      if (typeof end !== "number") return end;
      at = end;
      wants = "colon";
    } else if (sign === "{" || sign === "[") {
      if (open.length === maxDepth)
        return fault(
          at,
          1,
          `objects and lists stand more than ${maxDepth} deep in each other`,
          "a record is a few levels deep: write it flat",
        );
      open.push({ sign, offset: at });
      at += 1;
      wants = sign === "{" ? "first name" : "first";
    } else {
      const end = sign === '"' ? textEnd(text, at) : scalarEnd(text, at, take(number), take(word));
      if (typeof end !== "number") return end;
      at = end;
      lastEnd = at;
      wants = "next";
    }
  }
}

/** End of the text that opens here, or its fault. */
function textEnd(text: string, start: number): number | SyntaxFault {
  for (let at = start + 1; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign === 34) return at + 1;
    if (sign < 32) return faultyText(text, start, at);
    if (sign !== 92) continue;
    const escape = text[at + 1] ?? "";
    if (
      escape === "u"
        ? !/^[0-9a-fA-F]{4}$/.test(text.slice(at + 2, at + 6))
        : !'"\\/bfnrt'.includes(escape) || escape === ""
    )
      return faultyText(text, start, at);
    at += 1;
  }
  return faultyText(text, start, text.length);
}

function scalarEnd(text: string, at: number, digits: string, found: string): number | SyntaxFault {
  if (found === "true" || found === "false" || found === "null") return at + found.length;
  const next = text[at + digits.length] ?? "";
  if (digits !== "" && (found === digits || !/[^\s,:;{}[\]"]/.test(next))) return at + digits.length;
  return faultyWord(text, at, found);
}

function nameFault(text: string, at: number, found: string): SyntaxFault {
  if (text[at] === ",")
    return { offset: at, length: 1, message: "two commas follow each other", hint: "remove one of them" };
  const before = text[at - 1] === "," ? /-?\d+$/.exec(text.slice(Math.max(0, at - 20), at - 1))?.[0] : undefined;
  const digits = /^\d+/.exec(found)?.[0];
  if (before === undefined || digits === undefined) return faultyWord(text, at, found, "name");
  return {
    offset: at - 1 - before.length,
    length: before.length + 1 + found.length,
    message: `${before},${found} is a number with a decimal comma`,
    hint: `write it with a decimal point, and as text with its unit: "${before}.${digits} …"`,
  };
}

function afterValue(text: string, at: number, lastEnd: number, inObject: boolean): SyntaxFault {
  const sign = text[at] ?? "";
  const digits = /-?\d+(\.\d+)?$/.exec(text.slice(Math.max(0, lastEnd - 40), lastEnd))?.[0];
  const unit = /^[A-Za-z%°µ][^\s,}\]]*/.exec(text.slice(at, at + 20))?.[0];
  if (digits !== undefined && unit !== undefined && /^ *$/.test(text.slice(lastEnd, at))) {
    const whole = `${digits} ${unit}`;
    return {
      offset: lastEnd - digits.length,
      length: at + unit.length - lastEnd + digits.length,
      message: `${whole} stands without quotes`,
      hint: `a value with its unit is text: write ${JSON.stringify(whole)}`,
    };
  }
  if (sign === '"' || sign === "{" || sign === "[" || /[-\w]/.test(sign))
    return {
      offset: lastEnd,
      length: 1,
      message: "a comma is missing behind this value",
      hint: "add a comma between two entries",
    };
  if (sign === ";")
    return { offset: at, length: 1, message: "a semicolon stands where a comma is expected", hint: "write a comma" };
  if (sign === ":" && !inObject)
    return {
      offset: at,
      length: 1,
      message: '":" stands in a list',
      hint: "names belong in an object: write { … } around them",
    };
  return faultyWord(text, at, sign);
}

function afterEnd(text: string, at: number): SyntaxFault {
  const sign = text[at] ?? "";
  if (sign === "{" || sign === "[" || sign === ",")
    return {
      offset: at,
      length: 1,
      message: "the file goes on after its value has ended",
      hint: 'put several records into one list: {"kind": …, "records": [ … ]}',
    };
  if (sign === "}" || sign === "]")
    return {
      offset: at,
      length: 1,
      message: `"${sign}" closes nothing`,
      hint: "remove it, or add the bracket that opens",
    };
  return {
    offset: at,
    length: Math.max(
      1,
      text
        .slice(at, at + 200)
        .split("\n", 1)[0]
        ?.trimEnd().length ?? 1,
    ),
    message: "text stands behind the end of the value",
    hint: text.startsWith("/", at) ? 'JSON has no comments: use "remarks"' : "remove it, or move it into the value",
  };
}
