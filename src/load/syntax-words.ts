import type { SyntaxFault } from "./syntax.ts";

const codeOf = (sign: string) => `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
const shorten = (text: string) => (text.length > 40 ? `${text.slice(0, 39)}…` : text);

/** The fault of a text in quotes: not closed, a control sign, or an escape that JSON does not know. */
export function faultyText(text: string, start: number, at: number): SyntaxFault {
  const sign = text[at];
  if (sign === undefined || sign === "\n" || sign === "\r") {
    const end = sign === undefined ? Math.min(at, start + 40) : at;
    return {
      offset: start,
      length: end - start,
      message:
        sign === undefined
          ? "the text that begins here is never closed"
          : "the text is not closed at the end of the line",
      hint: "add the closing quote; a line break inside a text is written \\n",
    };
  }
  if (sign === "\\") {
    const escape = /^\\(u[0-9a-fA-F]{0,4}|[!-~])?/.exec(text.slice(at, at + 6))?.[0] ?? sign;
    return {
      offset: at,
      length: escape.length,
      message: `"${escape}" is no escape of JSON`,
      hint: "a backslash is written \\\\; a path of the book has / between its parts",
    };
  }
  if (sign === "\t")
    return { offset: at, length: 1, message: "a tab stands inside a text", hint: "write a space, or \\t" };
  return { offset: at, length: 1, message: `the control sign ${codeOf(sign)} stands inside a text`, hint: "delete it" };
}

/** The fault of something that is neither text, number, true, false nor null, and of a name without its quotes. */
export function faultyWord(text: string, at: number, found: string, as: "value" | "name" = "value"): SyntaxFault {
  const sign = String.fromCodePoint(text.codePointAt(at) ?? 0);
  const shown = shorten(found === "" ? sign : found);
  const fault = (message: string, hint: string, length = Math.max(found.length, 1)): SyntaxFault => ({
    offset: at,
    length,
    message,
    hint,
  });

  if (sign === "/" || sign === "#")
    return fault(`a comment stands where a ${as} is expected`, 'JSON has no comments: use "remarks"', 1);
  if (sign === "'" || sign === "`")
    return fault(`${shown} stands in other quotes than "`, 'write straight double quotes: "…"');
  if (/[“”„«»‘’]/.test(sign)) return fault(`${sign} is a typographic quote`, 'write straight double quotes: "…"', 1);
  if (sign === ",") return fault(`a ${as} is missing before the comma`, `add the ${as}, or remove the comma`, 1);
  if (sign === ":") return fault(`a ${as} is missing before ":"`, 'write "name": value', 1);
  if (/[\p{C}\p{Z}]/u.test(sign))
    return fault(
      `the unseen sign ${codeOf(sign)} stands between the values`,
      "delete it, or write an ordinary space",
      1,
    );
  if (as === "name") return fault(`the name ${shown} stands without quotes`, `write ${JSON.stringify(shown)}`);
  return faultyNumber(shown, fault) ?? literal(shown, fault);
}

type MakeFault = (message: string, hint: string, length?: number) => SyntaxFault;

function faultyNumber(shown: string, fault: MakeFault): SyntaxFault | undefined {
  if (/^[-+]?0\d/.test(shown))
    return fault(
      `${shown} is a number with a leading zero`,
      `if it is a mark or a code, write it as text: ${JSON.stringify(shown)}`,
    );
  if (/^\+/.test(shown)) return fault(`${shown} begins with "+"`, "write the number without it");
  if (/^-?\.\d/.test(shown))
    return fault(`${shown} has no digit before the point`, `write ${shown.replace(".", "0.")}`);
  if (/^-?\d+\.(\D|$)/.test(shown))
    return fault(`${shown} has no digit behind the point`, "write the digits as they stand in the evidence");
  if (/^-?\d/.test(shown)) {
    const split = /^(-?\d+(?:\.\d+)?)([A-Za-z%°µ].*)$/.exec(shown);
    const whole = split === null ? shown : `${split[1] ?? ""} ${split[2] ?? ""}`;
    return fault(`${shown} stands without quotes`, `a value with its unit is text: write ${JSON.stringify(whole)}`);
  }
  return undefined;
}

function literal(shown: string, fault: MakeFault): SyntaxFault {
  const lower = shown.toLowerCase();
  if (lower === "true" || lower === "false" || lower === "null")
    return fault(`${shown} is written with capitals`, `write ${lower}`);
  if (/^(nan|-?infinity|undefined|none)$/.test(lower))
    return fault(`${shown} is no value of JSON`, "leave the property out if there is no value");
  if (shown.length === 1 && !/\w/.test(shown))
    return fault(`"${shown}" stands where a value is expected`, "write a text, a number, an object or a list");
  return fault(`${shown} stands without quotes`, `write ${JSON.stringify(shown)}`);
}
