import { beyond } from "../refused.ts";
import type { CopiedObject, Source } from "../copied.ts";
import type { PdfFile } from "./file.ts";
import { sortOfKey } from "./left-out.ts";
import { joined, nameSource, plainSource } from "./source.ts";
import { streamSource } from "./streams.ts";
import { entriesOf, isDict, isList, isName, isRef, isStream, type Entries, type PdfValue } from "./values.ts";

/** Makes objects anew from those of a file. */
export interface Copier {
  readonly file: PdfFile;
  readonly objects: CopiedObject[];
  readonly leftOut: Set<string>;
  /** Source of a value as far as a shape knows it; undefined when nothing of it may be copied. */
  put(value: PdfValue | undefined, shape: Shape): Source | undefined;
  /** A new object; answers with its index. */
  add(object: CopiedObject): number;
}

/**
 * What may be copied of a value: a shape names the entries it knows, and nothing else exists for it. Whatever a file
 * adds, in any place and under any name, is not copied because no shape asks for it.
 */
export interface Shape {
  readonly name: string;
  make(value: PdfValue, copier: Copier): Source | CopiedObject | undefined;
}

export type Keys = Readonly<Record<string, Shape>>;

/** Objects inside each other while they are copied, at most. */
const deepest = 240;

export function newCopier(file: PdfFile): Copier {
  const objects: CopiedObject[] = [];
  const known = new Map<string, number>();
  let depth = 0;
  const copier: Copier = { file, objects, leftOut: new Set(), put, add: (object) => objects.push(object) - 1 };

  function put(value: PdfValue | undefined, shape: Shape): Source | undefined {
    const found = file.resolve(value);
    if (found === null) return undefined;
    // Only what has parts is worth an object of its own; streams must be one.
    const whole = entriesOf(found) !== undefined || isList(found);
    if (!whole) return sourceOf(made(found, shape));
    const key = isRef(value) ? `${value.number} ${shape.name}` : undefined;
    const before = key === undefined ? undefined : known.get(key);
    if (before !== undefined) return [before];
    if (key === undefined && !isStream(found)) return sourceOf(made(found, shape));
    const index = objects.push({ source: ["null"] }) - 1;
    // Known before it is made: forms may name resources that name the form.
    if (key !== undefined) known.set(key, index);
    const one = made(found, shape);
    if (one === undefined) return undefined;
    objects[index] = "source" in one ? one : { source: one };
    return [index];
  }

  function made(value: PdfValue, shape: Shape): Source | CopiedObject | undefined {
    if (++depth > deepest) throw beyond("the file nests its objects too deep", `at most ${deepest} inside each other`);
    try {
      return shape.make(value, copier);
    } finally {
      depth--;
    }
  }

  return copier;
}

const sourceOf = (one: Source | CopiedObject | undefined): Source | undefined =>
  one === undefined ? undefined : "source" in one ? one.source : one;

/** A number, a name, a text, yes or no. */
export const plain: Shape = {
  name: "plain",
  make(value) {
    const source = plainSource(value);
    return source === undefined ? undefined : [source];
  },
};

/** A list of plain values, and of such lists; references in it are replaced by what they mean. */
export const plainList: Shape = {
  name: "plain list",
  make(value, { file }) {
    const text = isList(value) ? plainText(file, value, 0) : undefined;
    return text === undefined ? undefined : [text];
  },
};

function plainText(file: PdfFile, value: PdfValue, depth: number): string | undefined {
  const found = file.resolve(value);
  if (!isList(found)) return plainSource(found);
  if (depth > 4) return undefined;
  let text = "[";
  for (const item of found) {
    const own = plainText(file, item, depth + 1);
    if (own === undefined) return undefined;
    text += text.length > 1 ? ` ${own}` : own;
  }
  return `${text}]`;
}

export const listOf = (shape: Shape): Shape => ({
  name: `list of ${shape.name}`,
  make: (value, copier) => (isList(value) ? listSource(value, copier, shape) : undefined),
});

/** A list, whole or not at all: its items have meaning by their place. */
export function listSource(
  value: readonly PdfValue[],
  { put }: Pick<Copier, "put">,
  ...shapes: readonly Shape[]
): Source | undefined {
  const items = value.map((item, index) => {
    const shape = shapes[Math.min(index, shapes.length - 1)];
    return shape === undefined ? undefined : put(item, shape);
  });
  const whole = items.flatMap((item) => (item === undefined ? [] : [item, [" "]]));
  return items.includes(undefined) ? undefined : joined([["["], ...whole, ["]"]]);
}

/** A dictionary with these entries and no others. */
export const dict = (name: string, keys: Keys): Shape => ({
  name,
  make: (value, copier) =>
    isDict(value) ? joined([["<<"], entriesSource(value.entries, keys, copier), [">>"]]) : undefined,
});

/** A dictionary with names of its own, such as the fonts of a page. */
export const named = (name: string, shape: Shape): Shape => ({
  name,
  make(value, copier) {
    if (!isDict(value)) return undefined;
    const entries = [...value.entries].flatMap(([key, item]) => {
      const source = copier.put(item, shape);
      return source === undefined ? [] : [joined([[`${nameSource(key)} `], source])];
    });
    return joined([["<<"], ...entries, [">>"]]);
  },
});

/** A stream with these entries, led by what is always so; how it is packed is looked after here. */
export const stream = (name: string, keys: Keys, lead = ""): Shape => ({
  name,
  make(value, copier) {
    if (!isStream(value)) return undefined;
    const packed = streamSource(value, lead.includes("/Image") ? "picture" : "data", copier);
    if (packed === undefined) return undefined;
    return {
      source: joined([[`<<${lead}`], entriesSource(value.entries, keys, copier), packed.source, [">>"]]),
      bytes: packed.bytes,
    };
  },
});

/** A shape that depends on the value. */
export const either = (name: string, choose: (value: PdfValue, copier: Copier) => Shape | undefined): Shape => ({
  name,
  make: (value, copier) => choose(value, copier)?.make(value, copier),
});

/** One of these names and no other. */
export const oneOf = (...names: readonly string[]): Shape => ({
  name: names.join(" or "),
  make: (value) => (isName(value) && names.includes(value.name) ? [nameSource(value.name)] : undefined),
});

function entriesSource(entries: Entries, keys: Keys, copier: Copier): Source {
  const parts: Source[] = [];
  for (const [key, value] of entries) {
    const shape = Object.hasOwn(keys, key) ? keys[key] : undefined;
    if (shape === undefined) {
      const sort = sortOfKey(key);
      if (sort !== undefined) copier.leftOut.add(sort);
      continue;
    }
    const source = copier.put(value, shape);
    if (source !== undefined) parts.push([`${nameSource(key)} `], source, [" "]);
  }
  return joined(parts);
}
