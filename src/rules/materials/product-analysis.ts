import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

// What floating point adds.
const guard = 1e-9;

export const productAnalysis = rule({
  id: "product-analysis",
  title: "An analysis of the product lies within the limits of the cast and the deviation the standard permits",
  basis: fromMemory(
    "EN 10028-2",
    "2017",
    "permissible deviations of the product analysis from the limits of the cast analysis",
  ),
  kind: "material-certificate#rows",
  when: [{ path: "productAnalysis[].value", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    limits: list(
      thing("table(grade-chemistry, standard, edition, grade).limits[]", {
        element: text("element"),
        bound: text("bound"),
        content: quantity("content", "%"),
      }),
    ),
    analysis: anyOf(things("productAnalysis[]", { element: text("element"), value: optional(quantity("value", "%")) })),
    deviations: table("product-analysis-deviation"),
    standard: text("standard"),
    edition: text("edition"),
    grade: text("grade"),
  },
  *check({ limits, analysis, deviations, standard, edition, grade }, row) {
    for (const one of analysis)
      for (const { element, bound, content } of limits) {
        const { value } = one;
        if (element !== one.element || value === undefined) continue;
        const least = bound === "least";
        const beyond = least ? content.value - value.low : value.high - content.value;
        if (beyond <= guard) continue;
        const permitted = deviations(standard, edition, element, content).quantity("deviation");
        const more = permitted?.value ?? 0;
        if (beyond <= more + guard) continue;
        yield {
          at: [one, "value"],
          name: `${element} ${bound}`,
          message: `the product analysis of ${row.name} has ${element} ${value.text}; ${grade} wants ${least ? "at least" : "at most"} ${content.text} of the cast, and permits the product ${permitted?.text ?? "nothing"} ${least ? "less" : "more"}`,
          why: `${standard}, deviation of the product from the cast`,
          hint: "compare with the certificate; if it says so, raise a nonconformity report with the mill",
          unsure: least ? value.high >= content.value - more : value.low <= content.value + more,
        };
      }
  },
  examples: [
    { name: "within the cast", given: analysed("0.20 %"), objections: [] },
    { name: "as far beyond as is permitted", given: analysed("0.22 %"), objections: [] },
    {
      name: "farther",
      given: analysed("0.23 %"),
      objections: [
        "the product analysis of X-01 has C 0.23 %; P265GH wants at most 0.20 % of the cast, and permits the product 0.02 % more",
      ],
    },
  ],
});

function analysed(value: string) {
  return {
    limits: [{ element: "C", bound: "most", content: "0.20 %" }],
    analysis: [{ element: "C", value }],
    standard: "EN 10028-2",
    edition: "2017",
    grade: "P265GH",
  };
}
