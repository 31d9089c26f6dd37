import { readFileSync } from "node:fs";
import { join } from "node:path";
import { packageRoot } from "../../root.ts";

// Later files refine earlier ones.
const parts = ["base", "frame", "text", "tables", "evidence", "calculation", "figures", "small", "paper"] as const;

/** The style sheet of the site. */
export const styles = (): string =>
  parts.map((part) => readFileSync(join(packageRoot, "templates/styles", `${part}.css`), "utf8")).join("\n");

/** The script of the find page. */
export const findScript = (): string => readFileSync(join(packageRoot, "templates/client/find.js"), "utf8");
