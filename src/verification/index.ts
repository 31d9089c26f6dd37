// Made from the files of this folder by `npm run types`; change them, not this one.
import type { AnswerSource } from "../model/answer.ts";
import { strohm, steamOf1919 } from "./evaporation.ts";
import { hawkinsTest, hyperbaric, aptitudeTest, directive } from "./others.ts";
import { hawkinsBraces, indianRegulations, inspectionCode, boilerCode1914 } from "./plates-and-stays.ts";
import { tablesOf1919, if97 } from "./properties.ts";
import { sizingOfValves } from "./safety-valves.ts";
import { hawkins, bourne } from "./shells.ts";
import { unsharpness } from "./testing-answers.ts";
import { textbooks } from "./textbooks.ts";

/** Answers that others printed, by source. A test holds ours against them; the book prints both. */
export const answers: readonly AnswerSource[] = [
  strohm,
  steamOf1919,
  hawkinsTest,
  hyperbaric,
  aptitudeTest,
  directive,
  hawkinsBraces,
  indianRegulations,
  inspectionCode,
  boilerCode1914,
  tablesOf1919,
  if97,
  ...sizingOfValves,
  hawkins,
  bourne,
  unsharpness,
  ...textbooks,
];
