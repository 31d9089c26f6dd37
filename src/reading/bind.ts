import type { Handle, Input, Inputs } from "../model/input.ts";
import { parsePath, type Path } from "../model/path.ts";
import { follow } from "./follow.ts";
import { handleOf } from "./handle.ts";
import { asking } from "./look-up.ts";
import { deref, type Hit } from "./hit.ts";
import { onlyOne } from "./single.ts";
import { newTrail, noteRead, type Trail } from "./trail.ts";
import { readValue, Waiting } from "./value.ts";
import type { World } from "./world.ts";

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
}

/**
 * Binds the inputs of a definition on a subject. Required inputs of the subject itself are looked for at once; those of
 * the things it leads to, and all values, when the definition reads them.
 */
export function bindInputs(world: World, inputs: Inputs, start: Hit, trail: Trail): Bound {
  const values = bindAt({ world, trail }, inputs, start);
  const bound = values[own];
  return {
    values,
    places: {
      input: (name) => bound.placesOf(name),
      thing: (thing) => {
        const found = thing instanceof Values ? thing[own] : undefined;
        return found?.binding === bound.binding && found !== bound
          ? { hit: found.start, input: (name) => found.placesOf(name) }
          : undefined;
      },
    },
    complete: bound.allThere(),
  };
}

const own = Symbol("bound");

/** The values of one subject or thing, as the definition's code gets them: its inputs are properties that read. */
class Values {
  readonly [own]: BoundInputs;
  // What is read by name.
  readonly [name: string]: unknown;

  constructor(bound: BoundInputs) {
    this[own] = bound;
    Object.defineProperties(this, bound.shape.properties);
  }

  get $(): Handle {
    const { binding, start } = this[own];
    return handleOf(binding.world, start);
  }
}

/** Inputs of a definition, made ready once. */
interface Shape {
  readonly names: readonly string[];
  readonly inputs: readonly Input<unknown>[];
  readonly properties: PropertyDescriptorMap;
}

const shapes = new WeakMap<Inputs, Shape>();

/**
 * All values of these inputs share their getters. Had each object getters of its own, the engine would keep a map of
 * each, with all that its getters hold, until it next goes through its whole memory.
 */
function shapeOf(inputs: Inputs): Shape {
  const known = shapes.get(inputs);
  if (known !== undefined) return known;
  const names = Object.keys(inputs);
  function getter(at: number) {
    return function (this: Values): unknown {
      return this[own].read(at);
    };
  }
  const properties = names.map((name, at) => [name, { enumerable: true, get: getter(at) }] as const);
  const shape = { names, inputs: Object.values(inputs), properties: Object.fromEntries(properties) };
  shapes.set(inputs, shape);
  return shape;
}

const bindAt = (binding: Binding, inputs: Inputs, start: Hit): Values =>
  new Values(new BoundInputs(binding, shapeOf(inputs), start));

/** Inputs on one subject or thing: where each leads, and what is read there. Each is looked for once. */
class BoundInputs {
  readonly binding: Binding;
  readonly shape: Shape;
  readonly start: Hit;
  readonly #found: (readonly Hit[] | undefined)[] = [];
  /** Each value in an array of its own: undefined may be a value. */
  readonly #values: (readonly [unknown] | undefined)[] = [];

  constructor(binding: Binding, shape: Shape, start: Hit) {
    this.binding = binding;
    this.shape = shape;
    this.start = start;
  }

  allThere(): boolean {
    const { inputs } = this.shape;
    let complete = true;
    for (let at = 0; at < inputs.length; at++)
      if (inputs[at]?.need === "required" && this.#find(at).length === 0) complete = false;
    return complete;
  }

  read(at: number): unknown {
    const before = this.#values[at];
    if (before !== undefined) return before[0];
    const input = this.shape.inputs[at];
    if (input === undefined) return undefined;
    const hits = this.#find(at);
    if (input.need === "required" && hits.length === 0) throw new Waiting();
    const value = valueOf(this.binding, input, hits);
    this.#values[at] = [value];
    return value;
  }

  readAll(): void {
    for (let at = 0; at < this.shape.inputs.length; at++) this.read(at);
  }

  /** Where an input stands. Asking that reads nothing and wants nothing. */
  placesOf(name: string): readonly Hit[] {
    const at = this.shape.names.indexOf(name);
    const [before, asked] = [this.#found[at], this.shape.inputs[at]];
    if (before !== undefined || asked === undefined) return before ?? [];
    return resolve({ world: this.binding.world, trail: newTrail() }, { ...asked, need: "any" }, this.start);
  }

  #find(at: number): readonly Hit[] {
    const [before, input] = [this.#found[at], this.shape.inputs[at]];
    if (before !== undefined || input === undefined) return before ?? [];
    return (this.#found[at] = resolve(this.binding, input, this.start));
  }
}

/** Reads all that things may be asked for, so that code which cannot wait in the middle may ask. */
export function readAllOf(things: readonly object[]): void {
  for (const thing of things) if (thing instanceof Values) thing[own].readAll();
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

function valueOf(binding: Binding, { reading, many }: Input<unknown>, hits: readonly Hit[]): unknown {
  const { world, trail } = binding;
  if (reading.type === "exists") {
    for (const hit of hits) if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer, hit.value);
    return hits.length > 0;
  }
  const read = (hit: Hit): unknown => {
    if (reading.type === "thing") return thingAt(binding, reading.inputs, hit);
    if (reading.type === "table") return asking(world, reading.table, hit, trail, () => new Waiting());
    return readValue(world, reading, hit, trail);
  };
  if (many) return hits.map(read);
  return hits[0] === undefined ? undefined : read(hits[0]);
}

function thingAt(binding: Binding, inputs: Inputs, hit: Hit): object {
  const { world, trail } = binding;
  if (hit.record !== null) noteRead(world, trail, hit.record, hit.pointer === "" ? "/id" : hit.pointer, undefined);
  return bindAt(binding, inputs, hit);
}
