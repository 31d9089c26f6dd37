import { anyOf, date, things } from "../../model/input.ts";

const on = (path: string) => anyOf(things(path, { day: date("date") }));

/** Steps of the plan that are done to a revision of a paper. */
export const stepsTo = anyOf(things("<inspection-step:procedure>", { day: date("done") }));

/** What names a revision of a drawing, with the day it was worked to. */
export const usesOfDrawing = {
  tests: on("<ndt-report:drawing>"),
  dimensions: on("<dimension-check:drawing>"),
  pressureTests: on("<pressure-test:drawing>"),
  certificates: on("<body-certificate:drawings[]>"),
  steps: stepsTo,
} as const;

/** What names a revision of a procedure, with the day it was worked to. */
export const usesOfProcedure = {
  tests: on("<ndt-report:procedure>"),
  charges: anyOf(things("<heat-treatment:procedure>", { day: date("started") })),
  pressureTests: on("<pressure-test:procedure>"),
  benches: on("<safety-valve:bench.procedure>"),
  tubeEnds: on("<tube-end-group:procedure>"),
  coats: anyOf(things("<coating-report:procedure>", { day: date("prepared") })),
  hardness: on("<hardness-report:procedure>"),
  leakTests: on("<leak-test:procedure>"),
  analyses: on("<alloy-report:procedure>"),
  steps: stepsTo,
} as const;

/** What names an instrument, with the day it was used; of these a later calibration says whether they can be believed. */
export const usesOfInstrument = {
  reports: on("<ndt-report:instruments[]>"),
  dimensions: on("<dimension-check:instruments[]>"),
  gauges: anyOf(things("<pressure-test:gauges[].instrument>", { day: date("record.date") })),
  thermometers: on("<pressure-test:thermometers[]>"),
  benches: on("<safety-valve:bench.instrument>"),
  runs: on("<weld-log:runs[].instruments[]>"),
  charges: anyOf(things("<heat-treatment:instruments[]>", { day: date("started") })),
  tubeEnds: on("<tube-end-group:instruments[]>"),
  trials: on("<fitting:functionTests[].instrument>"),
  coats: on("<coating-report:instruments[]>"),
  hardness: on("<hardness-report:instruments[]>"),
  leakTests: on("<leak-test:instruments[]>"),
  analyses: on("<alloy-report:instruments[]>"),
} as const;

/** Reports of the book, with the day of each, that a declaration rests on. */
export const reportsOfBook = {
  reports: on("book.ndt-report"),
  dimensions: on("book.dimension-check"),
  coats: on("book.coating-report"),
  hardness: on("book.hardness-report"),
  leakTests: on("book.leak-test"),
  analyses: on("book.alloy-report"),
} as const;
