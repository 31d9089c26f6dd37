import { anyOf, date, list, optional, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { basis, hint, holds, person, roleFault, said } from "../shared/roles.ts";
import { posts, postWords } from "./posts.ts";

/** People named in a post by a field of its own hold the role it asks for on that day. */
export const postsHeld: readonly Rule[] = posts.map(({ id, kind, when = [], path, day, roles, did, open }) => {
  // Where nobody is named there is nobody to judge.
  const conditions = open === true ? [...when, { path, exists: true }] : when;
  return rule({
    id,
    title: `Who ${did} ${postWords(kind)} is registered for it on that day`,
    basis,
    kind,
    ...(conditions.length > 0 && { when: conditions }),
    severity: "nonconformity",
    fault: roleFault,
    owner: "quality",
    inputs: {
      day: open === true ? optional(date(day)) : date(day),
      named: anyOf(list(text(path))),
      people: list(thing(path, person)),
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
  });
});

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
