import { ownChoice } from "../../model/basis.ts";
import { exists } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const openingJudged = rule({
  id: "opening-judged",
  title: "An opening that is recorded can be judged",
  basis: ownChoice("an opening that no calculation covers is said aloud, never passed over"),
  kind: "part#openings",
  when: [{ path: "record.pressureBearing", equals: true }],
  severity: "query",
  owner: "design",
  inputs: {
    shell: exists("record.calculation(cylindrical-shell).ea"),
    branched: exists("branch"),
    strength: exists("branch.calculation(design-stress).f"),
  },
  *check({ shell, branched, strength }, opening) {
    if (!shell)
      yield {
        at: "subject",
        name: "shell",
        message: `opening ${opening.name} lies in no cylindrical shell course: no calculation covers it`,
        why: "openings are judged in cylindrical shells only",
        hint: "have the opening calculated by its code and answer this query with it, or correct the role of the part",
      };
    else if (branched && !strength)
      yield {
        at: "branched",
        name: "branch",
        message: `the branch of opening ${opening.name} is a part without a design stress: no calculation covers the opening`,
        why: "design stresses are calculated for pressure-bearing necks and frames, not for flanges and fittings",
        hint: "name the neck or frame that is welded into the shell; for a fitting name none and give the width of the hole",
      };
  },
  examples: [
    { name: "a neck in a shell", given: { shell: true, branched: true, strength: true }, objections: [] },
    { name: "a plain hole in a shell", given: { shell: true, branched: false, strength: false }, objections: [] },
    {
      name: "a fitting in a shell",
      given: { shell: true, branched: true, strength: false },
      objections: ["the branch of opening X-01 is a part without a design stress: no calculation covers the opening"],
    },
    {
      name: "a neck in an end",
      given: { shell: false, branched: true, strength: true },
      objections: ["opening X-01 lies in no cylindrical shell course: no calculation covers it"],
    },
  ],
});
