/** What the package offers to other programs: the stages of the pipeline, the definitions, and single calculations. */
export { judgeAgain, judgeBook, judgeRemembering, layOut, publishBook, readBook, traceRecord } from "./pipeline.ts";
export { shippedDefinitions } from "./definitions.ts";
export { run, type PlainValues } from "./compute/run-plain.ts";
export { blocks } from "./model/finding.ts";
export { calculation } from "./model/calculation.ts";
export { rule } from "./model/rule.ts";
export * as inputs from "./model/input.ts";
export * as basis from "./model/basis.ts";
