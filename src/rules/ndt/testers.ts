import { fromMemory } from "../../model/basis.ts";
import { addMonths, compareDays } from "../../model/dates.ts";
import {
  anyOf,
  date,
  flag,
  optional,
  quantity,
  table,
  text,
  thing,
  things,
  type Handle,
  type Values,
} from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { certifiedMethod, visualCertified } from "../../requirements/testing-conditions.ts";
import { owedBy } from "../../model/owes.ts";
import { tested, testerExamples } from "./tester-examples.ts";

export const personnel = fromMemory(
  "ISO 9712",
  undefined,
  "certification of testing personnel: method, level, validity, vision of who supervises",
);

const certificates = things("<ndt-personnel:person>", {
  method: text("method"),
  level: text("level"),
  from: date("issued"),
  to: date("validTo"),
  seen: date("visionTest"),
});
const surfaceMethods: readonly string[] = ["MT", "PT"];

const certified = {
  basis: personnel,
  kind: "ndt-report",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    least: quantity("profile.testerLevelLeast", "1"),
    surface: quantity("profile.surfaceTesterLevelSupervised", "1"),
    other: quantity("profile.testerLevelSupervised", "1"),
    vision: quantity("profile.nearVisionMonths", "1"),
    tester: thing("operator", { certificates }),
    supervisor: optional(thing("supervisor", { certificates: anyOf(certificates) })),
  },
  owes: [owedBy("testing", "testing-complete", "tester.certificates")],
} as const;
type Given = Values<(typeof certified)["inputs"]>;

function* uncertified(given: Given, report: Handle) {
  const { method, day, least, vision, tester, supervisor } = given;
  const supervised = surfaceMethods.includes(method) ? given.surface : given.other;
  const inForce = (list: Given["tester"]["certificates"], level: number) =>
    list.filter(
      (one) =>
        one.method === method &&
        Number(one.level) >= level &&
        compareDays(one.from.day, day.day) <= 0 &&
        compareDays(day.day, one.to.day) <= 0,
    );
  const sees = ({ seen }: Given["tester"]["certificates"][number]) =>
    compareDays(seen.day, day.day) <= 0 && compareDays(day.day, addMonths(seen.day, vision.value)) <= 0;
  // Nobody is his own supervisor.
  const watched =
    supervisor !== undefined &&
    supervisor.$.id !== tester.$.id &&
    supervised.value < least.value &&
    inForce(supervisor.certificates, least.value).some(sees);
  const valid = inForce(tester.certificates, watched ? supervised.value : least.value);
  if (valid.length === 0)
    yield {
      at: "day",
      on: tester,
      name: method,
      message: `tester ${tester.$.name} held no ${method} certificate of level ${least.text} or higher on ${day.day}`,
      why: heldBy(given, supervised.value < least.value),
      hint: "add the certificate that covers the day, or correct date or tester; else have the test repeated",
      related: [{ at: "tester", message: `report ${report.name}` }],
    } as const;
}

/** What a tester holds for a method, and why a supervisor does not make up for it. */
function heldBy({ method, tester, supervisor }: Given, allowed: boolean): string {
  const own = tester.certificates.filter((one) => one.method === method);
  const held =
    own.length === 0
      ? `no certificate of ${method} is on record`
      : own.map((one) => `${one.$.name}: ${method} level ${one.level}, ${one.from.day} to ${one.to.day}`).join("; ");
  if (supervisor === undefined)
    return own.some(({ level }) => level === "1") ? `${held}; no supervisor is named` : held;
  return allowed
    ? `${held}; ${supervisor.$.name} is named as supervisor`
    : `${held}; ${supervisor.$.name} supervised, which the design standard does not accept in place of the level`;
}

export const testerCertified = rule({
  ...certified,
  id: "tester-certified",
  title: "A tester holds a certificate for the method on that day",
  when: [certifiedMethod],
  check: uncertified,
  examples: testerExamples,
});

export const visualTesterCertified = rule({
  ...certified,
  id: "visual-tester-certified",
  title: "A visual tester holds a certificate, where the profile asks for one",
  when: visualCertified,
  check: uncertified,
  examples: [
    { name: "held", given: tested({ method: "VT" }, { method: "VT" }), objections: [] },
    {
      name: "of another method",
      given: tested({ method: "VT" }),
      objections: ["tester P07 held no VT certificate of level 2 or higher on 2026-03-10"],
    },
  ],
});

export const testerApproved = rule({
  id: "tester-approved",
  title: "Testers of equipment of category III and IV are approved by a third party",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I, non-destructive tests: personnel approved by a recognised third-party organisation",
  ),
  kind: "ndt-personnel",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    approval: flag("thirdPartyApproval"),
    category: optional(text("book.equipment.directive.category")),
    approvals: table("tester-approval"),
  },
  *check({ approval, category, approvals }, certificate) {
    if (!approval && category !== undefined && approvals(category).text("asked") === "yes")
      yield {
        at: "approval",
        message: `tester's certificate ${certificate.name} is not approved by a third party; the equipment is of category ${category}`,
        why: "from category III upwards a recognised third party approves those who test permanent joints",
        hint: "add the approval; else have the tests repeated by an approved tester",
      };
  },
  examples: [
    { name: "approved", given: { approval: true, category: "IV" }, objections: [] },
    { name: "not needed", given: { approval: false, category: "II" }, objections: [] },
    {
      name: "from category III",
      given: { approval: false, category: "III" },
      objections: ["tester's certificate X-01 is not approved by a third party; the equipment is of category III"],
    },
  ],
});
