import { ownChoice } from "../model/basis.ts";
import { canPrecede, parseDate, type DateValue } from "../model/dates.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Sign } from "../model/kind.ts";
import type { Leaf } from "../model/leaves.ts";
import type { Quantity } from "../model/quantity.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { outvote } from "../court/outvoted.ts";
import type { World } from "../reading/world.ts";
import { placeWords, thePlace } from "../model/words.ts";
import { keyOf, type FindingKey } from "../model/finding-key.ts";
import { valuesOf, type Odd } from "./field-values.ts";
import type { LowerEnd } from "./range-ends.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const form = ownChoice("digits and units are evidence: they are read exactly as written, never guessed");
const ends = ownChoice("a range whose ends are swapped holds nothing, and everything lies outside of it");
const plausible = ownChoice(
  "a value far outside what its field usually holds is suspected to be a slip of unit or decimal point",
);
const nature = ownChoice("what is measured has no such value by its nature, whatever a standard asks of it");
const order = ownChoice("evidence recorded up to the cut-off date cannot speak of a later event");

export const fieldRules: readonly BuiltIn[] = [
  {
    id: "quantity-form",
    title: "A quantity is a number and a unit of its dimension",
    severity: "nonconformity",
    basis: form,
  },
  {
    id: "date-form",
    title: "A date is a day of the calendar, written year-month-day",
    severity: "nonconformity",
    basis: form,
  },
  {
    id: "value-sign",
    title: "A quantity that has no negative values, or is never nothing, is written so",
    severity: "nonconformity",
    basis: nature,
  },
  {
    id: "range-ends",
    title: "The upper end of a range is not below its lower end",
    severity: "nonconformity",
    basis: ends,
  },
  {
    id: "value-plausible",
    title: "A value lies where values of its field usually lie",
    severity: "query",
    basis: plausible,
  },
  {
    id: "event-recorded",
    title: "No event is dated after the evidence was cut off",
    severity: "nonconformity",
    basis: order,
  },
];

/** A value that can be read and is suspected, to be said in its stage unless an earlier finding doubts the place. */
export interface Suspect {
  readonly leaf: Leaf;
  readonly rule: "value-plausible" | "event-recorded";
  readonly message: string;
}

/**
 * Reads every quantity and date once: those that cannot be read are findings, and doubt their place. Returns those that
 * lie outside the plausible range of their field, and events after the cut-off.
 */
export function readValues(court: Court, cutOff: string): readonly Suspect[] {
  const parsed = parseDate(cutOff);
  const last = parsed.ok ? parsed.date : undefined;
  const suspects: Suspect[] = [];
  const keep = court.world.notes?.now != null;
  for (const record of court.world.graph.records) {
    const kind = court.world.kinds.get(record.kind);
    if (kind === undefined || kind.derived) continue;
    const { odd, dates, swapped } = valuesOf(record, kind, keep);
    for (const { leaf, text, fault } of odd) suspects.push(...sayOdd(court, leaf, text, fault));
    for (const { leaf, text } of dates) suspects.push(...readDate(court, leaf, text, last));
    for (const { leaf, text, lower } of swapped) saySwapped(court, leaf, text, lower);
  }
  return suspects;
}

function sayOdd(court: Court, leaf: Leaf, text: string, fault: Odd): readonly Suspect[] {
  const name = nameIn(court.world, leaf);
  if (fault === "implausible") {
    const [from = "", to = ""] = leaf.field.plausible ?? [];
    return [{ leaf, rule: "value-plausible", message: `${name} is ${text}; ${from} to ${to} is expected` }];
  }
  if ("unreadable" in fault) {
    const { expected, hint } = fault.unreadable;
    say(
      court,
      leaf,
      "quantity-form",
      `${name} is "${text}"; expected ${expected}`,
      "a value without a sound unit cannot be compared with anything",
      hint,
    );
  } else saySign(court, leaf, fault.sign, fault.quantity);
  return [];
}

/** In the unit of the paper: "the wall is 0 mm; expected more than 0 mm". */
function saySign(court: Court, leaf: Leaf, sign: Sign, { text, unit }: Quantity): void {
  const nothing = unit === "1" ? "0" : `0 ${unit === "ΔK" ? "K" : unit}`;
  say(
    court,
    leaf,
    "value-sign",
    `${nameIn(court.world, leaf)} is ${text}; expected ${sign === "positive" ? `more than ${nothing}` : `${nothing} or more`}`,
    "there is no such value, so nothing is judged by it",
    "compare with the original and correct the value; leave it out if none is stated",
  );
}

/** Which end is wrong nobody can tell: both are accused. */
function saySwapped(court: Court, leaf: Leaf, text: string, lower: LowerEnd): void {
  const { field } = placeWords(court.world.kinds, leaf.record, lower.pointer);
  say(
    court,
    leaf,
    "range-ends",
    `${nameIn(court.world, leaf)} is ${text}, ${leaf.field.type === "date" ? "before" : "below"} the ${field}, ${lower.text}`,
    "nothing lies between such ends, so nothing is judged by them",
    "compare both with the original and correct them; they may have changed places",
    [addressOf(leaf.record, lower.pointer)],
  );
}

function readDate(court: Court, leaf: Leaf, text: string, last: DateValue | undefined): readonly Suspect[] {
  const parsed = parseDate(text);
  if (!parsed.ok) {
    const { expected, hint } = parsed.problem;
    say(
      court,
      leaf,
      "date-form",
      `${nameIn(court.world, leaf)} is "${text}"; expected ${expected}`,
      "an unreadable date proves no order of events",
      hint,
    );
    return [];
  }
  if (leaf.field.date !== "event" || last === undefined || canPrecede(parsed.date, last) === "yes") return [];
  const message = `${nameIn(court.world, leaf)} is ${text}, after the evidence was cut off on ${last.text}`;
  return [{ leaf, rule: "event-recorded", message }];
}

const advice: Readonly<Record<Suspect["rule"], readonly [why: string, hint: string]>> = {
  "value-plausible": [
    "a slip of unit or decimal point is suspected; nothing was changed",
    "compare with the original; correct the value, or answer this query",
  ],
  "event-recorded": [
    "the data cut-off in issue.json says up to when evidence was recorded",
    "correct the date, or move the cut-off when the event has taken place",
  ],
};

/** Says what is suspected in the records of some kinds. */
export function saySuspects(
  court: Court,
  suspects: readonly Suspect[],
  which: (kind: string) => boolean,
  issue: BookRecord,
): void {
  const late: FindingKey[] = [];
  for (const { leaf, rule, message } of suspects) {
    if (!which(leaf.record.kind)) continue;
    const key = say(court, leaf, rule, message, ...advice[rule]);
    if (key !== null && rule === "event-recorded") late.push(key);
  }
  const stated = issue.value["dataCutOff"];
  const cutOff = typeof stated === "string" ? stated : "";
  outvote(court, late, {
    record: issue,
    pointer: "/dataCutOff",
    text: cutOff,
    fault: "event-recorded",
    says: (day, days, count) => `evidence was cut off on ${day}, but ${count} records tell of later events, ${days}`,
    hint: "move the cut-off in issue.json to the day up to which evidence was recorded",
  });
}

const nameIn = (world: World, leaf: Leaf) => thePlace(world.kinds, leaf.record, leaf.pointer);

/** Key of what was said; null: an earlier finding doubts the place. */
function say(
  court: Court,
  leaf: Leaf,
  rule: string,
  message: string,
  why: string,
  hint: string,
  also: readonly Address[] = [],
): FindingKey | null {
  const at = locate(court.world, leaf.record, leaf.pointer);
  if (court.world.ledger.doubts(addressOf(leaf.record, leaf.pointer)).length > 0) return null;
  const finding = newFinding(finderOf(fieldRules, rule), at, {
    key: keyOf(rule, leaf.record, at.name),
    message,
    why,
    hint,
    about: JSON.stringify(leaf.value),
    accuses: [addressOf(leaf.record, leaf.pointer), ...also],
  });
  addFinding(court, finding);
  return finding.key;
}
