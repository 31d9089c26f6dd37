import {
  anyOf,
  list,
  optional,
  quantity,
  text,
  flag,
  things,
  type Condition,
  type Input,
  type Inputs,
  type Thing,
} from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { namesOf, oneName, spanOf, type Range } from "./range.ts";

/** Values as a rule gets them, by the names of the inputs of a side. */
type Got = Readonly<Record<string, unknown>>;

/** How one of the neighbours states a variable: inputs below a path, and the range they make. */
export interface Side {
  inputs(at: string): Inputs;
  /** Where it may be left unsaid, without anybody owing it: that it is said. */
  stated(at: string): readonly Condition[];
  read(values: Got): Range | undefined;
  /** Names of its inputs, of which the first is where an objection points if no end does. */
  readonly places: readonly string[];
  /** An example as the records state it. */
  give(range: readonly string[]): Got;
}

/** Inputs of sides bear the name of their side, so that those of two stand in one rule. */
export const named = (prefix: string, inputs: Inputs): Inputs =>
  Object.fromEntries(Object.entries(inputs).map(([name, input]) => [`${prefix}${capital(name)}`, input]));
export const ofSide = (prefix: string, values: Got, side: Side): Got =>
  // Only what the side reads is looked at: looking at a value is reading it.
  Object.fromEntries(side.places.map((name) => [name, values[`${prefix}${capital(name)}`]]));
export const placeOf = (prefix: string, name: string): string => `${prefix}${capital(name)}`;
const capital = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);

const below = (at: string, path: string) => (at === "" ? path : `${at}.${path}`);
const unlessOwed =
  (path: string, owed: boolean): Side["stated"] =>
  (at) =>
    owed ? [] : [{ path: below(at, path), exists: true }];
const inUnit = (got: Got, name: string) => got[name] as Measure | undefined;

/** A list of names; `owed` where somebody owes it. */
export const names = (path: string, owed = false): Side => ({
  inputs: (at) => ({ names: owed ? list(text(below(at, path))) : anyOf(list(text(below(at, path)))) }),
  stated: unlessOwed(path, owed),
  read: ({ names: got }) => namesOf(got as readonly string[]),
  places: ["names"],
  give: (range) => ({ names: [...range] }),
});

/** One name. */
export const name = (path: string, owed = false): Side => ({
  inputs: (at) => ({ name: owed ? text(below(at, path)) : optional(text(below(at, path))) }),
  stated: unlessOwed(path, owed),
  read: ({ name: got }) => oneName(got as string | undefined),
  places: ["name"],
  give: (range) => (range.length === 0 ? {} : { name: range.at(-1) }),
});

/** Whether something is applied, as a name. */
export const applied = (path: string, owed = false): Side => ({
  inputs: (at) => ({ flag: owed ? flag(below(at, path)) : optional(flag(below(at, path))) }),
  stated: unlessOwed(path, owed),
  read: ({ flag: got }) => (got === undefined ? undefined : oneName(got === true ? "applied" : "not applied")),
  places: ["flag"],
  give: (range) => (range[0] === undefined ? {} : { flag: range[0] === "applied" }),
});

/** A range with both ends, as records state it. */
export const ends = (path: string, unit: string): Side => ({
  inputs: (at) => ({
    from: optional(quantity(below(at, `${path}.minimum`), unit)),
    to: optional(quantity(below(at, `${path}.maximum`), unit)),
  }),
  stated: unlessOwed(path, false),
  read: (got) => spanOf(inUnit(got, "from"), inUnit(got, "to")),
  places: ["from", "to"],
  give: ([from, to]) => ({ ...(from !== undefined && { from }), ...(to !== undefined && { to }) }),
});

/** One value that is a limit, least or greatest. */
export const limit = (path: string, unit: string, is: "from" | "to", owed = false): Side => ({
  inputs: (at) => ({
    [is]: owed ? quantity(below(at, path), unit) : optional(quantity(below(at, path), unit)),
  }),
  stated: unlessOwed(path, owed),
  read: (got) => (is === "from" ? spanOf(inUnit(got, is), undefined) : spanOf(undefined, inUnit(got, is))),
  places: [is],
  give: ([value]) => (value === undefined ? {} : { [is]: value }),
});

/** One value. */
export const value = (path: string, unit: string): Side => ({
  inputs: (at) => ({ value: optional(quantity(below(at, path), unit)) }),
  stated: unlessOwed(path, false),
  read: (got) => spanOf(inUnit(got, "value"), inUnit(got, "value")),
  places: ["value"],
  give: ([one]) => (one === undefined ? {} : { value: one }),
});

/** A name of each of several things, as a table gives it. */
export const ofEach = (path: string, inner: string): Side => ({
  inputs: (at) => ({ each: things(below(at, path), { name: text(inner) }) }),
  stated: unlessOwed(path, true),
  read: ({ each }) => namesOf([...new Set((each as readonly Thing<{ name: Input<string> }>[]).map((one) => one.name))]),
  places: ["each"],
  give: (range) => ({ each: range.map((one) => ({ name: one })) }),
});
