import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { isList, isObject, type JsonObject } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { keyOf } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

const listed: BuiltIn = {
  id: "issue-history",
  title: "A later revision lists the issues before it, each final one with its fingerprint",
  severity: "gap",
  reads: [
    {
      kinds: ["issue"],
      paths: ["revision", "state", "history[].revision", "history[].state", "history[].fingerprint"],
    },
  ],
  basis: ownChoice(
    "what was issued before is in the book itself: an empty folder or another machine remembers nothing",
  ),
};
const once: BuiltIn = {
  id: "issue-once",
  title: "A final revision is issued once",
  severity: "nonconformity",
  basis: ownChoice("two books that bear one revision and differ cannot both be the one that was signed"),
};

export const historyRules: readonly BuiltIn[] = [listed, once];

/** Revisions that begin a series by their name: 0, 00, A, P1. A series that begins otherwise lists its first issue itself. */
const first = /^(?:[A-Za-z]*[-. ]?0+|[A-Za-z]+[-. ]?0*1|A|a)$/;

/**
 * Holds the history in issue.json against this issue: that it is there, ends with it, tells final issues by their evidence
 * fingerprint, and does not know this revision as final with another. No exception answers it: the line is in the writer's hand.
 */
export function historySound(court: Court, issue: BookRecord, fingerprint: string): void {
  const revision = textOf(issue.value, "revision");
  const history = issue.value["history"];
  const rows = isList(history) ? history : [];
  const say = (check: BuiltIn, pointer: string, name: string, said: Said) => {
    const accused = addressOf(issue, pointer);
    if (court.world.ledger.doubts(accused).length > 0) return;
    addFinding(
      court,
      newFinding(check, locate(court.world, issue, pointer), {
        key: keyOf(check.id, issue, name),
        ...said,
        about: `${said.message}${said.why}`,
        accuses: [accused],
      }),
    );
  };
  if (revision === "") return;
  if (rows.length === 0) {
    if (!first.test(revision))
      say(listed, "/revision", "history", {
        message: `no history lists the issues before revision ${revision}`,
        why: "issue.json has no history, and the revision is not a first one by its name",
        hint: "add a history: a line for each issue so far, this one last, with revision, state, date and reason, and of each final one the evidence fingerprint; a first issue lists itself",
      });
    return;
  }
  const last = rows.at(-1);
  if (!isObject(last) || textOf(last, "revision") !== revision)
    say(listed, `/history/${rows.length - 1}`, "last", {
      message: `the history ends with revision ${isObject(last) ? textOf(last, "revision") : ""}, and this is revision ${revision}`,
      why: "the history lists the issues of the book, oldest first, and ends with this one",
      hint: `add a line for revision ${revision} with its reason, or correct the revision`,
    });
  rows.forEach((row, index) => {
    if (!isObject(row) || row["state"] !== "final") return;
    const own = textOf(row, "revision");
    const known = textOf(row, "fingerprint");
    if (own === revision && known !== "" && known !== fingerprint)
      say(once, `/history/${index}/fingerprint`, `history[${own}].fingerprint`, {
        message: `revision ${own} was issued as final with other evidence`,
        why: `issued with evidence fingerprint ${known}; the records now give ${fingerprint}`,
        hint: "raise the revision, with its reason in the history; or put the records back as they were issued",
      });
    else if (known === "" && index < rows.length - 1)
      say(listed, `/history/${index}`, `history[${own}].fingerprint`, {
        message: `the history gives no evidence fingerprint of the final revision ${own}`,
        why: "without it nobody can tell whether that revision is issued a second time with other evidence",
        hint: "copy it from the front page of that issue, or from what verify prints of it",
      });
  });
}

interface Said {
  readonly message: string;
  readonly why: string;
  readonly hint: string;
}

const textOf = (value: JsonObject, field: string): string => {
  const found = value[field];
  return typeof found === "string" ? found : "";
};
