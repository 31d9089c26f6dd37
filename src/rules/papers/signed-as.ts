import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, optional, table, text, thing, things, type Condition } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule, type Rule } from "../../model/rule.ts";
import type { Milestone, Owner } from "../../model/vocabulary.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { holds, person } from "../shared/roles.ts";
import { AKind, aKind, kindName } from "../shared/words.ts";
import { posts } from "./posts.ts";

interface Paper {
  readonly kind: string;
  /** Where one kind is signed in two ways: which records, and what tells their rule apart. */
  readonly only?: { readonly id: string; readonly called: string; readonly when: Condition };
  /** As what it is signed; of several in one row any will do. */
  readonly as: readonly (readonly string[])[];
  readonly due: Milestone;
  readonly owner: Owner;
}

const welded: Omit<Paper, "kind"> = {
  as: [["welder", "welding operator"], ["welding coordinator"]],
  due: "testing-complete",
  owner: "welding coordination",
};

const papers: readonly Paper[] = [
  { kind: "weld-log", ...welded },
  { kind: "repair", ...welded, only: { id: "repair", called: "A repair by welding", when: weldedRepair } },
  {
    kind: "repair",
    ...welded,
    only: { id: "dressing", called: "A dressing", when: { path: "dressing", exists: true } },
    // Who grinds need be no welder.
    as: [["shop", "welder", "welding operator"], ["welding coordinator"]],
  },
  { kind: "ndt-report", as: [["testing"]], due: "testing-complete", owner: "testing" },
  { kind: "production-test", as: [["laboratory", "testing"]], due: "testing-complete", owner: "testing" },
  {
    kind: "heat-treatment",
    as: [["supplier", "shop", "laboratory", "welding coordinator"]],
    due: "testing-complete",
    owner: "quality",
  },
  { kind: "dimension-check", as: [["quality control"]], due: "pressure-test", owner: "quality" },
  { kind: "coating-report", as: [["quality control", "supplier"]], due: "final-inspection", owner: "quality" },
  {
    kind: "hardness-report",
    as: [["testing", "laboratory", "quality control"]],
    due: "testing-complete",
    owner: "testing",
  },
  { kind: "leak-test", as: [["testing", "quality control"]], due: "final-inspection", owner: "testing" },
  {
    kind: "alloy-report",
    as: [["testing", "laboratory", "quality control"]],
    due: "testing-complete",
    owner: "testing",
  },
  { kind: "tube-end-group", as: [["shop", "welder", "quality control"]], due: "testing-complete", owner: "quality" },
  { kind: "safety-valve", as: [["supplier", "laboratory"]], due: "final-inspection", owner: "supplier" },
];

/** A report bears the names of those who answer for it. */
export const signedAs: readonly Rule[] = papers.map(({ kind, only, as, due, owner }) =>
  rule({
    id: `${only?.id ?? kind}-signed-as`,
    title: `${only?.called ?? AKind(kind)} is signed as ${wordsOf(as)}`,
    basis: commonPractice("a report is signed by who answers for what it says"),
    kind,
    ...(only !== undefined && { when: [only.when] }),
    severity: "gap",
    fault: "signed-as",
    owner,
    inputs: { roles: list(text("signatures[].role")) },
    owes: [owedBy(owner, due, "roles")],
    *check({ roles }, report) {
      const missing = lacking(as, roles);
      if (missing.length > 0)
        yield {
          at: "roles",
          accuses: [],
          message: `${kindName(kind)} ${report.name} is not signed as ${wordsOf(missing)}`,
          why: `signed as: ${roles.join(", ")}`,
          hint: "enter the signature from the report, or have it signed",
        };
    },
    examples: [
      { name: "signed", given: { roles: as.map(([role]) => role ?? "") }, objections: [] },
      ...as
        .filter((any) => any.length > 1)
        .map((any) => ({
          name: `as ${any.at(-1) ?? ""}`,
          given: { roles: as.map((one) => (one === any ? any : one).at(-1) ?? "") },
          objections: [],
        })),
      {
        name: "by somebody else",
        given: { roles: ["client"] },
        objections: [`${kindName(kind)} X-01 is not signed as ${wordsOf(as)}`],
      },
    ],
  }),
);

/** As what nobody signed of those who have to. */
const lacking = (as: Paper["as"], roles: readonly string[]) =>
  as.filter((any) => !any.some((role) => roles.includes(role)));

/** "welder or welding operator, and as welding coordinator". */
function wordsOf(as: Paper["as"]): string {
  return as.map((any) => any.join(" or ")).join(", and as ");
}

/** Posts whose holder signs what he did, with what that was. */
const doers = [
  ["dimension-check-role", "measured"],
  ["visual-examination-role", "examined the vessel"],
  ["coating-role", "measured"],
  ["hardness-role", "tested"],
  ["leak-test-role", "tested"],
  ["alloy-role", "tested"],
] as const;

/** Who says what he saw signs that he did. */
export const signedByDoer: readonly Rule[] = posts.flatMap(({ id: post, kind, path: who, roles }) => {
  const [, did] = doers.find(([id]) => id === post) ?? [];
  return did === undefined ? [] : [signedBy(kind, who, did, roles)];
});

function signedBy(kind: string, who: string, did: string, roles: readonly string[]): Rule {
  const as = papers.find((paper) => paper.kind === kind)?.as ?? [];
  const signer = as[0]?.[0] ?? "quality control";
  return rule({
    id: `${kind}-signed-by-doer`,
    title: `Who ${did} is among those who signed ${aKind(kind)}`,
    basis: commonPractice("who signs a report vouches for what he saw"),
    kind,
    when: [
      { path: "signatures[].person", exists: true },
      { path: who, exists: true },
    ],
    severity: "query",
    owner: "quality",
    inputs: {
      doers: anyOf(things(who, person)),
      named: anyOf(list(text(who))),
      signatures: anyOf(things("signatures[]", { role: text("role"), person: thing("person", person) })),
    },
    *check({ doers: all, signatures }, report) {
      // Who had no such role at all is found by the role.
      if (signatures.some((one) => !holds(one.person, [one.role], undefined))) return;
      // A report that nobody signed who has to is found by that.
      if (
        lacking(
          as,
          signatures.map(({ role }) => role),
        ).length > 0
      )
        return;
      const signers = signatures.map((one) => one.person.$.id);
      for (const one of all)
        if (!signers.includes(one.$.id) && holds(one, roles, undefined))
          yield {
            at: "named",
            accuses: ["named"],
            message: `${kindName(kind)} ${report.name} names ${one.$.id} as who ${did}; it is signed by ${signers.join(", ")}`,
            why: "the signature is of others",
            hint: "compare with the report; correct who did it or who signed",
          };
    },
    examples: [
      { name: "one of them", given: doneBy("D2", "quality control", signer), objections: [] },
      { name: "who has no such role", given: doneBy("W03", "welder", signer), objections: [] },
      {
        name: "somebody else",
        given: doneBy("E1", "inspection body", signer),
        objections: [`${kindName(kind)} X-01 names E1 as who ${did}; it is signed by D2`],
      },
    ],
  });
}

function doneBy(id: string, role: string, as: string) {
  return {
    doers: [{ $: id, roles: [{ role }] }],
    named: [id],
    signatures: [{ role: as, person: { $: "D2", roles: [{ role: as }] } }],
  };
}

/** Whoever came to a step signs the pressure test that is its evidence. */
export const signedByAttending = rule({
  id: "pressure-test-attended",
  title: "Each party that attended a hold or witness point signs the pressure test it came for",
  basis: commonPractice("who witnesses a pressure test signs its report"),
  kind: "pressure-test",
  when: [
    { path: "signatures[].role", exists: true },
    { path: "<inspection-step:records[]>.points[].outcome", exists: true },
  ],
  severity: "gap",
  owner: "quality",
  inputs: {
    roles: anyOf(list(text("signatures[].role"))),
    category: optional(text("equipment.directive.category")),
    witness: table("proof-test-witness"),
    steps: anyOf(
      things("<inspection-step:records[]>", {
        points: anyOf(
          things("points[]", { party: text("party"), point: text("point"), outcome: optional(text("outcome")) }),
        ),
      }),
    ),
  },
  *check({ roles, steps, category, witness }, test) {
    // That the body must sign by the equipment's category is said by itself.
    const asked = category !== undefined && witness(category).text("asked") === "yes";
    const absent = new Set<string>(asked ? ["inspection body"] : []);
    for (const step of steps)
      for (const { party, point, outcome } of step.points) {
        if (outcome !== "attended" || !["hold", "witness"].includes(point) || party === "maker") continue;
        if (roles.includes(party) || absent.has(party)) continue;
        absent.add(party);
        yield {
          at: "roles",
          accuses: [],
          name: party,
          message: `step ${step.$.name} says that the ${party} attended; pressure test ${test.name} is not signed by it`,
          why: `signed as: ${roles.join(", ")}`,
          hint: "enter the signature from the report; else correct the plan",
          related: [{ at: step, message: `${point} point of the ${party}` }],
        };
      }
  },
  examples: [
    { name: "signed", given: attended(["quality control", "client"], "witness"), objections: [] },
    { name: "the client only reviewed", given: attended(["quality control"], "review"), objections: [] },
    {
      name: "not signed",
      given: attended(["quality control"], "witness"),
      objections: ["step S-200 says that the client attended; pressure test X-01 is not signed by it"],
    },
  ],
});

function attended(roles: readonly string[], point: string) {
  return { roles, steps: [{ $: "S-200", points: [{ party: "client", point, outcome: "attended" }] }] };
}
