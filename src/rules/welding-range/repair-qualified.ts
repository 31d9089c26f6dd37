import { fromMemory } from "../../model/basis.ts";
import { list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { need, ofGroove, outside, procedure, qualification, uncovered } from "./joint-asks.ts";
import { rangeTables } from "./pieces.ts";

export const repairQualified = rule({
  id: "repair-qualified",
  title: "The procedure of a repair is for its joint and process, and a test of that process covers both",
  basis: fromMemory("EN ISO 15614-1", undefined, "ranges of qualification, level 2; a repair is a weld like any other"),
  kind: "repair",
  when: [weldedRepair],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    ...rangeTables,
    process: text("process"),
    named: text("weldingProcedure"),
    joint: thing("joint", need),
    procedure: thing("weldingProcedure", {
      ...procedure,
      processes: list(text("processes[]")),
      qualifications: things("qualifications[]", qualification),
    }),
  },
  *check(values, repair) {
    const { process, joint, procedure: specified } = values;
    const beyond = [
      ...(specified.processes.includes(process) ? [] : [`process ${process}, not ${specified.processes.join(", ")}`]),
      ...outside(joint, specified, ofGroove),
    ];
    const hint =
      "name the procedure it was welded to, or correct the slip; else have the weld judged and raise a nonconformity report";
    if (beyond.length > 0) {
      yield {
        at: "named",
        accuses: [],
        name: "procedure",
        message: `repair ${repair.name} of joint ${joint.$.name} lies outside of ${specified.$.name}: ${beyond.join("; ")}`,
        why: "the range the procedure states itself",
        hint,
      };
      return;
    }
    const held = specified.qualifications.filter((one) => one.printedProcesses.includes(process));
    const lacking = held.map((one) => uncovered(one, joint, specified, values, ofGroove));
    // A process that no qualification names is said of the procedure.
    if (held.length === 0 || lacking.some((one) => one.length === 0)) return;
    yield {
      at: "process",
      accuses: [],
      name: "qualification",
      message: `no qualification of ${specified.$.name} covers repair ${repair.name} of joint ${joint.$.name}, welded by ${process}`,
      why: held.map((one, index) => `${one.$.name} covers only ${(lacking[index] ?? []).join(", ")}`).join(" · "),
      hint,
      related: held.map((one) => ({ at: one, message: "named as qualification" })),
    };
  },
  examples: [
    { name: "by the process whose test covers it", given: repaired("141"), objections: [] },
    {
      name: "by the other process, tested on larger pipes",
      given: repaired("135"),
      objections: ["no qualification of WPS-13 revision 1 covers repair X-01 of joint N05, welded by 135"],
    },
    {
      name: "by a process the procedure is not for",
      given: repaired("111"),
      objections: ["repair X-01 of joint N05 lies outside of WPS-13 revision 1: process 111, not 135, 141"],
    },
    {
      name: "of a joint the procedure is not for",
      given: repaired("141", "attachment"),
      objections: [
        "repair X-01 of joint N05 lies outside of WPS-13 revision 1: type of joint attachment, not butt, branch",
      ],
    },
  ],
});

/** A branch of a small pipe, repaired to a procedure for two processes. */
function repaired(process: string, type = "branch") {
  const test = {
    standard: "EN ISO 15614-1",
    edition: "2017",
    jointType: "butt",
    layers: "multi",
    product: "pipe",
    materialGroup: "1.1",
    grade: "P265GH",
    thickness: "6.3 mm",
    positions: ["H-L045"],
    detail: "ss nb",
    impact: false,
    hardness: false,
    printedJoints: ["butt", "branch"],
    printedGroups: ["1.1"],
    printedFrom: "3.0 mm",
    printedTo: "12.6 mm",
    printedPositions: ["PA"],
  };
  return {
    process,
    joint: {
      $: "N05",
      type,
      detail: "ss nb",
      positions: ["PA"],
      thicknesses: ["12.0 mm", "7.1 mm"],
      diameter: "48.3 mm",
      parts: [{ group: "1.1", grade: "P265GH" }],
    },
    procedure: {
      $: "WPS-13 revision 1",
      processes: ["135", "141"],
      types: ["butt", "branch"],
      positions: ["PA"],
      groups: ["1.1"],
      from: "7.0 mm",
      to: "12.0 mm",
      qualifications: [
        { $: "WPQR-13", ...test, processes: ["135"], printedProcesses: ["135"], printedDiameterFrom: "69.9 mm" },
        { $: "WPQR-14", ...test, processes: ["141"], printedProcesses: ["141"], printedDiameterFrom: "30.2 mm" },
      ],
    },
  };
}
