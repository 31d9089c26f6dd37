import { derivedFrom } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

export const boltSection = rule({
  id: "bolt-section",
  title: "The governing section of certified bolting is its diameter",
  basis: derivedFrom("a bolt is as thick as it is wide; of a nut the thread is named"),
  kind: "material-certificate#rows",
  when: [
    { path: "form", equals: "bolting" },
    { path: "diameter", exists: true },
  ],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: { thickness: quantity("thickness", "mm"), diameter: quantity("diameter", "mm") },
  *check({ thickness, diameter }, row) {
    if (holds(thickness, "=", diameter) === "no")
      yield {
        at: "thickness",
        accuses: ["thickness", "diameter"],
        message: `${row.name} states a section of ${thickness.text} and a diameter of ${diameter.text}`,
        why: "of bolting both are the same",
        hint: "compare with the certificate; correct the wrong one",
      };
  },
  examples: [
    { name: "M24", given: { thickness: "24.0 mm", diameter: "24 mm" }, objections: [] },
    {
      name: "two sizes",
      given: { thickness: "240 mm", diameter: "24 mm" },
      objections: ["X-01 states a section of 240 mm and a diameter of 24 mm"],
    },
  ],
});
