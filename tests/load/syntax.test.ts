import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { maxDepth } from "../../src/load/scan.ts";
import { syntaxFault } from "../../src/load/syntax.ts";

/** Text with the fault between ‹ and ›, then its message and hint. */
const cases: readonly (readonly [marked: string, message: string, hint: RegExp])[] = [
  ['{"a": 1‹,›}', 'the comma before "}" has nothing behind it', /remove the comma/],
  ['["a"‹,›\n]', 'the comma before "]" has nothing behind it', /remove the comma/],
  ['{"a": "x"‹\n› "b": 2}', "a comma is missing behind this value", /add a comma/],
  ["[1‹ ›2]", "a comma is missing behind this value", /add a comma/],
  ["{\"a\": ‹'x'›}", "'x' stands in other quotes than \"", /double quotes/],
  ["{‹'a'›: 1}", "'a' stands in other quotes than \"", /double quotes/],
  ['{"a": ‹“›x”}', "“ is a typographic quote", /straight double quotes/],
  ['{ ‹/›/ thickness\n "a": 1}', "a comment stands where a name is expected", /remarks/],
  ['{"a": ‹/›* x */ 1}', "a comment stands where a value is expected", /remarks/],
  ['{"a": 1}\n‹// end›', "text stands behind the end of the value", /remarks/],
  ['‹{›"a": 1', "the object opened here is never closed", /add the "}"/],
  ['{"a": ‹[›1, 2', "the list opened here is never closed", /add the "\]"/],
  ['{"a": [1, 2‹}›', '"}" stands where "]" is expected', /close what was opened/],
  ['{"a": 1}‹}›', '"}" closes nothing', /remove it/],
  ['{"a": ‹"x›\n}', "the text is not closed at the end of the line", /closing quote/],
  ['{"a": ‹"x›', "the text that begins here is never closed", /closing quote/],
  ['{"a": "files‹\\s›cans"}', '"\\s" is no escape of JSON', /\\\\/],
  ['{"a": "‹\\u12›"}', '"\\u12" is no escape of JSON', /\\\\/],
  ['{"a": "x‹\t›y"}', "a tab stands inside a text", /space/],
  ['{"a": "x‹\u0001›y"}', "the control sign U+0001 stands inside a text", /delete/],
  ['{"a": ‹1,85›}', "1,85 is a number with a decimal comma", /decimal point/],
  ['{"a": ‹14.0 mm›}', "14.0 mm stands without quotes", /write "14.0 mm"/],
  ['{"a": ‹14mm›}', "14mm stands without quotes", /write "14 mm"/],
  ['{"a": ‹007›}', "007 is a number with a leading zero", /write it as text: "007"/],
  ['{"a": ‹.5›}', ".5 has no digit before the point", /write 0.5/],
  ['{"a": ‹5.›}', "5. has no digit behind the point", /digits/],
  ['{"a": ‹+5›}', '+5 begins with "+"', /without/],
  ['{"a": ‹True›}', "True is written with capitals", /write true/],
  ['{"a": ‹NaN›}', "NaN is no value of JSON", /leave the property out/],
  ['{"a": ‹accepted›}', "accepted stands without quotes", /write "accepted"/],
  ["{‹a›: 1}", "the name a stands without quotes", /write "a"/],
  ['{"a" ‹=› 1}', '"=" stands where ":" is expected', /"name": value/],
  ['{"a": 1‹;› "b": 2}', "a semicolon stands where a comma is expected", /comma/],
  ['{"a": 1,‹,› "b": 2}', "two commas follow each other", /remove one/],
  ["[1, ‹,›2]", "a value is missing before the comma", /add the value/],
  ['{"a": ‹,› "b": 1}', "a value is missing before the comma", /add the value/],
  ['{"a": ‹}›', '"}" stands where a value is expected', /add the value/],
  ['["a"‹:› 1]', '":" stands in a list', /object/],
  ['{"a": ‹\u00a0›1}', "the unseen sign U+00A0 stands between the values", /ordinary space/],
  ['{"a": 1}\n‹{›"a": 2}', "the file goes on after its value has ended", /"records"/],
  ['{"a": 1} ‹see drawing›', "text stands behind the end of the value", /remove it/],
  ["  \n‹›", "the file holds no value", /one record/],
];

describe("every fault of JSON is said in plain words, where it stands", () => {
  it.each(cases)("%s", (marked, message, hint) => {
    const text = marked.replace(/[‹›]/g, "");
    expect(() => void JSON.parse(text)).toThrow();
    const fault = syntaxFault(text);
    expect(fault?.message).toBe(message);
    expect(fault?.hint).toMatch(hint);
    const from = marked.indexOf("‹");
    expect([fault?.offset, fault?.length]).toEqual([from, marked.indexOf("›") - from - 1]);
  });
});

it("refuses what is nested too deep, where it becomes so", () => {
  expect(syntaxFault("[".repeat(maxDepth + 5))?.offset).toBe(maxDepth);
  expect(syntaxFault("[".repeat(maxDepth) + "]".repeat(maxDepth))).toBeUndefined();
});

const isJson = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe("accepts and refuses what JSON.parse does", () => {
  it("of JSON with one sign changed, put in or taken out", () => {
    const sign = fc.constantFrom(..."{}[]\",:\\'/ \n\t019.-+eEuntrf\u00a0\ufeffé".split(""));
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), fc.nat(), fc.nat(2), sign, (json, where, way, put) => {
        const at = where % (json.length + 1);
        const text = json.slice(0, at) + (way === 2 ? "" : put) + json.slice(way === 0 ? at : at + 1);
        expect(syntaxFault(text) === undefined).toBe(isJson(text));
      }),
      { numRuns: 5000 },
    );
  });
  it("of any signs", () => {
    const part = fc.constantFrom(
      "{",
      "}",
      "[",
      "]",
      '"',
      ":",
      ",",
      "1",
      "-",
      "0",
      ".",
      "e",
      "true",
      "null",
      " ",
      "\n",
      '"a"',
      "\\u00e9",
      "\\",
      "a",
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 14 }), (parts) => {
        expect(syntaxFault(parts.join("")) === undefined).toBe(isJson(parts.join("")));
      }),
      { numRuns: 5000 },
    );
  });
});
