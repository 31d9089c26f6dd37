import type { Scope } from "../model/scope.ts";

export const unfiredVessels: Scope = {
  id: "unfired-vessels",
  title: "Unfired vessels",
  needs: ["pressure-equipment"],
  signs: [{ kind: "equipment", path: "type", values: ["air-receiver", "tank"] }],
};
