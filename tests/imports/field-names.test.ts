import { join } from "node:path";
import { describe, expect, test } from "vitest";
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
  expect(meant("material-certificate", "Certified by whom")).toBeUndefined();
});

test("of fields at several levels the outermost is meant; several at one level are all named", () => {
  expect(meant("material-certificate", "type")).toEqual({ path: "type" });
  const several = meant("material-certificate", "test");
  expect(several !== undefined && "several" in several && several.several).toContain("rows[].tensile[].test");
});

test("a row that a closed list of names tells apart is meant by its name alone", () => {
  // The schema says that a bare symbol is the ladle analysis; without that either may be meant.
  expect(meant("material-certificate", "Mn")).toEqual({ path: 'rows[].chemistry[element="Mn"].value' });
  expect(meant("material-certificate", "Mn (product)")).toEqual({
    path: 'rows[].productAnalysis[element="Mn"].value',
  });
  expect(meant("joint", "RT")).toEqual({ path: 'requiredTests[method="RT"].extent' });
  // Beside several figures the name does not say which of them is meant.
  expect(meant("material-certificate", "Kr")).toBeUndefined();
});

describe("what shops call a field", () => {
  const called = [...kinds.values()].flatMap((kind) =>
    namedFields(sheetFields(kind)).flatMap(({ path, field }) =>
      (field.called ?? []).map((name) => ({ kind: kind.name, path, name })),
    ),
  );

  test("is understood in sheets of every trade", () => {
    for (const [kind, heading, path] of [
      ["material-certificate", "Heat No.", "rows[].heat"],
      ["material-certificate", "ReH", "rows[].tensile[].yieldStrength"],
      ["weld-log", "Welder stamp", "runs[].welders[]"],
      ["joint", "WPS No.", "weldingProcedure"],
      ["ndt-report", "IQI", "rows[].wire"],
      ["safety-valve", "s/n", "serial"],
      ["instrument", "Cal. due", "calibrations[].validTo"],
    ] as const)
      expect([kind, heading, meant(kind, heading)]).toEqual([kind, heading, { path }]);
    expect(called.length).toBeGreaterThan(300);
  });

  test("means one field of its kind, and is none of another's own names", () => {
    const unclear = called.filter(({ kind, path, name }) => {
      const match = meant(kind, name);
      return match === undefined || !("path" in match) || match.path !== path;
    });
    expect(unclear).toEqual([]);
  });
});
