import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, quantity, table, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const methodForWeld = rule({
  id: "method-for-weld",
  title: "A method finds flaws in welds of that form and thickness",
  basis: fromMemory("EN ISO 17635", undefined, "choice of methods by form of the weld and thickness"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("record.method"),
    joint: thing("joint", {
      type: text("type"),
      thicknesses: list(quantity("thicknesses[]", "mm")),
      parts: anyOf(
        things("parts[]", {
          group: text("table(grade-group, material.standard, material.edition, material.grade).group"),
        }),
      ),
    }),
    fits: table("method-for-weld"),
  },
  *check({ method, joint, fits }, row) {
    const austenitic = method === "MT" ? joint.parts.find(({ group }) => /^8(\.|$)/.test(group)) : undefined;
    if (austenitic !== undefined) {
      yield {
        at: "method",
        name: "steel",
        accuses: [],
        message: `${row.name} tests joint ${joint.$.name} by MT; part ${austenitic.$.name} is of group ${austenitic.group}, which is not magnetic`,
        why: "magnetic particles gather on magnetic steel only",
        hint: "have the joint penetrant tested, or correct method or material",
      };
      return;
    }
    const [thinner] = joint.thicknesses.toSorted((one, other) => one.value - other.value);
    if (thinner === undefined) return;
    const serves = fits(method, joint.type, thinner).text("serves");
    if (serves === "yes") return;
    const no = serves === "no";
    yield {
      at: "method",
      name: joint.$.id,
      accuses: [],
      message: `${row.name} tests joint ${joint.$.name} by ${method}; of a ${joint.type} weld of ${thinner.text} it ${no ? "shows nothing that can be relied on" : "shows only part"}`,
      why: "form and thickness decide which method finds flaws in the whole section",
      hint: no
        ? "test it by a method that is fit; or record the procedure that was proved for it, with the deviation that allows it"
        : "answer this query with the procedure that was agreed for such welds",
      unsure: !no,
    };
  },
  examples: [
    { name: "RT of a butt weld", given: weld("RT", "butt", "8.0 mm"), objections: [] },
    { name: "MT of a fillet weld", given: weld("MT", "fillet", "5 mm"), objections: [] },
    {
      name: "MT of austenitic steel",
      given: weld("MT", "butt", "5 mm", "8.1"),
      objections: ["X-01 tests joint C2 by MT; part P07 is of group 8.1, which is not magnetic"],
    },
    { name: "PT of austenitic steel", given: weld("PT", "butt", "5 mm", "8.1"), objections: [] },
    { name: "UT of a corner weld", given: weld("UT", "corner", "8.0 mm"), objections: [] },
    {
      name: "UT of thin steel",
      given: weld("UT", "butt", "7.9 mm"),
      objections: ["X-01 tests joint C2 by UT; of a butt weld of 7.9 mm it shows nothing that can be relied on"],
      source: "EN ISO 11666, scope: thicknesses from 8 mm",
    },
    {
      name: "RT of a fillet weld",
      given: weld("RT", "fillet", "12 mm"),
      objections: ["X-01 tests joint C2 by RT; of a fillet weld of 12 mm it shows nothing that can be relied on"],
    },
    {
      name: "RT of a corner weld",
      given: weld("RT", "corner", "12 mm"),
      objections: ["X-01 tests joint C2 by RT; of a corner weld of 12 mm it shows only part"],
    },
  ],
});

function weld(method: string, type: string, thickness: string, group = "1.1") {
  return { method, joint: { $: "C2", type, thicknesses: ["25 mm", thickness], parts: [{ $: "P07", group }] } };
}
