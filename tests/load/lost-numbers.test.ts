import { expect, test } from "vitest";
import { isKept } from "../../src/load/lost-numbers.ts";

test.each(["0", "0.0", "1", "-1", "1.50", "1e3", "1E-7", "100000", "9007199254740991", "0.1", "123456789.125", "1e21"])(
  "%s is kept as it is written",
  (text) => expect(isKept(text)).toBe(true),
);

test.each([
  "-0",
  "-0.0",
  "1e999",
  "-1e999",
  "1e-999",
  "9007199254740993",
  "123456789012345678901234567890",
  "0.1234567890123456789",
])("%s is not", (text) => expect(isKept(text)).toBe(false));
