import type { Chain } from "../model/chain.ts";

/** From the ends of tubes to their plate, to who made them, and to what was measured. */
export const tubeEndGroup: Chain = {
  kind: "tube-end-group",
  links: [
    {
      what: "Tube plate, and the ends its drawing shows",
      paths: ["field", "field.record.drawing"],
      judgedBy: ["tube-ends-counted", "tube-nest", "tube-pull-out", "drawing-in-force", "drawing-checked-by-another"],
    },
    {
      what: "Tubes and their heat",
      paths: ["tube", "tube.<piece-mark:part>.certificateRow"],
      judgedBy: [
        "stay-tubes-welded",
        "smoke-tube",
        "stay-tube",
        "part-mark",
        "mark-material",
        "chemistry-limits",
        "tensile-limits",
      ],
    },
    {
      what: "Procedures",
      paths: ["procedure", "weldingProcedure"],
      judgedBy: [
        "expanded-group-procedure",
        "procedure-in-force",
        "tube-end-in-procedure",
        "tube-end-procedure-qualified",
        "repair-procedure-in-force",
      ],
    },
    {
      what: "Who made them",
      paths: ["operators[]", "welders[]", "welders[].<welder-qualification:person>"],
      judgedBy: ["tube-end-operator-role", "tube-end-welder-role", "tube-end-welder-qualified"],
    },
    {
      what: "Sample as measured, and result",
      paths: ["measured[]", "instruments[]"],
      judgedBy: ["expanded-group-measured", "wall-reduction", "calibrated", "tube-end-group-accepted"],
    },
    {
      what: "Pressure test",
      paths: ["book.pressure-test"],
      judgedBy: ["pressure-test-after-work", "pressure-test-accepted", "pressure-hold"],
    },
  ],
};
