// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Rule } from "../../model/rule.ts";
import { coatingDewPoint } from "./air.ts";
import { coatingPrepared, coatingInOrder } from "./course.ts";
import { coatingFilm, coatingFigures, coatingNominal } from "./film.ts";
import { coatedAfterTests, coatingPores } from "./tests.ts";

/** What rules/ has of coating. */
export const coatingRules: readonly Rule[] = [
  coatingDewPoint,
  coatingPrepared,
  coatingInOrder,
  coatingFilm,
  coatingFigures,
  coatingNominal,
  coatedAfterTests,
  coatingPores,
];
