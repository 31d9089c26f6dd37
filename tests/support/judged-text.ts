import type { Done, JudgedBook } from "../../src/model/book.ts";
import { figuresOf } from "../../src/model/figures.ts";
import { addressOf, type BookRecord } from "../../src/model/record.ts";
import { reportJson } from "../../src/report/json.ts";
import { reportOf } from "../../src/report/report.ts";

/** What of a judged book says anything about it: all but the definitions, and what was read. */
const parts = [
  "findings",
  "outcomes",
  "computed",
  "owed",
  "owing",
  "absent",
  "missing",
  "announced",
  "refusals",
  "readBack",
  "comparisons",
  "counts",
  "exceptions",
  "parameters",
  "state",
  "profile",
  "fingerprint",
] as const;

/**
 * A judged book as texts by name, to be held against another: `findings.json` as an issue keeps it, and each part of the value.
 * A record stands there by its address; one that is not the book's own is said to be stale.
 */
export function textsOf(judged: JudgedBook): ReadonlyMap<string, string> {
  const own = new Set<unknown>([...judged.graph.records, judged.book, judged.issue]);
  const isRecord = (value: object): value is BookRecord => "kind" in value && "file" in value && "faulty" in value;
  const plain = (name: string, value: unknown): unknown => {
    if (typeof value === "function") return "function";
    if (typeof value !== "object" || value === null) return value;
    if (isRecord(value)) return `${addressOf(value)}${own.has(value) ? "" : " stale"}`;
    // A result that another one was made from stands in the list itself.
    if (name === "of" && "calculation" in value && "subject" in value && "state" in value)
      return plain("", [
        value.calculation,
        value.subject,
        "rows" in value ? figuresOf(judged.definitions.kinds, value as Done) : "",
        value.state,
      ]);
    if ("formula" in value || "examples" in value || "appliesTo" in value || "rules" in value)
      return "id" in value ? value.id : JSON.stringify(value);
    if (value instanceof Map) return [...value];
    if (value instanceof Set) return [...value];
    return value;
  };
  return new Map([
    ["findings.json", reportJson(reportOf(judged, "databook"))],
    ...parts.map((name) => [name, JSON.stringify(judged[name], plain)] as const),
  ]);
}

/** Names of the parts in which two judged books differ. */
export function differing(one: JudgedBook, other: JudgedBook): readonly string[] {
  const [a, b] = [textsOf(one), textsOf(other)];
  return [...a.keys()].filter((name) => a.get(name) !== b.get(name));
}
