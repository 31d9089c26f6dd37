import { fromMemory } from "../../model/basis.ts";
import { anyOf, optional, table, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { owedBy } from "../../model/owes.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);

export const moduleFitsCategory = rule({
  id: "module-fits-category",
  title: "The conformity assessment procedure is one of the category, or of a higher one",
  basis: directive("Annex II: procedures of each category; one of a higher category may be chosen"),
  kind: "equipment",
  when: [
    { path: "directive.inScope", equals: true },
    { path: "directive.category", equals: ["I", "II", "III", "IV"] },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    category: text("directive.category"),
    module: text("directive.module"),
    procedures: table("module-of-category"),
  },
  owes: [owedBy("design", "design-approved", "directive.category", "module")],
  *check({ category, module, procedures }, equipment) {
    const allowed = procedures(category).texts("modules");
    if (!allowed.includes(module))
      yield {
        at: "module",
        accuses: ["category", "module"],
        message: `module ${module} is no procedure for equipment ${equipment.name} of category ${category}`,
        why: `permitted: ${allowed.join(", ")}`,
        hint: "correct category or module; the inspection body confirms the procedure",
      };
  },
  examples: [
    { name: "of the category", given: { category: "IV", module: "B+F" }, objections: [] },
    { name: "of a higher category", given: { category: "I", module: "G" }, objections: [] },
    {
      name: "of a lower category",
      given: { category: "IV", module: "B+C2" },
      objections: ["module B+C2 is no procedure for equipment X-01 of category IV"],
    },
  ],
});

export const noModuleWithoutCategory = rule({
  id: "no-module-without-category",
  title: "Equipment of sound engineering practice has no conformity assessment procedure",
  basis: directive("Article 4(3): sound engineering practice, no CE marking"),
  kind: "equipment",
  when: [
    { path: "directive.inScope", equals: true },
    { path: "directive.category", equals: "sound engineering practice" },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: { module: optional(text("directive.module")) },
  *check({ module }, equipment) {
    if (module !== undefined)
      yield {
        at: "module",
        accuses: ["module"],
        message: `equipment ${equipment.name} is of sound engineering practice and names module ${module}`,
        why: "equipment of sound engineering practice has no procedure",
        hint: "correct the category or take the module out; the inspection body confirms it",
      };
  },
  examples: [
    { name: "none named", given: {}, objections: [] },
    {
      name: "one named",
      given: { module: "A" },
      objections: ["equipment X-01 is of sound engineering practice and names module A"],
    },
  ],
});

export const declarationBodyNumber = rule({
  id: "declaration-body-number",
  title: "A declaration names the inspection body when its module has one, and only then",
  basis: directive("Annex IV: the notified body, where there was one"),
  kind: "declaration",
  severity: "nonconformity",
  owner: "authorised signatory",
  inputs: { module: text("module"), number: optional(text("bodyNumber")), body: table("module-body") },
  *check({ module, number, body }, declaration) {
    const needed = body(module).text("body") === "yes";
    if (needed !== (number !== undefined))
      yield {
        at: number === undefined ? "module" : "number",
        message: needed
          ? `declaration ${declaration.name} by module ${module} names no inspection body`
          : `declaration ${declaration.name} by module ${module} names inspection body ${number ?? ""}`,
        why: needed ? "in this module an inspection body takes part" : "in this module the maker is alone",
        hint: needed ? "add the identification number of the body" : "take the number out, or correct the module",
      };
  },
  examples: [
    { name: "with a body", given: { module: "B+F", number: "0000" }, objections: [] },
    { name: "without one", given: { module: "A" }, objections: [] },
    {
      name: "the number left out",
      given: { module: "A2" },
      objections: ["declaration X-01 by module A2 names no inspection body"],
    },
    {
      name: "a number too much",
      given: { module: "A", number: "0000" },
      objections: ["declaration X-01 by module A names inspection body 0000"],
    },
  ],
});

export const declarationCertificates = rule({
  id: "declaration-certificates",
  title: "A declaration names each certificate its module needs",
  basis: directive("conformity assessment procedures: certificates the inspection body issues"),
  kind: "declaration",
  severity: "gap",
  owner: "inspection body",
  inputs: {
    module: text("module"),
    certificates: anyOf(things("bodyCertificates[]", { type: text("type") })),
    owed: table("module-certificates"),
  },
  *check({ module, certificates, owed }, declaration) {
    for (const one of owed(module).texts("certificates")) {
      const types = one.split(" or ");
      if (!certificates.some(({ type }) => types.includes(type)))
        yield {
          at: "module",
          accuses: [],
          name: types[0] ?? "",
          message: `declaration ${declaration.name} by module ${module} names no certificate of ${types.join(" or ")}`,
          why:
            certificates.length === 0
              ? "it names none"
              : `it names: ${certificates.map(({ $, type }) => `${$.name}, ${type}`).join("; ")}`,
          hint: "add the certificate of the inspection body, and name it in the declaration",
        };
    }
  },
  examples: [
    {
      name: "both of B+F",
      given: { module: "B+F", certificates: [{ type: "EU-type examination" }, { type: "product verification" }] },
      objections: [],
    },
    { name: "none by module A", given: { module: "A" }, objections: [] },
    {
      name: "one of two",
      given: { module: "B+F", certificates: [{ $: "BC-01", type: "EU-type examination" }] },
      objections: ["declaration X-01 by module B+F names no certificate of product verification"],
    },
    {
      name: "of another procedure",
      given: { module: "G", certificates: [{ $: "BC-01", type: "product verification" }] },
      objections: ["declaration X-01 by module G names no certificate of unit verification"],
    },
  ],
});
