import type { Definitions } from "../model/definitions.ts";
import { isMilestone, isOwner, milestones, owners } from "../model/vocabulary.ts";
import { resultChecks } from "./result-checks.ts";

/**
 * Names that a definition uses and nobody defines, or that are defined twice. The compiler refuses most of them in the
 * program itself; definitions also come from elsewhere, and a slip in one is never the fault of a reader's book.
 */
export function checkNames(definitions: Definitions): readonly string[] {
  const { rules, facts, calculations, registers, tables, profiles } = definitions;
  // A row may stand in several registers; two rows of one name may not.
  const rows = [...new Set(registers.flatMap(({ requirements }) => requirements))];
  const acting = [
    ...rules.map(({ id, owner }) => [`rule ${id}`, owner] as const),
    ...facts.map(({ id, owner }) => [`fact ${id}`, owner] as const),
    ...rows.map(({ id, owner }) => [`requirement ${id}`, owner] as const),
    ...calculations.flatMap(({ id, owner, accept }) =>
      [owner, ...accept.map((one) => one.owner)].map((name) => [`calculation ${id}`, name ?? "design"] as const),
    ),
  ];
  return [
    ...acting
      .filter(([, owner]) => !isOwner(owner))
      .map(([what, owner]) => `${what}: nobody is called "${owner}"; who acts is one of ${owners.join(", ")}`),
    ...rows
      .filter(({ due }) => !isMilestone(due))
      .map(({ id, due }) => `requirement ${id}: there is no milestone "${due}"; there are ${milestones.join(", ")}`),
    ...twice([...rules, ...calculations, ...facts, ...rows, ...resultChecks(definitions.kinds)], "id"),
    ...twice(tables, "table"),
    ...twice(profiles, "profile"),
    ...twice(registers, "register"),
    ...unequal(definitions),
  ];
}

function twice(list: readonly { readonly id: string }[], what: string): readonly string[] {
  const ids = list.map(({ id }) => id);
  return ids
    .filter((id, index) => ids.indexOf(id) !== index)
    .map((id) => `definitions: the ${what} "${id}" is ${what === "id" ? "used" : "defined"} twice`);
}

/** Every profile states every parameter: else a book would be judged by what nobody defines. */
function unequal({ profiles }: Definitions): readonly string[] {
  const names = new Set(profiles.flatMap(({ parameters }) => Object.keys(parameters)));
  return profiles.flatMap(({ id, parameters }) =>
    [...names]
      .filter((name) => !Object.hasOwn(parameters, name))
      .map((name) => `profile ${id}: lacks the parameter "${name}"`),
  );
}
