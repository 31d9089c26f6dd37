import { jsonText } from "./plain.ts";
import type { Basis } from "../model/basis.ts";
import { describeBasis } from "../model/basis.ts";
import type { Severity } from "../model/finding.ts";
import { byCodePoint } from "../model/order.ts";
import type { Position } from "../model/place.ts";
import type { Placed, Report } from "./report.ts";
import { addressOf } from "../model/record.ts";

const schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

/** SARIF knows three levels: what evidence or its absence shows is an error, what a person must decide a warning. */
const levels: Readonly<Record<Severity, "error" | "warning" | "note">> = {
  nonconformity: "error",
  gap: "error",
  query: "warning",
  note: "note",
};

/** What a rule is, for the list of rules a SARIF run begins with. */
export interface RuleTitle {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
}

/** The report as SARIF 2.1.0 (OASIS standard), one run, for editors and servers that read it. Ends with a line end. */
export function reportSarif(report: Report, titles: readonly RuleTitle[]): string {
  const [name, version] = splitTool(report.tool);
  const known = new Map(titles.map((title) => [title.id, title]));
  const used = [...new Set(report.findings.map(({ finding }) => finding.rule))].sort(byCodePoint);
  const rules = used.map((id) => {
    const title = known.get(id);
    return title === undefined
      ? { id }
      : { id, shortDescription: { text: title.title }, help: { text: describeBasis(title.basis) } };
  });
  return jsonText({
    $schema: schema,
    version: "2.1.0",
    runs: [
      {
        tool: { driver: { name, version, rules } },
        columnKind: "utf16CodeUnits",
        originalUriBaseIds: { BOOK: { description: { text: "folder of the book" } } },
        results: report.findings.map((placed) => result(placed, used.indexOf(placed.finding.rule))),
        properties: { book: report.book.number, state: report.book.state, fingerprint: report.book.fingerprint },
      },
    ],
  });
}

function result({ finding, position, sheet, related }: Placed, ruleIndex: number) {
  const { subject } = finding;
  return {
    ruleId: finding.rule,
    ruleIndex,
    level: levels[finding.severity],
    message: {
      text: `${finding.message}\nwhy: ${finding.why}\nhint: ${finding.hint}${sheet === undefined ? "" : `\nsheet: ${sheet}`}`,
    },
    locations: [
      {
        physicalLocation: physical(finding.place.file, position),
        ...(subject !== null && {
          logicalLocations: [{ fullyQualifiedName: addressOf(subject), kind: "object" }],
        }),
      },
    ],
    relatedLocations: related.map(({ related: other, position: at, sheet: from }, id) => ({
      id,
      physicalLocation: physical(other.place.file, at),
      message: { text: from === undefined ? other.message : `${other.message} (${from})` },
    })),
    partialFingerprints: { "findingKey/v1": finding.key },
    // An empty list says that nothing was suppressed; leaving it out would say that nobody knows.
    suppressions:
      finding.exception === null
        ? []
        : [{ kind: "external", status: "accepted", justification: `answered by ${finding.exception}` }],
    properties: {
      severity: finding.severity,
      verdict: finding.verdict,
      owner: finding.owner,
      due: finding.due,
      digest: finding.digest,
      ...(sheet !== undefined && { sheet }),
    },
  };
}

function physical(file: string, { line, column, length }: Position) {
  return {
    artifactLocation: { uri: file.split("/").map(encodeURIComponent).join("/"), uriBaseId: "BOOK" },
    region: { startLine: line, startColumn: column, endColumn: column + Math.max(1, length) },
  };
}

function splitTool(tool: string): readonly [string, string] {
  const cut = tool.lastIndexOf(" ");
  return cut < 0 ? [tool, "0"] : [tool.slice(0, cut), tool.slice(cut + 1)];
}
