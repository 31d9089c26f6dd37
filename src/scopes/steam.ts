import type { Scope } from "../model/scope.ts";

export const steam: Scope = {
  id: "steam",
  title: "Steam",
  needs: ["pressure-equipment"],
  signs: [
    { kind: "equipment", path: "fluid.state", values: ["steam"] },
    { kind: "equipment", path: "duty.steamOutput" },
    { kind: "safety-valve", path: "medium.state", values: ["steam"] },
  ],
};
