import { derivedFrom } from "../../model/basis.ts";
import { text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const rowRepair = rule({
  id: "tested-repair-of-joint",
  title: "A test of a repair names a repair of the joint that was tested",
  basis: derivedFrom("a repair is made in one joint"),
  kind: "ndt-report#rows",
  when: [
    { path: "repair", exists: true },
    { path: "joint", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: { joint: thing("joint", {}), named: text("repair"), repair: thing("repair", { joint: thing("joint", {}) }) },
  *check({ joint, repair }, row) {
    if (repair.joint.$.id !== joint.$.id)
      yield {
        at: "named",
        accuses: [],
        message: `${row.name} tested joint ${joint.$.name} as repair ${repair.$.name}, which is of joint ${repair.joint.$.name}`,
        why: "the repair names another joint",
        hint: "compare with the report; correct the joint or the repair",
        related: [{ at: [repair, "joint"], message: `joint ${repair.joint.$.name} here` }],
      };
  },
  examples: [
    {
      name: "its own",
      given: { joint: { $: "C2" }, named: "C2R1", repair: { $: "C2R1", joint: { $: "C2" } } },
      objections: [],
    },
    {
      name: "another joint's",
      given: { joint: { $: "C2" }, named: "N05R1", repair: { $: "N05R1", joint: { $: "N05" } } },
      objections: ["X-01 tested joint C2 as repair N05R1, which is of joint N05"],
    },
  ],
});
