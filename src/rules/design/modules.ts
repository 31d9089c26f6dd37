/** Conformity assessment procedures of Directive 2014/68/EU, from memory. */

const byCategory: readonly (readonly [category: string, modules: readonly string[]])[] = [
  ["I", ["A"]],
  ["II", ["A2", "D1", "E1"]],
  ["III", ["B+D", "B+F", "B+E", "B+C2", "H"]],
  ["IV", ["B+D", "B+F", "G", "H1"]],
];

/** Modules a category may use: its own and those of higher categories; none for sound engineering practice. */
export function modulesFor(category: string): readonly string[] {
  const at = byCategory.findIndex(([name]) => name === category);
  return at < 0 ? [] : [...new Set(byCategory.slice(at).flatMap(([, modules]) => modules))];
}

/** Whether an inspection body takes part in the module. */
export const needsBody = (module: string): boolean => module !== "A";

type Types = readonly (readonly string[])[];
const typeExamination = ["EU-type examination", "design examination"];
const system = ["quality system approval"];

const certificates: ReadonlyMap<string, Types> = new Map<string, Types>([
  ["B+C2", [typeExamination]],
  ["B+D", [typeExamination, system]],
  ["B+E", [typeExamination, system]],
  ["B+F", [typeExamination, ["product verification"]]],
  ["D1", [system]],
  ["E1", [system]],
  ["G", [["unit verification"]]],
  ["H", [system]],
  ["H1", [system, ["design examination"]]],
]);

/** Certificates the inspection body issues in a module: for each one the types that serve. */
export const certificatesOwed = (module: string): Types => certificates.get(module) ?? [];
