import type { Scope } from "../model/scope.ts";

export const tubeNests: Scope = {
  id: "tube-nests",
  title: "Tubes expanded or welded into plates",
  needs: ["pressure-equipment"],
  signs: [
    { kind: "part", path: "role", values: ["tube-plate", "tube", "stay-tube"] },
    { kind: "part", path: "tubeFields" },
  ],
};
