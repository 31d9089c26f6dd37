import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { addMonths, canPrecede } from "../../model/dates.ts";
import { anyOf, date, flag, list, optional, text } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { AKind, kindName } from "../shared/words.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);

export const soleResponsibility = rule({
  id: "declaration-sole-responsibility",
  title: "A declaration of conformity is issued under the sole responsibility of the maker",
  basis: directive("Annex IV: model of the declaration"),
  kind: "declaration",
  severity: "nonconformity",
  owner: "authorised signatory",
  inputs: { sole: flag("soleResponsibility") },
  *check({ sole }, declaration) {
    if (!sole)
      yield {
        at: "sole",
        message: `declaration ${declaration.name} does not say that the maker issues it under his sole responsibility`,
        why: "the model of the declaration says so, in these words",
        hint: "compare with the signed declaration; have it issued again if the sentence is missing",
      };
  },
  examples: [
    { name: "it says so", given: { sole: true }, objections: [] },
    {
      name: "it does not",
      given: { sole: false },
      objections: ["declaration X-01 does not say that the maker issues it under his sole responsibility"],
    },
  ],
});

/** Parts of families of standards that whoever declares by parts needs: material, design, manufacture, inspection. */
const families: Readonly<Record<string, readonly string[]>> = {
  "EN 13445": ["2", "3", "4", "5"],
  "EN 12953": ["2", "3", "4", "5"],
};

export const standardParts = rule({
  id: "declaration-standard-parts",
  title:
    "A declaration that names parts of the design standard names those of material, design, manufacture and inspection",
  basis: fromMemory(
    "EN 13445, EN 12953",
    undefined,
    "parts 2 to 5: materials, design, manufacture, inspection and testing",
  ),
  kind: "declaration",
  severity: "query",
  owner: "authorised signatory",
  inputs: { standards: list(text("standards[].standard")), design: text("equipment.designStandard.standard") },
  *check({ standards, design }, declaration) {
    const own = standards.filter((one) => one.startsWith(`${design}-`));
    const missing = (families[design] ?? [])
      .map((part) => `${design}-${part}`)
      .filter((part) => !standards.includes(part));
    if (own.length > 0 && missing.length > 0)
      yield {
        at: "standards",
        accuses: [],
        message: `declaration ${declaration.name} names parts of ${design}, and not ${missing.join(", ")}`,
        why: `it names ${own.join(", ")}`,
        hint: "compare with the signed declaration; if the part was not applied, answer this query with what was",
      };
  },
  examples: [
    {
      name: "all of them",
      given: { standards: ["EN 13445-2", "EN 13445-3", "EN 13445-4", "EN 13445-5"], design: "EN 13445" },
      objections: [],
    },
    { name: "the standard as a whole", given: { standards: ["EN 13445"], design: "EN 13445" }, objections: [] },
    {
      name: "a standard of which nothing is known here",
      given: { standards: ["AD 2000-1"], design: "AD 2000" },
      objections: [],
    },
    {
      name: "the last one lost",
      given: { standards: ["EN 13445-2", "EN 13445-3", "EN 13445-4"], design: "EN 13445" },
      objections: ["declaration X-01 names parts of EN 13445, and not EN 13445-5"],
    },
  ],
});

const years = 10;

export const typeYears = rule({
  id: "type-examination-period",
  title: "A certificate of type examination is valid for ten years",
  basis: directive("Annex III, module B: the certificate is valid for ten years and can be renewed"),
  kind: "body-certificate",
  when: [
    { path: "type", equals: ["EU-type examination", "design examination"] },
    { path: "validTo", exists: true },
  ],
  severity: "query",
  owner: "inspection body",
  inputs: { day: date("date"), to: optional(date("validTo")) },
  *check({ day, to }, certificate) {
    if (to === undefined) return;
    const end = addMonths(day.day, 12 * years);
    const before = (days: number) => new Date(Date.parse(end) + days * 86_400_000).toISOString().slice(0, 10);
    // The last day is that before the anniversary, or the anniversary itself; a body may write either.
    // Much less is no slip of ten years: a body may have bound it to a shorter period.
    if ((to.day < before(-1) && to.day > addMonths(day.day, 12 * (years - 1))) || to.day > end)
      yield {
        at: "to",
        message: `certificate ${certificate.name} of ${day.text} is valid to ${to.text}; ten years end on ${before(-1)}`,
        why: "both days stand on it",
        hint: "compare with the certificate and correct the wrong day; if the body wrote another period, answer this query",
      };
  },
  examples: [
    { name: "to the day before", given: { day: "2026-05-13", to: "2036-05-12" }, objections: [] },
    { name: "to the day", given: { day: "2026-05-13", to: "2036-05-13" }, objections: [] },
    {
      name: "a month shorter",
      given: { day: "2026-05-13", to: "2036-04-12" },
      objections: ["certificate X-01 of 2026-05-13 is valid to 2036-04-12; ten years end on 2036-05-12"],
    },
    {
      name: "a day longer",
      given: { day: "2026-05-13", to: "2036-05-14" },
      objections: ["certificate X-01 of 2026-05-13 is valid to 2036-05-14; ten years end on 2036-05-12"],
    },
  ],
});

/** Who must have put his name to a record: the link that names him. */
const signatories = [
  { kind: "declaration", paths: ["signatory"], what: "its signatory" },
  { kind: "body-certificate", paths: ["signatory"], what: "its signatory" },
  { kind: "calculation-sheet", paths: ["preparedBy", "checkedBy"], what: "who prepared and who checked it" },
] as const;

export const signedByNamed: readonly Rule[] = signatories.map(({ kind, paths, what }) =>
  rule({
    id: `${kind}-signed`,
    title: `${AKind(kind)} is signed by ${what}`,
    basis: commonPractice("who answers for a paper signs it; a paper without signature proves nothing"),
    kind,
    when: paths.map((path) => ({ path, exists: true })),
    severity: "gap",
    owner: "document control",
    inputs: {
      named: anyOf(list(text(paths[0]))),
      other: anyOf(list(text(paths.at(-1) ?? paths[0]))),
      signed: anyOf(list(text("signatures[].person"))),
    },
    *check({ named, other, signed }, subject) {
      const missing = [...new Set([...named, ...other])].filter((who) => !signed.includes(who));
      // Where as many signed, who signed in whose place is judged by his role.
      if (missing.length > 0 && signed.length < new Set([...named, ...other]).size)
        yield {
          at: "subject",
          accuses: [],
          message: `${kindName(kind)} ${subject.name} bears no signature of ${missing.join(" and ")}`,
          why: signed.length === 0 ? "no signature is recorded" : `signed by ${signed.join(", ")}`,
          hint: "enter the signature with its day from the original, or get it; if another signed, correct who is named",
        };
    },
    examples: [
      { name: "signed", given: { named: ["R1"], other: ["R1"], signed: ["R1"] }, objections: [] },
      {
        name: "not signed",
        given: { named: ["R1"], other: ["R1"] },
        objections: [`${kindName(kind)} X-01 bears no signature of R1`],
      },
      {
        name: "signed by one of two",
        given: { named: ["R1"], other: ["R2"], signed: ["R1"] },
        objections: [`${kindName(kind)} X-01 bears no signature of R2`],
      },
      {
        name: "another signed in his place",
        given: { named: ["R1"], other: ["R2"], signed: ["R1", "E2"] },
        objections: [],
      },
    ],
  }),
);

export const plateAfterTest = rule({
  id: "nameplate-after-test",
  title: "A nameplate is fixed or stamped after the pressure test whose day it bears",
  basis: ownChoice("a plate cannot bear the day of a test that is still to come"),
  kind: "nameplate",
  when: [{ path: "fixed", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: { fixed: optional(date("fixed")), tested: date("testDate") },
  *check({ fixed, tested }, plate) {
    if (fixed !== undefined && canPrecede(tested, fixed) === "no")
      yield {
        at: "fixed",
        accuses: ["fixed", "tested"],
        message: `nameplate ${plate.name} was fixed on ${fixed.text}, before the test of ${tested.text} that it bears`,
        why: "both days are entered in one record",
        hint: "correct the wrong one",
      };
  },
  examples: [
    { name: "on the day of the test", given: { fixed: "2026-06-23", tested: "2026-06-23" }, objections: [] },
    {
      name: "a day before",
      given: { fixed: "2026-06-22", tested: "2026-06-23" },
      objections: ["nameplate X-01 was fixed on 2026-06-22, before the test of 2026-06-23 that it bears"],
    },
  ],
});
