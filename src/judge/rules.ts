import type { Compared, Finding, Subject } from "../model/finding.ts";
import type { Inputs, Thing } from "../model/input.ts";
import { ProgramError } from "../model/program-error.ts";
import { addressOf } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";
import type { At, Objection, Rule } from "../model/rule.ts";
import { bindInputs, pathOf, type Bound } from "../reading/bind.ts";
import { handleOf } from "../reading/handle.ts";
import { conclude, endStage, locate, type Court } from "../court/court.ts";
import { grouped } from "../model/grouped.ts";
import { parsePath } from "../model/path.ts";
import { missingField, noneBack } from "../reading/absent.ts";
import { follow } from "../reading/follow.ts";
import type { Hit } from "../reading/hit.ts";
import { outvote, type HeldAgainst } from "../court/outvoted.ts";
import { caseOf, holds, subjectsOf, type Applicant, type Case } from "../reading/subjects.ts";
import { clear, digestOfReads, newTrail, type Trail } from "../reading/trail.ts";
import { Waiting } from "../reading/value.ts";
import { newVisits } from "../reading/visits.ts";
import type { Absence, World } from "../reading/world.ts";
import { keyOf, type FindingKey } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

/** Applies rules that hold records against one value of the book, those of one fault weighed together. */
export function applyAgainst(court: Court, rules: readonly Rule[]): void {
  const held = new Map<string, { readonly value: HeldAgainst; readonly keys: FindingKey[] }>();
  for (const rule of rules) {
    const before = new Set(court.fresh);
    applyRule(court, rule, true);
    const keys = [...court.fresh].filter((key) => !before.has(key));
    if (rule.against === undefined || keys.length === 0) continue;
    const { input, ...words } = rule.against;
    // All subjects read the same value: where it stands, any of them knows.
    const path = rule.inputs[input]?.path;
    const [hit] = path === undefined ? [] : follow(court.world, pathOf(path), null, newTrail(), false);
    if (hit?.record == null) throw new ProgramError(`rule ${rule.id} holds its subjects against no value of a record`);
    const { record, pointer, value } = hit;
    const known = held.get(words.fault) ?? {
      value: { ...words, record, pointer, text: typeof value === "object" ? "" : String(value) },
      keys: [],
    };
    known.keys.push(...keys);
    held.set(words.fault, known);
  }
  for (const { value, keys } of held.values()) outvote(court, keys, value);
}

/** Applies a rule to every record (or row) of its kind. `within`: it reads one record, so an objection accuses its `at`. */
export function applyRule(court: Court, rule: Rule, within: boolean): void {
  for (const one of subjectsOf(court.world, rule.kind)) {
    applyRuleTo(court, rule, one, within);
    // Who meets a disputed value next waits for the first who met it.
    if (rule.disputes !== undefined) endStage(court);
  }
}

/** Applies a rule to one subject. */
export function applyRuleTo(court: Court, rule: Rule, one: Applicant, within: boolean): void {
  const { world } = court;
  const said = visit(world, rule, one.address, () => say(world, rule, caseOf(world, one), within));
  const { trail, applies, findings, compared, lacking } = said;
  const wanted = court.wants.length;
  const outcome = conclude(court, rule, one.subject, trail, findings, applies);
  wantLacking(court, rule, lacking, wanted);
  if (lacking.length > 0 || (compared.length > 0 && (outcome.verdict !== "not judged" || outcome.findings.length > 0)))
    court.outcomes[court.outcomes.length - 1] = {
      ...(compared.length > 0 && { compared }),
      ...(lacking.length > 0 && { asks: true }),
      ...outcome,
    };
}

/** What a rule says of one subject, and what it went by. */
interface Heard extends Said {
  readonly trail: Trail;
  readonly applies: boolean;
}

const visit = newVisits<Heard>(({ trail }) => trail.absences.length > 0 || trail.reasons.length > 0);

function say(world: World, rule: Rule, one: Case, within: boolean): Heard {
  const { trail } = one;
  const applies = holds(world, rule.when, one.hit, trail);
  const said = applies ? object(world, rule, one, within) : nothing;
  trail.absences.push(...said.lacking.map(({ absence }) => absence));
  return { trail, applies, ...said };
}

interface Said {
  readonly findings: readonly Finding[];
  readonly compared: readonly Compared[];
  readonly lacking: readonly Lacking[];
}

/** Something a rule demands that is not there, and what demands it. */
interface Lacking {
  readonly absence: Absence;
  readonly why: string;
}

const nothing: Said = { findings: [], compared: [], lacking: [] };

/** The wants of a rule for what it demands say what for, and when it is owed. */
function wantLacking({ wants }: Court, rule: Rule, lacking: readonly Lacking[], from: number): void {
  const whys = grouped(lacking, ({ absence }) => absence.key);
  for (let index = from; index < wants.length; index++) {
    const want = wants[index];
    const same = want === undefined ? undefined : whys.get(want.absence.key);
    if (want !== undefined && same !== undefined)
      wants[index] = { ...want, due: rule.lacksDue ?? null, why: [...new Set(same.map(({ why }) => why))].join(", ") };
  }
}

/** Runs the rule's own code; a required value that is absent ends it, and the trail says what. */
function object(world: World, rule: Rule, one: Case, within: boolean): Said {
  const bound = bindInputs(world, rule.inputs, one.hit, one.trail);
  if (!bound.complete) return nothing;
  const objections: Objection<Inputs>[] = [];
  try {
    // What is objected to before anything doubted or absent is read does not rest on it.
    for (const objection of rule.check(bound.values, handleOf(world, one.hit)))
      if (clear(one.trail)) objections.push(objection);
  } catch (reason) {
    if (!(reason instanceof Waiting)) throw reason;
  }
  const isClear = clear(one.trail);
  const compared = isClear ? comparedBy(rule, one, bound) : [];
  const lacking = isClear ? lackedBy(rule, one, bound) : [];
  if (objections.length === 0) return { findings: [], compared, lacking };
  const digest = digestOfReads(world, one.trail);
  const findings = objections.map((objection) => toFinding(world, rule, one, bound, objection, within, digest));
  const keys = new Set(findings.map(({ key }) => key));
  if (keys.size < findings.length && world.ledger.empty)
    throw new ProgramError(
      `rule ${rule.id} objects twice with one key to ${one.subject.kind} ${one.subject.id}: name its objections`,
    );
  return { findings, compared, lacking };
}

/** What a rule demands and does not find, as absences of where it looked. */
function lackedBy(rule: Rule, { hit }: Case, bound: Bound): readonly Lacking[] {
  if (rule.lacks === undefined) return [];
  return [...rule.lacks(bound.values)].flatMap(({ at, path, why }) => {
    const [place] = hitsOf(bound, hit, at);
    const [head, ...filters] = parsePath(path).steps;
    const absence =
      place?.record == null || filters.some(({ type }) => type !== "filter")
        ? undefined
        : head?.type === "field"
          ? missingField(place.record, place.pointer, head.name, filters)
          : head?.type === "back"
            ? noneBack(place.record, place.pointer, head, filters)
            : undefined;
    if (absence === undefined)
      throw new ProgramError(
        `rule ${rule.id} lacks "${path}", which is no field of a record or row it reads, and no way back to it`,
      );
    return [{ absence, why }];
  });
}

/** What a rule says of the values it held against limits. Where a table gave the limit, its row says on which basis. */
function comparedBy(rule: Rule, { hit, trail }: Case, bound: Bound): readonly Compared[] {
  if (rule.compares === undefined) return [];
  const [, basis] = trail.bases.findLast(([name]) => name.startsWith("table ")) ?? ["", rule.basis];
  return [...rule.compares(bound.values)].map(({ at, ...one }) => ({
    places: at.flatMap((place) => hitsOf(bound, hit, place).flatMap(addressOfHit)),
    basis,
    ...one,
  }));
}

function toFinding(
  world: World,
  rule: Rule,
  { hit: subject, subject: about }: Case,
  bound: Bound,
  objection: Objection<Inputs>,
  within: boolean,
  digest: string,
): Finding {
  const at = hitsOf(bound, subject, objection.at).find(({ record }) => record !== null) ?? subject;
  const on = objection.on === undefined ? subject : (hitsOf(bound, subject, objection.on)[0] ?? subject);
  const owner = on.record ?? subject.record;
  const record = at.record;
  if (record === null || owner === null) throw new ProgramError(`rule ${rule.id} points at nothing`);
  const unsure = objection.unsure === true;
  const accused = objection.accuses ?? (within ? [objection.at] : []);
  const where = locate(world, owner, on.record === null ? subject.pointer : on.pointer).name;
  const spot = { subject: subjectOf(about), place: locate(world, record, at.pointer).place };
  return newFinding(rule, spot, {
    key: keyOf(rule.fault ?? rule.id, owner, [where, objection.name ?? ""].filter((part) => part !== "").join(" ")),
    ...(unsure && { severity: "query", verdict: "not judged" }),
    message: objection.message,
    why: rule.shared !== undefined && standsOnShelf(subject) ? `${objection.why}; ${rule.shared}` : objection.why,
    hint: objection.hint,
    digest,
    related: (objection.related ?? []).flatMap((one) => relatedOf(world, bound, subject, one)),
    accuses: accused.flatMap((one) => hitsOf(bound, subject, one).flatMap(addressOfHit)),
    ...(rule.disputes !== undefined && {
      disputes: rule.disputes.flatMap((name) => hitsOf(bound, subject, name).flatMap(addressOfHit)),
    }),
  });
}

/** Other books may have taken from what stands on a shelf. */
const standsOnShelf = ({ record }: Hit) => record !== null && shelfOf(record.file) !== undefined;

const subjectOf = ({ kind, id }: Subject): Subject => ({ kind, id });

const addressOfHit = (hit: Hit) => (hit.record === null ? [] : [addressOf(hit.record, hit.pointer)]);

function relatedOf(
  world: World,
  bound: Bound,
  subject: Hit,
  one: { readonly at: At<Inputs>; readonly message: string },
) {
  return hitsOf(bound, subject, one.at).flatMap((hit) => {
    if (hit.record === null) return [];
    const { place } = locate(world, hit.record, hit.pointer);
    return [{ subject: { kind: hit.record.kind, id: hit.record.id }, place, message: one.message }];
  });
}

/** Where an objection's `at` stands in the records. */
function hitsOf({ places }: Bound, subject: Hit, at: At<Inputs> | Thing<Inputs>): readonly Hit[] {
  if (at === "subject") return [subject];
  if (typeof at === "string") return places.input(at);
  const [thing, name] = isPair(at) ? at : [at, undefined];
  const found = places.thing(thing);
  if (found === undefined) return [];
  const inner = name === undefined ? [] : found.input(name);
  return inner.length > 0 ? inner : [found.hit];
}

function isPair(at: At<Inputs> | Thing<Inputs>): at is readonly [Thing<Inputs>, string] {
  return Array.isArray(at);
}
