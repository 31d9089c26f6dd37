import { fromMemory } from "../../model/basis.ts";
import { date, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { certifiedMethod } from "../../requirements/testing-conditions.ts";
import { certificateFault, certificateIn, certificates, heldIn, heldOn } from "../shared/certified.ts";

const level = 2;

export const reviewerCertified = rule({
  id: "reviewer-certified",
  title: "Who judges a test or reviews its report is certified in the method, level 2 or 3",
  basis: fromMemory(
    "ISO 9712",
    undefined,
    "what each level may do: level 1 tests under supervision and does not judge; from level 2 results are judged",
  ),
  kind: "ndt-report",
  when: [certifiedMethod],
  severity: "nonconformity",
  fault: certificateFault,
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    named: text("reviewer"),
    operator: thing("operator", { certificates }),
    reviewer: thing("reviewer", { certificates }),
  },
  *check({ method, day, operator, reviewer }, report) {
    // Who tested and reviewed is judged as tester; that he is one person is asked by another rule.
    if (operator.$.id === reviewer.$.id) return;
    const held = heldOn(reviewer.certificates, method, level, day);
    if (held === "yes" || held === "unknown") return;
    const judgedBefore = heldOn(operator.certificates, method, level, day) === "yes";
    yield {
      at: "named",
      on: reviewer,
      name: method,
      accuses: [],
      message: `${reviewer.$.name} reviewed report ${report.name} of ${day.day} without a certificate of level 2 or 3 in ${method}`,
      why: `${heldIn(reviewer.certificates, method)}; ${operator.$.name}, who tested, ${judgedBefore ? "may judge the results" : "may not judge them either"}`,
      hint: "add the certificate, or have the results judged again by who is certified",
      // A level 2 who tested has judged already: the second look is then the shop's.
      unsure: judgedBefore,
      related: [{ at: reviewer, message: "registered here" }],
    };
  },
  *lacks({ method, operator, reviewer }) {
    if (operator.$.id !== reviewer.$.id && reviewer.certificates.every((one) => one.method !== method))
      yield { at: reviewer, path: certificateIn(method), why: `reviews tests by ${method}: level 2 or 3 does` };
  },
  lacksDue: "testing-complete",
  examples: [
    { name: "level 3", given: reviewed({ level: "3" }), objections: [] },
    { name: "level 2, to that day", given: reviewed({ to: "2026-03-10" }), objections: [] },
    {
      name: "level 1",
      given: reviewed({ level: "1" }),
      objections: ["N3 reviewed report X-01 of 2026-03-10 without a certificate of level 2 or 3 in RT"],
    },
    {
      name: "a day after its end",
      given: reviewed({ to: "2026-03-09" }),
      objections: ["N3 reviewed report X-01 of 2026-03-10 without a certificate of level 2 or 3 in RT"],
    },
    {
      name: "a level 1 who tested, and another who judged",
      given: reviewed({ level: "1" }, { level: "1" }),
      objections: ["N3 reviewed report X-01 of 2026-03-10 without a certificate of level 2 or 3 in RT"],
    },
    {
      name: "without any in the method",
      given: reviewed({ method: "UT" }),
      objections: [],
      lacks: ['<ndt-personnel:person>[method="RT"]'],
    },
  ],
});

function reviewed(reviewer: Readonly<Record<string, string>>, operator: Readonly<Record<string, string>> = {}) {
  const sound = { $: "NC-1", method: "RT", level: "2", from: "2022-02-14", to: "2027-02-13" };
  return {
    method: "RT",
    day: "2026-03-10",
    operator: { $: "N2", certificates: [{ ...sound, ...operator }] },
    reviewer: { $: "N3", certificates: [{ ...sound, ...reviewer }] },
  };
}
