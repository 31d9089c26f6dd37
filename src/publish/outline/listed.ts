import type { Text } from "../blocks.ts";

/** Things one after another; where there are more than `most`, how many are left out is said. */
export function listed(items: readonly Text[], most = Number.POSITIVE_INFINITY, between = ", "): Text {
  const shown = items.slice(0, most).flatMap((one, index): Text => (index === 0 ? one : [between, ...one]));
  return items.length > most ? [...shown, `${between}and ${items.length - most} more`] : shown;
}
