import type { AnswerSource } from "../model/answer.ts";
import { steamOf1919, strohm } from "./evaporation.ts";
import { aptitudeTest, directive, hawkinsTest, hyperbaric } from "./others.ts";
import { boilerCode1914, hawkinsBraces, indianRegulations, inspectionCode } from "./plates-and-stays.ts";
import { if97, tablesOf1919 } from "./properties.ts";
import { sizingOfValves } from "./safety-valves.ts";
import { bourne, hawkins } from "./shells.ts";
import { textbooks } from "./textbooks.ts";

/** Answers that others printed, by source. A test holds ours against them; the book prints both. */
export const answers: readonly AnswerSource[] = [
  strohm,
  steamOf1919,
  tablesOf1919,
  if97,
  hawkins,
  hawkinsBraces,
  hawkinsTest,
  bourne,
  indianRegulations,
  inspectionCode,
  boilerCode1914,
  hyperbaric,
  ...sizingOfValves,
  ...textbooks,
  aptitudeTest,
  directive,
];
