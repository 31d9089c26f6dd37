import { ownChoice } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Types of equipment, and the register that asks for what a book about one must contain. */
const registerOfType: Readonly<Record<string, string>> = {
  "air-receiver": "unfired-vessel",
  tank: "unfired-vessel",
  "steam-boiler": "shell-boiler",
};

export const registerFits = rule({
  id: "register-fits-equipment",
  title: "The register of a book is the one for its type of equipment",
  basis: ownChoice("a register for something else asks for too little, and nobody notices"),
  kind: "equipment",
  severity: "query",
  owner: "document control",
  inputs: { type: text("type"), register: text("book.book.register") },
  *check({ type, register }, equipment) {
    const wanted = registerOfType[type];
    if (wanted !== undefined && register !== wanted)
      yield {
        at: "type",
        accuses: [],
        message: `${equipment.name} is of type "${type}"; the book is judged by the register "${register}"`,
        why: `for this type there is the register "${wanted}"`,
        hint: "name that register in book.json, or correct the type; else answer why this one fits",
        related: [{ at: "register", message: `"${register}" here` }],
      };
  },
  examples: [
    { name: "a receiver", given: { type: "air-receiver", register: "unfired-vessel" }, objections: [] },
    { name: "a boiler", given: { type: "steam-boiler", register: "shell-boiler" }, objections: [] },
    {
      name: "a boiler as a vessel",
      given: { type: "steam-boiler", register: "unfired-vessel" },
      objections: ['X-01 is of type "steam-boiler"; the book is judged by the register "unfired-vessel"'],
    },
  ],
});
