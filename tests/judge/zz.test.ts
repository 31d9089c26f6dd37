import { fileURLToPath } from "node:url";
import { test } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { planOf } from "../../src/judge/plan.ts";
import { loadKinds } from "../../src/load/kinds.ts";
test("plan", () => {
  const kinds = loadKinds([fileURLToPath(new URL("../../schemas", import.meta.url))]);
  const plan = planOf(shippedDefinitions(kinds));
  console.log(plan.within.map(r=>r.id).join(), "|", plan.chain.map(r=>r.id).join(), "|", plan.whole.map(r=>r.id).join(), "|", [...plan.ordered].join());
});
