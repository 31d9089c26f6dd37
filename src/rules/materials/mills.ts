import { commonPractice, fromMemory } from "../../model/basis.ts";
import { addMonths, canPrecede, compareDays } from "../../model/dates.ts";
import { anyOf, date, flag, list, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

const directive = fromMemory(
  "Directive 2014/68/EU",
  undefined,
  "Annex I, quality system of a material manufacturer, certified by a body established in the Union for the materials",
);

const forms = rule({
  id: "mill-approval-form",
  title: "The approval of a mill is for the product form that it certifies as 3.1",
  basis: directive,
  kind: "material-certificate#rows",
  when: [{ path: "record.type", equals: "3.1" }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    form: text("form"),
    issued: date("record.issued"),
    mill: thing("record.mill", {
      approvals: anyOf(
        things("<mill-approval:mill>", {
          from: date("validFrom"),
          to: date("validTo"),
          forms: list(text("forms[]")),
        }),
      ),
    }),
  },
  *check({ form, issued, mill }, row) {
    // What is not in force then is found by another rule.
    const inForce = mill.approvals.filter(
      ({ from, to }) => canPrecede(from, issued) === "yes" && canPrecede(issued, to) === "yes",
    );
    const [first] = inForce;
    if (first === undefined || inForce.some((approval) => approval.forms.includes(form))) return;
    yield {
      at: "form",
      on: mill,
      name: form,
      accuses: [],
      message: `mill ${mill.$.name} certifies ${row.name} as ${form}; its approval is for ${first.forms.join(", ")}`,
      why: inForce.map((approval) => `${approval.$.name}: ${approval.forms.join(", ")}`).join("; "),
      hint: "compare with the approval; ask for one that names the product, or for a 3.2 certificate",
      related: inForce.map((approval) => ({ at: [approval, "forms"] as const, message: "the forms approved" })),
    };
  },
  examples: [
    { name: "plates of a plate mill", given: approved("plate"), objections: [] },
    {
      name: "tubes of a plate mill",
      given: approved("tube"),
      objections: ["mill M1 certifies X-01 as tube; its approval is for plate"],
    },
    { name: "an approval that is over", given: approved("tube", "2025-12-31"), objections: [] },
  ],
});

function approved(form: string, to = "2026-12-31") {
  return {
    form,
    issued: "2026-04-01",
    mill: { $: "M1", approvals: [{ $: "MA-1", from: "2024-01-01", to, forms: ["plate"] }] },
  };
}

const union = rule({
  id: "mill-body-in-union",
  title: "The body that approves a mill is established in the Union",
  basis: directive,
  kind: "mill-approval",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { inUnion: flag("bodyInUnion"), body: thing("body", {}), mill: thing("mill", {}) },
  *check({ inUnion, body, mill }, approval) {
    if (!inUnion)
      yield {
        at: "inUnion",
        message: `approval ${approval.name} of mill ${mill.$.name} is by ${body.$.name}, which is not established in the Union`,
        why: "a 3.1 certificate rests on such an approval",
        hint: "correct the record if the body is; else ask for certificates of type 3.2",
      };
  },
  examples: [
    { name: "it is", given: { inUnion: true, body: { $: "B1" }, mill: { $: "M1" } }, objections: [] },
    {
      name: "it is not",
      given: { inUnion: false, body: { $: "B1" }, mill: { $: "M1" } },
      objections: ["approval X-01 of mill M1 is by B1, which is not established in the Union"],
    },
  ],
});

const longest = 36;

const term = rule({
  id: "mill-approval-term",
  title: "The approval of a mill runs no longer than three years",
  basis: commonPractice("certificates of quality systems are renewed every three years"),
  kind: "mill-approval",
  severity: "query",
  owner: "purchasing",
  inputs: { from: date("validFrom"), to: date("validTo") },
  *check({ from, to }, approval) {
    const last = addMonths(from.day, longest);
    if (compareDays(to.day, last) > 0)
      yield {
        at: "to",
        accuses: [],
        message: `approval ${approval.name} runs from ${from.day} to ${to.day}; three years end on ${last}`,
        why: "both days are entered in one record",
        hint: "compare with the certificate; if it says so, answer this query with that",
      };
  },
  examples: [
    { name: "three years", given: { from: "2024-06-01", to: "2027-06-01" }, objections: [] },
    {
      name: "a day more",
      given: { from: "2024-06-01", to: "2027-06-02" },
      objections: ["approval X-01 runs from 2024-06-01 to 2027-06-02; three years end on 2027-06-01"],
    },
  ],
});

/** What the approval of a mill covers. */
export const millApprovals: readonly Rule[] = [forms, union, term];
