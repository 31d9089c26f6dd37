import { parseDate, type DateValue } from "../model/dates.ts";
import type { Handle, Input, Inputs, Reading } from "../model/input.ts";
import { isList, isObject } from "../model/json.ts";
import { parsePath, type Path } from "../model/path.ts";
import { exactly, measure, parseQuantity, type Measure } from "../model/quantity.ts";
import { addressOf } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { convert } from "../model/units.ts";
import { placeWords } from "../model/words.ts";
import { follow } from "./follow.ts";
import { asking } from "./look-up.ts";
import { deref, readText, startAt, type Hit } from "./hit.ts";
import { notUsable } from "./reasons.ts";
import { onlyOne } from "./single.ts";
import { newTrail, noteRead, type Trail } from "./trail.ts";
import type { World } from "./world.ts";

/** Thrown while a definition's code reads something that is not there: the trail says what; only the engine catches it. */
export class Waiting extends Error {}

/** Where each input and each thing came from, so that objections can point at them. */
export interface Places {
  input(name: string): readonly Hit[];
  thing(thing: object): { readonly hit: Hit; input(name: string): readonly Hit[] } | undefined;
}

const paths = new Map<string, Path>();

/** Paths of definitions are parsed once. */
export function pathOf(text: string): Path {
  let path = paths.get(text);
  if (path === undefined) paths.set(text, (path = parsePath(text)));
  return path;
}

export interface Bound {
  /** Property access gives the value, marks it read, and throws `Waiting` when it is required and absent. */
  readonly values: Readonly<Record<string, unknown>>;
  readonly places: Places;
  /** False when a required input is absent (the trail says which). */
  readonly complete: boolean;
}

/** What every value of one application of a definition shares. */
interface Binding {
  readonly world: World;
  readonly trail: Trail;
  readonly things: Map<object, { readonly hit: Hit; input(name: string): readonly Hit[] }>;
}

/**
 * Binds the inputs of a definition on a subject. Required inputs of the subject itself are looked for at once; those of
 * the things it leads to, and all values, when the definition reads them.
 */
export function bindInputs(world: World, inputs: Inputs, start: Hit, trail: Trail): Bound {
  const binding: Binding = { world, trail, things: new Map() };
  const { values, find, input } = bindAt(binding, inputs, start);
  let complete = true;
  for (const [name, { need }] of Object.entries(inputs))
    if (need === "required" && find(name).length === 0) complete = false;
  return { values, places: { input, thing: (thing) => binding.things.get(thing) }, complete };
}

function bindAt(binding: Binding, inputs: Inputs, start: Hit) {
  const { world } = binding;
  const values: Record<string, unknown> = {};
  const found = new Map<string, readonly Hit[]>();
  const find = (name: string): readonly Hit[] => {
    const before = found.get(name);
    const input = inputs[name];
    if (before !== undefined || input === undefined) return before ?? [];
    const hits = resolve(binding, input, start);
    found.set(name, hits);
    return hits;
  };
  for (const [name, input] of Object.entries(inputs)) {
    let value: unknown;
    let done = false;
    Object.defineProperty(values, name, {
      enumerable: true,
      get() {
        if (done) return value;
        const hits = find(name);
        if (input.need === "required" && hits.length === 0) throw new Waiting();
        value = valueOf(binding, input, hits);
        done = true;
        return value;
      },
    });
  }
  // Asking where something stands reads nothing and wants nothing.
  const input = (name: string): readonly Hit[] => {
    const [before, asked] = [found.get(name), inputs[name]];
    if (before !== undefined || asked === undefined) return before ?? [];
    return resolve({ world, trail: newTrail(), things: new Map() }, { ...asked, need: "any" }, start);
  };
  return { values, find, input };
}

/** Where an input leads: behind its link if a thing is read, else to the value as it stands. */
function resolve({ world, trail }: Binding, input: Input<unknown>, start: Hit): readonly Hit[] {
  const { reading } = input;
  // A table is asked when the definition has its keys.
  if (reading.type === "table") return [start];
  const path = pathOf(input.path);
  const found = follow(world, path, start, trail, input.need === "required");
  if (reading.type === "exists") return found;
  const hits =
    reading.type === "thing" ? found.map((hit) => deref({ world, trail }, hit)).filter((hit) => hit !== null) : found;
  if (input.many) return hits;
  const one = onlyOne(world, hits, trail, start, path.text);
  return one === undefined ? [] : [one];
}

function valueOf(binding: Binding, input: Input<unknown>, hits: readonly Hit[]): unknown {
  const { world, trail } = binding;
  if (input.reading.type === "exists") {
    for (const hit of hits) if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer, hit.value);
    return hits.length > 0;
  }
  if (input.many) return hits.map((hit) => readOne(binding, input.reading, hit));
  return hits[0] === undefined ? undefined : readOne(binding, input.reading, hits[0]);
}

function readOne(binding: Binding, reading: Reading, hit: Hit): unknown {
  const { world, trail } = binding;
  if (reading.type === "thing") return thingAt(binding, reading.inputs, hit);
  if (reading.type === "table") return asking(world, reading.table, hit, trail, () => new Waiting());
  const text = readText(world, hit, trail);
  const refuse = (sort: string, words: string): never => {
    // An unreadable value was accused when it was first read; any other one is said here.
    if (trail.doubts.length === 0) notUsable(world, trail, hit, text ?? "a list or an object", { sort, words });
    throw new Waiting();
  };
  switch (reading.type) {
    case "text":
      return text ?? refuse("text", "a text");
    case "flag":
      return typeof hit.value === "boolean" ? hit.value : refuse("flag", "true or false");
    case "count": {
      const count = Number(text);
      return text !== undefined && text.trim() !== "" && Number.isFinite(count) ? count : refuse("number", "a number");
    }
    case "date":
      return dateOf(text ?? "") ?? refuse("date", "a date");
    case "quantity":
      return measureOf(hit, text ?? "", reading.unit) ?? refuse(reading.unit, `a quantity in ${reading.unit}`);
    case "exists":
      return true;
  }
}

/** The measure of a value in the unit that is wanted, or undefined when it has none in that dimension. */
export function measureOf(hit: Hit, text: string, unit: string): Measure | undefined {
  const { origin } = hit;
  if (origin?.type === "calculation") {
    const done = origin.of.steps.find(({ step }) => step.symbol === origin.symbol);
    return done === undefined ? undefined : exactly(convert(done.value, done.step.unit, unit), unit);
  }
  const parsed = parseQuantity(text, { unit, ...(hit.field?.difference === true && { difference: true }) });
  return parsed.ok ? measure(parsed.quantity, unit) : undefined;
}

function dateOf(text: string): DateValue | undefined {
  const parsed = parseDate(text);
  return parsed.ok ? parsed.date : undefined;
}

function thingAt(binding: Binding, inputs: Inputs, hit: Hit): object {
  const { world, trail, things } = binding;
  const { values, input } = bindAt(binding, inputs, hit);
  Object.defineProperty(values, "$", { enumerable: false, value: handleOf(world, hit) });
  things.set(values, { hit, input });
  if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer === "" ? "/id" : hit.pointer, undefined);
  return values;
}

export function handleOf(world: World, hit: Hit): Handle {
  const { record, pointer } = hit;
  if (record === null) {
    const id = hit.origin?.type === "table" ? hit.origin.row : "";
    return { address: "", kind: "", id, name: id };
  }
  return {
    address: addressOf(record, pointer),
    kind: record.kind,
    id: nameOf(world, hit),
    // Only sentences ask for it.
    get name() {
      return placeWords(world.kinds, record, pointer).short;
    },
  };
}

/** "CRT-012", or "CRT-012#84613" for a row that has a name. */
function nameOf(world: World, hit: Hit): string {
  if (hit.record === null) return "";
  if (hit.pointer === "") return hit.record.id;
  const list = startAt(world, hit.record, hit.pointer.replace(/\/\d+$/, ""));
  if (list.field === null || !isList(list.value)) return hit.record.id;
  const name = isObject(hit.value) ? rowName(list.field, hit.value) : undefined;
  return name === undefined ? hit.record.id : `${hit.record.id}#${name}`;
}
