import { fromMemory } from "../../model/basis.ts";
import { text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { tested } from "../../requirements/conditions.ts";

export const deliveryCondition = rule({
  id: "delivery-condition",
  title: "Steel is delivered in a condition its standard knows for the grade",
  basis: fromMemory("EN 10028-2 and its sister standards", undefined, "usual delivery conditions"),
  kind: "material-certificate#rows",
  when: [tested],
  severity: "query",
  owner: "purchasing",
  inputs: {
    grade: text("grade"),
    delivered: text("deliveryCondition"),
    known: things("table(grade-group, standard, edition, grade).delivery[]", { condition: text("condition") }),
  },
  *check({ grade, delivered, known }, row) {
    if (known.some(({ condition }) => condition === delivered)) return;
    yield {
      at: "delivered",
      message: `${row.name} was delivered in condition ${delivered}; ${grade} is delivered in ${known.map(({ condition }) => condition).join(" or ")}`,
      why: "strength and toughness of a grade hold for its delivery conditions",
      hint: "compare with the certificate; if it says so, ask the mill, and have the condition accepted by who designed it",
    };
  },
  examples: [
    {
      name: "as the standard knows",
      given: { grade: "P265GH", delivered: "+N", known: [{ condition: "+N" }] },
      objections: [],
    },
    {
      name: "otherwise",
      given: { grade: "P265GH", delivered: "+AR", known: [{ condition: "+N" }] },
      objections: ["X-01 was delivered in condition +AR; P265GH is delivered in +N"],
    },
  ],
});
