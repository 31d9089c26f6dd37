import type { Facts } from "../../book/facts.ts";
import { procedures } from "../../sheets/binders.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { procedures as texts } from "../facts/procedures.ts";

const binders: readonly (readonly [name: string, title: string, by: string, ids: RegExp])[] = [
  ["SHOP", "Procedures of the maker", "TARNEQUILL", /-(MARK|DIM|HYD|CLEAN|COAT|FIN)$/],
  ["TESTING", "Procedures of the testers", "GLIMMERFIELD", /-(VT|RT|MT|PT)$/],
  ["FORMING", "Procedure for forming ends", "BOWLTHORNE", /-FORM$/],
  ["VALVE", "Procedure for setting safety valves", "HOLLYVANE", /-SV$/],
];

export const procedureOriginals = (facts: Facts): readonly OriginalSheet[] =>
  binders.map(([name, title, by, ids]) => {
    const chosen = facts.all("procedure").filter(({ id }) => ids.test(id));
    const paragraphs = (id: string) => texts.find(({ record }) => record.id === id)?.paragraphs ?? [];
    return { ...procedures(facts, chosen, { name, title, by }, ({ id }) => paragraphs(id)), compared: "2026-05-12" };
  });
