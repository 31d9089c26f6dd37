import type { Scope } from "../model/scope.ts";

export const shellBoilers: Scope = {
  id: "shell-boilers",
  title: "Shell boilers for steam",
  needs: ["fired", "steam", "tube-nests"],
  signs: [
    { kind: "equipment", path: "type", values: ["steam-boiler"] },
    { kind: "equipment", path: "levels" },
    { kind: "equipment", path: "heatingSurface" },
    { kind: "part", path: "role", values: ["furnace", "furnace-hoop", "reversal-chamber", "access-tube", "stay-tube"] },
    { kind: "part", path: "breathingSpaces" },
    { kind: "part", path: "hoop" },
    {
      kind: "fitting",
      path: "sort",
      values: ["low-water-limiter", "high-water-limiter", "level-controller", "feed-pump"],
    },
  ],
};
