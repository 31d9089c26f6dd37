import type { ChainStep } from "../model/chain.ts";
import { isList, isObject, type Json } from "../model/json.ts";
import { printFigure } from "../model/print-number.ts";
import { measure, parseQuantity } from "../model/quantity.ts";

/** Of each test a joint asks for: the length that is owed, and the lengths reported, in mm. */
export const extentFigures: NonNullable<ChainStep["figures"]> = (joint, found) => {
  const asked = joint["requiredTests"];
  const length = inUnit(joint["length"], "mm");
  if (!isList(asked) || length === undefined) return [];
  return asked.filter(isObject).flatMap((test) => {
    const { method, extent } = test;
    const share = inUnit(extent, "%");
    if (typeof method !== "string" || typeof extent !== "string" || share === undefined) return [];
    const done = found(`<ndt-report:rows[].joint>[record.method="${method}"]`).flatMap(
      (row) => inUnit(row["length"], "mm") ?? [],
    );
    const owed = `${method}: ${extent} of ${said(length)} mm is ${said((share / 100) * length)} mm`;
    if (done.length === 0) return [`${owed}; nothing is reported yet.`];
    const sum = done.length > 1 ? ` = ${said(done.reduce((all, one) => all + one, 0))}` : "";
    return [`${owed}; reported ${done.map(said).join(" + ")}${sum} mm.`];
  });
};

const said = (value: number) => printFigure(value);

function inUnit(value: Json | undefined, unit: string): number | undefined {
  const parsed = parseQuantity(typeof value === "string" ? value : "", { unit });
  return parsed.ok ? measure(parsed.quantity, unit).value : undefined;
}
