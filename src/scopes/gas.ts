import type { Scope } from "../model/scope.ts";

export const gas: Scope = {
  id: "gas",
  title: "Gas under pressure",
  needs: ["pressure-equipment"],
  signs: [
    { kind: "equipment", path: "fluid.state", values: ["gas"] },
    { kind: "safety-valve", path: "medium.state", values: ["gas"] },
  ],
};
