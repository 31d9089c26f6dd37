import { readFileSync } from "node:fs";
import { join } from "node:path";
import { packageRoot } from "../root.ts";

/** The guide that goes with a new book; `{{schemas}}` stands for the way to the schemas for editors. */
export const guideText = (): string => readFileSync(join(packageRoot, "templates", "starter", "README.md"), "utf8");
