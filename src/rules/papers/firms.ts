import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { aKind, kindName } from "../shared/words.ts";

interface Part {
  readonly kind: string;
  /** Path of the link to the firm. */
  readonly path: string;
  /** What the firm does there: "made the material". */
  readonly did: string;
  /** Of these the register of firms must give one. */
  readonly roles: readonly string[];
}

const body = ["inspection body"];
const makers = ["supplier", "mill", "maker"];
const testers = ["testing", "laboratory", "maker", "mill", "inspection body"];

const parts: readonly Part[] = [
  { kind: "book", path: "maker", did: "makes the equipment", roles: ["maker"] },
  { kind: "book", path: "client", did: "ordered the equipment", roles: ["client"] },
  { kind: "book", path: "inspectionBody", did: "inspects the equipment", roles: body },
  { kind: "body-certificate", path: "body", did: "issued", roles: body },
  { kind: "consumable-batch", path: "manufacturer", did: "made", roles: makers },
  { kind: "fitting", path: "manufacturer", did: "made", roles: makers },
  { kind: "instrument", path: "calibrations[].laboratory", did: "calibrated", roles: testers },
  {
    kind: "material-certificate",
    path: "mill",
    did: "made what is certified in",
    roles: ["mill", "maker", "supplier"],
  },
  {
    kind: "material-certificate",
    path: "supplier",
    did: "sold what is certified in",
    roles: ["stockist", "supplier", "mill"],
  },
  {
    kind: "material-certificate",
    path: "countersignedBy.organisation",
    did: "countersigned",
    roles: ["inspection body", "client", "maker"],
  },
  { kind: "mill-approval", path: "mill", did: "is approved by", roles: ["mill", "maker", "supplier"] },
  { kind: "mill-approval", path: "body", did: "issued", roles: body },
  { kind: "ndt-personnel", path: "body", did: "issued", roles: [...body, "testing", "laboratory"] },
  { kind: "ndt-report", path: "laboratory", did: "made the test of", roles: testers },
  { kind: "part", path: "madeBy", did: "made", roles: makers },
  { kind: "procedure-qualification", path: "approvedBy", did: "approved", roles: [...body, "client"] },
  { kind: "production-test", path: "laboratory", did: "tested", roles: testers },
  { kind: "safety-valve", path: "manufacturer", did: "made", roles: makers },
  { kind: "safety-valve", path: "certificate.body", did: "certified", roles: body },
  { kind: "welder-qualification", path: "body", did: "issued", roles: [...body, "testing"] },
];

const basis = commonPractice("register of firms: what each does for this book");

/** A firm does what the register of firms says it does: another firm in its place is a slip, or a part nobody agreed to. */
export const firmsRegistered: readonly Rule[] = parts.map(({ kind, path, did, roles }) => {
  const field = path.replaceAll(/\[\]|\..*$/g, "").replace("calibrations", "laboratory");
  return rule({
    id: `${kind}-${field.toLowerCase()}-registered`,
    title: `The firm that ${did}${kind === "book" ? "" : ` ${aKind(kind)}`} is registered for that`,
    basis,
    kind,
    // Where nobody is named there is nobody to judge.
    when: [{ path, exists: true }],
    severity: "nonconformity",
    fault: "firm-registered",
    owner: "document control",
    inputs: {
      named: anyOf(list(text(path))),
      firms: anyOf(list(thing(path, { roles: anyOf(list(text("roles[]"))) }))),
    },
    *check({ firms }, subject) {
      for (const firm of firms)
        // What a firm does is owed by the firm itself: none stated is no other part.
        if (firm.roles.length > 0 && !firm.roles.some((role) => roles.includes(role)))
          yield {
            at: "named",
            on: firm,
            name: roles[0] ?? "",
            message: `${firm.$.name} ${did}${kind === "book" ? "" : ` ${kindName(kind)} ${subject.name}`}, and is registered as ${firm.roles.join(", ")}`,
            why: `expected: ${roles.join(" or ")}`,
            hint: "name the firm that did it, or correct what the register of firms says of this one",
            related: [{ at: firm, message: "registered here" }],
          };
    },
    examples: [
      { name: "registered", given: { firms: [{ $: "GREYVAULT", roles: ["client", roles[0] ?? ""] }] }, objections: [] },
      { name: "what the firm does is still owed", given: { firms: [{ $: "GREYVAULT" }] }, objections: [] },
      {
        name: "registered for something else",
        given: { firms: [{ $: "GREYVAULT", roles: ["stranger"] }] },
        objections: [
          `GREYVAULT ${did}${kind === "book" ? "" : ` ${kindName(kind)} X-01`}, and is registered as stranger`,
        ],
      },
    ],
  });
});
