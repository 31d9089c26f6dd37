import { expect, test } from "vitest";
import { isSealed, sealed } from "../../src/model/seal.ts";

const signs = Array.from("0123456789ABCDEFGHJKMNPQRTVWXYZ");
const hash = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";

test("eleven signs and a check, reckoned by hand", () => {
  expect(sealed("0".repeat(64))).toBe("0000-0000-0000");
  // 1 · 1 + 12 · x is a multiple of 31 for x = 18, which is J.
  expect(sealed(`${"0".repeat(15)}1${"f".repeat(48)}`)).toBe("1000-0000-000J");
  // The second sign counts twice: 2 · 1 + 12 · 5 = 62.
  expect(sealed(`${"0".repeat(14)}1f`)).toBe("0100-0000-0005");
});

test("no sign is taken for another", () => {
  expect(sealed(hash)).toMatch(/^([0-9A-HJKMNPQRTV-Z]{4}-){2}[0-9A-HJKMNPQRTV-Z]{4}$/);
  expect(sealed(hash)).not.toMatch(/[ILOSU]/);
});

test("one wrong sign, and two that changed places, never go unnoticed", () => {
  const sound = sealed(hash);
  expect(isSealed(sound)).toBe(true);
  const own = Array.from(sound.replaceAll("-", ""));
  const slips = own.flatMap((sign, at) => [
    ...signs.filter((other) => other !== sign).map((other) => own.with(at, other)),
    ...own.flatMap((other, to) => (to > at && other !== sign ? [own.with(at, other).with(to, sign)] : [])),
  ]);
  expect(slips.length).toBeGreaterThan(400);
  expect(slips.filter((slip) => isSealed(slip.join("")))).toEqual([]);
  expect(["", "7K3M", `${sound}0`, sound.toLowerCase()].filter(isSealed)).toEqual([]);
});
