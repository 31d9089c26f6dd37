import type { Refusal } from "../model/book.ts";
import type { Closed, Closer, Closure, Open } from "../model/closer.ts";
import type { Finding } from "../model/finding.ts";
import type { Inputs, Thing, Handle } from "../model/input.ts";
import { addressOf, type Address, type BookRecord, spokenAddress } from "../model/record.ts";
import type { Owner } from "../model/vocabulary.ts";
import { absentTarget } from "../reading/absent.ts";
import { bindInputs, pathOf, type Bound } from "../reading/bind.ts";
import { handleOf } from "../reading/handle.ts";
import { conclude, endStage, locate, type Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import { readText, type Hit } from "../reading/hit.ts";
import { nameOfRefused } from "./refusal-name.ts";
import { refusals, resultChecks, type ResultCheck } from "../plan/result-checks.ts";
import { caseOf, subjectsOf, type Applicant, type Case } from "../reading/subjects.ts";
import { clear, digestOfReads, mergeTrail, newTrail, type Trail } from "../reading/trail.ts";
import { keyOf } from "../model/finding-key.ts";
import { holderOf } from "../model/json.ts";
import { Waiting } from "../reading/value.ts";
import { newVisits } from "../reading/visits.ts";
import type { World } from "../reading/world.ts";
import { newFinding } from "../model/new-finding.ts";

/** What is known of rejected values while they are judged, by their address. */
interface Desk {
  readonly court: Court;
  readonly closers: ReadonlyMap<string, Closer>;
  readonly cases: ReadonlyMap<Address, readonly (() => void)[]>;
  readonly begun: Set<object>;
  readonly refusals: Map<Address, Refusal>;
}

/**
 * Judges every value that may be *rejected*: accepted passes; rejected passes where something closes it, and is one
 * finding at the value where nothing does. What rests on another rejected row is judged after it.
 */
export function judgeRefusals(court: Court): ReadonlyMap<Address, Refusal> {
  const { definitions, kinds } = court.world;
  const closers = new Map((definitions.closers ?? []).map((one) => [one.id, one]));
  const cases = new Map<Address, (() => void)[]>();
  const desk: Desk = { court, closers, cases, begun: new Set(), refusals: new Map() };
  const all: (() => void)[] = [];
  for (const check of resultChecks(kinds))
    for (const subject of subjectsOf(court.world, check.kind)) {
      const run = () => {
        if (desk.begun.has(run)) return;
        desk.begun.add(run);
        const { trail, values, rejected } = visit(court.world, check, subject.address, () =>
          look(court.world, check, subject),
        );
        if (rejected) judgeCase(desk, check, caseOf(court.world, subject));
        else conclude(court, check, subject.subject, trail, [], values || !clear(trail));
      };
      all.push(run);
      cases.set(subject.address, [...(cases.get(subject.address) ?? []), run]);
    }
  for (const run of all) run();
  return desk.refusals;
}

/** Whether there is a result, and a rejected one. */
interface Looked {
  readonly trail: Trail;
  readonly values: boolean;
  readonly rejected: boolean;
}

const visit = newVisits<Looked>(({ trail }) => trail.absences.length > 0 || trail.reasons.length > 0);

function look(world: World, check: ResultCheck, subject: Applicant): Looked {
  const { trail, hit: start } = caseOf(world, subject);
  const values = follow(world, pathOf(check.path), start, trail, check.owed);
  const read = values.map((hit) => readText(world, hit, trail) ?? "");
  return { trail, values: values.length > 0, rejected: read.some((text) => refusals.has(text)) };
}

function judgeCase(desk: Desk, check: ResultCheck, one: Case): void {
  const { court } = desk;
  const { world } = court;
  const { trail } = one;
  const values = follow(world, pathOf(check.path), one.hit, trail, check.owed);
  const open: { readonly hit: Hit; readonly lacking: Lacking }[] = [];
  const before = court.wants.length;
  let rejected = false;
  for (const hit of values) {
    if (!refusals.has(readText(world, hit, trail) ?? "") || hit.record === null) continue;
    rejected = true;
    const found = closureOf(desk, check, one);
    mergeTrail(trail, found.trail);
    const address = addressOf(hit.record, hit.pointer);
    const place = { record: hit.record, pointer: hit.pointer, check: check.id };
    if (found.type === "closed") desk.refusals.set(address, { ...place, state: "closed", said: found.said });
    else desk.refusals.set(address, { ...place, state: "open", said: "" });
    if (found.type === "lacking") open.push({ hit, lacking: found });
  }
  const digest = open.length === 0 ? "" : digestOfReads(world, trail);
  const findings = open.map(({ hit, lacking }) => {
    const finding = refused(court, check, one, hit, lacking, digest);
    const address = addressOf(one.record, hit.pointer);
    const known = desk.refusals.get(address);
    if (known !== undefined) desk.refusals.set(address, { ...known, finding: finding.key });
    return finding;
  });
  conclude(court, check, one.subject, trail, findings, values.length > 0 || !clear(trail));
  // A rejected result waits for what it needs to be closed: that is owed now, whatever milestone it would be due at.
  for (let index = before; index < court.wants.length; index++) {
    const want = court.wants[index];
    if (want !== undefined && rejected) court.wants[index] = { ...want, due: "now" };
  }
  const last = court.outcomes.at(-1);
  if (last?.verdict === "failed") court.outcomes[court.outcomes.length - 1] = { ...last, refused: true };
  if (findings.length > 0) endStage(court);
}

/** Rejected values as they stand when exceptions are known. */
export function settleRefusals(court: Court, refusals: ReadonlyMap<Address, Refusal>): ReadonlyMap<Address, Refusal> {
  return new Map(
    [...refusals].map(([address, one]): [Address, Refusal] => {
      const exception = one.finding === undefined ? null : (court.entries.get(one.finding)?.exception ?? null);
      const by =
        exception === null
          ? undefined
          : spokenAddress(exception).replaceAll(/^[a-z-]+/g, (kind) => kind.replaceAll("-", " "));
      return [address, by === undefined ? one : { ...one, state: "answered", said: `accepted by ${by}` }];
    }),
  );
}

interface Lacking {
  readonly type: "lacking";
  readonly lacks: Open;
  readonly at: Hit | undefined;
  readonly owner: Owner;
  readonly hint: string;
}

type Found = { readonly trail: Trail } & (
  { readonly type: "closed"; readonly said: string } | Lacking | { readonly type: "waiting" }
);

/** Asks what may close a rejected value, in turn; the first that does closes it. */
function closureOf(desk: Desk, check: ResultCheck, one: Case): Found {
  const all = newTrail();
  const lacking: { readonly closer: Closer; readonly open: Open; readonly at: Hit | undefined }[] = [];
  for (const id of check.closedBy) {
    const closer = desk.closers.get(id);
    if (closer === undefined) continue;
    const asked = ask(desk, closer, one);
    if (asked.closure?.closes === true && clear(asked.trail))
      return { type: "closed", said: asked.said, trail: asked.trail };
    mergeTrail(all, asked.trail);
    if (asked.closure?.closes === false) lacking.push({ closer, open: asked.closure, at: asked.at });
  }
  for (const { open } of lacking.slice(0, 1)) if (!open.begun) missNamed(desk, one, all);
  const most = lacking.find(({ open }) => open.begun) ?? lacking[0];
  if (!clear(all) || most === undefined) return { type: "waiting", trail: all };
  const hints = lacking.filter((each) => each === most || !most.open.begun).map(({ open }) => open.hint);
  const { closer, open, at } = most;
  return { type: "lacking", trail: all, lacks: open, at, owner: closer.owner, hint: hints.join("; or ") };
}

/**
 * A record that would close it may be named elsewhere and not be in the book: its own gap is then the one thing to say.
 * Only where what names it is about the same thing, such as the same joint.
 */
function missNamed({ court: { world } }: Desk, { record, pointer }: Case, trail: Trail): void {
  const linksIn = (of: BookRecord, at: string) =>
    [...(world.graph.out.get(of) ?? [])].filter(([place]) => place.startsWith(`${at}/`)).map(([, { text }]) => text);
  const own = new Set(linksIn(record, pointer));
  for (const links of world.graph.absent.values())
    for (const { from, pointer: at, target } of links) {
      if (target === null || !trail.lists.includes(target.kind)) continue;
      if (linksIn(from, holderOf(at)).some((text) => own.has(text)))
        trail.absences.push(absentTarget(from, at, target));
    }
}

interface Asked {
  readonly closure: Closure | undefined;
  readonly said: string;
  readonly trail: Trail;
  readonly at: Hit | undefined;
}

/** Asks one closer; where it rests on other rejected rows, these are judged first, and doubt it if they stay open. */
function ask(desk: Desk, closer: Closer, one: Case): Asked {
  const first = bound(desk, closer, one);
  if (first.closure?.closes !== true) return { ...first, said: "" };
  const rests = restsOf(first.closure);
  if (rests.length === 0) return { ...first, said: first.closure.said };
  for (const address of rests) for (const run of desk.cases.get(address) ?? []) run();
  const again = bound(desk, closer, one);
  const behind = [...desk.refusals.values()].find(
    ({ record, pointer, state, said }) =>
      state === "closed" && said !== "" && rests.some((at) => addressOf(record, pointer).startsWith(`${at}/`)),
  );
  const said = again.closure?.closes === true && again.closure.said !== "" ? again.closure.said : (behind?.said ?? "");
  return { ...again, said };
}

const restsOf = ({ rests = [] }: Closed): readonly Address[] =>
  (rests as readonly { readonly $: Pick<Handle, "address"> }[]).flatMap(({ $ }) => ($.address === "" ? [] : $.address));

function bound({ court: { world } }: Desk, closer: Closer, one: Case): Omit<Asked, "said"> {
  const trail = newTrail();
  const inputs = bindInputs(world, closer.inputs, one.hit, trail);
  if (!inputs.complete) return { closure: undefined, trail, at: undefined };
  try {
    const closure = closer.close(inputs.values, handleOf(world, one.hit));
    return { closure, trail, at: closure.closes ? undefined : placeOf(inputs, closure.at) };
  } catch (reason) {
    if (!(reason instanceof Waiting)) throw reason;
    return { closure: undefined, trail, at: undefined };
  }
}

const placeOf = ({ places }: Bound, at: Thing<Inputs> | undefined): Hit | undefined =>
  at === undefined ? undefined : places.thing(at)?.hit;

function refused(
  { world }: Court,
  check: ResultCheck,
  one: Case,
  hit: Hit,
  { lacks, at, owner, hint }: Lacking,
  digest: string,
): Finding {
  const { record } = one;
  const around = holderOf(hit.pointer);
  const { name: where } = locate(world, record, around.length > one.pointer.length ? around : one.pointer);
  const name = nameOfRefused(world, one, hit);
  const here = `${name} is rejected`;
  const related = at?.record == null ? [] : [{ ...locate(world, at.record, at.pointer), message: lacks.lacks }];
  return newFinding(check, locate(world, record, hit.pointer), {
    key: keyOf(check.id, record, where),
    message: `${here}, and ${lacks.lacks}`,
    why: "what was rejected proves nothing until it is put right on record",
    hint,
    owner,
    digest,
    related: related.map(({ subject, place, message }) => ({ subject, place, message })),
    accuses: [addressOf(record, hit.pointer)],
  });
}
