import type { Condition } from "../model/input.ts";

/** A path that is a single field. */
export const isName = (path: string): boolean => /^\w+$/.test(path);

/** A path read from where another one ends; one that starts at the book starts there. */
export function joined(before: string, path: string): string {
  if (before === "" || path.startsWith("book.") || path.startsWith("profile.")) return path;
  return /^[[<]/.test(path) ? before + path : `${before}.${path}`;
}

/** What is known of what a link of a record names, as conditions on the record: `state` as `equipment.state`. */
export const behind = (link: string, conditions: readonly Condition[]): readonly Condition[] =>
  conditions.map((one) => ({ ...one, path: joined(link, one.path) }));

/** What conditions on a record say of what a link of it names: `equipment.state` as `state`. */
export const through = (link: string, conditions: readonly Condition[]): readonly Condition[] =>
  conditions.flatMap((one) =>
    one.path.startsWith(`${link}.`) ? [{ ...one, path: one.path.slice(link.length + 1) }] : [],
  );
