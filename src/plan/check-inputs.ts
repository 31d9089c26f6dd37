import type { Calculation, CalculationInput } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition, Input, Inputs, Reading } from "../model/input.ts";
import { nearestOrAll } from "../model/nearest.ts";
import { parseQuantity } from "../model/quantity.ts";
import { sameDimension, unitOf } from "../model/units.ts";
import { pathOf } from "../reading/bind.ts";
import { walkPath } from "./check-paths.ts";
import { through, valueAt } from "./field-step.ts";
import { unknownKind, type Draft, type PathFacts, type Schemas, type WalkedPath } from "./path-facts.ts";
import { type Coverage } from "./coverage.ts";
import { standAt, type Standing } from "./standing.ts";

/** All paths a definition's inputs read, those of things from where their own path ends. */
export function checkInputs(
  definitions: Definitions,
  coverage: Coverage,
  kind: string,
  inputs: Inputs,
  conditions: readonly Condition[],
): PathFacts {
  const start = standAt(definitions, kind, conditions);
  if (start === null) return unknownKind(definitions, kind);
  const schemas: Schemas = { definitions, coverage, required: true };
  return joined([...inputsAt(schemas, start, inputs), ...checkConditions(schemas, start, conditions)]);
}

/** All paths a calculation reads. */
export function checkCalculationInputs(
  definitions: Definitions,
  coverage: Coverage,
  { appliesTo, inputs }: Calculation,
): PathFacts {
  const { kind, when = [] } = appliesTo;
  const start = standAt(definitions, kind, when);
  if (start === null) return unknownKind(definitions, kind);
  const schemas: Schemas = { definitions, coverage, required: true };
  const read = Object.values(inputs).flatMap((input) => inputsAt(schemas, start, { input: asInput(input) }));
  return joined([...read, ...checkConditions(schemas, start, when)]);
}

function asInput({ path, unit, need, rows, options }: CalculationInput): Input<unknown> {
  const reading: Reading =
    rows !== undefined
      ? { type: "thing", inputs: rows }
      : options !== undefined
        ? { type: "text" }
        : { type: "quantity", unit };
  return { path, need: need ?? "required", many: rows !== undefined, reading };
}

/** Conditions read what is owed; `exists` asks for presence. */
export function checkConditions(
  schemas: Schemas,
  start: Standing,
  conditions: readonly Condition[],
): readonly PathFacts[] {
  return conditions.map(({ path, exists }, index) => {
    // What a condition reads must be owed without it, under those before it: where one of these fails, it is not read.
    const before = conditions.slice(0, index);
    const known = { ...start, anchors: start.anchors.map((anchor) => ({ ...anchor, conditions: before })) };
    const walked = walkPath({ ...schemas, required: exists === undefined }, known, pathOf(path));
    return exists === undefined ? withValue(walked) : walked;
  });
}

/** With the value its path ends at: it is read. */
const withValue = (walked: WalkedPath): WalkedPath =>
  walked.end === null ? walked : { ...walked, reads: [...walked.reads, ...valueAt(walked.end)] };

export function joined(all: readonly PathFacts[]): PathFacts {
  return {
    crosses: all.some(({ crosses }) => crosses),
    whole: all.some(({ whole }) => whole),
    calculations: all.flatMap(({ calculations }) => calculations),
    reads: all.flatMap(({ reads }) => reads),
    problems: all.flatMap(({ problems }) => problems),
  };
}

function inputsAt(schemas: Schemas, start: Standing, inputs: Inputs): readonly PathFacts[] {
  return Object.values(inputs).flatMap((input): readonly PathFacts[] => {
    if (input.reading.type === "table") return [tableFacts(schemas.definitions, input.reading.table)];
    const required = input.need === "required" && input.reading.type !== "exists";
    const walked = walkPath({ ...schemas, required }, start, pathOf(input.path));
    if (walked.end === null) return [walked];
    if (input.reading.type === "exists") return [walked];
    if (input.reading.type !== "thing") return [withValue(walked), readingFacts(walked, input)];
    const draft: Pick<Draft, "crosses" | "reads"> = { crosses: false, reads: [] };
    const problems: string[] = [];
    const end = through(schemas.definitions, draft, walked.end, (text) =>
      problems.push(`path "${input.path}": ${text}`),
    );
    const behind = { ...draft, whole: false, calculations: [], problems };
    if (problems.length > 0) return [walked, behind];
    return [walked, behind, ...inputsAt(schemas, end, input.reading.inputs)];
  });
}

/** A table that a definition asks with keys of its own. */
function tableFacts({ tables }: Definitions, id: string): PathFacts {
  const known = tables.some((table) => table.id === id);
  const near = nearestOrAll(
    id,
    tables.map((table) => table.id),
  );
  return { ...noFacts, problems: known ? [] : [`there is no table "${id}"${near}`] };
}

const noFacts: PathFacts = { crosses: false, whole: false, calculations: [], reads: [], problems: [] };

function readingFacts({ end }: WalkedPath, { path, reading }: Input<unknown>): PathFacts {
  const text = end === null ? undefined : readingProblem(end, reading);
  return { ...noFacts, problems: text === undefined ? [] : [`path "${path}" ${text}`] };
}

/** Why the value a path ends at cannot be read so, or undefined. */
function readingProblem({ field, free }: Standing, reading: Reading): string | undefined {
  if (field?.type === "list") return 'ends at a list: add "[]"';
  if (field?.type === "object") return "ends at an object: name one of its fields";
  const wanted: Partial<Record<Reading["type"], string>> = { date: "date", flag: "boolean" };
  const type = wanted[reading.type];
  if (type !== undefined && free === null && field?.type !== type)
    return `ends at a ${field?.type ?? "record"}, but is read as a ${type}`;
  return reading.type === "quantity" ? unitProblem(field, free, reading.unit) : undefined;
}

function unitProblem(field: Standing["field"], free: Standing["free"], wanted: string): string | undefined {
  if (unitOf(wanted) === undefined) return `is read in "${wanted}", which is no unit`;
  const bad = free?.values?.find((value) => !parseQuantity(value, { unit: wanted }).ok);
  if (bad !== undefined) return `leads to ${bad}, which is no quantity in ${wanted}`;
  const own = free?.unit ?? (field?.type === "quantity" ? (field.difference === true ? "ΔK" : field.unit) : undefined);
  if (own === undefined || own === "any" || unitOf(own) === undefined) return undefined;
  return sameDimension(own, wanted) ? undefined : `leads to a value in ${own}, but is read in ${wanted}`;
}
