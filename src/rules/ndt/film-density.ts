import { fromMemory } from "../../model/basis.ts";
import { list, quantity, table, text } from "../../model/input.ts";
import { atLeast } from "../../model/quantity.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";
import { document, films } from "./exposure.ts";

/** Above this density common viewers show nothing. */
const darkest = 4;

export const filmDensity = rule({
  id: "film-density",
  title: "Films are as dark as their class asks for, and can still be read",
  basis: fromMemory(document, undefined, "least optical density by class; a tolerance of 0.1 is permitted"),
  kind: "ndt-report#rows",
  when: films,
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    made: text("record.radiography.techniqueClass"),
    densities: list(quantity("density[]", "1")),
    limits: table("film-density"),
  },
  owes: [owedBy("testing", "testing-complete", "densities")],
  *check({ made, densities, limits }, row) {
    const limit = limits(made);
    const least = limit.quantity("least");
    const tolerance = limit.quantity("tolerance");
    const [lightest] = densities.toSorted((one, other) => one.value - other.value);
    const [dark] = densities.toSorted((one, other) => other.value - one.value);
    if (least === undefined || lightest === undefined || dark === undefined) return;
    if (atLeast(lightest, least) !== "yes")
      yield {
        at: "densities",
        name: "light",
        message: `${row.name} has a density of ${lightest.text}; class ${made} asks for ${least.text} or more`,
        why: "on a film that is too light fine flaws do not show",
        hint: "measure again and correct it; if it is true, have the film made again",
        unsure: tolerance !== undefined && lightest.value >= least.value - tolerance.value - 1e-9,
      };
    if (dark.value > darkest)
      yield {
        at: "densities",
        name: "dark",
        message: `${row.name} has a density of ${dark.text}, above what common viewers show`,
        why: `a viewer needs the more light the darker a film is; ${darkest.toFixed(1)} is the usual end`,
        hint: "answer this query with the viewer it was read on, or have the film made again",
        unsure: true,
      };
  },
  examples: [
    { name: "just as dark", given: { made: "B", densities: ["2.3", "3.1"] }, objections: [] },
    { name: "class A", given: { made: "A", densities: ["2.0"] }, objections: [] },
    {
      name: "within the tolerance of measuring",
      given: { made: "B", densities: ["2.2", "3.1"] },
      objections: ["X-01 has a density of 2.2; class B asks for 2.3 or more"],
    },
    {
      name: "too light",
      given: { made: "B", densities: ["1.0", "3.1"] },
      objections: ["X-01 has a density of 1.0; class B asks for 2.3 or more"],
    },
    {
      name: "the two ends exchanged",
      given: { made: "A", densities: ["3.1", "1.9"] },
      objections: ["X-01 has a density of 1.9; class A asks for 2.0 or more"],
    },
    {
      name: "too dark",
      given: { made: "A", densities: ["2.4", "4.4"] },
      objections: ["X-01 has a density of 4.4, above what common viewers show"],
    },
  ],
});
