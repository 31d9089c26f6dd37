import { fromMemory } from "../../model/basis.ts";
import { anyOf, optional, quantity, thing, things } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { span } from "../welding/thickness-range.ts";

const wps = { $: "WPS-03 revision 2" };

export const rootGap = rule({
  id: "fit-up-gap",
  title: "A joint is fitted with a root gap that its procedure permits",
  basis: fromMemory("EN ISO 15609-1", "2019", "joint design, with its dimensions"),
  kind: "weld-log",
  when: [{ path: "fitUp.gap", exists: true }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    gap: optional(quantity("fitUp.gap", "mm")),
    stations: anyOf(things("fitUp.stations[]", { gap: optional(quantity("gap", "mm")) })),
    planned: thing("joint.weldingProcedure", {}),
    procedure: thing("weldingProcedure", {
      least: optional(quantity("gap.minimum", "mm")),
      most: optional(quantity("gap.maximum", "mm")),
    }),
  },
  *check({ gap, stations, planned, procedure }, log) {
    // That it was welded to another procedure is found by that.
    if (gap === undefined || planned.$.id !== procedure.$.id) return;
    const { least, most } = procedure;
    if (least === undefined && most === undefined) {
      yield {
        at: procedure,
        on: procedure,
        accuses: [],
        name: "silent",
        unsure: true,
        message: `${procedure.$.name} states no root gap`,
        why: `${gap.text} was measured in weld log ${log.name}`,
        hint: "enter the gap from the procedure; if it states none, have it revised",
      };
      return;
    }
    const answersOf = (one: Measure) => [
      ...(least === undefined ? [] : [atLeast(one, least)]),
      ...(most === undefined ? [] : [atMost(one, most)]),
    ];
    const wrong = [{ gap, at: undefined }, ...stations.map((at) => ({ gap: at.gap, at }))].flatMap((one) =>
      one.gap === undefined || answersOf(one.gap).every((answer) => answer === "yes") ? [] : [{ ...one, gap: one.gap }],
    );
    const [first] = wrong;
    if (first === undefined) return;
    const answers = wrong.flatMap((one) => answersOf(one.gap));
    yield {
      at: first.at === undefined ? "gap" : [first.at, "gap"],
      accuses: [first.at === undefined ? "gap" : [first.at, "gap"]],
      message: `weld log ${log.name} has the joint fitted with a root gap of ${[...new Set(wrong.map((one) => one.gap.text))].join(" and ")}; ${procedure.$.name} permits ${span(least, most)}`,
      why: "too narrow a gap is not welded through, too wide a one falls through or is filled with weld",
      hint: "compare with the weld log sheet; if it is true, have the weld judged by the welding coordinator and raise a nonconformity report",
      unsure: !answers.includes("no"),
      related: [{ at: procedure, message: "procedure" }],
    };
  },
  examples: [
    {
      name: "at an end",
      given: { gap: "3 mm", planned: wps, procedure: { ...wps, least: "2 mm", most: "3 mm" } },
      objections: [],
    },
    {
      name: "too wide",
      given: { gap: "4 mm", planned: wps, procedure: { ...wps, least: "2 mm", most: "3 mm" } },
      objections: [
        "weld log X-01 has the joint fitted with a root gap of 4 mm; WPS-03 revision 2 permits 2 mm to 3 mm",
      ],
    },
    {
      name: "too wide at one place",
      given: {
        gap: "2 mm",
        stations: [{ gap: "2 mm" }, { gap: "4 mm" }],
        planned: wps,
        procedure: { ...wps, least: "2 mm", most: "3 mm" },
      },
      objections: [
        "weld log X-01 has the joint fitted with a root gap of 4 mm; WPS-03 revision 2 permits 2 mm to 3 mm",
      ],
    },
    {
      name: "closed",
      given: { gap: "0 mm", planned: wps, procedure: { ...wps, least: "2 mm", most: "3 mm" } },
      objections: [
        "weld log X-01 has the joint fitted with a root gap of 0 mm; WPS-03 revision 2 permits 2 mm to 3 mm",
      ],
    },
    {
      name: "of which the procedure says nothing",
      given: { gap: "2 mm", planned: wps, procedure: wps },
      objections: ["WPS-03 revision 2 states no root gap"],
    },
  ],
});
