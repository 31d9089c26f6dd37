import { commonPractice, ownChoice } from "../model/basis.ts";
import type { Requirement } from "../model/requirement.ts";
import { expandedEnds, fittingOf } from "./boiler-conditions.ts";
import { owed } from "./row.ts";

const marks = commonPractice("the chain of each limiter is told apart by its marks");
const ends = commonPractice("expanded ends are made by a procedure, and samples of them are measured");
/** Limiters that no rule holds against the controllers. */
const others = fittingOf("temperature-limiter", "flow-limiter");

/** Fields that a record owes under a condition, and that no definition reads. Part of every register. */
export const unread: readonly Requirement[] = [
  owed(
    "signature-date",
    "The day of each signature",
    { kind: "pressure-test" },
    "signatures[].date",
    "pressure-test",
    "quality",
    ownChoice("a signature without a day proves nothing about the order of events"),
  ),
  {
    ...owed(
      "burner-fuel",
      "The fuel of each burner",
      { kind: "fitting", when: [fittingOf("burner")] },
      "fuel",
      "final-inspection",
      "quality",
      ownChoice("whether a burner needs a gas train hangs on its fuel"),
    ),
    scope: "fired",
  },
  owed(
    "limiter-sensor",
    "The mark of the sensing element of each limiter of temperature or flow",
    { kind: "fitting", when: [others] },
    "sensor",
    "final-inspection",
    "quality",
    marks,
  ),
  owed(
    "limiter-switchingunit",
    "The mark of the switching unit of each limiter of temperature or flow",
    { kind: "fitting", when: [others] },
    "switchingUnit",
    "final-inspection",
    "quality",
    marks,
  ),
  owed(
    "expanded-group-procedure",
    "The procedure of each group of expanded ends",
    { kind: "tube-end-group", when: [expandedEnds] },
    "procedure",
    "testing-complete",
    "quality",
    ends,
  ),
  owed(
    "expanded-group-measured",
    "The sample as measured of each group of expanded ends",
    { kind: "tube-end-group", when: [expandedEnds] },
    "measured",
    "testing-complete",
    "quality",
    ends,
  ),
];
