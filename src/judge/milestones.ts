import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Field } from "../model/kind.ts";
import { milestoneDays } from "../model/milestone-days.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Requirement } from "../model/requirement.ts";
import { nearestIds } from "../link/alike.ts";
import { byCodePoint } from "../model/order.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import type { World } from "../reading/world.ts";
import type { Owing } from "../plan/owed-inputs.ts";
import { keyOf, type FindingKey } from "../model/finding-key.ts";
import { kindIn } from "../model/kind-text.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const basis = ownChoice(
  "milestones make evidence due; issue.json lists them in order, each with the day it was reached",
);

export const milestoneRules = [
  {
    id: "milestone-listed",
    title: "Every milestone that makes evidence due is listed in issue.json",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: ["issue"], paths: ["milestones[].name", "milestones[].reached"] }],
  },
  { id: "milestone-order", title: "A milestone is not passed over", severity: "query", basis },
] as const satisfies readonly BuiltIn[];

/** Which milestones of this issue are reached. In a final issue everything is due. */
export interface Calendar {
  readonly final: boolean;
  readonly names: readonly string[];
  /** Position in the order of milestones; "now" comes first, one that is not listed last. */
  rank(milestone: string): number;
  isDue(milestone: string): boolean;
  isListed(milestone: string): boolean;
}

export function calendarOf(issue: BookRecord): Calendar {
  const final = issue.value["state"] === "final";
  const milestones = milestoneDays(issue);
  const reached = new Set(milestones.flatMap((one) => (one.reached ? [one.name] : [])));
  const names = milestones.map(({ name }) => name);
  const ranks = new Map(names.map((name, index) => [name, index]));
  return {
    final,
    names,
    rank: (milestone) => (milestone === "now" ? -1 : (ranks.get(milestone) ?? names.length)),
    isDue: (milestone) => final || milestone === "now" || reached.has(milestone),
    isListed: (milestone) => milestone === "now" || ranks.has(milestone),
  };
}

/** Key of the finding that a milestone is not listed: what is due at it waits for that. */
export const unlistedKey = (issue: BookRecord, milestone: string): FindingKey =>
  keyOf("milestone-listed", issue, milestone);

/** Milestones that fields of the records there are, definitions about them, or rows of the register use and the issue does not list. */
export function checkListed(
  court: Court,
  issue: BookRecord,
  calendar: Calendar,
  register: readonly Requirement[],
  owing: readonly Owing[],
): void {
  if (court.world.ledger.doubts(addressOf(issue, "/milestones")).length > 0) return;
  const used = new Map<string, Set<string>>();
  for (const { due, title } of register) add(used, due, `"${title}" of the register`);
  for (const { kind, paths } of owing)
    if (court.world.graph.byKind.has(kindIn(kind)))
      for (const { due, by } of [...paths.values()].flat()) add(used, due, `what "${by.title}" reads`);
  for (const kind of court.world.graph.byKind.keys())
    dueIn(court.world.kinds.get(kind)?.fields.values() ?? [], kind, used);
  for (const [name, users] of [...used].sort(([a], [b]) => byCodePoint(a, b))) {
    if (calendar.isListed(name)) continue;
    const [first = "", ...more] = users;
    const [near] = nearestIds(name, calendar.names);
    say(court, issue, "milestone-listed", name, {
      message: `issue.json lists no milestone "${name}"`,
      why: `${first}${more.length === 0 ? "" : ` and ${more.length} more`} become due at it`,
      hint: `add {"name": "${name}"} at its place in the order, with "reached" once it is${
        near === undefined ? "" : `; or, if "${near}" is meant, correct the name where it is used`
      }`,
    });
  }
}

function dueIn(fields: Iterable<Field>, owner: string, used: Map<string, Set<string>>): void {
  for (const field of fields) {
    const name = `${owner}.${field.name}`;
    if (field.due !== undefined) add(used, field.due, name);
    dueIn(field.fields?.values() ?? [], name, used);
    if (field.item !== undefined) dueIn(field.item.fields?.values() ?? [], `${name}[]`, used);
  }
}

function add(used: Map<string, Set<string>>, milestone: string, user: string): void {
  used.set(milestone, (used.get(milestone) ?? new Set()).add(user));
}

/** A milestone that is not reached though a later one is: what is due at it would stay out of sight. */
export function checkPassedOver(court: Court, issue: BookRecord, calendar: Calendar): void {
  if (calendar.final) return;
  for (const [index, name] of calendar.names.entries()) {
    const later = calendar.names.slice(index + 1).find((other) => calendar.isDue(other));
    if (calendar.isDue(name) || later === undefined) continue;
    const words = {
      message: `milestone "${name}" is not reached, but "${later}" is`,
      why: "milestones are listed in the order of manufacture",
      hint: `enter the day "${name}" was reached, or correct the order`,
    };
    say(court, issue, "milestone-order", name, words, later);
  }
}

function say(
  court: Court,
  issue: BookRecord,
  rule: (typeof milestoneRules)[number]["id"],
  name: string,
  words: { readonly message: string; readonly why: string; readonly hint: string },
  ...others: readonly string[]
): void {
  const at = pickPlace(court.world, issue);
  const about = [name, ...others].join("\n");
  addFinding(court, newFinding(finderOf(milestoneRules, rule), at, { key: keyOf(rule, issue, name), ...words, about }));
}

function pickPlace(world: World, issue: BookRecord) {
  const { subject, place } = locate(world, issue, "/milestones");
  return { subject, place };
}
