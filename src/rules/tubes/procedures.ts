import { excerptSeen, fromMemory } from "../../model/basis.ts";
import { anyOf, flag, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { weldedEnds } from "../../requirements/boiler-conditions.ts";
import { beyondRange, beyondTest, rangeAt, sizeOf, tubeEndWeld } from "./range.ts";
import { owedBy } from "../../model/owes.ts";

const shared = { severity: "nonconformity", owner: "welding coordination" } as const;

export const tubeEndInProcedure = rule({
  ...shared,
  id: "tube-end-in-procedure",
  title: "Tube ends lie within the ranges of their welding procedure, which is for tubes in tube plates",
  basis: fromMemory("EN ISO 15609-1", "2019", "ranges of the specification; the ranges are those it states"),
  kind: "tube-end-group",
  when: [weldedEnds],
  inputs: {
    diameter: quantity("tube.outsideDiameter", "mm"),
    wall: quantity("tube.nominalThickness", "mm"),
    position: text("position"),
    named: text("weldingProcedure"),
    procedure: thing("weldingProcedure", rangeAt("", "jointTypes")),
  },
  owes: [owedBy("design", "design-approved", "diameter"), owedBy("quality", "testing-complete", "position", "named")],
  *check({ diameter, wall, position, procedure }, group) {
    const end = { diameter, wall, position, processes: procedure.processes };
    const problems = beyondRange(procedure, end);
    if (problems.length > 0)
      yield {
        at: "named",
        message: `tube ends of ${group.name}, ${sizeOf(end)}, lie outside ${procedure.$.name}`,
        why: `it covers only ${problems.join("; ")}`,
        hint: "name the procedure the ends were welded to, or correct size or position; else raise a nonconformity report",
        related: [
          { at: "position", message: `position ${position}` },
          { at: procedure, message: "ranges stated here" },
        ],
      };
  },
  examples: [
    { name: "covered", given: welded(), objections: [] },
    { name: "as thick as permitted", given: welded({ wall: "8 mm" }), objections: [] },
    {
      name: "thicker",
      given: welded({ wall: "8.1 mm" }),
      objections: ["tube ends of X-01, 51 mm × 8.1 mm, process 141, position PH, lie outside WPS-09 revision 1"],
    },
    {
      name: "a procedure for branches",
      given: welded({}, { welds: ["branch"] }),
      objections: ["tube ends of X-01, 51 mm × 6.3 mm, process 141, position PH, lie outside WPS-09 revision 1"],
    },
    {
      name: "another position",
      given: welded({ position: "PJ" }),
      objections: ["tube ends of X-01, 51 mm × 6.3 mm, process 141, position PJ, lie outside WPS-09 revision 1"],
    },
    {
      name: "no diameter stated",
      given: welded({}, { diameterFrom: undefined, diameterTo: undefined }),
      objections: ["tube ends of X-01, 51 mm × 6.3 mm, process 141, position PH, lie outside WPS-09 revision 1"],
    },
  ],
});

export const tubeEndProcedureQualified = rule({
  ...shared,
  id: "tube-end-procedure-qualified",
  title: "A welding procedure for tubes in tube plates lies within a test of tubes in a tube plate",
  basis: excerptSeen(
    "EN ISO 15614-8",
    "scope: tests of arc welds between tubes and tube plates, loaded fully or only sealing; where expanding bears load, the test is to be defined. The ranges are those the record states",
    "2016",
  ),
  kind: "welding-procedure#revisions",
  when: [{ path: "jointTypes[]", equals: tubeEndWeld }],
  inputs: {
    ...rangeAt("", "jointTypes"),
    joinings: anyOf(list(text("<tube-end-group:weldingProcedure>.joining"))),
    qualifications: things("qualifications[]", {
      test: text("jointType"),
      expanded: optional(flag("expanded")),
      ...rangeAt("range.", "jointTypes"),
    }),
  },
  *check({ joinings, qualifications, ...procedure }, revision) {
    const expanded = joinings.includes("expanded-and-welded");
    const lacking = qualifications.map((one) => [
      ...(one.test === tubeEndWeld ? [] : [`its test piece is a ${one.test} weld`]),
      ...beyondTest(one, procedure).map((only) => `it covers only ${only}`),
      ...(expanded && one.expanded !== true ? ["its tubes were not expanded"] : []),
    ]);
    if (lacking.every((one) => one.length > 0))
      yield {
        at: "subject",
        message: `${revision.name} is for tubes in tube plates, which no test it names covers`,
        why: qualifications.map((one, index) => `${one.$.name}: ${(lacking[index] ?? []).join("; ")}`).join(" · "),
        hint: "name the qualification that covers it, narrow the procedure, or have a test piece welded and tested",
        related: qualifications.map((one) => ({ at: one, message: "named as qualification" })),
      };
  },
  examples: [
    { name: "covered", given: tested({}), objections: [] },
    { name: "only welded, tested without expanding", given: tested({ expanded: false }, ["welded"]), objections: [] },
    {
      name: "expanded too, tested without",
      given: tested({ expanded: false }),
      objections: ["X-01 is for tubes in tube plates, which no test it names covers"],
    },
    {
      name: "a branch as test piece",
      given: tested({ test: "branch" }),
      objections: ["X-01 is for tubes in tube plates, which no test it names covers"],
    },
    { name: "as thick as tested", given: tested({ wallTo: "8 mm" }), objections: [] },
    {
      name: "thinner tubes tested",
      given: tested({ wallTo: "7.9 mm" }),
      objections: ["X-01 is for tubes in tube plates, which no test it names covers"],
    },
  ],
});

function range(changes: Readonly<Record<string, string | readonly string[] | undefined>> = {}) {
  return {
    welds: [tubeEndWeld],
    processes: ["141"],
    positions: ["PB", "PH"],
    wallFrom: "5 mm",
    wallTo: "8 mm",
    diameterFrom: "38 mm",
    diameterTo: "76.1 mm",
    ...changes,
  };
}

function welded(changes: Readonly<Record<string, string>> = {}, procedure: Parameters<typeof range>[0] = {}) {
  const end = { diameter: "51 mm", wall: "6.3 mm", position: "PH", named: "WPS-09@1", ...changes };
  return { ...end, procedure: { $: "WPS-09 revision 1", ...range(procedure) } };
}

function tested(changes: Readonly<Record<string, string | boolean>>, joinings = ["expanded-and-welded"]) {
  const test = { ...range(), $: "WPQR-08", test: tubeEndWeld, expanded: true, ...changes };
  return { ...range(), joinings, qualifications: [test] };
}
