import { coefficientLimit } from "./wall.ts";
import { fromMemory } from "../../model/basis.ts";
import type { Limit } from "../../model/calculation.ts";

export const en13445 = fromMemory("EN 13445-3", undefined, "torispherical ends under internal pressure");

/** Shapes and thicknesses the formulas of a torispherical end are made for. */
export const torisphericalLimits: readonly Limit[] = [
  {
    left: "p",
    relation: "<",
    right: "f*z",
    means: "the pressure is small against the design stress",
    wrong: "the pressure is {left}; it must be below the design stress times the weld joint coefficient, {right}",
  },
  coefficientLimit,
  {
    left: "R",
    relation: "<=",
    right: "Di + 2*en",
    means: "the crown radius is at most the outside diameter",
    wrong: "the crown radius is {left}, above the outside diameter, {right}",
    basis: en13445,
  },
  {
    left: "r",
    relation: ">=",
    right: "0.06*Di",
    means: "the knuckle radius is at least 0.06·Di",
    wrong: "the knuckle radius is {left}, below 0.06 of the inside diameter, {right}",
    basis: en13445,
  },
  {
    left: "r",
    relation: "<=",
    right: "0.2*Di",
    means: "the knuckle radius is at most 0.2·Di",
    wrong: "the knuckle radius is {left}, above a fifth of the inside diameter, {right}",
    basis: en13445,
  },
  {
    name: "r too low for e",
    left: "r",
    relation: ">=",
    right: "2*e",
    means: "the knuckle radius is at least twice the thickness",
    wrong: "the knuckle radius is {left}, below twice the thickness, {right}",
    basis: en13445,
  },
  {
    left: "e",
    relation: "<=",
    right: "0.08*Di",
    means: "the thickness is at most 0.08·Di",
    wrong: "the thickness is {left}, above 0.08 of the inside diameter, {right}",
    basis: en13445,
  },
  {
    left: "ea",
    relation: ">=",
    right: "0.001*Di",
    means: "the analysis thickness is at least 0.001·Di",
    wrong: "the analysis thickness is {left}, below 0.001 of the inside diameter, {right}",
    basis: en13445,
  },
];
