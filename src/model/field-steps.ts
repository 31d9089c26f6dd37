/**
 * Paths of fields within one record, `limits.setPressure`, `rows[].joint`: a step is the name of a field, with `[]` behind it
 * where the path goes on in each item of a list. Filters and steps back belong to the paths of definitions (`model/path.ts`).
 */
export const fieldSteps = (path: string): readonly string[] => path.split(".");

/** The path of these steps. */
export const fieldPath = (steps: readonly string[]): string => steps.join(".");

/** The field a step names. */
export const stepName = (step: string): string => (isEachStep(step) ? step.slice(0, -each.length) : step);

/** Whether a step leads on into each item of its list. */
export const isEachStep = (step: string): boolean => step.endsWith(each);

/** The name of the field that a path ends in. */
export const lastName = (path: string): string => stepName(fieldSteps(path).at(-1) ?? "");

const each = "[]";
