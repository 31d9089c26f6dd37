import type { Basis } from "../model/basis.ts";
import type { Parameter, Profile } from "../model/profile.ts";
import { cautious, type ParameterName } from "./cautious.ts";

/** What a family of standards says of a parameter in which it differs from the cautious profile. */
export interface Difference {
  readonly value: string;
  readonly basis: Basis;
}

/** A profile of a family: the cautious one, but for what the family says otherwise. */
export function family(
  id: string,
  title: string,
  differences: Partial<Readonly<Record<ParameterName, Difference>>> & { readonly designStandards: Difference },
): Profile {
  const parameters: Record<string, Parameter> = { ...cautious.parameters };
  // A typed object has no other keys.
  for (const [name, { value, basis }] of Object.entries(differences) as [ParameterName, Difference][])
    parameters[name] = { ...cautious.parameters[name], value, basis };
  return { id, title, parameters };
}
