import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import { ProgramError } from "../model/program-error.ts";
import { composeKind } from "./compose.ts";
import { objectOf } from "./inline.ts";
import { hashOfFiles, noteProvedKinds, proofHere } from "../proof.ts";
import { checkHead, checkKind } from "./schema-form.ts";

const suffix = ".schema.json";
const commonFile = `common${suffix}`;

/**
 * The kinds of records, by name in code-point order, from every schema file of the folders. The first folder holds the
 * shared definitions; a further folder adds kinds, one schema file each. Throws `ProgramError` for a file that breaks the
 * form, and for a kind defined twice.
 */
export function loadKinds(schemaDirs: readonly string[]): Map<string, Kind> {
  const [first] = schemaDirs;
  if (first === undefined) throw new ProgramError("no folder of schemas was named");
  const proof = proofHere();
  const proved = proof !== undefined && proof.schemas === hashOfFiles(first);
  const common = readSchema(join(first, commonFile));
  const shared = objectOf(objectOf(common, "$defs"), "recordProperties");
  if (!Object.hasOwn(shared, "id"))
    throw new ProgramError(`${join(first, commonFile)}: "$defs/recordProperties" has no "id"`);
  const found = new Map<string, { readonly file: string; readonly kind: Kind; readonly checked: boolean }>();
  for (const [file, isFirst] of schemaDirs.flatMap((dir, index) =>
    schemaFiles(dir).map((one) => [one, index === 0] as const),
  )) {
    const name = file.slice(Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1, -suffix.length);
    const before = found.get(name);
    if (before !== undefined) throw new ProgramError(`${file}: kind "${name}" is already defined in ${before.file}`);
    const schema = readSchema(file);
    const checked = proved && isFirst;
    if (!checked) checkHead(name, file, schema, shared);
    found.set(name, { file, checked, kind: composeKind(name, { file, schema, common }) });
  }
  const heat = heatKind(common, found.get("material-certificate")?.kind);
  if (heat !== undefined && found.has("heat"))
    throw new ProgramError('kind "heat" is derived from certificates; remove its schema file');
  const kinds = new Map(
    [...[...found.values()].map(({ kind }) => kind), ...(heat === undefined ? [] : [heat])]
      .sort((a, b) => byCodePoint(a.name, b.name))
      .map((kind) => [kind.name, kind]),
  );
  for (const { file, kind, checked } of found.values()) if (!checked) checkKind(kind, file, kinds);
  if (proved && schemaDirs.length === 1) noteProvedKinds(kinds);
  return kinds;
}

function schemaFiles(dir: string): string[] {
  let names: string[];
  try {
    names = readdirSync(dir);
  } catch (error) {
    throw new ProgramError(`the folder of schemas ${dir} cannot be read`, { cause: error });
  }
  return names
    .filter((name) => name.endsWith(suffix) && name !== commonFile)
    .sort(byCodePoint)
    .map((name) => join(dir, name));
}

function readSchema(file: string): JsonObject {
  try {
    const value = JSON.parse(readFileSync(file, "utf8")) as Json;
    if (isObject(value)) return value;
  } catch (error) {
    throw new ProgramError(`${file} cannot be read as JSON`, { cause: error });
  }
  throw new ProgramError(`${file} is no schema; expected an object`);
}

/** Heats are not written by anyone: the rows of all certificates of one mill and number are one heat. */
function heatKind(common: JsonObject, certificate: Kind | undefined): Kind | undefined {
  if (certificate?.fields.get("rows")?.type !== "list") return undefined;
  const link = (description: string, target: string): JsonObject => ({
    $ref: `${commonFile}#/$defs/link`,
    description,
    "x-link": [target],
  });
  const schema: JsonObject = {
    title: "Heat",
    description: "A heat of material: what all certificate rows of one mill and heat number state.",
    "x-section": certificate.section,
    "x-page": "each",
    "x-label": "number",
    "x-columns": ["number", "mill", "certificates"],
    required: ["number", "mill"],
    properties: {
      number: { type: "string", description: "Heat number as the certificates print it." },
      mill: link("Mill that made it.", "organisation"),
      rows: {
        type: "array",
        description: "Certificate rows that state it.",
        items: link("Certificate row.", "material-certificate#rows"),
      },
      certificates: {
        type: "array",
        description: "Certificates that state it.",
        items: link("Certificate.", "material-certificate"),
      },
    },
  };
  return { ...composeKind("heat", { file: "heat", schema, common }), derived: true };
}
