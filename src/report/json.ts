import { jsonText } from "./plain.ts";
import { describeBasis } from "../model/basis.ts";
import type { Placed, Report } from "./report.ts";
import type { Since } from "./since.ts";

/**
 * The report as `check --format json` prints it and as `findings.json` keeps it; format 1. Where it was compared with an
 * earlier one, what changed stands beside it. Ends with a line end.
 */
export function reportJson(report: Report, since?: Since): string {
  const { tool, book, counts } = report;
  return jsonText({
    tool,
    format: 1,
    book: {
      id: book.id,
      number: book.number,
      title: book.title,
      revision: book.revision,
      state: book.state,
      issueDate: book.issueDate,
      dataCutOff: book.dataCutOff,
      profile: book.profile,
      demonstration: book.demonstration,
      fingerprint: book.fingerprint,
    },
    counts: {
      nonconformity: counts.nonconformity,
      gap: counts.gap,
      query: counts.query,
      note: counts.note,
      lifted: counts.lifted,
      notJudged: counts.notJudged,
      notDue: counts.notDue,
      notApplicable: counts.notApplicable,
      passed: counts.passed,
      computed: counts.computed,
      failed: counts.failed,
      rejected: counts.rejected,
      answered: counts.answered,
    },
    adopted: report.adopted,
    findings: report.findings.map(findingJson),
    ...(since !== undefined && { since: sinceJson(since) }),
  });
}

function sinceJson({ earlier, fresh, still, gone }: Since) {
  const { revision, state, dataCutOff, fingerprint } = earlier;
  return {
    book: { revision, state, dataCutOff, fingerprint },
    new: fresh.map(({ placed, again }) => ({ key: placed.finding.key, answeredThen: again })),
    stillOpen: still.map(({ placed, changed }) => ({ key: placed.finding.key, changed })),
    gone: gone.map(({ earlier: one, now, unsettled }) => ({
      key: one.key,
      severity: one.severity,
      owner: one.owner,
      message: one.message,
      now,
      putRight: !unsettled,
    })),
  };
}

function findingJson({ finding, position, sheet, related }: Placed) {
  return {
    key: finding.key,
    rule: finding.rule,
    severity: finding.severity,
    verdict: finding.verdict,
    subject: finding.subject === null ? null : { kind: finding.subject.kind, id: finding.subject.id },
    file: finding.place.file,
    line: position.line,
    column: position.column,
    ...(sheet !== undefined && { sheet }),
    message: finding.message,
    why: finding.why,
    hint: finding.hint,
    basis: { ...finding.basis, text: describeBasis(finding.basis) },
    owner: finding.owner,
    due: finding.due,
    blocks: finding.waiting,
    exception: finding.exception,
    digest: finding.digest,
    related: related.map(({ related: other, position: at, sheet: row }) => ({
      kind: other.subject?.kind ?? null,
      id: other.subject?.id ?? null,
      file: other.place.file,
      line: at.line,
      column: at.column,
      ...(row !== undefined && { sheet: row }),
      message: other.message,
    })),
  };
}
