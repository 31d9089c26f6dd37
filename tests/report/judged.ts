import { address } from "../support/address.ts";
import { outcomeName } from "../../src/model/outcome-name.ts";
import { citedKey } from "../../src/model/finding-key.ts";
import { inForceFor } from "../../src/plan/narrow.ts";
import { createHash } from "node:crypto";
import { fromMemory } from "../../src/model/basis.ts";
import type { Counts, JudgedBook } from "../../src/model/book.ts";
import { blocks, type Finding } from "../../src/model/finding.ts";
import type { JsonObject } from "../../src/model/json.ts";
import type { Kind } from "../../src/model/kind.ts";
import type { Locator } from "../../src/model/place.ts";
import type { BookFile, BookRecord } from "../../src/model/record.ts";

/** A weld made by a welder whose qualification had lapsed. */
export const lapsed: Finding = {
  key: citedKey("welder-qualified|joint:L1|W07"),
  rule: "welder-qualified",
  severity: "nonconformity",
  verdict: "failed",
  subject: { kind: "joint", id: "L1" },
  place: { file: "weld-log/seams.json", pointer: "/records/0/weldedOn" },
  message: "welder W07 was not qualified on 2026-03-09",
  why: "the last qualification for process 135 at 14 mm ended 2026-02-28",
  hint: "add the prolongation, or correct the welding date",
  basis: fromMemory("EN ISO 9606-1", "2017", "period of validity"),
  owner: "shop",
  due: null,
  digest: "0123456789abcdef",
  related: [
    {
      subject: { kind: "welder-qualification", id: "WQ-12" },
      place: { file: "people/w07.json", pointer: "/validTo" },
      message: "ends here",
    },
  ],
  waiting: [outcomeName("chain-complete", { kind: "joint", id: "L1" })],
  exception: null,
  accuses: [address("joint:L1/weldedOn")],
};

/** That finding with other values. */
export function finding({ key, ...changes }: Omit<Partial<Finding>, "key"> & { readonly key?: string }): Finding {
  return { ...lapsed, related: [], waiting: [], ...changes, ...(key !== undefined && { key: citedKey(key) }) };
}

const lines: Readonly<Record<string, readonly (readonly [pointer: string, line: string, column: number])[]>> = {
  "weld-log/seams.json": [
    ["/records/0/weldedOn", `      "weldedOn": "2026-03-09"`, 7],
    ["/records/1/weldedOn", `      "weldedOn": "2026-03-10"`, 7],
  ],
};

/** Knows two lines of the weld log (41 and 42); everything else stands at 1:1 of a file that cannot be shown. */
export const locator: Locator = {
  position({ file, pointer }) {
    const index = (lines[file] ?? []).findIndex(([at]) => at === pointer);
    const column = lines[file]?.[index]?.[2];
    return column === undefined ? { line: 1, column: 1, length: 0 } : { line: 41 + index, column, length: 10 };
  },
  line: (file, line) => lines[file]?.[line - 41]?.[1],
};

const record = (kind: string, id: string, file: string, value: JsonObject): BookRecord => ({
  kind,
  id,
  file,
  pointer: "",
  value,
  faulty: false,
});

const kind = (name: string, title: string): Kind => ({
  name,
  title,
  description: `One ${name}.`,
  section: "welding",
  page: "each",
  tableOnPaper: false,
  carry: "never",
  columns: [],
  fields: new Map([
    [
      "weldedOn",
      {
        name: "weldedOn",
        type: "date",
        title: "Welded on",
        description: "Day.",
        required: false,
        due: "welding",
        date: "event",
      },
    ],
    [
      "thickness",
      {
        name: "thickness",
        type: "quantity",
        title: "Thickness",
        description: "At the seam.",
        required: true,
        unit: "mm",
      },
    ],
  ]),
  derived: false,
  single: {},
  row: {},
});

export interface Sample {
  readonly dir?: string;
  readonly findings?: readonly Finding[];
  readonly state?: "interim" | "final";
  readonly files?: readonly BookFile[];
  readonly records?: readonly BookRecord[];
  readonly unreadable?: readonly string[];
}

/** A judged book with these findings, TQ423-01 revision 0. */
export function judgedBook({
  dir = "/book",
  findings = [lapsed],
  state = "final",
  files = [],
  records = [],
  unreadable = [],
}: Sample = {}): JudgedBook {
  const book = record("book", "TQ423", "book.json", {
    number: "TQ423-01",
    title: "Air <receiver>",
    language: "en",
    demonstration: true,
  });
  const issue = record("issue", "ISSUE", "issue.json", {
    revision: "0",
    state,
    issueDate: "2026-06-30",
    dataCutOff: "2026-06-18",
  });
  const joint = record("joint", "L1", "weld-log/seams.json", {});
  const all = [book, issue, joint, ...records];
  const byKind = new Map<string, Map<string, BookRecord>>();
  for (const one of all) byKind.set(one.kind, (byKind.get(one.kind) ?? new Map<string, BookRecord>()).set(one.id, one));
  const kinds = new Map([kind("joint", "Joint"), kind("original", "Original")].map((one) => [one.name, one]));
  const definitions = { kinds, calculations: [], rules: [], facts: [], registers: [], profiles: [], tables: [] };
  return {
    loaded: { dir, records: all, files, findings: [], unreadable, fatal: [], locator },
    titles: new Map(),
    definitions,
    inForce: inForceFor(definitions, new Set()),
    graph: { records: all, byKind, links: [], out: new Map(), back: new Map(), absent: new Map() },
    absent: new Map(),
    missing: [],
    announced: [],
    book,
    issue,
    state,
    profile: "cautious",
    parameters: new Map(),
    tables: new Map(),
    findings,
    outcomes: [],
    computed: [],
    owed: [],
    owing: [],
    counts: countsOf(findings),
    fingerprint: createHash("sha256").update(JSON.stringify(files)).digest("hex"),
    refusals: new Map(),
    readBack: new Map(),
    comparisons: new Map(),
    exceptions: [],
  };
}

function countsOf(findings: readonly Finding[]): Counts {
  const of = (severity: Finding["severity"]) =>
    findings.filter((one) => one.severity === severity && one.exception === null).length;
  return {
    nonconformity: of("nonconformity"),
    gap: of("gap"),
    query: of("query"),
    note: of("note"),
    lifted: findings.filter((one) => !blocks(one) && one.severity !== "note").length,
    notJudged: 4,
    notDue: 2,
    notApplicable: 5,
    passed: 312,
    computed: 0,
    failed: 3,
    rejected: 0,
    answered: 1,
  };
}
