import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  printAllowed,
  printNumber,
  printRequired,
  roundDown,
  roundNearest,
  roundUp,
  withUnit,
} from "../../src/model/print-number.ts";

/** Expected texts are written with plain spaces. */
const plain = (text: string) => text.replaceAll("\u00a0", " ");
const read = (text: string) => Number(text.replaceAll("\u00a0", "").replace("−", "-"));

describe("print", () => {
  const table: readonly (readonly [value: number, digits: number | { significant: number }, text: string])[] = [
    [14.25, 1, "14.3"],
    [14.25, 2, "14.25"],
    [0, 2, "0.00"],
    [-0, 1, "0.0"],
    [-0.04, 1, "0.0"],
    [-20.5, 1, "−20.5"],
    [1000, 0, "1000"],
    [9999, 0, "9999"],
    [10000, 0, "10 000"],
    [1234567, 0, "1 234 567"],
    [168.6666666666, { significant: 9 }, "168.666 667"],
    [0.1774, 3, "0.177"],
    [0.17743, 4, "0.177 4"],
    [5.141394, { significant: 6 }, "5.141 39"],
    [0.0000119, { significant: 3 }, "0.000 011 9"],
    [9.9996, { significant: 4 }, "10.00"],
    [1234, { significant: 2 }, "1200"],
    [1.005, 2, "1.01"],
    [0.1 + 0.2, { significant: 20 }, "0.300 000 000"],
    [123456.789123, 6, "123 456.789"],
    [12345678912, 2, "12 345 678 900"],
    [9.99999999999, { significant: 12 }, "10.000 000 0"],
    [1e15, 0, "1.000 000 00·10¹⁵"],
    [-2.5e-12, { significant: 2 }, "−2.5·10⁻¹²"],
    [2.5e-12, 3, "0.000"],
    [5e-324, { significant: 2 }, "5.0·10⁻³²⁴"],
    [Number.NaN, 2, "not defined"],
    [Infinity, 2, "∞"],
    [-Infinity, 2, "−∞"],
  ];
  for (const [value, digits, text] of table)
    test(`${value} with ${JSON.stringify(digits)}: ${text}`, () =>
      expect(plain(printNumber(value, digits))).toBe(text));

  test("groups are parted by a no-break space", () => {
    expect(printNumber(12345, 0)).toBe("12\u00a0345");
    expect(withUnit("14.25", "mm")).toBe("14.25\u00a0mm");
    expect(withUnit("15", "ΔK")).toBe("15\u00a0K");
    expect(withUnit("0.85", "1")).toBe("0.85");
  });

  test("never an exponent, never −0, at most nine digits that count, in the ordinary range", () => {
    const ordinary = fc.double({ min: -1e14, max: 1e14, noNaN: true }).filter((value) => Math.abs(value) > 1e-8);
    fc.assert(
      fc.property(ordinary, fc.integer({ min: 0, max: 12 }), (value, decimals) => {
        const text = printNumber(value, decimals);
        expect(plain(text)).toMatch(/^−?\d[\d ]*(\.[\d ]+)?$/);
        expect(plain(text)).not.toMatch(/^−[0. ]*$/);
        expect(text.replace(/\D/g, "").replace(/^0+/, "").replace(/0+$/, "").length).toBeLessThanOrEqual(9);
        const step = Math.max(10 ** -decimals, 10 ** (Math.floor(Math.log10(Math.abs(value))) - 8));
        expect(Math.abs(read(text) - value)).toBeLessThanOrEqual(step * 0.5000001);
      }),
    );
  });
});

describe("rounding", () => {
  test("up and down, on each side of a step", () => {
    expect(roundUp(8.001, 2)).toBe(8.01);
    expect(roundUp(8, 2)).toBe(8);
    expect(roundDown(8.009, 2)).toBe(8);
    expect(roundDown(8.01, 2)).toBe(8.01);
    expect(roundUp(-8.009, 2)).toBe(-8);
    expect(roundDown(-8.001, 2)).toBe(-8.01);
    expect(roundUp(1.1, 0)).toBe(2);
    expect(roundUp(1201, -2)).toBe(1300);
  });

  test("noise of calculation is no step", () => {
    expect(roundUp(8.000000000001, 2)).toBe(8);
    expect(roundDown(7.999999999999, 2)).toBe(8);
    expect(roundUp(0.1 + 0.2, 1)).toBe(0.3);
    expect(roundUp(8.0000001, 2)).toBe(8.01);
    expect(roundDown(7.9999999, 2)).toBe(7.99);
  });

  test("to nearest, halves away from zero", () => {
    expect(roundNearest(2.5, 0)).toBe(3);
    expect(roundNearest(-2.5, 0)).toBe(-3);
    expect(roundNearest(1.005, 2)).toBe(1.01);
    expect(roundNearest(1.0049, 2)).toBe(1);
    expect(Object.is(roundNearest(-0.2, 0), 0)).toBe(true);
  });

  test("what is required is printed up, what is allowed down", () => {
    expect(printRequired(5.141394, 2)).toBe("5.15");
    expect(printAllowed(168.6666, 1)).toBe("168.6");
    expect(printRequired(5.14, 2)).toBe("5.14");
    expect(printAllowed(5.14, 2)).toBe("5.14");
    expect(plain(printRequired(1234567.1, 0))).toBe("1 234 568");
    expect(plain(printAllowed(1234567.9, 0))).toBe("1 234 567");
    expect(printRequired(5e-324, 2)).toBe("0.01");
    expect(printAllowed(5e-324, 2)).toBe("0.00");
  });

  test("required is never below the value, allowed never above, but for noise", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, decimals) => {
          const noise = 1e-9 * Math.abs(value);
          expect(read(printRequired(value, decimals))).toBeGreaterThanOrEqual(value - noise);
          expect(read(printAllowed(value, decimals))).toBeLessThanOrEqual(value + noise);
        },
      ),
    );
  });
});
