import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { isClosed } from "../../model/seam-lengths.ts";

/** Times the thickness that longitudinal seams of neighbouring courses are apart. */
const apart = 4;

export const seamsStaggered = rule({
  id: "seams-staggered",
  title: "Longitudinal joints that meet a circumferential one are apart by four times the thickness",
  basis: fromMemory("EN 13445-4, EN 12953-4", undefined, "offset of longitudinal seams of neighbouring courses"),
  kind: "joint",
  when: [{ path: "crossings", exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    role: text("role"),
    length: quantity("length", "mm"),
    thicknesses: list(quantity("thicknesses[]", "mm")),
    crossings: list(
      thing("crossings[]", {
        seam: thing("joint", { parts: anyOf(list(text("parts[]"))) }),
        place: quantity("at", "mm"),
      }),
    ),
  },
  *check({ role, length, thicknesses, crossings }, joint) {
    const least = apart * Math.max(...thicknesses.map(({ value }) => value));
    for (const [index, one] of crossings.entries())
      for (const other of crossings.slice(index + 1)) {
        const straight = Math.abs(one.place.value - other.place.value);
        const between = isClosed(role) ? Math.min(straight, length.value - straight) : straight;
        // Seams of one course are no neighbours.
        const together = one.seam.parts.some((part) => other.seam.parts.includes(part));
        if (one.seam.$.id === other.seam.$.id || together || between >= least - 1e-9) continue;
        yield {
          at: [other, "place"],
          accuses: [],
          name: `${one.seam.$.id} ${other.seam.$.id}`,
          message: `joints ${one.seam.$.name} and ${other.seam.$.name} end on joint ${joint.name} ${Number(between.toFixed(1))} mm apart; four times the thickness is ${Number(least.toFixed(1))} mm`,
          why: `at ${one.place.text} and ${other.place.text}`,
          hint: "compare with the drawing and the shell; if it is so, have it tested over all its length and raise a nonconformity report",
        };
      }
  },
  examples: [
    { name: "far apart", given: meeting("240 mm", "360 mm"), objections: [] },
    {
      name: "almost in line",
      given: meeting("150 mm", "175 mm"),
      objections: ["joints L1 and L2 end on joint X-01 25 mm apart; four times the thickness is 48 mm"],
    },
    { name: "two seams of one course", given: meeting("150 mm", "175 mm", ["P01"]), objections: [] },
    {
      name: "on both sides of the zero mark",
      given: meeting("10 mm", "3760 mm"),
      objections: ["joints L1 and L2 end on joint X-01 20 mm apart; four times the thickness is 48 mm"],
    },
  ],
});

function meeting(one: string, other: string, second = ["P02"]) {
  return {
    role: "circumferential",
    length: "3770 mm",
    thicknesses: ["12 mm", "12 mm"],
    crossings: [
      { seam: { $: "L1", parts: ["P01"] }, place: one },
      { seam: { $: "L2", parts: second }, place: other },
    ],
  };
}
