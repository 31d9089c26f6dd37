interface Fluid {
  readonly names: readonly string[];
  readonly group: "1" | "2";
  /** Where it is always of one: what is stored liquefied is not. */
  readonly state?: "gas" | "steam" | "liquid";
}

/** Fluids about whose group, and mostly whose state, nobody argues; of others nothing is judged. */
const fluids: readonly Fluid[] = [
  { names: ["hydrogen", "methane", "natural gas", "oxygen"], group: "1", state: "gas" },
  { names: ["acetylene", "ammonia", "butane", "chlorine", "propane"], group: "1" },
  { names: ["air", "argon", "compressed air", "helium", "nitrogen"], group: "2", state: "gas" },
  { names: ["saturated steam", "steam", "superheated steam"], group: "2", state: "steam" },
  { names: ["hot water", "water"], group: "2", state: "liquid" },
  { names: ["carbon dioxide", "water and steam"], group: "2" },
];

const byName: ReadonlyMap<string, Fluid> = new Map(
  fluids.flatMap((fluid) =>
    fluid.names.flatMap((name) =>
      [name, name.replace(/^./u, (first) => first.toUpperCase())].map((one) => [one, fluid] as const),
    ),
  ),
);

/** Names of fluids, written small or with a capital letter: all, and those that are always of one state. */
export const fluidNames: readonly string[] = [...byName.keys()];
export const fluidNamesOfState: readonly string[] = [...byName].flatMap(([name, { state }]) =>
  state === undefined ? [] : [name],
);

/** What is known of a fluid by its name; undefined of one that is not listed. */
export const fluidOf = (name: string): Fluid | undefined => byName.get(name);
