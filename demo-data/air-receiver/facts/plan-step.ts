/** A step of the inspection plan, before it is written as a record. */
export interface Step {
  readonly step: number;
  readonly phase: string;
  readonly activity: string;
  readonly criterion: string;
  readonly procedure?: string;
  /** Parts of the inspection body and of the client; the maker performs every step. */
  readonly body?: "hold" | "witness" | "review" | "approve";
  readonly client?: "witness" | "review";
  readonly by: string;
  readonly done: string;
  readonly notice?: string;
  readonly records: readonly string[];
}

/** Links to records of one kind. */
export const of = (kind: string, ids: string): string[] => ids.split(" ").map((id) => `${kind}:${id}`);
