import { isList, isObject, type Json } from "../model/json.ts";
import type { Severity, Subject } from "../model/finding.ts";
import type { Report } from "./report.ts";

/** A finding of an earlier report, as far as lists of what is new and gone need it. */
export interface EarlierFinding {
  readonly key: string;
  readonly rule: string;
  readonly subject: Subject | null;
  readonly severity: Severity;
  readonly message: string;
  readonly owner: string;
  readonly digest: string;
  /** Id (`kind:id`) of the exception that answered it. */
  readonly exception: string | null;
}

/** What `check --format json` printed of this book before, or the `findings.json` of an issue of it. */
export interface Earlier {
  readonly revision: string;
  readonly state: string;
  readonly dataCutOff: string;
  readonly fingerprint: string;
  readonly findings: readonly EarlierFinding[];
}

const severities: ReadonlySet<string> = new Set<Severity>(["nonconformity", "gap", "query", "note"]);
const isSeverity = (text: string): text is Severity => severities.has(text);

const isJson = (value: unknown): value is Json => value !== undefined;

/** Reads an earlier report of the same book; what it is not is said in a sentence that follows the file's name. */
export function readEarlier(text: string, { book }: Pick<Report, "book">): Earlier | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return "is not JSON; expected what check --format json printed, or the findings.json of an issue";
  }
  if (!isJson(value) || !isObject(value) || !isObject(value["book"]) || !isList(value["findings"]))
    return "holds no findings of a book; expected what check --format json printed, or the findings.json of an issue";
  const { format, book: of, findings } = value;
  if (format !== 1) return `is of format ${written(format)}; this program reads format 1`;
  const named = { number: textIn(of, "number"), id: textIn(of, "id") };
  if (named.number !== book.number || named.id !== book.id)
    return `is of book ${inFull(named)}, this one is ${inFull(book)}; name findings of the same book`;
  const read = findings.map(findingIn);
  const wrong = read.indexOf(undefined);
  if (wrong >= 0)
    return `is damaged: the ${ordinal(wrong + 1)} of its ${findings.length} findings lacks its key, rule, severity, message, owner or digest`;
  return {
    revision: textIn(of, "revision"),
    state: textIn(of, "state"),
    dataCutOff: textIn(of, "dataCutOff"),
    fingerprint: textIn(of, "fingerprint"),
    findings: read.flatMap((one) => one ?? []),
  };
}

function findingIn(value: Json): EarlierFinding | undefined {
  const [key, rule, severity, message, owner, digest] = required.map((name) => textIn(value, name));
  if (!key || !rule || !severity || !message || !owner || !digest || !isSeverity(severity)) return undefined;
  const exception = textIn(value, "exception") || null;
  const about = isObject(value) ? value["subject"] : undefined;
  const subject = isObject(about) ? { kind: textIn(about, "kind"), id: textIn(about, "id") } : null;
  return { key, rule, subject, severity, message, owner, digest, exception };
}

const required = ["key", "rule", "severity", "message", "owner", "digest"];

function textIn(value: Json | undefined, name: string): string {
  const found = isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
  return typeof found === "string" ? found : "";
}

const written = (value: Json | undefined) => (value === undefined ? "none" : JSON.stringify(value).slice(0, 20));

const inFull = ({ number, id }: { readonly number: string; readonly id: string }) =>
  number === "" ? "without a number" : `${number} (id ${id})`;

function ordinal(number: number): string {
  const last = number % 100 >= 11 && number % 100 <= 13 ? 0 : number % 10;
  return `${number}${last === 1 ? "st" : last === 2 ? "nd" : last === 3 ? "rd" : "th"}`;
}
