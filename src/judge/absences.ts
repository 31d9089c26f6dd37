import type { FindingKey } from "../model/finding-key.ts";
import type { Link } from "../model/graph.ts";
import { byCodePoint } from "../model/order.ts";
import { addressOf } from "../model/record.ts";
import { foldAlike } from "../link/alike.ts";
import type { Court, Want } from "../court/court.ts";
import type { Absence, World } from "../reading/world.ts";
import { noneInBook, absenceOfDue } from "../reading/absent.ts";
import { gapKey } from "./gap-finding.ts";
import { allLacking, isStated, rowOf } from "./whole-rows.ts";
import { withoutKind } from "../link/target.ts";
import { printStep } from "../model/path.ts";

/** One thing that is absent, with all who want it. */
export interface Gap {
  readonly absence: Absence;
  readonly wants: readonly Want[];
  /** Findings that explain the absence: it is not reported again. */
  readonly explained: readonly FindingKey[];
}

interface Group {
  readonly absence: Absence;
  readonly wants: Want[];
  explained: readonly FindingKey[];
}

type Groups = Map<string, Group>;
type Merge = (from: Group, to: Group) => void;

/**
 * One absence, one gap: groups wants by what is absent, then folds what is one absence seen from several sides.
 * Returns the gaps and, for every absence key, the gap it ended up in.
 */
export function foldAbsences(
  court: Court,
  cutOff: string,
): { readonly gaps: readonly Gap[]; readonly of: ReadonlyMap<string, Gap> } {
  const groups: Groups = new Map();
  for (const one of court.wants) {
    // Of a row that its paper states whole nothing is still to come, whatever milestone asks for it.
    const want = isStated(court.world, one.absence, cutOff) ? { ...one, due: "now" as const } : one;
    const group = groups.get(want.absence.key);
    if (group === undefined) groups.set(want.absence.key, { absence: want.absence, wants: [want], explained: [] });
    else group.wants.push(want);
  }
  const keys = [...groups.keys()];
  const into = new Map<string, Group>();
  const live = (group: Group): Group => {
    const next = into.get(group.absence.key);
    return next === undefined ? group : live(next);
  };
  const merge: Merge = (from, to) => {
    const whole = live(to);
    if (from === whole) return;
    into.set(from.absence.key, whole);
    for (const want of from.wants) whole.wants.push(want);
    groups.delete(from.absence.key);
  };
  const all = new Map(groups);
  foldKinds(court.world, groups, merge);
  foldFilters(groups, merge);
  foldLinks(court.world, groups, merge);
  foldTargets(groups, merge);
  foldRows(court, groups, all, merge);
  const of = new Map<string, Gap>();
  for (const key of keys) {
    const group = all.get(key);
    if (group !== undefined) of.set(key, live(group));
  }
  return { gaps: sorted(groups), of };
}

const sorted = (groups: Groups): Group[] =>
  [...groups.values()].sort((a, b) => byCodePoint(a.absence.key, b.absence.key));

/**
 * A kind of which the book holds no record at all is one absence, whoever asks for its records: the one that links
 * name, if they name one only. What is owed at several milestones is one absence for each, and so is each paper that the
 * book itself owes.
 */
function foldKinds(world: World, groups: Groups, merge: Merge): void {
  const byKind = new Map<string, Group[]>();
  for (const group of sorted(groups)) {
    const { kind } = group.absence;
    if (kind !== null && (world.graph.byKind.get(kind)?.size ?? 0) === 0) add(byKind, kind, group);
  }
  for (const [kind, list] of byKind) {
    const [named, ...more] = list.filter(({ absence }) => absence.target !== null);
    if (named !== undefined && more.length === 0) {
      for (const group of list) merge(group, named);
      continue;
    }
    // A paper that the register asks the book for; what a definition looks for among all records is none.
    const isPaper = ({ absence, wants }: Group) =>
      absence.owner === null &&
      absence.filters.length > 0 &&
      wants.some(({ requirement }) => requirement !== undefined);
    const papers = list.some(isPaper);
    const wholes = new Map<string, Group>();
    for (const group of list) {
      // Who asks the book for any of its papers is told of each.
      if (isPaper(group) || (papers && group.absence.owner === null)) continue;
      const due = dueIn(group) ?? [...wholes.keys()][0] ?? "";
      const absence = noneInBook(kind, []);
      const key = wholes.size === 0 ? absence.key : absenceOfDue(absence.key, due);
      const whole = wholes.get(due) ?? groups.get(key) ?? { absence: { ...absence, key }, wants: [], explained: [] };
      wholes.set(due, whole);
      groups.set(whole.absence.key, whole);
      merge(group, whole);
    }
  }
}

/** Milestone at which the register or a field owes it; those who wait for it do not say. */
const dueIn = ({ wants }: Group): string | undefined => wants.find(({ due }) => due !== null)?.due ?? undefined;

const filtersOf = (filters: string): readonly string[] => filters.match(/\[[^\]"]*"[^"]*"\]/g) ?? [];

/** Who wants any of a list wants the same as who wants a certain one, when neither is there. */
function foldFilters(groups: Groups, merge: Merge): void {
  const byBase = new Map<string, Group[]>();
  for (const group of sorted(groups)) {
    const { key, filters, target, short } = group.absence;
    if (target !== null || short !== undefined) continue;
    const base = key.slice(0, key.length - filters.length);
    add(byBase, base, group);
  }
  for (const list of byBase.values()) {
    if (list.length < 2) continue;
    const narrow = [...list].sort((a, b) => filtersOf(b.absence.filters).length - filtersOf(a.absence.filters).length);
    for (const group of list) {
      const own = filtersOf(group.absence.filters);
      const to = narrow.find((other) => {
        const filters = filtersOf(other.absence.filters);
        return filters.length > own.length && own.every((filter) => filters.includes(filter));
      });
      if (to !== undefined) merge(group, to);
    }
  }
}

/**
 * A link that leads nowhere explains one missing link back of its field: the record is there, but names another. The
 * one whose id is most alike is taken first.
 */
function foldLinks(world: World, groups: Groups, merge: Merge): void {
  const bySteps = new Map<string, Group[]>();
  const byLikeness = new Map<string, Group[]>();
  for (const group of sorted(groups)) {
    const { step, owner } = group.absence;
    if (!step.startsWith("<")) continue;
    add(bySteps, step, group);
    add(byLikeness, `${step} ${foldAlike(owner?.record.id ?? "")}`, group);
  }
  if (bySteps.size === 0) return;
  const stepOf = (link: Link) => printStep({ type: "back", kind: link.from.kind, field: link.path });
  const likeness = (link: Link) => foldAlike(link.target?.id ?? withoutKind(link.text));
  const missing = new Map<Group, number>();
  const take = (link: Link, list: readonly Group[] | undefined): boolean => {
    const group = list?.find((one) => (missing.get(one) ?? 1) > 0);
    if (group === undefined) return false;
    const { short } = group.absence;
    const left = (missing.get(group) ?? (short === undefined ? 1 : short.atLeast - short.found.length)) - 1;
    missing.set(group, left);
    const absent = link.state === "absent" && link.target !== null ? groups.get(addressOf(link.target)) : undefined;
    if (left > 0) return true;
    if (absent !== undefined) merge(group, absent);
    else group.explained = world.ledger.doubts(addressOf(link.from, link.pointer));
    return true;
  };
  const lost = world.graph.links.filter((link) => link.state !== "found" && bySteps.has(stepOf(link)));
  const others = lost.filter((link) => !take(link, byLikeness.get(`${stepOf(link)} ${likeness(link)}`)));
  for (const [step, list] of bySteps)
    for (const doubts of unlinked(world, step)) {
      const open = list.filter(({ explained }) => explained.length === 0);
      // A list that is not there may have named them all; a link one.
      for (const group of step.endsWith("[]>") ? open : open.slice(0, 1)) group.explained = doubts;
    }
  const queues = new Map([...bySteps].map(([step, list]) => [step, [...list].reverse()]));
  for (const link of others) {
    const queue = queues.get(stepOf(link)) ?? [];
    while (queue.length > 0 && !take(link, queue.slice(-1))) queue.pop();
  }
}

/** Records whose link a step goes back along is missing, with the findings that say so. */
function unlinked(world: World, step: string): readonly (readonly FindingKey[])[] {
  const [, kind = "", field = ""] = /^<([^:]+):(\w+)(?:\[\])?>$/.exec(step) ?? [];
  return [...(world.graph.byKind.get(kind)?.values() ?? [])].flatMap((record) => {
    if (Object.hasOwn(record.value, field)) return [];
    const doubts = world.ledger.doubts(addressOf(record, `/${field}`));
    return doubts.length === 0 ? [] : [doubts];
  });
}

function add(map: Map<string, Group[]>, key: string, group: Group): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [group]);
  else list.push(group);
}

/** When links name one absent record of a kind, a record of that kind missed elsewhere is that one. */
function foldTargets(groups: Groups, merge: Merge): void {
  const targets = new Map<string, Group[]>();
  for (const group of sorted(groups))
    if (group.absence.target !== null && group.absence.kind !== null) add(targets, group.absence.kind, group);
  for (const group of sorted(groups)) {
    const { target, kind } = group.absence;
    if (target !== null || kind === null || group.explained.length > 0) continue;
    const only = targets.get(kind);
    if (only?.length === 1 && only[0] !== undefined) merge(group, only[0]);
  }
}

/**
 * What one row of a paper lacks is one absence: who has to ask the mill for a heat's analysis asks once. What is explained
 * by another finding, or answered for itself, stays apart.
 */
function foldRows({ world, lifts }: Court, groups: Groups, all: Groups, merge: Merge): void {
  const byRow = new Map<string, Group[]>();
  for (const group of groups.values()) {
    const row = rowOf(world, group.absence);
    if (row === undefined || group.explained.length > 0 || lifts.has(gapKey(world, group))) continue;
    add(byRow, `${addressOf(row.record, row.pointer)} ${dueIn(group) ?? "now"}`, group);
  }
  for (const list of byRow.values()) {
    const [first] = list;
    const row = first === undefined ? undefined : rowOf(world, first.absence);
    if (first === undefined || row === undefined || list.length < 2) continue;
    const absence = allLacking(
      row,
      list.map((group) => group.absence),
      dueIn(first) ?? "now",
    );
    const whole: Group = { absence, wants: [], explained: [] };
    groups.set(absence.key, whole);
    all.set(absence.key, whole);
    for (const group of list) merge(group, whole);
  }
}
