import type { Scope } from "../model/scope.ts";

export const pressureEquipment: Scope = {
  id: "pressure-equipment",
  title: "Welded pressure equipment",
  needs: ["general"],
  signs: [],
};
