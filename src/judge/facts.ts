import { parseDate } from "../model/dates.ts";
import type { Fact } from "../model/fact.ts";
import type { Finding } from "../model/finding.ts";
import { byCodePoint } from "../model/order.ts";
import { ProgramError } from "../model/program-error.ts";
import { compare, measure, parseQuantity } from "../model/quantity.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { pathOf } from "../reading/bind.ts";
import { conclude, locate, type Court } from "../court/court.ts";
import { follow } from "../reading/follow.ts";
import { deref, readText, startAt, type Hit } from "../reading/hit.ts";
import { clear, digestOfReads, mergeTrail, newTrail, type Trail } from "../reading/trail.ts";
import type { World } from "../reading/world.ts";
import { recordWords } from "../model/titles.ts";
import { keyOf, aboutRecord } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

interface Statement {
  readonly record: BookRecord;
  readonly hit: Hit;
  readonly text: string;
}

/** What a fact is about (null: the book), with all that is stated of it for certain. */
interface Topic {
  readonly about: BookRecord | null;
  readonly statements: Statement[];
  readonly trail: Trail;
  /** What the statements that nothing stands in the way of rest on. */
  readonly sound: Trail;
}

/**
 * Compares every statement of one fact. When all others agree the odd one is accused, else all are: one finding.
 * A statement that is absent is owed by its own field; it is no difference. One that is doubted, or that something
 * absent stands in the way of, keeps the others from agreeing for certain, but not from differing.
 */
export function applyFact(court: Court, fact: Fact): void {
  const way = newTrail();
  for (const { about, statements, trail, sound } of topicsOf(court.world, fact, way)) {
    mergeTrail(trail, way);
    const groups = grouped(fact, statements);
    const differ = groups.length > 1;
    const findings = differ ? [difference(court.world, fact, about, groups, digestOfReads(court.world, sound))] : [];
    const subject = about === null ? null : { kind: about.kind, id: about.id };
    conclude(court, fact, subject, trail, findings, statements.length > 1);
  }
}

/** Every statement by what it is about. What stands in the way of all of them is noted in `way`. */
function topicsOf(world: World, fact: Fact, way: Trail): readonly Topic[] {
  const topics = new Map<string, Topic>();
  if (fact.about === undefined) topics.set(aboutRecord(null), newTopic(null));
  for (const path of fact.statements) {
    const here = newTrail();
    const hits = follow(world, pathOf(path), null, here, false);
    mergeTrail(way, here);
    for (const hit of hits) {
      const own = newTrail();
      const text = readText(world, hit, own);
      const { record } = hit;
      if (text === undefined || record === null) continue;
      const about = fact.about === undefined ? null : topicOf(world, fact.about, record, own);
      if (about === undefined) continue;
      const key = aboutRecord(about);
      const topic = topics.get(key) ?? newTopic(about);
      mergeTrail(topic.trail, own);
      if (clear(own)) {
        topic.statements.push({ record, hit, text });
        mergeTrail(topic.sound, own);
      }
      topics.set(key, topic);
    }
  }
  return [...topics].sort(([a], [b]) => byCodePoint(a, b)).map(([, topic]) => topic);
}

const newTopic = (about: BookRecord | null): Topic => ({ about, statements: [], trail: newTrail(), sound: newTrail() });

/** What a record's statement is about: where the path leads; an empty path is the record itself. */
function topicOf(world: World, path: string, record: BookRecord, trail: Trail): BookRecord | undefined {
  const start = startAt(world, record, "");
  const hit = path === "" ? start : follow(world, pathOf(path), start, trail, false)[0];
  return hit === undefined ? undefined : (deref({ world, trail }, hit)?.record ?? undefined);
}

function grouped(fact: Fact, statements: readonly Statement[]): Statement[][] {
  const groups: Statement[][] = [];
  for (const statement of statements) {
    const group = groups.find(([first]) => first !== undefined && same(fact, first.text, statement.text) === "yes");
    if (group === undefined) groups.push([statement]);
    else group.push(statement);
  }
  return groups.sort((a, b) => b.length - a.length);
}

function same(fact: Fact, a: string, b: string): "yes" | "no" | "unsure" {
  if (fact.reading.type === "quantity") {
    const { unit } = fact.reading;
    const [first, second] = [parseQuantity(a, { unit }), parseQuantity(b, { unit })];
    if (!first.ok || !second.ok) return "no";
    if (first.quantity.text === second.quantity.text) return "yes";
    const order = compare(measure(first.quantity, unit), measure(second.quantity, unit));
    return order === "equal" ? "yes" : order === "open" ? "unsure" : "no";
  }
  if (fact.reading.type === "date") {
    const [first, second] = [parseDate(a), parseDate(b)];
    return first.ok && second.ok && first.date.from <= second.date.to && second.date.from <= first.date.to
      ? "yes"
      : "no";
  }
  return a === b ? "yes" : "no";
}

function difference(
  world: World,
  fact: Fact,
  about: BookRecord | null,
  groups: readonly (readonly Statement[])[],
  digest: string,
): Finding {
  const [most = [], ...others] = groups;
  const odd = others.flat();
  // Only a lone dissenter against several who agree is known to be the wrong one.
  const lone = odd.length === 1 && most.length > 1;
  const accused = lone ? odd : groups.flat();
  const [first = odd[0]] = accused;
  if (first === undefined) throw new ProgramError(`fact ${fact.id} compares nothing`);
  const name = (one: Statement) => recordWords(world.kinds, one.record);
  const heads = groups.flatMap((group) => group[0]?.text ?? []);
  const unsure = heads.every((text, index) =>
    heads.slice(index + 1).every((other) => same(fact, text, other) === "unsure"),
  );
  return newFinding(fact, locate(world, first.record, first.hit.pointer), {
    key: keyOf(fact.id, about, ""),
    ...(unsure && { severity: "query", verdict: "not judged" }),
    message: lone
      ? `${fact.title} is ${first.text} in ${name(first)}, but ${most[0]?.text ?? ""} in ${most.length} other records`
      : `${fact.title} is stated differently: ${groups
          .flat()
          .map((one) => `${one.text} in ${name(one)}`)
          .join(", ")}`,
    why: `one fact, stated by ${most.concat(odd).map(name).join(", ")}`,
    hint: "compare with the originals; correct the record that was copied wrongly, or have the document itself corrected",
    digest,
    related: groups.flat().flatMap((one) => {
      if (one === first) return [];
      const at = locate(world, one.record, one.hit.pointer);
      return [{ subject: at.subject, place: at.place, message: `${one.text} here` }];
    }),
    accuses: accused.map((one) => addressOf(one.record, one.hit.pointer)),
  });
}
