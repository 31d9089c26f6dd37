import type { AnsweredQuery, Deviation, OrderException, Waiver } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { printed, signed } from "./original.ts";

/** A decision of any of the four kinds, with the fields that some of them have. */
type Decision = AnsweredQuery & Partial<Deviation> & Partial<Waiver> & Partial<OrderException>;

/** The paper on which something was permitted or a question answered; `title` names its sort. */
export function drawDecision(paper: Paper, facts: Facts, title: string, decision: Decision): void {
  const sheet = newSheet(paper, `${title} ${decision.id}${decision.title === undefined ? "" : `: ${decision.title}`}`);
  fields(sheet, [
    ["Decided by", facts.name(decision.by)],
    ["Date", printed(decision.date)],
    ["Authority", printed(decision.authority)],
    ["Holds until", decision.end ?? "no end"],
    ...(decision.nonconformity === undefined ? [] : ([["Nonconformity report", decision.nonconformity]] as const)),
  ]);
  for (const [name, text] of [
    ["Requirement", decision.requirement],
    ["Ground", decision.ground],
    ["Reason", decision.reason],
    ["Conditions", decision.conditions],
    ["Condition", decision.condition],
    ["Equivalent safety", decision.equivalentSafety],
  ] as const) {
    if (text === undefined) continue;
    heading(sheet, name);
    paragraph(sheet, text.endsWith(".") ? text : `${text}.`, 9.5);
  }
  const agreed = signed(facts, decision.agreement ?? decision.signatures);
  const own = { role: "decided", name: facts.name(decision.by), date: printed(decision.date) };
  signatures(withRoom(sheet, 66), agreed.length > 0 ? agreed : [own]);
}
