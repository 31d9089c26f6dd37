import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Least section of a butt or corner weld, as a share of the square of its thickness: less than any groove has. */
const share = 0.3;
/** kg/mm³ */
const steel = 7.85e-6;

export const batchEnough = rule({
  id: "batch-enough",
  title: "What was received of a filler is enough for the welds that were made with it alone",
  basis: commonPractice(
    "a weld has at least three tenths of the square of its thickness, a fillet the square of its throat; steel weighs 7.85 kg/dm³",
  ),
  kind: "consumable-batch",
  when: [
    { path: "quantity", exists: true },
    { path: "type", equals: ["wire", "rod", "covered electrode", "flux-cored wire"] },
  ],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    bought: optional(quantity("quantity", "kg")),
    runs: anyOf(
      things("<weld-log:runs[].batches[]>", {
        joint: text("record.joint"),
        type: text("record.joint.type"),
        length: quantity("record.joint.length", "mm"),
        thicknesses: anyOf(list(quantity("record.joint.thicknesses[]", "mm"))),
        throat: optional(quantity("record.joint.throat", "mm")),
        others: anyOf(list(text("record.runs[].batches[].type"))),
        all: anyOf(list(text("record.runs[].batches[]"))),
      }),
    ),
  },
  *check({ bought, runs }, batch) {
    if (bought === undefined) return;
    const joints = new Map<string, (typeof runs)[number]>();
    for (const run of runs) {
      // Where another filler had its part, nobody knows how much of each went in.
      const fillers = run.all.filter((_, index) => fillerTypes.includes(run.others[index] ?? ""));
      if (fillers.every((one) => one === batch.id)) joints.set(run.joint, run);
    }
    const mass = [...joints.values()].reduce((sum, { type, length, thicknesses, throat }) => {
      const thin = Math.min(...thicknesses.map(({ low }) => low));
      const section =
        throat !== undefined ? throat.low ** 2 : type === "butt" || type === "corner" ? share * thin ** 2 : 0;
      return sum + (Number.isFinite(section) ? section * length.low * steel : 0);
    }, 0);
    if (mass <= bought.high + bought.halfUnit) return;
    yield {
      at: "bought",
      accuses: ["bought"],
      message: `${bought.text} of batch ${batch.name} were received; ${joints.size} joints that were welded with it alone take ${mass.toPrecision(2)} kg at least`,
      why: `joints ${[...joints.keys()].sort().join(", ")}`,
      hint: "compare the mass with the delivery note, and the batches with the weld logs: another one was used as well, or the number is wrong",
    };
  },
  examples: [
    { name: "enough", given: spool("15 kg"), objections: [] },
    {
      name: "too little",
      given: spool("1 kg"),
      objections: ["1 kg of batch X-01 were received; 1 joints that were welded with it alone take 2.4 kg at least"],
    },
    {
      name: "with another one",
      given: { ...spool("1 kg"), runs: [{ ...spool("1 kg").runs[0], all: ["X-01", "B-2"], others: ["wire", "wire"] }] },
      objections: [],
    },
  ],
});

const fillerTypes = ["wire", "rod", "covered electrode", "flux-cored wire"];

function spool(bought: string) {
  const run = {
    joint: "C1",
    type: "butt",
    length: "4000 mm",
    thicknesses: ["16 mm"],
    all: ["X-01", "GAS"],
    others: ["wire", "shielding gas"],
  };
  return { bought, runs: [run] };
}
