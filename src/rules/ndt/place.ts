import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, thing, things } from "../../model/input.ts";
import { isClosed } from "../../model/seam-lengths.ts";
import { rule } from "../../model/rule.ts";

/** Lengths along a weld are measured by tape: this much more is no other length. */
const slack = 1 + 1e-9;

export const testedWithinWeld = rule({
  id: "tested-within-weld",
  title: "What was tested, and what was found there, lies within the weld",
  basis: ownChoice("nothing is tested where there is no weld; a tape is read to a millimetre"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    length: quantity("length", "mm"),
    from: optional(quantity("from", "mm")),
    to: optional(quantity("to", "mm")),
    joint: thing("joint", { role: text("role"), length: quantity("length", "mm") }),
    indications: anyOf(
      things("indications[]", { start: optional(quantity("at", "mm")), long: optional(quantity("length", "mm")) }),
    ),
  },
  *check({ length, from, to, joint, indications }, row) {
    const seam = joint.length;
    const beyond = [
      ["length", length, "a length"],
      ["from", from, "a start"],
      ["to", to, "an end"],
    ] as const;
    for (const [at, value, called] of beyond)
      if (value !== undefined && value.low > seam.high + slack) {
        yield {
          at,
          name: "beyond",
          message: `${row.name} states ${called} of ${value.text}; joint ${joint.$.name} is ${seam.text} long`,
          why: "the weld ends before",
          hint: "compare with the report; correct it, or the length of the joint",
        };
        return;
      }
    for (const found of indications) {
      const { start, long } = found;
      if (start === undefined) continue;
      const end = start.value + (long?.value ?? 0);
      const closed = isClosed(joint.role);
      const wraps = from !== undefined && to !== undefined && to.value < from.value;
      const inside =
        from === undefined || to === undefined
          ? closed
            ? start.value <= seam.high + slack
            : end <= seam.high + slack
          : wraps
            ? closed && (start.value >= from.value - slack || end <= to.value + slack)
            : start.value >= from.value - slack && end <= to.value + slack;
      if (!inside)
        yield {
          at: [found, "start"],
          name: found.$.id,
          message: `${found.$.name} lies at ${start.text}${long === undefined ? "" : `, ${long.text} long`}; ${from === undefined || to === undefined ? `joint ${joint.$.name} is ${seam.text} long` : `${from.text} to ${to.text} were tested`}`,
          why: "a flaw is found where the test was made",
          hint: "compare with the report and correct its place; what runs on beyond the tested length is to be tested there too",
        };
    }
  },
  examples: [
    { name: "the whole weld", given: row("1000 mm", "0 mm", "1000 mm"), objections: [] },
    { name: "a flaw within", given: row("300 mm", "100 mm", "400 mm", ["380 mm", "20 mm"]), objections: [] },
    { name: "over the zero mark", given: row("300 mm", "900 mm", "200 mm", ["950 mm", "100 mm"]), objections: [] },
    { name: "no place stated", given: row("300 mm", undefined, undefined, ["950 mm", "10 mm"]), objections: [] },
    {
      name: "longer than the weld",
      given: row("1200 mm"),
      objections: ["X-01 states a length of 1200 mm; joint C2 is 1000 mm long"],
    },
    {
      name: "ends beyond it",
      given: row("300 mm", "900 mm", "1200 mm"),
      objections: ["X-01 states an end of 1200 mm; joint C2 is 1000 mm long"],
    },
    {
      name: "a flaw outside of what was tested",
      given: row("300 mm", "100 mm", "400 mm", ["390 mm", "20 mm"]),
      objections: ["indication lies at 390 mm, 20 mm long; 100 mm to 400 mm were tested"],
    },
    {
      name: "a flaw outside of a length over the zero mark",
      given: row("300 mm", "900 mm", "200 mm", ["500 mm"]),
      objections: ["indication lies at 500 mm; 900 mm to 200 mm were tested"],
    },
  ],
});

function row(length: string, from?: string, to?: string, at?: readonly [start: string, long?: string]) {
  return {
    length,
    ...(from !== undefined && { from }),
    ...(to !== undefined && { to }),
    joint: { $: "C2", role: "circumferential", length: "1000 mm" },
    indications:
      at === undefined ? [] : [{ $: "indication", start: at[0], ...(at[1] !== undefined && { long: at[1] }) }],
  };
}
