import type { Basis } from "./basis.ts";
import type { Place } from "./place.ts";
import type { Address } from "./record.ts";
import type { Milestone, Owner } from "./vocabulary.ts";
import type { CalculationKey } from "./calculation-key.ts";
import type { FindingKey } from "./finding-key.ts";
import type { OutcomeName } from "./outcome-name.ts";

/**
 * nonconformity: evidence shows it is wrong · gap: evidence is missing · query: needs a human decision on record ·
 * note: never blocks.
 */
export type Severity = "nonconformity" | "gap" | "query" | "note";

/** computed: figures that others work with; nothing is asked of them, so that it is no pass. */
export type Verdict = "passed" | "computed" | "failed" | "not judged" | "not applicable";

export interface Subject {
  readonly kind: string;
  readonly id: string;
}

export interface Related {
  readonly subject: Subject | null;
  readonly place: Place;
  readonly message: string;
}

/** An objection, an absence, or an own reason for not judging. The unit people work with. */
export interface Finding {
  /** Stable name across builds: rule + subject + row or input name; exceptions cite it. */
  readonly key: FindingKey;
  readonly rule: string;
  readonly severity: Severity;
  readonly verdict: "failed" | "not judged";
  readonly subject: Subject | null;
  readonly place: Place;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  readonly basis: Basis;
  /** Who must act. */
  readonly owner: Owner;
  /** Milestone that made it due, if evidence is missing. */
  readonly due: Milestone | null;
  /** Digest of every value the outcome read: an exception cites it, and another value revives the finding. */
  readonly digest: string;
  readonly related: readonly Related[];
  /** Outcomes that could not be judged because of it. */
  readonly waiting: readonly OutcomeName[];
  /** Id (`kind:id`) of the exception that answers it. */
  readonly exception: Address | null;
  /** Places this finding throws doubt on; whatever reads them later waits for it. */
  readonly accuses: readonly Address[];
  /** Places it does not know to be wrong: what passes on them passes, what later objects because of them waits for it. */
  readonly disputes?: readonly Address[];
}

/** Whether a finding keeps a book from being released. */
export function blocks(finding: Pick<Finding, "severity" | "exception">): boolean {
  return finding.severity !== "note" && finding.exception === null;
}

/** One definition applied to one record. */
export interface Outcome {
  readonly definition: string;
  readonly subject: Subject | null;
  readonly verdict: Verdict;
  /** Keys of the findings that are this outcome's own. */
  readonly findings: readonly FindingKey[];
  /** Why it is not judged. */
  readonly because?: Because;
  /** Records it read, its subject among them, as `kind:id`; of what does not apply none. */
  readonly reads: readonly Address[];
  /** Recomputed results it read, each by its `calculationKey`; absent where there are none. */
  readonly results?: readonly CalculationKey[];
  /** What is recorded there was rejected, and nothing has closed it. */
  readonly refused?: true;
  /** Values it held against limits, where its definition says so; none while it is not judged. */
  readonly compared?: readonly Compared[];
  /** Exceptions (`kind:id`) that answer all that stands against it; absent while anything is open. */
  readonly answered?: readonly Address[];
}

/** One value as a definition held it against its limits: pages print these, and look up nothing. */
export interface Compared {
  /** What was compared: an element, or a sum such as `Cr+Ni`. */
  readonly name: string;
  readonly places: readonly Address[];
  readonly value: string;
  readonly least?: string;
  readonly most?: string;
  readonly basis: Basis;
  readonly verdict: Verdict;
}

export type Because =
  | { readonly type: "finding"; readonly keys: readonly FindingKey[] }
  | { readonly type: "absent"; readonly keys: readonly FindingKey[] }
  | { readonly type: "not due"; readonly milestone: string };
