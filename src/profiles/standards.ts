import { commonPractice, fromMemory, ownChoice } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const valves = commonPractice(
  "a valve in service is opened three times; the certificate of a new one may state one opening",
);

/** Which design standards a profile serves, and what they leave to the maker. */
export const standards = {
  designStandards: {
    value: "any",
    means: "design standards whose books it serves, or any",
    cautious: "none",
    basis: ownChoice("the cautious side of every parameter may be asked of any design"),
  },
  formulaStandards: {
    value: "EN 12953, EN 13445, Indian Boiler Regulations",
    means:
      "design standards whose formulas the calculations use: a sheet rests on one of them only where the design declares it",
    cautious: "none",
    basis: ownChoice("the families that the bases of the calculations name"),
  },
  laterValveExcess: {
    value: "0 %",
    means: "how far safety valves after the first may be set above the maximum allowable pressure",
    cautious: "low",
    basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, protection against exceeding the allowable limits"),
  },
  valveOpeningsLeast: {
    value: "3",
    means: "least openings on the bench that the certificate of a safety valve states",
    cautious: "high",
    basis: valves,
  },
  valveReseatStated: {
    value: "required",
    means: "whether the certificate of a safety valve states the pressure at which it closes",
    cautious: "high",
    basis: valves,
  },
  highWaterLock: {
    value: "required",
    means: "whether a limiter of high water locks out until it is reset by hand",
    cautious: "high",
    basis: fromMemory("EN 12953-6", undefined, "limiters lock out"),
  },
} satisfies Parameters;
