import { parseTarget, printTarget, withoutKind } from "../link/target.ts";
import type { Field } from "../model/kind.ts";
import { fault, value, type CellValue, type KindsOf } from "./read-cell.ts";
import { foldId } from "./template.ts";

/**
 * A link as it is written, in small letters too where a record has the id they make. Where a field may name several kinds, a shop writes the id alone: it is taken where exactly one of
 * these kinds has a record of that id, in the book or in the workbook.
 */
export function linkValue(written: string, { targets = [] }: Field, kindsOf: KindsOf): CellValue {
  const target = parseTarget(written, targets);
  if (!("expected" in target)) return value(written);
  const folded = foldedLink(written, targets, kindsOf);
  if (folded !== undefined) return value(folded);
  if (targets.length < 2 || withoutKind(written) !== written)
    return fault(
      `"${written}" is no link of this field; expected ${shortened(target.expected)}`,
      'say under "form" of the column how the number is made of the cell, such as "L-{}", or give the word its meaning under "words"',
    );
  const id = /^[^#@]*/.exec(written)?.[0] ?? "";
  const meant = [...kindsOf(id).meant]
    .map((kind) => printTarget({ kind, id: written }, true))
    .filter((one) => !("expected" in parseTarget(one, targets)))
    .sort();
  const [one, ...more] = meant;
  if (one === undefined)
    return fault(
      `"${written}" is no link of this field: neither the book nor this workbook has a record of that id that it may name`,
      `take in the sheet that holds it before; or correct the cell: expected ${shortened(target.expected)}`,
    );
  if (more.length > 0)
    return fault(
      `"${written}" may be ${meant.map((one) => `"${one}"`).join(" or ")}`,
      'write which is meant, or give the word its meaning under "words" of the map',
    );
  return value(one);
}

/** `Bowlthorne` for BOWLTHORNE: a text that is no id, but makes one that a record it may name has. */
function foldedLink(written: string, targets: readonly string[], kindsOf: KindsOf): string | undefined {
  const id = targets.length === 1 ? foldId(written) : undefined;
  const target = id === undefined ? undefined : parseTarget(id, targets);
  return target !== undefined && !("expected" in target) && kindsOf(target.id).all.has(target.kind) ? id : undefined;
}

/** The first few forms of many. */
function shortened(expected: string): string {
  const forms = expected.split(', "');
  return forms.length <= 4 ? expected : `${forms.slice(0, 3).join(', "')}, … (${forms.length} kinds of record)`;
}
