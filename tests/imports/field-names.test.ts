import { join } from "node:path";
import { expect, test } from "vitest";
import { fieldOfHeading, namedFields } from "../../src/imports/field-names.ts";
import { sheetFields } from "../../src/imports/view.ts";
import { loadKinds } from "../../src/load/kinds.ts";

const kinds = loadKinds([join(import.meta.dirname, "../../schemas")]);

const meant = (kindName: string, heading: string) => {
  const kind = kinds.get(kindName);
  return kind === undefined ? undefined : fieldOfHeading(heading, namedFields(sheetFields(kind)));
};

test("a heading names a field by its path, name or title, whatever stands between its letters", () => {
  for (const heading of ["rows[].grade", "grade", "Grade", "GRADE"])
    expect([heading, meant("material-certificate", heading)]).toEqual([heading, { path: "rows[].grade" }]);
  expect(meant("material-certificate", "Cert. no.")).toBeUndefined();
});

test("of fields at several levels the outermost is meant; several at one level are all named", () => {
  expect(meant("material-certificate", "type")).toEqual({ path: "type" });
  const several = meant("material-certificate", "test");
  expect(several !== undefined && "several" in several && several.several).toContain("rows[].tensile[].test");
});

test("a row that a closed list of names tells apart is meant by its name alone", () => {
  expect(meant("material-certificate", "Mn")).toEqual({
    several: ['rows[].chemistry[element="Mn"].value', 'rows[].productAnalysis[element="Mn"].value'],
  });
  // Beside several figures the name does not say which of them is meant.
  expect(meant("material-certificate", "Kr")).toBeUndefined();
});
