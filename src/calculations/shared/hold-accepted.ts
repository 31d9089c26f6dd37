import { commonPractice } from "../../model/basis.ts";
import type { Acceptance } from "../../model/calculation.ts";
import { aboveBeginning, gaugeClass, rangeFits } from "./test-gauges.ts";

/** What the readings of a hold must show. */
export const holdAccepted: readonly Acceptance[] = [
  {
    left: "th",
    relation: ">=",
    right: "tmin",
    means: "the hold lasted the time required",
    wrong: "the test pressure was held for {left}; at least {right} is required",
    accuses: "readings",
  },
  {
    left: "tg",
    relation: "<=",
    right: "gap",
    means: "no gap between readings shortens the hold",
    wrong: "{left} passed between two readings of the hold, more than the {right} permitted",
    accuses: "readings",
  },
  {
    left: "ph",
    relation: "<=",
    right: "PTu",
    means: "no reading exceeds the highest test pressure",
    wrong: "a reading reaches {left} at the top, above the highest test pressure, {right}",
    accuses: "readings",
  },
  {
    left: "PTr",
    relation: ">=",
    right: "pn",
    means: "the test pressure stated as held is at least the pressure needed",
    wrong: "{left} is stated as held, below the {right} needed",
    accuses: "PTr",
  },
  {
    left: "PTr",
    relation: "<=",
    right: "pl",
    means: "the test pressure stated as held is no more than the lowest reading of the hold",
    wrong: "{left} is stated as held, but the lowest reading of the hold is {right} at the top",
    accuses: "PTr",
  },
  {
    left: "Δp",
    relation: "<=",
    right: "Δc",
    means: "the gauges agree within their classes",
    wrong: "the readings of the gauges differ by {left} at the top, more than the {right} of their classes",
    accuses: "readings",
    basis: gaugeClass,
  },
  {
    left: "Tc",
    relation: ">=",
    right: "Tw",
    means: "the test medium was warm enough",
    wrong: "the test medium was {left} at its coldest, below the {right} that the profile asks for",
    accuses: "readings",
  },
  ...rangeFits("A"),
  ...rangeFits("B"),
  ...aboveBeginning("A"),
  ...aboveBeginning("B"),
];

/** What no change of temperature explains was leaked, or pumped in. */
export const driftExplained: readonly Acceptance[] = [
  {
    left: "xd",
    relation: ">=",
    right: "-2*u",
    means: "every drop of pressure is explained by the temperature of the water",
    wrong:
      "the pressure stands {|left|} below what the temperature of the water would give it; twice its uncertainty is {|right|}: something leaked, or the thermometer does not tell the temperature of the water",
    accuses: "readings",
  },
  {
    left: "xr",
    relation: "<=",
    right: "2*u",
    means: "every rise of pressure is explained by the temperature of the water: nothing was pumped in",
    wrong:
      "a rise of pressure of {left} is left unexplained by the temperature of the water; twice its uncertainty is {right}: water was pumped in, or the thermometer does not tell the temperature of the water",
    accuses: "readings",
    basis: commonPractice("a pressure that rises without warming means topping up, which hides a leak"),
  },
];
