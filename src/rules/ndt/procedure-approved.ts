import { fromMemory } from "../../model/basis.ts";
import { date, optional, text, thing, type Condition, type Handle, type Values } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { certificateFault, certificateIn, certificates, heldIn, heldOn } from "../shared/certified.ts";

const level = 3;

/** A revision that tests were made by: of others nothing hangs on who approved them. */
const tested: readonly Condition[] = [
  { path: "record.type", equals: "ndt" },
  { path: "<ndt-report:procedure>", exists: true },
];

const shared = {
  basis: fromMemory("ISO 9712", undefined, "what each level may do: level 3 validates procedures and instructions"),
  kind: "procedure#revisions",
  severity: "nonconformity",
  fault: certificateFault,
  owner: "testing",
  inputs: {
    method: optional(text("record.method")),
    day: date("approved"),
    named: text("approvedBy"),
    approver: thing("approvedBy", { certificates }),
  },
  lacksDue: "testing-complete",
} as const;
type Given = Values<(typeof shared)["inputs"]>;

function* approvedBelow({ method, day, approver }: Given, revision: Handle) {
  // That it states no method is said where a report names it.
  if (method === undefined) return;
  const held = heldOn(approver.certificates, method, level, day);
  if (held === "yes" || held === "unknown") return;
  yield {
    at: "named",
    on: approver,
    name: method,
    accuses: [],
    message: `${approver.$.name} approved procedure ${revision.name} on ${day.text}, and ${held === "no" ? "held no" : "is not shown to have held a"} certificate of level 3 in ${method} then`,
    why: heldIn(approver.certificates, method),
    hint:
      held === "no"
        ? "have the procedure approved by a level 3 in the method, and what was tested by it reviewed; or correct who approved it, and when"
        : "add the certificate that was in force then, or answer this query with it",
    unsure: held === "not shown",
    related: [{ at: approver, message: "registered here" }],
  } as const;
}

function* certificateLacking({ method, approver }: Given) {
  if (method !== undefined && approver.certificates.every((one) => one.method !== method))
    yield {
      at: approver,
      path: certificateIn(method),
      why: `approved a procedure for ${method}: a level 3 in the method does`,
    } as const;
}

export const procedureApproved = rule({
  ...shared,
  id: "test-procedure-approver",
  title: "A procedure that tests were made by was approved by a level 3 in the method",
  when: [...tested, { path: "<ndt-report:procedure>.method", equals: ["MT", "PT", "RT", "UT"] }],
  check: approvedBelow,
  lacks: certificateLacking,
  examples: [
    { name: "level 3, from that day", given: approved({ from: "2026-01-16" }), objections: [] },
    { name: "level 3, to that day", given: approved({ to: "2026-01-16" }), objections: [] },
    {
      name: "level 2",
      given: approved({ level: "2" }),
      objections: ["N3 approved procedure X-01 on 2026-01-16, and held no certificate of level 3 in RT then"],
    },
    {
      name: "after its end",
      given: approved({ to: "2026-01-15" }),
      objections: ["N3 approved procedure X-01 on 2026-01-16, and held no certificate of level 3 in RT then"],
    },
    {
      name: "before the certificate at hand",
      given: approved({ from: "2026-01-17" }),
      objections: [
        "N3 approved procedure X-01 on 2026-01-16, and is not shown to have held a certificate of level 3 in RT then",
      ],
    },
    {
      name: "level 3 in another method",
      given: approved({ method: "UT" }),
      objections: [],
      lacks: ['<ndt-personnel:person>[method="RT"]'],
    },
  ],
});

export const visualProcedureApproved = rule({
  ...shared,
  id: "visual-procedure-approver",
  title: "A procedure for visual tests was approved by a level 3, where the profile asks for certificates",
  when: [
    ...tested,
    { path: "<ndt-report:procedure>.method", equals: "VT" },
    { path: "profile.visualTesterCertificate", equals: "required" },
  ],
  check: approvedBelow,
  lacks: certificateLacking,
  examples: [
    { name: "level 3", given: approved({ method: "VT" }, "VT"), objections: [] },
    {
      name: "level 2",
      given: approved({ method: "VT", level: "2" }, "VT"),
      objections: ["N3 approved procedure X-01 on 2026-01-16, and held no certificate of level 3 in VT then"],
    },
  ],
});

function approved(certificate: Readonly<Record<string, string>>, method = "RT") {
  const sound = { $: "NC-1", method: "RT", level: "3", from: "2022-02-14", to: "2027-02-13" };
  return { method, day: "2026-01-16", approver: { $: "N3", certificates: [{ ...sound, ...certificate }] } };
}
