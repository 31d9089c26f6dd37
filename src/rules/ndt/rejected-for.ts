import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const rejectedFor = rule({
  id: "rejected-for",
  title: "A rejection says for what",
  basis: ownChoice("what is to be repaired, and where, is read from what was found"),
  kind: "ndt-report#rows",
  when: [{ path: "result", equals: "rejected" }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    result: text("result"),
    joint: thing("joint", {}),
    indications: anyOf(things("indications[]", { verdict: optional(text("verdict")) })),
  },
  *check({ joint, indications }, row) {
    if (indications.some(({ verdict }) => verdict !== "accepted")) return;
    yield {
      at: "result",
      accuses: [],
      message: `${row.name} of joint ${joint.$.name} is rejected, and ${indications.length === 0 ? "names no indication" : "all its indications are accepted"}`,
      why: "nobody can say what a repair has to take out",
      hint: "enter what the report names, with its place and length",
    };
  },
  examples: [
    { name: "a flaw", given: { result: "rejected", joint: { $: "C2" }, indications: [{}] }, objections: [] },
    {
      name: "nothing",
      given: { result: "rejected", joint: { $: "C2" }, indications: [] },
      objections: ["X-01 of joint C2 is rejected, and names no indication"],
    },
    {
      name: "nothing that is rejected",
      given: { result: "rejected", joint: { $: "C2" }, indications: [{ verdict: "accepted" }] },
      objections: ["X-01 of joint C2 is rejected, and all its indications are accepted"],
    },
  ],
});
