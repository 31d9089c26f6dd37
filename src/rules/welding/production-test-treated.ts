import { fromMemory } from "../../model/basis.ts";
import { anyOf, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const productionTestTreated = rule({
  id: "production-test-treated",
  title: "A production test went through the same heat treatment as the joints it stands for",
  basis: fromMemory(
    "EN ISO 15614-1 and EN 13445-4",
    undefined,
    "a test plate is heat treated with, or as, the seam it represents",
  ),
  kind: "production-test",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    own: optional(text("heatTreatment")),
    joints: anyOf(things("joints[]", { charges: anyOf(things("<heat-treatment:joints[]>", {})) })),
  },
  *check({ own, joints }, test) {
    // That one of the two was treated and the other was not is said by what the joints ask for.
    const other = joints.filter(({ charges }) => charges.length > 0 && !charges.some(({ $ }) => $.id === own));
    if (own === undefined || other.length === 0) return;
    const charges = [...new Set(other.flatMap((joint) => joint.charges.map(({ $ }) => $.id)))];
    yield {
      at: "own",
      accuses: ["own"],
      message: `production test ${test.name} went through ${own}; ${other.map(({ $ }) => $.name).join(", ")}, for which it stands, went through ${charges.join(", ")}`,
      why: "heat treatment changes strength and toughness: the plate shows nothing about seams that went another way",
      hint: "compare with the charts: name the charge of the plate, or correct the joints it stands for; else weld and treat another plate",
    };
  },
  examples: [
    { name: "neither", given: { joints: [{ charges: [] }] }, objections: [] },
    { name: "one alone", given: { own: "HT-01", joints: [{ charges: [] }] }, objections: [] },
    { name: "both", given: { own: "HT-01", joints: [{ charges: [{ $: "HT-01" }, { $: "HT-02" }] }] }, objections: [] },
    {
      name: "each by itself",
      given: { own: "HT-02", joints: [{ $: "L1", charges: [{ $: "HT-01" }] }] },
      objections: ["production test X-01 went through HT-02; L1, for which it stands, went through HT-01"],
    },
  ],
});
