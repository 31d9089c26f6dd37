import { fromMemory } from "../../model/basis.ts";
import { list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { need, procedure, qualification, uncovered } from "./joint-asks.ts";
import { rangeTables } from "./pieces.ts";

export const jointQualified = rule({
  id: "joint-qualified",
  title:
    "One qualification of its procedure covers a joint in all at once: type, group and yield strength, thickness, throat, diameter, detail and position",
  basis: fromMemory("EN ISO 15614-1", undefined, "ranges of qualification, level 2; each table says its editions"),
  kind: "joint",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...need,
    ...rangeTables,
    processes: list(text("processes[]")),
    procedure: thing("weldingProcedure", { ...procedure, qualifications: things("qualifications[]", qualification) }),
  },
  *check(values, joint) {
    const { procedure: specified, processes } = values;
    for (const process of processes) {
      const held = specified.qualifications.filter((one) => one.printedProcesses.includes(process));
      if (held.length === 0) continue;
      const lacking = held.map((one) => uncovered(one, values, specified, values));
      if (lacking.some((one) => one.length === 0)) continue;
      yield {
        at: "processes",
        accuses: [],
        name: process,
        message: `no qualification of ${specified.$.name} covers joint ${joint.name}, welded by ${process}`,
        why: held.map((one, index) => `${one.$.name} covers only ${(lacking[index] ?? []).join(", ")}`).join(" · "),
        hint: "name a procedure whose qualification covers the joint, or have a test piece welded; else raise a nonconformity report",
        related: held.map((one) => ({ at: one, message: "named as qualification" })),
      };
    }
  },
  examples: [
    { name: "covered by one", given: asked({}), objections: [] },
    {
      name: "by a weaker steel of the same group",
      given: asked({ parts: [{ group: "1.1", grade: "P265GH" }] }, { grade: "P235GH" }),
      objections: ["no qualification of WPS-18 revision 1 covers joint X-01, welded by 135"],
    },
    {
      name: "a stronger steel was tested",
      given: asked({ parts: [{ group: "1.1", grade: "P235GH" }] }),
      objections: [],
    },
    {
      name: "a steel whose yield strength no table names",
      given: asked({ parts: [{ group: "1.1", grade: "A 106 B" }] }),
      objections: [],
    },
    {
      name: "each variable by another test, the joint by none",
      given: asked({ detail: "sl", throat: "8 mm" }),
      objections: ["no qualification of WPS-18 revision 1 covers joint X-01, welded by 135"],
    },
    {
      name: "outside of its procedure, which is said of the procedure",
      given: asked({ positions: ["PG"] }),
      objections: [],
    },
    {
      name: "to a standard without tables: as printed",
      given: asked({}, { standard: "EN ISO 15613", edition: "2005" }),
      objections: [],
    },
  ],
});

/** An attachment welded to a procedure that rests on a multi-run and on a single-run fillet weld. */
function asked(joint: Readonly<Record<string, unknown>>, own: Readonly<Record<string, unknown>> = {}) {
  const test = {
    standard: "EN ISO 15614-1",
    edition: "2017",
    processes: ["135"],
    jointType: "fillet",
    product: "plate",
    materialGroup: "1.1",
    grade: "P265GH",
    thickness: "15.0 mm",
    positions: ["PB"],
    impact: false,
    hardness: false,
    printedProcesses: ["135"],
    printedJoints: ["fillet", "attachment"],
    printedGroups: ["1.1"],
    printedFrom: "3.0 mm",
    printedTo: "30.0 mm",
    printedPositions: ["PA", "PB"],
  };
  return {
    type: "attachment",
    detail: "ml",
    positions: ["PB"],
    thicknesses: ["25.0 mm", "12.0 mm"],
    throat: "8 mm",
    parts: [{ group: "1.1", grade: "S235JR" }],
    processes: ["135"],
    ...joint,
    procedure: {
      $: "WPS-18 revision 1",
      types: ["attachment"],
      positions: ["PB"],
      groups: ["1.1"],
      details: ["sl", "ml"],
      throatFrom: "3 mm",
      throatTo: "10 mm",
      qualifications: [
        { $: "WPQR-16", ...test, detail: "ml", ...own },
        { $: "WPQR-17", ...test, detail: "sl", printedThroatFrom: "3.0 mm", printedThroatTo: "6.0 mm", ...own },
      ],
    },
  };
}
