import type { Scope } from "../model/scope.ts";

export const general: Scope = {
  id: "general",
  title: "Any data book: papers, people, dates, exceptions",
  needs: [],
  signs: [],
};
