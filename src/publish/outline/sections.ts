import { isList, isObject } from "../../model/json.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Kind } from "../../model/kind.ts";

export interface BookSection {
  readonly id: string;
  readonly title: string;
}

/** Default order and titles; a book may set its own in book.json. Sections of kinds it does not know come last. */
const standard: readonly BookSection[] = [
  { id: "legal", title: "Declaration, certificates, nameplate" },
  { id: "compliance", title: "Compliance" },
  { id: "design", title: "Design data and calculations" },
  { id: "drawings", title: "Drawings, documents, procedures" },
  { id: "planning", title: "Inspection and test plan" },
  { id: "materials", title: "Parts and materials" },
  { id: "welding", title: "Welding" },
  { id: "testing", title: "Non-destructive testing and repairs" },
  { id: "heat-treatment", title: "Forming and heat treatment" },
  { id: "dimensions", title: "Dimensions" },
  { id: "pressure-test", title: "Pressure test" },
  { id: "coating", title: "Coating" },
  { id: "safety", title: "Safety devices" },
  { id: "instruments", title: "Measuring equipment" },
  { id: "deviations", title: "Nonconformity reports and exceptions" },
  { id: "people", title: "People and organisations" },
  { id: "originals", title: "Originals" },
  { id: "integrity", title: "Integrity" },
];

/** Sections of this book in order: those it names, then the standard ones its kinds need. */
export function sectionsOf(book: BookRecord, kinds: Iterable<Kind>): readonly BookSection[] {
  const named = book.value["sections"];
  const own = (isList(named) ? named : []).flatMap((one) =>
    isObject(one) && typeof one["id"] === "string"
      ? [{ id: one["id"], title: typeof one["title"] === "string" ? one["title"] : titleOf(one["id"]) }]
      : [],
  );
  const needed = new Set([...kinds].map(({ section }) => section).concat("compliance", "design", "integrity"));
  const rest = standard.filter(({ id }) => needed.has(id) && !own.some((one) => one.id === id));
  const unknown = [...needed]
    .filter((id) => !standard.some((one) => one.id === id) && !own.some((one) => one.id === id))
    .sort();
  return [...own, ...rest, ...unknown.map((id) => ({ id, title: titleOf(id) }))];
}

function titleOf(id: string): string {
  const known = standard.find((one) => one.id === id);
  if (known !== undefined) return known.title;
  const words = id.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
