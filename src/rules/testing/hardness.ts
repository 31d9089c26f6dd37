import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const shared = { owner: "testing" } as const;

export const jointHardness = rule({
  ...shared,
  id: "joint-hardness",
  title: "No reading of a joint is harder than its report permits and than the group of its steels bears",
  basis: fromMemory("EN ISO 15614-1", "2017", "greatest hardness, HV10, as for a procedure test"),
  kind: "hardness-report#rows",
  severity: "nonconformity",
  inputs: {
    place: text("place"),
    values: list(quantity("values[]", "HV")),
    stage: text("record.stage"),
    permitted: optional(quantity("record.greatest", "HV")),
    hardest: table("procedure-hardness"),
    parts: anyOf(
      things("joint.parts[]", {
        group: optional(text("table(grade-group, material.standard, material.edition, material.grade).group")),
      }),
    ),
  },
  *check({ place, values, stage, permitted, hardest, parts }, row) {
    const treated = stage === "after heat treatment" ? "yes" : "no";
    const groups = [...new Set(parts.flatMap(({ group }) => group ?? []))];
    const ofSteel = groups
      .flatMap((group) => hardest(treated, group).quantity("most") ?? [])
      .sort((a, b) => a.value - b.value)[0];
    const most = [permitted, ofSteel].filter((one) => one !== undefined).sort((a, b) => a.value - b.value)[0];
    const why = `${stage}, groups ${groups.join(", ")}${permitted === undefined ? "" : `; the report permits ${permitted.text}`}`;
    if (most === undefined) {
      yield {
        at: "values",
        accuses: [],
        name: "limit",
        unsure: true,
        message: `no greatest hardness is at hand to hold ${row.name} against`,
        why: "the report states none, and the table has none for the steels of the joint",
        hint: "enter the limit of the report, or add its row to the book as a reference table",
      };
      return;
    }
    const hard = values.filter((value) => atMost(value, most) !== "yes");
    const [first] = [...hard].sort((a, b) => b.value - a.value);
    if (first !== undefined)
      yield {
        at: "values",
        message: `the ${place} of ${row.name} is ${first.text} hard, above ${most.text}`,
        why: `${hard.length} of ${values.length} readings; ${why}`,
        hint: "compare with the report; if it says so, raise a nonconformity report and have the joint judged",
      };
  },
  examples: [
    { name: "on the limit", given: indented("as welded", "380 HV"), objections: [] },
    {
      name: "above that of the steel",
      given: indented("as welded", "381 HV", "200 HV"),
      objections: ["the heat-affected zone of X-01 is 381 HV hard, above 380 HV"],
    },
    {
      name: "heat treated, a lesser limit",
      given: indented("after heat treatment", "321 HV"),
      objections: ["the heat-affected zone of X-01 is 321 HV hard, above 320 HV"],
    },
    {
      name: "above what the report permits",
      given: { ...indented("as welded", "251 HV"), permitted: "250 HV" },
      objections: ["the heat-affected zone of X-01 is 251 HV hard, above 250 HV"],
    },
    {
      name: "nothing to hold it against",
      given: { ...indented("as welded", "251 HV"), parts: [] },
      objections: ["no greatest hardness is at hand to hold X-01 against"],
    },
  ],
});

function indented(stage: string, ...values: readonly string[]) {
  return { place: "heat-affected zone", values, stage, parts: [{ group: "1.1" }, { group: "1.2" }] };
}

/** MPa of tensile strength for one HV, of unalloyed and low-alloy steel. */
const strengthOfHardness = 3.2;
/** Share of the least tensile strength below which a steel is asked about; conversions are no better. */
const farBelow = 0.85;

export const parentMetalSoft = rule({
  ...shared,
  id: "parent-metal-soft",
  title: "Parent metal is as hard as the tensile strength of its steel makes it",
  basis: fromMemory(
    "ISO 18265",
    "2013",
    "table A.1: 1 HV for about 3.2 MPa of tensile strength; asked about from 15 % below",
  ),
  kind: "hardness-report#rows",
  when: [{ path: "place", equals: "parent metal" }],
  severity: "query",
  inputs: {
    values: list(quantity("values[]", "HV")),
    strengths: table("grade-yield"),
    parts: list(thing("joint.parts[]", { grade: text("material.grade") })),
  },
  *check({ values, strengths, parts }, row) {
    const grades = [...new Set(parts.map(({ grade }) => grade))];
    const least = grades
      .flatMap((grade) => strengths(grade).quantity("tensile") ?? [])
      .sort((a, b) => a.value - b.value)[0];
    if (least === undefined) {
      yield {
        at: "values",
        accuses: [],
        name: "strength",
        message: `no tensile strength of ${grades.join(", ")} is at hand to hold the parent metal of ${row.name} against`,
        why: "the table of strengths has no row of it",
        hint: "add its row to the book as a reference table, or answer this query",
      };
      return;
    }
    const mean = values.reduce((sum, { value }) => sum + value, 0) / values.length;
    if (mean * strengthOfHardness >= farBelow * least.value) return;
    yield {
      at: "values",
      accuses: [],
      message: `the parent metal of ${row.name} is ${mean.toFixed(0)} HV hard, about ${(mean * strengthOfHardness).toFixed(0)} MPa; ${grades.join(", ")} has at least ${least.text}`,
      why: `readings: ${values.map(({ text: one }) => one).join(", ")}`,
      hint: "compare with the report; else prove by its mark and an analysis which steel it is",
    };
  },
  examples: [
    { name: "as usual", given: soft("130 HV", "141 HV"), objections: [] },
    {
      name: "another steel",
      given: soft("100 HV", "104 HV"),
      objections: ["the parent metal of X-01 is 102 HV hard, about 326 MPa; P265GH has at least 410 MPa"],
    },
    {
      name: "a steel without a strength here",
      given: { ...soft("100 HV"), parts: [{ grade: "A 106 B" }] },
      objections: ["no tensile strength of A 106 B is at hand to hold the parent metal of X-01 against"],
    },
  ],
});

function soft(...values: readonly string[]) {
  return { values, parts: [{ grade: "P265GH" }] };
}
