import type { ChainStep } from "../model/chain.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { printFigure } from "../model/print-number.ts";
import { measure, parseQuantity } from "../model/quantity.ts";

/**
 * Of each test a joint asks for: the length that is owed, and the lengths reported, in mm. A rejected length counts once,
 * and not before its repair is tested again; the test of the repair adds nothing to it.
 */
export const extentFigures: NonNullable<ChainStep["figures"]> = (joint, found, isOpen) => {
  const asked = joint["requiredTests"];
  const length = inUnit(joint["length"], "mm");
  if (!isList(asked) || length === undefined) return [];
  return asked.filter(isObject).flatMap((test) => {
    const { method, extent } = test;
    const share = inUnit(extent, "%");
    if (typeof method !== "string" || typeof extent !== "string" || share === undefined) return [];
    const rows = found(`<ndt-report:rows[].joint>[record.method="${method}"]`);
    const owed = `${method}: ${extent} of ${said(length)} mm is ${said((share / 100) * length)} mm`;
    if (rows.length === 0) return [`${owed}; nothing is reported yet.`];
    const again = rows.filter((row) => row["repair"] !== undefined);
    const first = rows.filter((row) => row["repair"] === undefined);
    const done = sumOf(first.filter((row) => !isOpen(row)));
    return [
      [
        owed,
        done === "" ? "nothing reported counts yet" : `reported ${done}`,
        ...noted(
          sumOf(first.filter(isOpen)),
          "rejected, and untested until a repair is tested again over its whole length",
        ),
        ...noted(sumOf(again), "tested again after repair, within what is counted"),
      ].join("; ") + ".",
    ];
  });
};

const noted = (sum: string, what: string) => (sum === "" ? [] : [`${sum} ${what}`]);

/** "300 + 400 = 700 mm", "300 mm"; "" of none. */
function sumOf(rows: readonly JsonObject[]): string {
  const lengths = rows.flatMap((row) => inUnit(row["length"], "mm") ?? []);
  if (lengths.length === 0) return "";
  const sum = lengths.length > 1 ? ` = ${said(lengths.reduce((all, one) => all + one, 0))}` : "";
  return `${lengths.map(said).join(" + ")}${sum} mm`;
}

const said = (value: number) => printFigure(value);

function inUnit(value: Json | undefined, unit: string): number | undefined {
  const parsed = parseQuantity(typeof value === "string" ? value : "", { unit });
  return parsed.ok ? measure(parsed.quantity, unit).value : undefined;
}
