import type { Definitions } from "../model/definitions.ts";
import type { Condition, Inputs } from "../model/input.ts";
import type { Field } from "../model/kind.ts";
import { pathOf } from "../reading/bind.ts";
import { checkCalculationInputs, checkInputs } from "./check-inputs.ts";
import { checkPath } from "./check-paths.ts";
import type { PathFacts } from "./path-facts.ts";
import { resultChecks } from "./result-checks.ts";
import { coverageOf } from "./coverage.ts";
import { standAt, type Anchor } from "./standing.ts";

/** A field that a definition reads, before any book is read. */
export interface Read {
  readonly field: Field;
  /** Whether what it says is read, not only whether it is there or what it holds. */
  readonly value: boolean;
  /** Values of which one must stand at a field of what it is read of, else it is never read. */
  readonly asks: readonly Asked[];
  /** The row that asks for it, of a register. */
  readonly row?: string;
}

/** A condition that compares: the field, the kind it is of, and the values it may have. */
export interface Asked {
  readonly kind: string;
  readonly field: Field;
  readonly values: readonly string[];
}

/** Every field that a rule, a calculation, a closer or a row of a register reads, with the conditions under which it does. */
export function readsOf(definitions: Definitions): readonly Read[] {
  const { kinds, registers, rules, calculations, closers = [] } = definitions;
  const coverage = coverageOf(definitions);
  const asked = askedIn(definitions);
  const reads = (
    kind: string,
    when: readonly Condition[],
    { reads: own }: PathFacts,
    row?: string,
  ): readonly Read[] => {
    const start = standAt(definitions, kind, when);
    const rows = start === null || start.list === "" ? undefined : kinds.get(start.kind ?? "")?.fields.get(start.list);
    const all =
      rows === undefined || start === null ? own : [...own, { field: rows, anchors: start.anchors, value: false }];
    return all.map(({ field, anchors, value }) => ({
      field,
      value,
      asks: asked(anchors),
      ...(row !== undefined && { row }),
    }));
  };
  const inputs = (kind: string, read: Inputs, when: readonly Condition[] = [], row?: string) =>
    reads(kind, when, checkInputs(definitions, coverage, kind, read, when), row);
  const results = [...new Set(resultChecks(kinds).map(({ kind }) => kind))];
  return [
    ...rules.flatMap(({ kind, when, inputs: read }) => inputs(kind, read, when)),
    ...calculations.flatMap((one) =>
      reads(one.appliesTo.kind, one.appliesTo.when ?? [], checkCalculationInputs(definitions, coverage, one)),
    ),
    ...closers.flatMap((one) =>
      (one.kinds === "any" ? results : one.kinds).flatMap((kind) => inputs(kind, one.inputs)),
    ),
    ...registers.flatMap(({ requirements }) =>
      requirements.flatMap(({ id, each: { kind, when }, needs }) => [
        ...reads(kind, when ?? [], checkPath(definitions, coverage, kind, pathOf(needs), false, when), id),
        ...inputs(kind, {}, when, id),
      ]),
    ),
  ];
}

/** By fact, the fields that each of its statements passes, the one that states it last. */
export function statedFields(definitions: Definitions): readonly (readonly (readonly Field[])[])[] {
  const coverage = coverageOf(definitions);
  const passed = (path: string) =>
    checkPath(definitions, coverage, "book", pathOf(path), false).reads.map(({ field }) => field);
  return definitions.facts.map(({ statements }) => statements.map(passed));
}

function askedIn(definitions: Definitions): (anchors: readonly Anchor[]) => readonly Asked[] {
  const known = new Map<string, readonly Asked[]>();
  const of = (kind: string, { path, equals }: Condition): readonly Asked[] => {
    const { end } = checkPath(definitions, [], kind, pathOf(path), false);
    if (equals === undefined || end?.field == null || end.kind === null) return [];
    return [{ kind: end.kind, field: end.field, values: (Array.isArray(equals) ? equals : [equals]).map(String) }];
  };
  return (anchors) =>
    anchors.flatMap(({ kind, conditions }) =>
      conditions.flatMap((condition) => {
        const key = JSON.stringify([kind, condition]);
        const found = known.get(key) ?? of(kind, condition);
        known.set(key, found);
        return found;
      }),
    );
}
