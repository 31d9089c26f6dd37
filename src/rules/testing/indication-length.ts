import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, thing, things } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { isClosed } from "../../model/seam-lengths.ts";
import { rule } from "../../model/rule.ts";

/** Where a flaw ends is held against the ends of what was tested by another rule, where both are stated. */
export const indicationLength = rule({
  id: "indication-length",
  title: "A flaw is no longer than the length in which it was found",
  basis: ownChoice("what is seen in a test lies in the length that was tested, wherever it begins"),
  kind: "ndt-report#rows",
  when: [
    { path: "joint", exists: true },
    { path: "indications[].length", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    tested: quantity("length", "mm"),
    from: optional(quantity("from", "mm")),
    to: optional(quantity("to", "mm")),
    joint: thing("joint", { role: text("role"), length: quantity("length", "mm") }),
    indications: anyOf(
      things("indications[]", { start: optional(quantity("at", "mm")), long: optional(quantity("length", "mm")) }),
    ),
  },
  *check({ tested, from, to, joint, indications }) {
    const bounded = from !== undefined && to !== undefined && to.value >= from.value;
    for (const found of indications) {
      const { long, start } = found;
      if (long === undefined || holds(long, "<=", tested) !== "no") continue;
      const past = start !== undefined && start.value + long.value > joint.length.value;
      if (start !== undefined && (bounded || (from === undefined && !isClosed(joint.role) && past))) continue;
      yield {
        at: [found, "long"],
        name: found.$.id,
        message: `${found.$.name} is ${long.text} long; ${tested.text} of joint ${joint.$.name} were tested`,
        why: `joint ${joint.$.name} is ${joint.length.text} long`,
        hint: "compare with the report: correct the length of the flaw, or of what was tested; what runs on is to be tested there too",
        related: [{ at: "tested", message: `${tested.text} here` }],
      };
    }
  },
  examples: [
    { name: "as long as what was tested", given: row("300 mm"), objections: [] },
    {
      name: "longer, its place not stated",
      given: row("301 mm"),
      objections: ["indication is 301 mm long; 300 mm of joint C2 were tested"],
    },
    { name: "longer, from a place between two ends: said by its end", given: row("301 mm", "120 mm"), objections: [] },
    {
      name: "longer, over the zero mark",
      given: { ...row("301 mm", "950 mm"), from: "900 mm", to: "200 mm" },
      objections: ["indication is 301 mm long; 300 mm of joint C2 were tested"],
    },
  ],
});

function row(long: string, at?: string) {
  return {
    tested: "300 mm",
    from: "100 mm",
    to: "400 mm",
    joint: { $: "C2", role: "circumferential", length: "1000 mm" },
    indications: [{ $: "indication", long, ...(at !== undefined && { start: at }) }],
  };
}
