import { commonPractice, fromMemory, ownChoice, type Basis } from "../model/basis.ts";
import type { Condition } from "../model/input.ts";
import type { Requirement } from "../model/requirement.ts";
import { asksFor, treated } from "./testing-conditions.ts";
import type { Milestone, Owner } from "../model/vocabulary.ts";

const testing = fromMemory("EN 13445-5", "2021", "extent and evidence of testing");
const practice = commonPractice("evidence that the shop leaves as a matter of course");

function owed(
  id: string,
  title: string,
  kind: string,
  when: readonly Condition[],
  needs: string,
  due: Milestone,
  owner: Owner,
  basis: Basis,
): Requirement {
  return { id, title, each: { kind, when }, needs, due, owner, basis };
}

const methods: readonly (readonly [string, string, string])[] = [
  ["magnetic", "magnetic particle", "MT"],
  ["penetrant", "penetrant", "PT"],
  ["radiographic", "radiographic", "RT"],
  ["ultrasonic", "ultrasonic", "UT"],
];

/** What the rules need of records that their schemas leave open, because not every record of the kind has it. */
export const owedToRules: readonly Requirement[] = [
  owed(
    "adoption-signed",
    "The designer’s signature for the figures that a sheet adopts",
    "calculation-sheet",
    [{ path: "adopts", exists: true }],
    'signatures[role="design"].date',
    "design-approved",
    "design",
    commonPractice("who adopts figures that another has calculated signs for them, on a day"),
  ),
  ...methods.map(([id, title, method]) =>
    owed(
      `joint-${id}`,
      `${/^[aeiou]/.test(title) ? "An" : "A"} ${title} test of each joint that asks for one`,
      "joint",
      [asksFor(method)],
      `<ndt-report:rows[].joint>[record.method="${method}"]`,
      "testing-complete",
      "testing",
      testing,
    ),
  ),
  owed(
    "repair-welder-qualification",
    "A qualification for each welder of a repair",
    "repair",
    [],
    "welders[].<welder-qualification:person>",
    "testing-complete",
    "welding coordination",
    fromMemory("Directive 2014/68/EU", undefined, "Annex I, permanent joining: qualified personnel"),
  ),
  owed(
    "class-of-radiographs",
    "The class of each radiograph",
    "ndt-report",
    [{ path: "method", equals: "RT" }],
    "radiography.techniqueClass",
    "testing-complete",
    "testing",
    fromMemory("EN ISO 17636-1", undefined, "classes of technique"),
  ),
  owed(
    "wire-of-radiographs",
    "The thinnest wire seen on each radiograph",
    "ndt-report#rows",
    [{ path: "record.method", equals: "RT" }],
    "wire",
    "testing-complete",
    "testing",
    fromMemory("EN ISO 17636-1", undefined, "the test report states the image quality reached"),
  ),
  owed(
    "tester-vision",
    "The vision test of each tester",
    "ndt-personnel",
    [],
    "visionTest",
    "testing-complete",
    "testing",
    fromMemory("ISO 9712", undefined, "annual near-vision test"),
  ),
  owed(
    "joint-heat-treatment",
    "The heat treatment of each joint whose procedure asks for one",
    "joint",
    [treated],
    "<heat-treatment:joints[]>",
    "testing-complete",
    "welding coordination",
    practice,
  ),
  owed(
    "test-witnesses",
    "The signatures under the pressure test",
    "pressure-test",
    [],
    "signatures",
    "pressure-test",
    "quality",
    fromMemory("Directive 2014/68/EU", undefined, "Annex I, final assessment: proof test"),
  ),
  owed(
    "signature-date",
    "The day of each signature",
    "pressure-test",
    [],
    "signatures[].date",
    "pressure-test",
    "quality",
    ownChoice("a signature without a day proves nothing about the order of events"),
  ),
];
