import type { Basis } from "./basis.ts";
import type { Definitions } from "./definitions.ts";
import type { Condition, Input, Inputs } from "./input.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/**
 * Who owes what a definition reads, and from which milestone: said beside its `inputs`, of what no schema owes. The basis is
 * the definition's own.
 */
export interface Owes {
  readonly owner: Owner;
  readonly due: Milestone;
  /** Names of inputs; of what an input leads to, `rows.wire`; of what a condition reads, its path. */
  readonly inputs: readonly string[];
}

/** `owes: [owedBy("design", "design-approved", "D", "e")]` */
export const owedBy = (owner: Owner, due: Milestone, ...inputs: readonly string[]): Owes => ({ owner, due, inputs });

/** A rule or a calculation, as something that reads records. */
export interface Reader {
  readonly what: "rule" | "calculation";
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  /** Kind it applies to, or `kind#array` for each row. */
  readonly kind: string;
  readonly when: readonly Condition[];
  readonly inputs: Readonly<Record<string, ReadInput>>;
  readonly owes: readonly Owes[];
}

/** A path a definition reads, with what is read of each thing it leads to. */
export interface ReadInput {
  readonly path: string;
  readonly required: boolean;
  readonly inner?: Inputs;
}

/** Every definition that may say what it is owed. */
export const readersOf = ({ rules, calculations }: Pick<Definitions, "rules" | "calculations">): readonly Reader[] => [
  ...rules.map(({ id, title, basis, kind, when = [], inputs, owes = [] }): Reader => ({
    what: "rule",
    id,
    title,
    basis,
    kind,
    when,
    inputs: ofInputs(inputs),
    owes,
  })),
  ...calculations.map(({ id, title, basis, appliesTo: { kind, when = [] }, inputs, owes = [] }): Reader => ({
    what: "calculation",
    id,
    title,
    basis,
    kind,
    when,
    inputs: Object.fromEntries(
      Object.entries(inputs).map(([symbol, { path, need, rows }]) => [
        symbol,
        { path, required: (need ?? "required") === "required", ...(rows !== undefined && { inner: rows }) },
      ]),
    ),
    owes,
  })),
];

/** Inputs of a rule, or of a thing one leads to. */
export const ofInputs = (inputs: Inputs): Reader["inputs"] =>
  Object.fromEntries(
    Object.entries(inputs).map(([name, { path, need, reading }]: [string, Input<unknown>]) => [
      name,
      {
        path,
        required: need === "required" && reading.type !== "exists",
        ...(reading.type === "thing" && { inner: reading.inputs }),
      },
    ]),
  );
