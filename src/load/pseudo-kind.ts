import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { fieldsOf } from "./fields.ts";

/** What is no record (a map of a sheet, a file of tables) is checked, and its faults said, as records are. */
export function pseudoKind(name: string, title: string, schema: JsonObject): Kind {
  return {
    name,
    title,
    description: "",
    section: "",
    page: "group",
    tableOnPaper: false,
    carry: "never",
    columns: [],
    fields: fieldsOf(schema),
    derived: false,
    single: schema,
    row: schema,
  };
}
