import { describe, expect, it, test } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import type { Rule } from "../../src/model/rule.ts";
import { withNeeded, type Scope } from "../../src/model/scope.ts";
import { checkScopes } from "../../src/plan/check-scopes.ts";
import { inForceFor } from "../../src/plan/narrow.ts";
import { planOf } from "../../src/plan/plan.ts";

const all = shippedDefinitions(loadKinds(["schemas"]));
const scopes = all.scopes ?? [];
const vessel = inForceFor(all, withNeeded(scopes, ["unfired-vessels", "gas"]));

describe("definitions of some scopes", () => {
  it("are those of these scopes and of what they need, in the order of all", () => {
    const rules = vessel.definitions.rules;
    expect(all.rules.filter((rule) => rules.includes(rule))).toEqual(rules);
    expect(vessel.definitions.calculations.map(({ id }) => id)).not.toContain("furnace");
    expect(vessel.definitions.calculations.map(({ id }) => id)).toContain("cylindrical-shell");
    expect(rules.map(({ id }) => id)).not.toContain("water-levels");
    expect(planOf(vessel.definitions).calculations.length).toBe(vessel.definitions.calculations.length);
  });

  it("leave out parameters that only others read, and say of which scopes they are", () => {
    expect(vessel.outParameters.get("breathingLeast")?.map(({ id }) => id)).toEqual(["shell-boilers"]);
    expect(vessel.outParameters.has("holdMinutes")).toBe(false);
  });

  it("are all of them where all scopes are in force", () => {
    const whole = inForceFor(all, new Set(scopes.map(({ id }) => id)));
    expect(whole.definitions).toBe(all);
    expect(whole.out).toEqual([]);
  });
});

test("each register has scopes there are, and each scope is of a register", () => {
  const held = new Set(all.registers.flatMap((one) => [...withNeeded(scopes, one.scopes ?? [])]));
  expect([...held].sort()).toEqual(scopes.map(({ id }) => id).sort());
});

const changed = (id: string, change: Partial<Rule>): Definitions => ({
  ...all,
  rules: all.rules.map((rule) => (rule.id === id ? { ...rule, ...change } : rule)),
});
const withScope = (scope: Partial<Scope>): Definitions => ({
  ...all,
  scopes: scopes.map((one) => (one.id === "gas" ? { ...one, ...scope } : one)),
});

describe("faults of scopes are found when definitions load", () => {
  it("of a definition that would go unapplied, unseen", () => {
    expect(checkScopes(changed("chemistry-limits", { scope: "steam" }))).toEqual([
      'chemistry-limits is of the scope "steam", and no condition of it is a sign of that scope: it would go unapplied, unseen',
    ]);
  });

  it("of a condition that other values meet too", () => {
    const when = [{ path: "fluid.state", equals: ["steam", "gas"] }];
    expect(checkScopes(changed("water-levels", { when }))).toHaveLength(1);
    expect(checkScopes(changed("water-levels", { when: [{ path: "fluid.state", equals: "steam" }] }))).toEqual([]);
  });

  it("of a scope there is none of", () => {
    const names = scopes.map(({ id }) => id).join(", ");
    expect(checkScopes(changed("water-levels", { scope: "water" }))).toEqual([
      `water-levels: there is no scope "water"; there are ${names}`,
    ]);
    expect(checkScopes(withScope({ needs: ["pressure"] }))).toEqual([
      `scope gas: there is no scope "pressure"; there are ${names}`,
    ]);
  });

  it("of a sign there cannot be", () => {
    const signs = [
      { kind: "equipment", path: "fluid.states" },
      ...(scopes.find(({ id }) => id === "gas")?.signs ?? []),
    ];
    expect(checkScopes(withScope({ signs }))).toEqual(['scope gas: equipment has no field "fluid.states" to show it']);
    const never = signs.map((sign) => ({
      ...sign,
      path: sign.path.replace("states", "state"),
      values: ["gas", "air"],
    }));
    expect(checkScopes(withScope({ signs: never })).slice(0, 1)).toEqual([
      'scope gas: "fluid.state" of equipment never says air',
    ]);
  });

  it("and nothing of the shipped ones", () => {
    expect(checkScopes(all)).toEqual([]);
  });
});
