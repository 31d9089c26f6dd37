import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { tested } from "../../requirements/conditions.ts";
import { renewing } from "./treated-after.ts";

/** Symbol of steel that is delivered as rolled. */
const asRolled = "+AR";

const isTreated = (pieces: readonly { readonly treatments: readonly string[] }[]) =>
  pieces.length > 0 && pieces.every(({ treatments }) => treatments.some((type) => renewing.includes(type)));

export const deliveryCondition = rule({
  id: "delivery-condition",
  title: "Steel is delivered in a condition its standard knows for the grade",
  basis: fromMemory("EN 10028-2 and its sister standards", undefined, "usual delivery conditions"),
  kind: "material-certificate#rows",
  when: [tested],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    grade: text("grade"),
    delivered: text("deliveryCondition"),
    pieces: anyOf(
      things("<piece-mark:certificateRow>", {
        treatments: anyOf(list(text("part.<heat-treatment:parts[]>.type"))),
      }),
    ),
    known: things("table(grade-group, standard, edition, grade).delivery[]", { condition: text("condition") }),
  },
  *check({ grade, delivered, pieces, known }, row) {
    if (known.some(({ condition }) => condition === delivered)) return;
    yield {
      at: "delivered",
      // Others may be agreed to; steel as rolled is none of them before it is treated.
      unsure: delivered !== asRolled || isTreated(pieces),
      message: `${row.name} was delivered in condition ${delivered}; ${grade} is delivered in ${known.map(({ condition }) => condition).join(" or ")}`,
      why: "strength and toughness of a grade hold for its delivery conditions",
      hint: "compare with the certificate; if it says so, have the piece treated, and test pieces treated alike tested and certified; or, where the standard lets the condition be agreed, answer with that agreement",
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
    {
      name: "as rolled, and normalised by the maker",
      given: {
        grade: "P265GH",
        delivered: "+AR",
        known: [{ condition: "+N" }],
        pieces: [{ treatments: ["normalising"] }],
      },
      objections: ["X-01 was delivered in condition +AR; P265GH is delivered in +N"],
    },
  ],
});
