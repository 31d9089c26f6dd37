import { fromMemory, ownChoice } from "../../model/basis.ts";
import { count, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { owedBy } from "../../model/owes.ts";

const sorts = [
  { role: "tube", at: "tubes", called: "plain tubes" },
  { role: "stay-tube", at: "stayTubes", called: "stay tubes" },
] as const;

export const tubeEndsCounted = rule({
  id: "tube-ends-counted",
  scope: "tube-nests",
  title: "The ends of a field of tubes are as many as the drawing shows, plain tubes and stay tubes each",
  basis: ownChoice("an end that no group counts was made by nobody and examined by nobody"),
  kind: "part#tubeFields",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    tubes: count("tubes"),
    stayTubes: count("stayTubes"),
    groups: things("<tube-end-group:field>", { role: text("tube.role"), count: count("count") }),
  },
  owes: [owedBy("quality", "testing-complete", "groups")],
  *check({ groups, ...drawn }, field) {
    for (const { role, at, called } of sorts) {
      const own = groups.filter((group) => group.role === role);
      const sum = own.reduce((all, group) => all + group.count, 0);
      if (sum !== drawn[at])
        yield {
          at,
          name: role,
          message: `field ${field.name} has ${drawn[at]} ${called}; its groups count ${sum} ends`,
          why:
            own.length === 0 ? `no group of ${called}` : own.map((group) => `${group.$.id}: ${group.count}`).join("; "),
          hint: "count the holes: add the group that is missing, or correct the number that is wrong",
          related: own.map((group) => ({ at: [group, "count"], message: `${group.count} ends here` })),
        };
    }
    for (const group of groups.filter(({ role }) => !sorts.some((sort) => sort.role === role)))
      yield {
        at: [group, "role"],
        name: group.$.id,
        message: `group ${group.$.name} of tube ends names a part that is no tube`,
        why: `its role is ${group.role}`,
        hint: "name the part of the tubes, or correct its role",
      };
  },
  examples: [
    { name: "all", given: drawn(["tube", 44], ["stay-tube", 16]), objections: [] },
    { name: "in several groups", given: drawn(["tube", 40], ["tube", 4], ["stay-tube", 16]), objections: [] },
    {
      name: "one short",
      given: drawn(["tube", 43], ["stay-tube", 16]),
      objections: ["field X-01 has 44 plain tubes; its groups count 43 ends"],
    },
    {
      name: "one too many",
      given: drawn(["tube", 44], ["stay-tube", 17]),
      objections: ["field X-01 has 16 stay tubes; its groups count 17 ends"],
    },
    {
      name: "stay tubes forgotten, the sum made up",
      given: drawn(["tube", 60]),
      objections: [
        "field X-01 has 44 plain tubes; its groups count 60 ends",
        "field X-01 has 16 stay tubes; its groups count 0 ends",
      ],
    },
    {
      name: "a group of something else",
      given: drawn(["tube", 44], ["stay-tube", 16], ["stay", 6]),
      objections: ["group TE-3 of tube ends names a part that is no tube"],
    },
  ],
});

function drawn(...groups: readonly (readonly [role: string, count: number])[]) {
  return {
    tubes: 44,
    stayTubes: 16,
    groups: groups.map(([role, number], index) => ({ $: `TE-${index + 1}`, role, count: number })),
  };
}

export const stayTubesWelded = rule({
  id: "stay-tubes-welded",
  title: "Stay tubes are welded into their plates",
  basis: fromMemory("EN 12953-3", undefined, "stay tubes are welded; expanding alone is for plain tubes"),
  kind: "tube-end-group",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { role: text("tube.role"), joining: text("joining") },
  *check({ role, joining }, group) {
    if (role === "stay-tube" && joining === "expanded")
      yield {
        at: "joining",
        message: `the stay tubes of group ${group.name} are expanded, not welded`,
        why: "the plate is calculated as hanging on them",
        hint: "correct the way of joining, or the sort of tube; if it is true, have the ends welded",
        related: [{ at: "role", message: "stay tubes" }],
      };
  },
  examples: [
    { name: "welded", given: { role: "stay-tube", joining: "welded" }, objections: [] },
    { name: "expanded and welded", given: { role: "stay-tube", joining: "expanded-and-welded" }, objections: [] },
    { name: "plain tubes, expanded", given: { role: "tube", joining: "expanded" }, objections: [] },
    {
      name: "expanded only",
      given: { role: "stay-tube", joining: "expanded" },
      objections: ["the stay tubes of group X-01 are expanded, not welded"],
    },
  ],
});

export const reductionAsked = rule({
  id: "reduction-asked",
  scope: "tube-nests",
  title: "Each end that was measured is expanded as its procedure asks",
  basis: ownChoice("the procedure of the shop binds beside the usual limits"),
  kind: "tube-end-group#measured",
  when: [{ path: "record.reductionAsked", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    position: text("position"),
    reduced: quantity("calculation(wall-reduction).ε", "%"),
    after: quantity("insideAfter", "mm"),
    least: optional(quantity("record.reductionAsked.minimum", "%")),
    most: optional(quantity("record.reductionAsked.maximum", "%")),
    usualLeast: quantity("profile.wallReductionLeastWelded", "%"),
    usualMost: quantity("profile.wallReductionMost", "%"),
    tolerance: quantity("profile.wallReductionTolerance", "%"),
  },
  *check({ position, reduced, after, least, most, usualLeast, usualMost, tolerance }) {
    // What lies beyond the usual limits is found by its calculation.
    if (reduced.value < usualLeast.value || reduced.value > usualMost.value) return;
    const low = least !== undefined && reduced.value < least.value - tolerance.value;
    const high = most !== undefined && reduced.value > most.value + tolerance.value;
    if (low || high)
      yield {
        at: "after",
        accuses: [],
        message: `the wall of ${position} is reduced by ${Number(reduced.value.toFixed(1))} %; the procedure asks for ${least?.text ?? "any"} to ${most?.text ?? "any"}`,
        why: `bore after expanding: ${after.text}`,
        hint: "compare with the sheet; if it is so, raise a nonconformity report and have the end judged",
      };
  },
  examples: [
    { name: "within", given: expandedBy("8.4 %"), objections: [] },
    {
      name: "more",
      given: expandedBy("9 %"),
      objections: ["the wall of row 7, tube 5 is reduced by 9 %; the procedure asks for 5 % to 8 %"],
    },
    {
      name: "less",
      given: expandedBy("4.4 %"),
      objections: ["the wall of row 7, tube 5 is reduced by 4.4 %; the procedure asks for 5 % to 8 %"],
    },
    { name: "beyond all limits", given: expandedBy("30 %"), objections: [] },
  ],
});

function expandedBy(reduced: string) {
  const usual = { usualLeast: "2 %", usualMost: "14 %", tolerance: "0.5 %" };
  return { position: "row 7, tube 5", reduced, after: "45.20 mm", least: "5 %", most: "8 %", ...usual };
}
