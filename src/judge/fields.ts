import { ownChoice } from "../model/basis.ts";
import { canPrecede, parseDate } from "../model/dates.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { measure, parseQuantity } from "../model/quantity.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import { addFinding, keyOf, locate, type Court } from "./court.ts";
import type { World } from "./world.ts";

const form = ownChoice("digits and units are evidence: they are read exactly as written, never guessed");
const plausible = ownChoice(
  "a value far outside what its field usually holds is suspected to be a slip of unit or decimal point",
);
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

/** A value of a record with its field, wherever it is nested. */
export interface Leaf {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly field: Field;
  readonly value: Json;
}

/** Reads every quantity and date once: those that cannot be read are findings, and doubt their place. */
export function readValues(court: Court): void {
  for (const leaf of leaves(court.world)) {
    if (typeof leaf.value !== "string") continue;
    if (leaf.field.type === "quantity") readQuantity(court, leaf, leaf.value);
    else if (leaf.field.type === "date") readDate(court, leaf, leaf.value);
  }
}

function readQuantity(court: Court, leaf: Leaf, text: string): void {
  const unit = leaf.field.unit ?? "any";
  const parsed = parseQuantity(text, { unit, ...(leaf.field.difference === true && { difference: true }) });
  if (parsed.ok) return;
  const { expected, hint } = parsed.problem;
  say(
    court,
    leaf,
    "quantity-form",
    `${nameIn(court.world, leaf)} is "${text}"; expected ${expected}`,
    "a value without a sound unit cannot be compared with anything",
    hint,
  );
}

function readDate(court: Court, leaf: Leaf, text: string): void {
  const parsed = parseDate(text);
  if (parsed.ok) return;
  const { expected, hint } = parsed.problem;
  say(
    court,
    leaf,
    "date-form",
    `${nameIn(court.world, leaf)} is "${text}"; expected ${expected}`,
    "an unreadable date proves no order of events",
    hint,
  );
}

/** Values outside the plausible range of their field, and events after the cut-off, in the records of some kinds. */
export function checkPlausible(court: Court, cutOff: string, which: (kind: string) => boolean): void {
  const last = parseDate(cutOff);
  for (const leaf of leaves(court.world)) {
    if (!which(leaf.record.kind)) continue;
    if (typeof leaf.value !== "string" || court.world.ledger.doubts(addressOf(leaf.record, leaf.pointer)).length > 0)
      continue;
    if (leaf.field.type === "quantity" && leaf.field.plausible !== undefined)
      suspect(court, leaf, leaf.value, leaf.field.plausible);
    if (leaf.field.date === "event" && last.ok) {
      const date = parseDate(leaf.value);
      if (date.ok && canPrecede(date.date, last.date) === "no")
        say(
          court,
          leaf,
          "event-recorded",
          `${nameIn(court.world, leaf)} is ${leaf.value}, after the evidence was cut off on ${cutOff}`,
          "dataCutOff in issue.json says up to when evidence was recorded",
          "correct the date, or move the cut-off when the event has taken place",
        );
    }
  }
}

function suspect(court: Court, leaf: Leaf, text: string, [low, high]: readonly [string, string]): void {
  const unit = leaf.field.unit ?? "any";
  if (unit === "any") return;
  const [value, from, to] = [text, low, high].map((one) =>
    parseQuantity(one, { unit, ...(leaf.field.difference === true && { difference: true }) }),
  );
  if (value?.ok !== true || from?.ok !== true || to?.ok !== true) return;
  const { low: least, high: most } = measure(value.quantity, unit);
  if (
    value.quantity.sign === "=" &&
    (least < measure(from.quantity, unit).low || most > measure(to.quantity, unit).high)
  )
    say(
      court,
      leaf,
      "value-plausible",
      `${nameIn(court.world, leaf)} is ${text}; ${low} to ${high} is expected`,
      "a slip of unit or decimal point is suspected; nothing was changed",
      "compare with the original; correct the value, or answer this query",
    );
}

/** Every value of every record that is written in a file, with its field. */
export function* leaves(world: World): Generator<Leaf> {
  for (const record of world.graph.records) {
    const kind = world.kinds.get(record.kind);
    if (kind !== undefined && !kind.derived) yield* leavesIn(record, "", record.value, kind.fields);
  }
}

function* leavesIn(
  record: BookRecord,
  pointer: string,
  value: Json,
  fields: ReadonlyMap<string, Field>,
): Generator<Leaf> {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    if (member !== undefined) yield* leavesAt(record, pointer + pointerStep(name), member, field);
  }
}

function* leavesAt(record: BookRecord, pointer: string, value: Json, field: Field): Generator<Leaf> {
  if (isList(value)) {
    const item = field.item;
    if (item !== undefined)
      for (const [index, one] of value.entries()) yield* leavesAt(record, `${pointer}/${index}`, one, item);
  } else if (isObject(value)) {
    if (field.fields !== undefined) yield* leavesIn(record, pointer, value, field.fields);
  } else yield { record, pointer, field, value };
}

const nameIn = (world: World, leaf: Leaf) => locate(world, leaf.record, leaf.pointer).where;

function say(court: Court, leaf: Leaf, rule: string, message: string, why: string, hint: string): void {
  const builtIn = fieldRules.find(({ id }) => id === rule);
  const { subject, place, where } = locate(court.world, leaf.record, leaf.pointer);
  if (court.world.ledger.doubts(addressOf(leaf.record, leaf.pointer)).length > 0) return;
  const finding: Finding = {
    key: keyOf(rule, leaf.record, where),
    rule,
    severity: builtIn?.severity ?? "nonconformity",
    verdict: "failed",
    subject,
    place,
    message,
    why,
    hint,
    basis: builtIn?.basis ?? form,
    owner: "document control",
    due: null,
    digest: digestOf(JSON.stringify(leaf.value)),
    related: [],
    waiting: [],
    exception: null,
    accuses: [addressOf(leaf.record, leaf.pointer)],
  };
  addFinding(court, finding);
}
