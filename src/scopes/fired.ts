import type { Scope } from "../model/scope.ts";

export const fired: Scope = {
  id: "fired",
  title: "Fired equipment",
  needs: ["pressure-equipment"],
  signs: [
    { kind: "part", path: "heating", values: ["convection", "radiation"] },
    {
      kind: "fitting",
      path: "sort",
      values: ["burner", "gas-train", "explosion-door", "economiser"],
    },
  ],
};
