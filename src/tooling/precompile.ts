import standalone from "ajv/dist/standalone/index.js";
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { packageRoot } from "../root.ts";
import { loadKinds } from "../load/kinds.ts";
import { checkName, readyFile } from "../load/ready-checks.ts";
import { schemaEngine } from "../load/schema-engine.ts";
import { tableSchema } from "../load/tables.ts";
import { writeBundle } from "./bundle.ts";

// Run by `npm run build` after the compiler: writes the checks of all shipped schemas beside the program, and the bundle with
// what is proved of it.
const engine = schemaEngine(false, true);
const names: Record<string, string> = {};
const schemas = join(packageRoot, "schemas");
const kinds = loadKinds([schemas]);
const records = [...kinds.values()].flatMap(({ single, row }) => [single, row]);
for (const schema of [...records, tableSchema(schemas)]) {
  const name = checkName(schema);
  if (Object.hasOwn(names, name)) continue;
  engine.add(schema, name);
  names[name] = name;
}
mkdirSync(dirname(readyFile), { recursive: true });
writeFileSync(readyFile, standalone.default(engine.ajv, names));
await writeBundle(schemas, kinds);
