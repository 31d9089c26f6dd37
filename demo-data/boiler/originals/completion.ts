import { orderOf, type Facts } from "../../book/facts.ts";
import { drawDecision } from "../../sheets/exceptions.ts";
import { printed, type OriginalSheet } from "../../sheets/original.ts";
import { bodyCertificate, declaration, nameplate, paperOf, safetyValve } from "../../sheets/papers.ts";

const decisions = [
  ["answered-query", "Answer to a query"],
  ["deviation", "Deviation"],
  ["waiver", "Waiver"],
  ["order-exception", "Permission of another order of steps"],
] as const;

function decisionOriginals(facts: Facts): readonly OriginalSheet[] {
  return decisions.flatMap(([kind, title]) =>
    facts.all(kind).map((record) =>
      paperOf(
        kind,
        record,
        {
          path: `completion/${record.id.toLowerCase()}.pdf`,
          title: `${title} ${record.id}`,
          number: `${orderOf(facts)}-17-${record.id}`,
          by: facts.maker,
          day: printed(record.date),
        },
        (paper) => drawDecision(paper, facts, title, record),
      ),
    ),
  );
}

/** Safety valves, nameplate, decisions, certificates of the body, declaration. */
export const completionOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...facts.all("safety-valve").map((record) => safetyValve(facts, record)),
  ...facts.all("nameplate").map((record) => nameplate(facts, record, "its bracket on course 1")),
  ...decisionOriginals(facts),
  ...facts.all("body-certificate").map((record) => bodyCertificate(facts, record)),
  ...facts.all("declaration").map((record) => declaration(facts, record)),
];
