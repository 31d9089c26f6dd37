import { describe, expect, it } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { parseQuantity } from "../../src/model/quantity.ts";
import { profiles } from "../../src/profiles/index.ts";

/** Parameters of the profile that calculations read, with the unit they want. */
const read = calculations.flatMap((calculation) =>
  Object.values(calculation.inputs)
    .filter(({ path }) => path.startsWith("profile."))
    .map(({ path, unit }) => ({ id: calculation.id, name: path.slice("profile.".length), unit })),
);

describe.each(profiles.map((profile) => [profile.id, profile] as const))("profile %s", (_, profile) => {
  it("holds every parameter that a calculation reads, in its dimension", () => {
    expect(read.length).toBeGreaterThan(0);
    for (const { id, name, unit } of read) {
      const parameter = profile.parameters[name];
      expect(parameter, `${id} reads ${name}`).toBeDefined();
      expect(parseQuantity(parameter?.value ?? "", { unit }).ok, `${name} = ${parameter?.value ?? ""} in ${unit}`).toBe(
        true,
      );
    }
  });

  it("says of every parameter what it means and where it comes from", () => {
    for (const [name, parameter] of Object.entries(profile.parameters)) {
      expect(parameter.means, name).not.toBe("");
      expect(parameter.basis.class, name).not.toBe("");
    }
  });
});
