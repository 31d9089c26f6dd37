import type { OutcomeName } from "./outcome-name.ts";
import type { Basis } from "./basis.ts";
import type { FindingKey } from "./finding-key.ts";
import type { Finding, Related, Severity } from "./finding.ts";
import { ProgramError } from "./program-error.ts";
import type { Address, BookRecord } from "./record.ts";
import { digestOf } from "./stable.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/** The check that finds something: a rule, a fact, a calculation, a check built into the tool. */
export interface Finder {
  readonly id: string;
  readonly basis: Basis;
  /** Default: nonconformity. */
  readonly severity?: Severity;
  /** Who must act; default: document control. */
  readonly owner?: Owner;
}

/** What a finding is about, and where it is shown; `locate` of the court gives both, and more that does not count here. */
export type Spot = Pick<Finding, "subject" | "place">;

/** What is said of it. Only what differs from the default is named. */
export type Said = Words & Resting;

/** What an answer to it rests on: the values it was made of. Never its words, which may be put better without any value changing. */
type Resting =
  | { readonly digest: string }
  /** The values in one text, of which the digest is taken: ids and figures as they are recorded. */
  | { readonly about: string };

interface Words {
  readonly key: FindingKey;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** Instead of those of the check. */
  readonly severity?: Severity;
  readonly basis?: Basis;
  readonly owner?: Owner;
  /** Default: failed, since evidence shows it. */
  readonly verdict?: Finding["verdict"];
  readonly due?: Milestone | null;
  readonly related?: readonly Related[];
  readonly waiting?: readonly OutcomeName[];
  readonly accuses?: readonly Address[];
  readonly disputes?: readonly Address[];
}

const none: readonly never[] = [];

/** The one way to make a finding: its fields stand here in their order, with what holds of most of them. */
export function newFinding(by: Finder, { subject, place }: Spot, said: Said): Finding {
  const { key, message, why, hint, disputes } = said;
  return {
    key,
    rule: by.id,
    severity: said.severity ?? by.severity ?? "nonconformity",
    verdict: said.verdict ?? "failed",
    subject,
    place,
    message,
    why,
    hint,
    basis: said.basis ?? by.basis,
    owner: said.owner ?? by.owner ?? "document control",
    due: said.due ?? null,
    digest: "digest" in said ? said.digest : digestOf(said.about),
    related: said.related ?? none,
    waiting: said.waiting ?? none,
    exception: null,
    accuses: said.accuses ?? none,
    ...(disputes !== undefined && { disputes }),
  };
}

/** A place in a record. */
export const spotIn = ({ kind, id, file, pointer: base }: BookRecord, pointer: string): Spot => ({
  subject: { kind, id },
  place: { file, pointer: base + pointer },
});

/** The book as a whole, which stands in no one place. */
export const inBook: Finding["place"] = { file: "book.json", pointer: "" };

/** The check of a list that bears a name. The list is the program's own: the type says which names there are. */
export function finderOf<T extends Finder>(list: readonly T[], id: T["id"]): T {
  const found = list.find((one) => one.id === id);
  if (found === undefined) throw new ProgramError(`there is no built-in check ${id}`);
  return found;
}
