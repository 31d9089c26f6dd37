import { expect, it } from "vitest";
import { isObject } from "../../src/model/json.ts";
import { definitions, inlined, objectIn, strictAjv } from "./read-schemas.ts";

const accepts = (name: string, text: string) => strictAjv().compile(objectIn(definitions, name))(text);

it.each(["14.0 mm", "<0.003 %", ">120 °C", "-10 °C", "0.85", "2450 kg/h", "1.013 bar(a)"])(
  "a quantity is %s",
  (text) => {
    expect(accepts("quantity", text)).toBe(true);
  },
);
it.each(["1,85 MPa", "1.5e3 mm", "12  bar", "12bar", "12 bar ", "1 200 mm", ".5 mm", "5. mm", "mm", ""])(
  "a quantity is not %j",
  (text) => {
    expect(accepts("quantity", text)).toBe(false);
  },
);
it.each(["2026-03-09", "2026-03-09T14:30+01:00", "2026-03-09T14:30:05Z"])("a date is %s", (text) => {
  expect(accepts("date", text)).toBe(true);
});
it.each(["09.03.2026", "03/04/26", "2026-3-9", "2026-03-09T14:30", "2026-03-09 14:30+01:00"])(
  "a date is not %s",
  (text) => {
    expect(accepts("date", text)).toBe(false);
  },
);
it("a day has no time", () => {
  expect(accepts("day", "2026-03-09")).toBe(true);
  expect(accepts("day", "2026-03-09T14:30+01:00")).toBe(false);
});
it.each(["L1", "CRT-012", "TQ423-01", "1", "A".repeat(40)])("an id is %s", (text) => {
  expect(accepts("id", text)).toBe(true);
});
it.each(["l1", "-L1", "L 1", "L/1", "", "A".repeat(41)])("an id is not %j", (text) => {
  expect(accepts("id", text)).toBe(false);
});
it("sources of single values are found by their place in the record", () => {
  const sources = inlined(objectIn(definitions, "recordProperties")["sources"] ?? null);
  if (!isObject(sources)) throw new Error("sources is no schema");
  const validate = strictAjv().compile(sources);
  expect(validate({ "/rows/0/heat": { original: "ORG-014", page: 2 } })).toBe(true);
  expect(validate({ heat: { original: "ORG-014" } })).toBe(false);
  expect(validate({ "/heat": { page: 2 } })).toBe(false);
});
