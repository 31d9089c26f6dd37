import type { Chain } from "../model/chain.ts";

/** Calculations of parts: each may have sheets. */
const calculated = [
  "metal-temperature",
  "tube-temperature",
  "design-stress",
  "cylindrical-shell",
  "torispherical-end",
  "shell-opening",
  "unreinforced-opening",
  "opening-spacing",
  "furnace",
  "furnace-test",
  "furnace-hoop",
  "reversal-chamber",
  "reversal-chamber-test",
  "access-tube",
  "access-tube-test",
  "smoke-tube",
  "flat-plate",
  "stayed-flat-plate",
  "breathing-space",
  "tube-hole",
  "tube-nest",
  "tube-pull-out",
  "stay",
  "stay-tube",
];

const designedBy = [
  ...calculated.flatMap((id) => [id, `${id}/inputs`, `${id}/results`]),
  "test-stress",
  "part-stress",
  "boiler-part-stress",
  "shell-calculation",
  "end-calculation",
  "metal-temperature-sheet",
  "tube-temperature-sheet",
  "furnace-calculation",
  "furnace-hoop-calculation",
  "reversal-chamber-calculation",
  "access-tube-calculation",
  "furnace-test-calculation",
  "reversal-chamber-test-calculation",
  "access-tube-test-calculation",
  "smoke-tube-calculation",
  "plate-calculation",
  "region-calculation",
  "plate-breathing-spaces",
  "breathing-calculation",
  "stay-calculation",
  "stay-tube-calculation",
  "tube-nest-calculation",
  "tube-pull-out-calculation",
  "branch-calculation",
  "hole-calculation",
  "opening-spacing-sheet",
];

/** From a part to its material, its strength and what joins it. */
export const part: Chain = {
  kind: "part",
  links: [
    { what: "Drawing", paths: ["drawing"], judgedBy: ["drawing-in-force", "drawing-checked-by-another"] },
    {
      what: "Mark and its transfer",
      paths: ["<piece-mark:part>"],
      judgedBy: ["part-mark", "mark-transferred", "mark-before-cut", "cut-after-receipt"],
    },
    {
      what: "Heat and certificate",
      paths: ["<piece-mark:part>.certificateRow", "<piece-mark:part>"],
      judgedBy: ["mark-material", "certificate-thickness"],
    },
    {
      what: "Type of certificate",
      paths: ["<piece-mark:part>.certificateRow.record", "<piece-mark:part>"],
      judgedBy: ["certificate-type", "mill-approved", "certificate-received"],
    },
    {
      what: "Chemistry and strength",
      paths: ["<piece-mark:part>.certificateRow"],
      judgedBy: ["chemistry-limits", "tensile-limits", "carbon-equivalent", "impact-mean", "certificate-test-accepted"],
    },
    {
      what: "Design stress and thickness",
      paths: ["<calculation-sheet:subject>"],
      judgedBy: designedBy,
    },
    {
      what: "How it is joined",
      paths: ["<joint:parts[]>", "<tube-end-group:tube>", "tubeFields[].<tube-end-group:field>"],
      judgedBy: [
        "joint-thickness",
        "weld-coefficient-extent",
        "field-tube-ends",
        "tube-ends-counted",
        "stay-tubes-welded",
        "tube-ends-accepted",
      ],
    },
    {
      what: "Measured dimensions",
      paths: ["<dimension-check:rows[].part>"],
      judgedBy: ["dimensions-accepted", "dimension-within"],
    },
  ],
};
