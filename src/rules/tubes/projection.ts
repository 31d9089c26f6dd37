import { commonPractice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { exactly, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

/** mm, at either end. */
const most = 6;

export const tubeEndProjection = rule({
  id: "tube-end-projection",
  scope: "tube-nests",
  title: "Tube ends stand out of the plate by six millimetres at most, at the hot end no farther than at the cold one",
  basis: commonPractice(
    "three to six millimetres at the cold end, as short as can be at the hot one: what stands in the flame is not cooled",
  ),
  kind: "tube-end-group",
  when: [{ path: "projection", exists: true }],
  severity: "query",
  owner: "shop",
  inputs: {
    projection: optional(quantity("projection", "mm")),
    end: text("end"),
    others: anyOf(
      things("tube.<tube-end-group:tube>", { end: text("end"), projection: optional(quantity("projection", "mm")) }),
    ),
  },
  *check({ projection, end, others }, group) {
    if (projection === undefined) return;
    const answer = holds(projection, "<=", exactly(most, "mm"));
    const farther = others.find(
      (one) =>
        end === "gas-inlet" &&
        one.end === "gas-outlet" &&
        one.projection !== undefined &&
        holds(projection, "<=", one.projection) === "no",
    );
    if (answer !== "yes")
      yield {
        at: "projection",
        accuses: [],
        message: `the ends of group ${group.name} stand ${projection.text} out of the plate; ${most} mm are usual at most`,
        why:
          end === "gas-inlet"
            ? "what stands in the hot gas is not cooled"
            : "a longer end is bent and torn in cleaning",
        hint: "compare with the record of the ends: correct the figure, have them dressed, or answer this query with the drawing",
        unsure: answer === "unsure",
      };
    else if (farther !== undefined)
      yield {
        at: "projection",
        accuses: [],
        message: `the ends of group ${group.name} stand ${projection.text} into the hot gas, those of ${farther.$.name} at the cold end ${farther.projection?.text ?? ""}`,
        why: "what stands in the hot gas is not cooled",
        hint: "compare with the records of both ends: correct which end it is, or the figure; else have the hot ends dressed",
        related: [{ at: [farther, "projection"], message: farther.projection?.text ?? "" }],
      };
  },
  examples: [
    { name: "short at the hot end", given: ends("3 mm", "gas-inlet"), objections: [] },
    { name: "six", given: ends("6 mm", "gas-outlet"), objections: [] },
    {
      name: "too far",
      given: ends("7 mm", "gas-outlet"),
      objections: ["the ends of group X-01 stand 7 mm out of the plate; 6 mm are usual at most"],
    },
    {
      name: "farther than at the cold end",
      given: ends("6 mm", "gas-inlet"),
      objections: ["the ends of group X-01 stand 6 mm into the hot gas, those of TE-02 at the cold end 5 mm"],
    },
  ],
});

function ends(projection: string, end: string) {
  return { projection, end, others: [{ $: "TE-02", end: "gas-outlet", projection: "5 mm" }] };
}
