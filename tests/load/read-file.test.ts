import { describe, expect, it } from "vitest";
import { join } from "node:path";
import { decode, readBytes } from "../../src/load/read-file.ts";
import { folder } from "./folder.ts";

const bytes = (...parts: (string | number)[]) =>
  Buffer.concat(parts.map((part) => (typeof part === "string" ? Buffer.from(part) : Buffer.from([part]))));
const refused = (content: Buffer) => {
  const text = decode(content);
  return typeof text === "string" ? text : { message: text.message, position: text.position };
};

describe("bytes as text", () => {
  it("are read when they are UTF-8, with and without signs beyond ASCII", () => {
    expect(decode(Buffer.from('{"a": 1}'))).toBe('{"a": 1}');
    expect(decode(Buffer.from('{"a": "20 °C é 🙂"}'))).toBe('{"a": "20 °C é 🙂"}');
    expect(decode(Buffer.from("\ufffd"))).toBe("\ufffd");
  });
  it("are refused when there are none", () => {
    expect(refused(Buffer.alloc(0))).toEqual({ message: "the file is empty", position: undefined });
  });
  const start = { line: 1, column: 1, length: 0 };
  it.each([
    ["a byte order mark", bytes(0xef, 0xbb, 0xbf, "{}"), "the file begins with a byte order mark"],
    [
      "UTF-16 with mark",
      Buffer.from("\ufeff{}", "utf16le"),
      "the file is written in UTF-16 (little-endian); expected UTF-8",
    ],
    [
      "UTF-16 big-endian",
      Buffer.from("\ufeff{}", "utf16le").swap16(),
      "the file is written in UTF-16 (big-endian); expected UTF-8",
    ],
    [
      "UTF-16 without mark",
      Buffer.from('{"a":1}', "utf16le"),
      "the file is written in UTF-16 (little-endian); expected UTF-8",
    ],
    [
      "UTF-16 big-endian without mark",
      Buffer.from('{"a":1} ', "utf16le").swap16(),
      "the file is written in UTF-16 (big-endian); expected UTF-8",
    ],
    ["UTF-32", bytes(0xff, 0xfe, 0, 0, 0x7b, 0, 0, 0), "the file is written in UTF-32; expected UTF-8"],
  ])("are named: %s", (_name, content, message) => {
    expect(refused(content)).toEqual({ message, position: start });
  });
  it("are refused at the first zero byte", () => {
    expect(refused(bytes('{\n "é', 0, '"}'))).toEqual({
      message: "byte 7 of the file is zero",
      position: { line: 2, column: 4, length: 1 },
    });
  });
  it("are refused at the first byte that is not UTF-8, with what it would be in Latin-1", () => {
    expect(refused(bytes('{\n "a": "é 20 ', 0xb0, 'C"}'))).toEqual({
      message: 'byte 16 of the file, 0xB0, which is "°" in Latin-1, is not UTF-8',
      position: { line: 2, column: 13, length: 1 },
    });
  });
  it.each([
    ["a sign cut at the end", bytes("ab", 0xe2, 0x82), 3],
    ["a lone continuation", bytes("a", 0x80, "b"), 2],
    ["half a surrogate pair", bytes("abc", 0xed, 0xa0, 0x80), 4],
    ["an overlong slash", bytes(0xc0, 0xaf), 1],
  ])("are refused for %s", (_name, content, byte) => {
    expect(JSON.stringify(refused(content))).toContain(`byte ${byte} of the file`);
  });
});

describe("a file", () => {
  it("is refused before it is read when it is too large", () => {
    const dir = folder({ "a.json": "x".repeat(2 * 1024 * 1024) });
    expect(readBytes(join(dir, "a.json"), 1024 * 1024)).toMatchObject({
      message: "the file holds 2.0 MB; expected at most 1.0 MB",
      hint: "split its records into several files",
    });
    expect(readBytes(join(dir, "a.json"), 2 * 1024 * 1024)).toHaveLength(2 * 1024 * 1024);
  });
  it("that is not there or is a folder is refused in words", () => {
    const dir = folder({ "sub/a.json": "{}" });
    expect(readBytes(join(dir, "b.json"))).toMatchObject({ message: "the file cannot be read: it is no longer there" });
    expect(readBytes(join(dir, "sub"))).toMatchObject({ message: "the file cannot be read: it is a folder" });
  });
});
