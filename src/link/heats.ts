import { createHash } from "node:crypto";
import type { Link } from "../model/graph.ts";
import { isList, isObject, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { findRow, rowName } from "../model/stable.ts";
import { subjectId } from "../model/subject.ts";

/** A heat with every way its number is written in the certificates. */
export interface DerivedHeat {
  readonly record: BookRecord;
  readonly spellings: readonly { readonly number: string; readonly record: BookRecord; readonly pointer: string }[];
}

/**
 * Heats are not written by anyone: the rows of all certificates that name one mill and one heat number are one heat.
 * Returns them as records, so that pages, links back and rules see them like any other. A certificate whose mill is
 * mistyped, and a row whose name is not its own, make no heat: their own findings say why.
 */
export function deriveHeats(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
  links: ReadonlyMap<BookRecord, ReadonlyMap<string, Link>>,
): readonly DerivedHeat[] {
  const rowsField = kinds.get("material-certificate")?.fields.get("rows");
  if (rowsField === undefined || !kinds.has("heat")) return [];
  const heats = new Map<
    string,
    { value: JsonObject; rows: string[]; certificates: Set<string>; spellings: Spelling[] }
  >();
  for (const record of records) {
    const mill = record.kind === "material-certificate" ? record.value["mill"] : undefined;
    const rows = record.value["rows"];
    if (typeof mill !== "string" || !isList(rows) || links.get(record)?.get("/mill")?.state === "broken") continue;
    for (const [index, row] of rows.entries()) {
      const number = isObject(row) ? row["heat"] : undefined;
      const name = rowName(rowsField, row);
      if (typeof number !== "string" || name === undefined) continue;
      if (findRow(record.value, "rows", rowsField, name) === "several") continue;
      const id = heatId(mill, number);
      let heat = heats.get(id);
      if (heat === undefined) {
        heat = { value: { id, number, mill }, rows: [], certificates: new Set(), spellings: [] };
        heats.set(id, heat);
      }
      heat.rows.push(subjectId(record.id, name));
      heat.certificates.add(record.id);
      if (!heat.spellings.some((one) => one.number === number))
        heat.spellings.push({ number, record, pointer: `/rows/${index}/heat` });
    }
  }
  return [...heats].flatMap(([id, { value, rows, certificates, spellings }]) => {
    const from = spellings[0]?.record;
    if (from === undefined) return [];
    const full = { ...value, rows, certificates: [...certificates] };
    return [
      { record: { kind: "heat", id, file: from.file, pointer: from.pointer, value: full, faulty: false }, spellings },
    ];
  });
}

type Spelling = DerivedHeat["spellings"][number];

/** `<mill>-<heat number>`, folded to the alphabet of ids; what is too long for an id ends in a digest instead. */
export function heatId(mill: string, number: string): string {
  const text = `${mill}-${number}`.toUpperCase().replaceAll(/[^A-Z0-9.-]+/g, "-");
  if (text.length <= 40) return text;
  const digest = createHash("sha256").update(text, "utf8").digest("hex").slice(0, 8).toUpperCase();
  return `${text.slice(0, 31)}-${digest}`;
}
