import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** Sorts of batches that become weld. */
const fillers = ["wire", "rod", "covered electrode", "flux-cored wire"];

/** Least section of a butt or corner weld, as a share of the square of its thickness: less than any groove has. */
const share = 0.3;
/** kg/mm³ */
const steel = 7.85e-6;

interface Weld {
  readonly type: string;
  readonly length: Measure;
  readonly thicknesses: readonly Measure[];
  readonly throat: Measure | undefined;
}

/** The least mass of a weld in kg; undefined of one whose section nothing tells. */
function massOf({ type, length, thicknesses, throat }: Weld): number | undefined {
  if (throat !== undefined) return throat.low ** 2 * length.low * steel;
  if ((type !== "butt" && type !== "corner") || thicknesses.length === 0) return undefined;
  return share * Math.min(...thicknesses.map(({ low }) => low)) ** 2 * length.low * steel;
}

export const batchEnough = rule({
  id: "batch-enough",
  title: "What was received of a filler is enough for the butt, corner and fillet welds that were made with it alone",
  basis: commonPractice(
    "a butt or corner weld has at least three tenths of the square of its thickness, a fillet the square of its throat; steel weighs 7.85 kg/dm³",
  ),
  kind: "consumable-batch",
  when: [
    { path: "quantity", exists: true },
    { path: "type", equals: fillers },
    { path: "<weld-log:runs[].batches[]>", exists: true },
  ],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    bought: optional(quantity("quantity", "kg")),
    runs: anyOf(
      things("<weld-log:runs[].batches[]>", {
        joint: thing("record.joint", {
          type: text("type"),
          length: quantity("length", "mm"),
          thicknesses: anyOf(list(quantity("thicknesses[]", "mm"))),
          throat: optional(quantity("throat", "mm")),
          batches: anyOf(things("<weld-log:joint>.runs[].batches[]", { type: text("type") })),
        }),
      }),
    ),
  },
  *check({ bought, runs }, batch) {
    if (bought === undefined) return;
    const welds = new Map<string, number>();
    for (const { joint } of runs) {
      const mass = massOf(joint);
      // Where another filler had its part, nobody knows how much of each went in.
      const alone = joint.batches.every(({ $, type }) => $.id === batch.id || !fillers.includes(type));
      if (alone && mass !== undefined) welds.set(joint.$.name, mass);
    }
    const needed = [...welds.values()].reduce((sum, mass) => sum + mass, 0);
    if (needed <= bought.high + bought.halfUnit) return;
    yield {
      at: "bought",
      accuses: ["bought"],
      message: `${bought.text} of batch ${batch.name} were received; ${welds.size === 1 ? "1 joint that was" : `${welds.size} joints that were`} welded with it alone ${welds.size === 1 ? "takes" : "take"} ${needed.toPrecision(2)} kg at least`,
      why: `joints ${[...welds.keys()].sort().join(", ")}`,
      hint: "compare the mass with the delivery note, and the batches with the weld logs: another one was used as well, or the number is wrong",
    };
  },
  examples: [
    { name: "enough", given: spool("15 kg"), objections: [] },
    {
      name: "too little",
      given: spool("1 kg"),
      objections: ["1 kg of batch X-01 were received; 1 joint that was welded with it alone takes 2.4 kg at least"],
    },
    { name: "with another one", given: spool("1 kg", { $: "B-2", type: "wire" }), objections: [] },
    { name: "with gas", given: spool("15 kg", { $: "GAS", type: "shielding gas" }), objections: [] },
  ],
});

/** Four metres of a seam of 16 mm: 0.3·16²·4000 mm³ are 307 cm³, 2.4 kg. */
function spool(bought: string, ...others: readonly { readonly $: string; readonly type: string }[]) {
  const batches = [{ $: "X-01", type: "wire" }, ...others];
  const joint = { $: "C1", type: "butt", length: "4000 mm", thicknesses: ["16 mm"], batches };
  return { bought, runs: [{ joint }] };
}
