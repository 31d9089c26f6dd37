import type { Facts } from "../../book/facts.ts";
import { calculations } from "../../sheets/binders.ts";
import { weekdayLater, type OriginalSheet } from "../../sheets/original.ts";
import { calculationWords } from "./calculation-words.ts";

const groups: readonly (readonly [path: string, title: string, calculations: readonly string[]])[] = [
  ["design-stress", "Design stresses of shell and ends", ["design-stress"]],
  ["shell", "Shell under internal pressure", ["cylindrical-shell"]],
  ["ends", "Ends under internal pressure", ["torispherical-end"]],
  ["test", "Test pressure and stress at the test", ["test-pressure", "test-stress"]],
  ["category", "Category", ["equipment-category"]],
  ["safety-valve", "Capacity of the safety valve", ["gas-safety-valve", "relief-capacity"]],
  ["hold", "Evaluation of the hydrostatic test", ["pressure-hold"]],
];

export const calculationOriginals = (facts: Facts): readonly OriginalSheet[] =>
  groups.map(([path, title, chosen]) => {
    const sheets = facts.all("calculation-sheet").filter(({ calculation }) => chosen.includes(calculation));
    const original = calculations(facts, sheets, path, title, (name) => calculationWords[name]);
    return { ...original, compared: weekdayLater(original.day, 3) };
  });
