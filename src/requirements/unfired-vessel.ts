import { owedToCalculations } from "../calculations/owed.ts";
import { commonPractice, fromMemory, type Basis } from "../model/basis.ts";
import type { Condition } from "../model/input.ts";
import type { Register, Requirement } from "../model/requirement.ts";
import { pressureBearing, tested } from "./conditions.ts";

const directive = (topic: string): Basis => fromMemory("Directive 2014/68/EU", undefined, topic);
const traceability = directive("Annex I, traceability of materials from receipt to final test");
const welding = fromMemory("EN ISO 3834-2", "2021", "quality records of fusion welding");
const practice = commonPractice("what every manufacturing data book of a vessel holds");

const sheet = (calculation: string): string => `<calculation-sheet:subject>[calculation="${calculation}"]`;
const role = (...roles: readonly string[]): Condition => ({ path: "role", equals: roles });
const inScope: Condition = { path: "directive.inScope", equals: true };

/** A row in one line: what it asks of which records, from when, who owes it, and why. */
function owed(id: string, title: string, each: Requirement["each"], needs: string, due: string, owner: string, basis: Basis): Requirement {
  return { id, title, each, needs, due, owner, basis };
}

const book = { kind: "book" } as const;

/** What the data book of an unfired pressure vessel must contain. */
export const unfiredVessel: Register = {
  id: "unfired-vessel",
  title: "Unfired pressure vessel",
  requirements: [
    owed("book-equipment", "The equipment the book is about", book, "book.equipment", "order", "document control", practice),
    owed("book-parts", "The parts of the equipment", book, "book.part", "design-approved", "design", practice),
    owed("book-joints", "The welded joints of the equipment", book, "book.joint", "design-approved", "design", practice),
    owed("book-drawings", "Drawings, with the revision in force", book, "book.drawing", "design-approved", "design", directive("Annex III, technical documentation")),
    owed("book-plan", "The inspection and test plan", book, "book.inspection-step", "order", "quality", practice),
    owed("book-risk-analysis", "The analysis of risks", book, 'book.document[type="risk-analysis"]', "design-approved", "design", directive("Annex I, preliminary observations: analysis of hazards and risks")),
    owed("book-instructions", "Operating instructions", book, 'book.document[type="operating-instructions"]', "final-inspection", "design", directive("Annex I, operating instructions")),
    owed("book-final-inspection", "The report of the final inspection", book, 'book.document[type="final-inspection-report"]', "final-inspection", "quality", directive("Annex I, final inspection")),
    owed("book-dimensions", "A check of the finished dimensions", book, "book.dimension-check", "pressure-test", "quality", practice),
    owed("part-mark", "A mark for each pressure part", { kind: "part", when: [pressureBearing] }, "<piece-mark:part>", "cutting", "shop", traceability),
    owed("part-stress", "A sheet of the design stress of each pressure part", { kind: "part", when: [pressureBearing, role("shell-course", "end")] }, sheet("design-stress"), "design-approved", "design", directive("Annex III, results of design calculations")),
    owed("shell-calculation", "A calculation of each shell course", { kind: "part", when: [role("shell-course")] }, sheet("cylindrical-shell"), "design-approved", "design", directive("Annex III, results of design calculations")),
    owed("end-calculation", "A calculation of each end", { kind: "part", when: [role("end")] }, sheet("torispherical-end"), "design-approved", "design", directive("Annex III, results of design calculations")),
    owed("row-chemistry", "The ladle analysis of each heat", { kind: "material-certificate#rows", when: [tested] }, "chemistry", "material-received", "purchasing", fromMemory("EN 10204", "2004", "specific inspection")),
    owed("row-tensile", "The tensile test of each heat", { kind: "material-certificate#rows", when: [tested] }, "tensile", "material-received", "purchasing", fromMemory("EN 10204", "2004", "specific inspection")),
    owed("mill-approval", "The approval of the quality system of each mill with 3.1 certificates", { kind: "material-certificate", when: [{ path: "type", equals: "3.1" }] }, "mill.<mill-approval:mill>", "material-received", "purchasing", directive("Annex I, material manufacturer’s quality system")),
    owed("joint-log", "A weld log for each joint", { kind: "joint" }, "<weld-log:joint>", "welding", "welding coordination", welding),
    owed("joint-visual", "A visual test of each joint", { kind: "joint" }, '<ndt-report:rows[].joint>[^.method="VT"]', "testing-complete", "testing", fromMemory("EN 13445-5", "2021", "visual examination of all welds")),
    owed("welder-qualification", "A qualification for each welder", { kind: "weld-log#runs" }, "welders[].<welder-qualification:person>", "welding", "welding coordination", directive("Annex I, permanent joining: qualified personnel")),
    owed("tester-certificate", "A certificate for each tester", { kind: "ndt-report" }, "operator.<ndt-personnel:person>", "testing-complete", "testing", directive("Annex I, non-destructive tests: qualified personnel")),
    owed("category-sheet", "The determination of the category", { kind: "equipment", when: [inScope] }, sheet("equipment-category"), "design-approved", "design", directive("Annex II, conformity assessment tables")),
    owed("equipment-test-pressure", "The calculation of the test pressure", { kind: "equipment" }, sheet("test-pressure"), "design-approved", "design", directive("Annex I, hydrostatic test pressure")),
    owed("equipment-test", "The pressure test", { kind: "equipment" }, "<pressure-test:equipment>", "pressure-test", "quality", directive("Annex I, proof test")),
    owed("book-valve", "A safety valve", book, "book.safety-valve", "final-inspection", "purchasing", directive("Annex I, protection against exceeding the allowable limits")),
    owed("valve-calculation", "The sizing of each safety valve", { kind: "safety-valve" }, sheet("gas-safety-valve"), "final-inspection", "design", directive("Annex I, safety accessories")),
    owed("equipment-nameplate", "The nameplate", { kind: "equipment" }, "<nameplate:equipment>", "final-inspection", "quality", directive("Annex I, marking and labelling")),
    owed("equipment-certificate", "The certificate of the inspection body", { kind: "equipment", when: [inScope] }, "<body-certificate:equipment>", "release", "inspection body", directive("Annex III, conformity assessment")),
    owed("equipment-declaration", "The declaration of conformity", { kind: "equipment", when: [inScope] }, "<declaration:equipment>", "release", "authorised signatory", directive("Annex IV, declaration of conformity")),
    ...owedToCalculations,
  ],
};
