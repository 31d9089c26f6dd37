import type { AnnouncedLimit, AnnouncedSymbol, Announcement, LimitSense } from "../model/announcement.ts";
import type { Done } from "../model/book.ts";
import type { Announced, Missing } from "../model/missing.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { printAllowed, printFigure, printNumber, printRequired, withUnit } from "../model/print-number.ts";
import { pathOf } from "../reading/bind.ts";
import { follow } from "../reading/follow.ts";
import { readText } from "../reading/hit.ts";
import { holds, subjectsOf, type Applicant } from "../reading/subjects.ts";
import { mergeTrail, newTrail, type Trail } from "../reading/trail.ts";
import { type Pending, type World } from "../reading/world.ts";
import { calculationKey } from "../model/calculation-key.ts";

type Limit = AnnouncedLimit | AnnouncedSymbol;

/** What there is to say of one subject; a rule has no result of its own. */
interface Told {
  readonly definition: string;
  readonly one: Applicant;
  readonly result?: { readonly calculation: Calculation; readonly done: Done | Pending };
}

/**
 * Limits of measurements that are owed and not there yet, in the order of the definitions. What somebody owes is asked of
 * the list of what is missing: a value that nobody owes is awaited by nobody.
 */
export function announcedIn(
  world: World,
  { calculations, rules }: Definitions,
  missing: readonly Missing[],
  findings: readonly Finding[],
): readonly Announced[] {
  if (missing.length === 0) return [];
  const list = { ...wantedBy(missing), findings: new Map(findings.map(({ key, message }) => [key, message])) };
  return [
    ...calculations.flatMap((calculation) =>
      calculation.announces === undefined
        ? []
        : casesOf(world, calculation).flatMap((told) => tellAll(world, list, told, calculation.announces ?? [])),
    ),
    ...rules.flatMap(({ id, kind, when, announces }) =>
      announces === undefined
        ? []
        : subjectsOf(world, kind)
            .filter((one) => holds(world, when, one.hit, newTrail()))
            .flatMap((one) => tellAll(world, list, { definition: id, one }, announces)),
    ),
  ];
}

interface Wanted {
  readonly byAbsence: ReadonlyMap<string, Missing>;
  /** Of a kind of which the book holds none, its first absence: whoever asks for a record of it asks for that. */
  readonly byKind: ReadonlyMap<string, Missing>;
}

interface Lists extends Wanted {
  readonly findings: ReadonlyMap<string, string>;
}

function wantedBy(missing: readonly Missing[]): Wanted {
  const wholly = missing.filter(({ kind, at, target }) => kind !== null && (at === null || target !== null));
  return {
    byAbsence: new Map(missing.flatMap((one) => one.absences.map((key) => [key, one] as const))),
    byKind: new Map([...wholly].reverse().map((one) => [one.kind ?? "", one])),
  };
}

/** Every subject a calculation applies to, with its result as far as there is one. */
function casesOf(world: World, calculation: Calculation): readonly Told[] {
  return subjectsOf(world, calculation.appliesTo.kind).flatMap((one) => {
    const done = world.computed.get(calculationKey(calculation.id, one.record, one.pointer));
    return done === undefined || ("pending" in done && done.notApplicable)
      ? []
      : [{ definition: calculation.id, one, result: { calculation, done } }];
  });
}

const tellAll = (world: World, lists: Lists, told: Told, all: readonly Announcement<Limit>[]): readonly Announced[] =>
  all.flatMap((announcement) => tell(world, lists, told, announcement) ?? []);

function tell(world: World, lists: Lists, told: Told, announcement: Announcement<Limit>): Announced | undefined {
  const { record, pointer, hit } = told.one;
  const { awaits, when, remark } = announcement;
  if (!holds(world, when, hit, newTrail())) return undefined;
  const trail = newTrail();
  follow(world, pathOf(awaits), hit, trail);
  const owed = new Set(
    trail.absences.flatMap(({ key, kind }) => {
      const none = kind !== null && (world.graph.byKind.get(kind)?.size ?? 0) === 0;
      return lists.byAbsence.get(key) ?? (none ? lists.byKind.get(kind) : undefined) ?? [];
    }),
  );
  if (owed.size === 0) return undefined;
  const doubts = newTrail();
  const limits = announcement.limits.flatMap((limit) => limitOf(world, told, limit, doubts) ?? []);
  return {
    definition: told.definition,
    subject: record,
    pointer,
    awaits: [...owed].map(({ key }) => key),
    of: [...new Set([...owed].map(({ what }) => what))].join(" and "),
    ...(remark !== undefined && { remark }),
    limits,
    because: limits.some(({ value }) => value === null) ? whyOpen(lists, told, doubts) : [],
  };
}

type Said = Announced["limits"][number];

/** A limit with its value; one that does not apply to this subject is left out. */
function limitOf(world: World, { one, result }: Told, limit: Limit, doubts: Trail): Said | undefined {
  if ("symbol" in limit) return result === undefined ? undefined : symbolOf(result, limit.symbol, limit.is);
  const { is, means } = limit;
  if ("parameter" in limit) return { is, means, value: world.parameters.get(limit.parameter)?.value ?? null };
  const trail = newTrail();
  const [found] = follow(world, pathOf(limit.path), one.hit, trail, false);
  const value = found === undefined ? undefined : readText(world, found, trail);
  if (value === undefined) return undefined;
  mergeTrail(doubts, trail);
  return { is, means, value: trail.doubts.length > 0 ? null : value };
}

function symbolOf({ calculation, done }: NonNullable<Told["result"]>, symbol: string, is: LimitSense) {
  const step = calculation.steps.find((own) => own.symbol === symbol);
  const means = step?.means ?? calculation.inputs[symbol]?.means ?? "";
  const known = "pending" in done ? done.known : done;
  const value = known === undefined ? undefined : valueOf(known, symbol);
  // In a result that waits for nothing, what has no value was left out because it is not asked here.
  if (value === undefined && !("pending" in done)) return undefined;
  return { is, means, value: value ?? null };
}

/** Rounded as its page prints it: what is required up, what is allowed down. */
function valueOf({ steps, inputs, calculation }: Done, symbol: string): string | undefined {
  const computed = steps.find(({ step }) => step.symbol === symbol);
  if (computed === undefined) {
    const { written, value } = inputs.get(symbol) ?? {};
    return (
      written ??
      (value === undefined ? undefined : withUnit(printFigure(value), calculation.inputs[symbol]?.unit ?? ""))
    );
  }
  const { step, value } = computed;
  if (step.options !== undefined) return step.options[value];
  if (step.round === undefined) return withUnit(printFigure(value), step.unit);
  const { decimals, direction } = step.round;
  const print = direction === "up" ? printRequired : direction === "down" ? printAllowed : printNumber;
  return withUnit(print(value, decimals), step.unit);
}

/** What stands in the way of a result, in the words of gaps and findings. */
function whyOpen({ byAbsence, findings }: Lists, { result }: Told, { doubts }: Trail): readonly string[] {
  const pending = result !== undefined && "pending" in result.done ? result.done : undefined;
  const { absences = [], findings: keys = [] } = pending ?? {};
  return [
    ...new Set([
      ...absences.flatMap(({ key }) => byAbsence.get(key)?.message ?? []),
      ...[...keys, ...doubts].flatMap((key) => findings.get(key) ?? []),
    ]),
  ];
}
