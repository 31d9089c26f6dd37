import type { NonconformityReport } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { listed, printed, signed } from "./original.ts";

/** A nonconformity report, from what was found to who closed it. */
export function drawNonconformity(paper: Paper, facts: Facts, report: NonconformityReport): void {
  let sheet = newSheet(paper, `Nonconformity report ${report.id}: ${printed(report.title)}`);
  fields(sheet, [
    ["Raised", `${printed(report.raised)} by ${facts.name(report.foundBy)}`],
    ["State", printed(report.state)],
    ["Affected", listed(report.affected).replaceAll(":", " ")],
    ["Pressure related", report.pressureRelated === true ? "yes" : "no"],
    ["Disposition", printed(report.disposition)],
    ["Corrected by", facts.name(report.correctedBy)],
  ]);
  for (const [title, text] of [
    ["Requirement", report.requirement],
    ["Found", report.found],
    ["Cause", report.cause],
    ["Containment", report.containment],
    ["Reason", report.reason],
    ["Correction", report.correction],
    ["Verified by", listed(report.verification).replaceAll(":", " ")],
  ] as const) {
    heading(sheet, title);
    paragraph(sheet, `${printed(text)}.`);
  }
  sheet = withRoom(sheet, 66);
  const closing = signed(facts, report.signatures).map((one) => ({ ...one, role: `closed, ${one.role}` }));
  signatures(sheet, [...signed(facts, report.approvals), ...closing]);
}
