import { anyOf, date, list, optional, text, thing, type Condition } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { weldedEnds } from "../../requirements/boiler-conditions.ts";
import { basis, hint, holds, person, roleFault, said } from "../shared/roles.ts";
import { aKind } from "../shared/words.ts";

interface Post {
  readonly id: string;
  readonly kind: string;
  readonly when?: readonly Condition[];
  readonly path: string;
  readonly day: string;
  readonly roles: readonly string[];
  readonly did: string;
  /** The schema does not say that somebody is named, or when: where nobody is, nothing is asked. */
  readonly open?: true;
}

const maker = [
  "design",
  "checker",
  "welding coordinator",
  "quality control",
  "document control",
  "authorised signatory",
];
const approved = (kind: string): Post => ({
  id: `${kind}-approver-role`,
  kind: `${kind}#revisions`,
  path: "approvedBy",
  day: "approved",
  roles: [...maker, "testing", "inspection body", "client", "supplier"],
  did: "approved",
  open: true,
});
const posts: readonly Post[] = [
  {
    id: "welder-role",
    kind: "weld-log#runs",
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  {
    id: "repair-welder-role",
    kind: "repair",
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  {
    id: "tube-end-operator-role",
    kind: "tube-end-group",
    path: "operators[]",
    day: "date",
    roles: ["shop", "welder", "welding operator"],
    did: "made",
  },
  {
    id: "tube-end-welder-role",
    kind: "tube-end-group",
    when: [weldedEnds],
    path: "welders[]",
    day: "date",
    roles: ["welder", "welding operator"],
    did: "welded",
  },
  {
    id: "tester-role",
    kind: "ndt-report",
    path: "operator",
    day: "date",
    roles: ["testing", "inspection body"],
    did: "tested for",
  },
  {
    id: "declaration-signatory",
    kind: "declaration",
    path: "signatory",
    day: "date",
    roles: ["authorised signatory"],
    did: "signed",
  },
  {
    id: "body-certificate-signatory",
    kind: "body-certificate",
    path: "signatory",
    day: "date",
    roles: ["inspection body"],
    did: "signed",
  },
  {
    id: "dimension-check-role",
    kind: "dimension-check",
    path: "by",
    day: "date",
    roles: ["quality control", "shop", "testing", "checker", "inspection body", "laboratory"],
    did: "measured for",
    open: true,
  },
  {
    id: "visual-examination-role",
    kind: "pressure-test",
    path: "visualExamination.by",
    day: "visualExamination.date",
    roles: ["quality control", "testing", "inspection body"],
    did: "looked over",
    open: true,
  },
  {
    id: "valve-bench-role",
    kind: "safety-valve",
    path: "bench.tester",
    day: "bench.date",
    roles: ["supplier", "laboratory", "testing", "quality control", "inspection body"],
    did: "set and tested",
    open: true,
  },
  {
    id: "function-test-role",
    kind: "fitting#functionTests",
    path: "by",
    day: "date",
    roles: ["supplier", "shop", "quality control", "testing", "laboratory", "design", "inspection body"],
    did: "tested the function of",
    open: true,
  },
  {
    id: "mark-witness-role",
    kind: "piece-mark#transfers",
    path: "witness",
    day: "date",
    roles: ["quality control", "inspection body", "client", "welding coordinator"],
    did: "witnessed the marking of",
    open: true,
  },
  {
    id: "nonconformity-found-role",
    kind: "nonconformity-report",
    path: "foundBy",
    day: "raised",
    roles: [...maker, "shop", "testing", "welder", "welding operator", "inspection body", "client"],
    did: "found what is in",
    open: true,
  },
  ...["document", "drawing", "procedure", "welding-procedure"].map(approved),
  {
    id: "deviation-decided-role",
    kind: "deviation",
    path: "by",
    day: "date",
    roles: [...maker, "inspection body", "client"],
    did: "decided",
    open: true,
  },
];

/** Rows as they are said in a title. */
const rowWords: Readonly<Record<string, string>> = {
  "weld-log#runs": "a run",
  "fitting#functionTests": "a fitting",
  "piece-mark#transfers": "a piece",
  "document#revisions": "a revision of a document",
  "drawing#revisions": "a revision of a drawing",
  "procedure#revisions": "a revision of a procedure",
  "welding-procedure#revisions": "a revision of a welding procedure",
};

/** People named in a post by a field of its own hold the role it asks for on that day. */
export const postsHeld: readonly Rule[] = posts.map(({ id, kind, when, path, day, roles, did, open }) =>
  rule({
    id,
    title: `Who ${did} ${rowWords[kind] ?? aKind(kind)} is registered for it on that day`,
    basis,
    kind,
    ...(when !== undefined && { when }),
    severity: "nonconformity",
    fault: roleFault,
    owner: "quality",
    inputs: {
      day: open === true ? optional(date(day)) : date(day),
      named: anyOf(list(text(path))),
      people: open === true ? anyOf(list(thing(path, person))) : list(thing(path, person)),
    },
    *check({ day: on, people }, subject) {
      for (const who of people)
        if (!holds(who, roles, on))
          yield {
            at: "named",
            on: who,
            name: roles[0] ?? "",
            message: `${who.$.name} ${did} ${subject.name}${on === undefined ? "" : ` on ${on.text}`} without being registered as ${roles.join(" or ")}`,
            why: said(who),
            hint,
            related: [{ at: who, message: "registered here" }],
          };
    },
    examples: [
      {
        name: "registered",
        given: { day: "2026-06-01", people: [{ $: "P05", roles: [{ role: roles[0] ?? "" }] }] },
        objections: [],
      },
      {
        name: "registered from that day",
        given: { day: "2026-06-01", people: [{ $: "P05", roles: [{ role: roles[0] ?? "", from: "2026-06-01" }] }] },
        objections: [],
      },
      {
        name: "registered a day later",
        given: { day: "2026-06-01", people: [{ $: "P05", roles: [{ role: roles[0] ?? "", from: "2026-06-02" }] }] },
        objections: [`P05 ${did} X-01 on 2026-06-01 without being registered as ${roles.join(" or ")}`],
      },
      {
        name: "registered for something else",
        given: { day: "2026-06-01", people: [{ $: "P05", roles: [{ role: "visitor" }] }] },
        objections: [`P05 ${did} X-01 on 2026-06-01 without being registered as ${roles.join(" or ")}`],
      },
    ],
  }),
);

const parties: Readonly<Record<string, readonly string[]>> = {
  "inspection body": ["inspection body"],
  client: ["client"],
};

export const stepSignatories = rule({
  id: "step-signatories",
  title: "The inspection body and the client are each signed for by their own person, and nobody signs for two parties",
  basis,
  kind: "inspection-step",
  severity: "nonconformity",
  fault: roleFault,
  owner: "quality",
  inputs: {
    points: list(
      thing("points[]", {
        party: text("party"),
        day: optional(date("date")),
        named: optional(text("person")),
        person: optional(thing("person", person)),
      }),
    ),
  },
  *check({ points }, step) {
    const signers = points.flatMap((point) => {
      const { party, day, person: who } = point;
      if (who === undefined) return [];
      const roles = parties[party];
      return [{ point, party, day, who, strange: roles !== undefined && !holds(who, roles, day) }];
    });
    for (const { point, party, day, who, strange } of signers) {
      const own = signers.filter((other) => other.who.$.id === who.$.id);
      const fault = strange
        ? `signed step ${step.name} for the ${party}${day === undefined ? "" : ` on ${day.text}`} without that role`
        : // Who signs for a party without its role is told so; that the same hand signed elsewhere too is no second fault.
          own.some((other) => other.party < party) && !own.some((other) => other.strange)
          ? `signed step ${step.name} for two parties`
          : undefined;
      if (fault !== undefined)
        yield {
          at: [point, "named"],
          on: who,
          name: strange ? party : `two parties: ${party}`,
          message: `${who.$.name} ${fault}`,
          why: said(who),
          hint,
          related: [{ at: who, message: "registered here" }],
        };
    }
  },
  examples: [
    { name: "the inspector", given: points(["inspection body", "P20", "inspection body"]), objections: [] },
    { name: "the maker, in whatever role", given: points(["maker", "P05", "quality control"]), objections: [] },
    { name: "not signed yet", given: { points: [{ party: "client" }] }, objections: [] },
    {
      name: "the maker for the inspector",
      given: points(["inspection body", "P05", "quality control"]),
      objections: ["P05 signed step X-01 for the inspection body without that role"],
    },
    {
      name: "one person for two",
      given: points(["inspection body", "P20", "inspection body"], ["maker", "P20", "inspection body"]),
      objections: ["P20 signed step X-01 for two parties"],
    },
    {
      name: "the maker for itself and for the inspector",
      given: points(["maker", "P05", "quality control"], ["inspection body", "P05", "quality control"]),
      objections: ["P05 signed step X-01 for the inspection body without that role"],
    },
  ],
});

function points(...rows: readonly (readonly [party: string, person: string, role: string])[]) {
  return { points: rows.map(([party, $, role]) => ({ party, person: { $, roles: [{ role }] } })) };
}
