import { expect, test } from "vitest";
import { nearestTo } from "../../src/readback/nearest.ts";
import { ofQuantity, ofText } from "../../src/readback/wanted.ts";
import { page } from "./page.ts";

const near = (value: string, line: string, ...claimed: readonly string[]) => {
  const [part] = value.includes(" ") ? ofQuantity(value) : ofText(value);
  return part && nearestTo(part, page(line), new Set(claimed));
};

test("what is most like a value is said: swapped digits, another digit, one missing", () => {
  expect(near("0.147 %", "C  0.141  %")).toBe("0.141");
  expect(near("484 MPa", "Rm  448  MPa")).toBe("448");
  expect(near("330871", "Heat  33087  plate")).toBe("33087");
  expect(near("TB-QP-12", "No.  TB-QP-21")).toBe("TB-QP-21");
});

test("nothing is said where it would be a guess: of short words, of what another value accounts for, of several as near", () => {
  expect(near("12 mm", "W 10 FE EN")).toBeUndefined();
  expect(near("290 °C", "current  240  A", "240")).toBeUndefined();
  expect(near("150 mm", "180  kV  and  130  mA")).toBeUndefined();
  expect(near("5.2 mm", "7.0  mm")).toBeUndefined();
  expect(near("W12", "film  112  wire  W15", "W15")).toBeUndefined();
});
