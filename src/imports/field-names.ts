import { nearestName } from "../model/nearest.ts";
import type { Field } from "../model/kind.ts";
import { grouped } from "../model/grouped.ts";

/** A field a column may go to, with what people call it. */
export interface NamedField {
  readonly path: string;
  readonly field: Field;
  readonly depth: number;
}

/** Every field of a kind that takes a value, by its path; lists of plain values end in `[]`. */
export function namedFields(fields: ReadonlyMap<string, Field>, prefix = "", depth = 0): readonly NamedField[] {
  return [...fields.values()].flatMap((field): readonly NamedField[] => {
    const path = `${prefix}${field.name}`;
    if (field.type === "object") return namedFields(field.fields ?? new Map<string, Field>(), `${path}.`, depth + 1);
    if (field.type !== "list") return [{ path, field, depth }];
    if (field.item?.type === "object") {
      const inner = field.item.fields ?? new Map<string, Field>();
      return [...namedFields(inner, `${path}[].`, depth + 1), ...rowsByName(field, inner, path, depth + 1)];
    }
    return [{ path: `${path}[]`, field, depth }];
  });
}

/**
 * Rows that a closed list of names tells apart and that hold one figure beside it: a shop has a column for each, headed by
 * the name alone (`C`, `Mn`).
 */
function rowsByName(
  { rowKey, called = [] }: Field,
  fields: ReadonlyMap<string, Field>,
  path: string,
  depth: number,
): readonly NamedField[] {
  const key = rowKey === undefined ? undefined : fields.get(rowKey);
  const [figure, ...more] = [...fields.values()].filter(({ type }) => type === "quantity");
  if (key?.options === undefined || figure === undefined || more.length > 0) return [];
  return key.options.map((option) => {
    const [name = option, ...more] = called.map((one) => one.replace(`{${key.name}}`, option));
    return {
      path: `${path}[${key.name}="${option}"].${figure.name}`,
      field: { ...figure, name, title: name, called: more },
      depth,
    };
  });
}

/** All that a field goes by. */
const namesOf = ({ path, field }: NamedField) => [path, field.name, field.title, ...(field.called ?? [])];

const fold = (name: string) => name.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");

export type Match = { readonly path: string } | { readonly several: readonly string[] } | undefined;

/**
 * The field a heading names: its path, or the name or title of one field, or what shops call it. Of fields at several levels the outermost is
 * meant, and of those at one level the one whose own name it is; several are no match.
 */
export function fieldOfHeading(heading: string, known: readonly NamedField[]): Match {
  const exact = known.find(({ path }) => path === heading || path === `${heading}[]`);
  if (exact !== undefined) return { path: exact.path };
  const wanted = fold(heading);
  if (wanted === "") return undefined;
  const same = known.filter((one) => namesOf(one).some((name) => fold(name) === wanted));
  const least = Math.min(...same.map(({ depth }) => depth));
  const all = same.filter(({ depth }) => depth === least);
  const proper = all.filter(({ path, field }) => [path, field.name, field.title].some((name) => fold(name) === wanted));
  const outermost = proper.length > 0 ? proper : all;
  const [one, ...more] = outermost;
  if (one === undefined) return undefined;
  return more.length === 0 ? { path: one.path } : { several: outermost.map(({ path }) => path) };
}

/** The field whose name or title is nearest to a heading. */
export function nearestField(heading: string, fields: ReadonlyMap<string, Field>): string | undefined {
  const known = namedFields(fields);
  const match = fieldOfHeading(heading, known);
  if (match !== undefined) return "path" in match ? match.path : match.several.join('" or "');
  const byName = grouped(
    known.flatMap((one) => namesOf(one).map((name) => ({ name, one }))),
    ({ name }) => name,
  );
  const near = nearestName(heading, byName.keys());
  return near === undefined ? undefined : byName.get(near)?.[0]?.one.path;
}
