import type { Document } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import type { TextPart } from "../../sheets/text-document.ts";
import { instructions } from "./instructions.ts";
import { finalInspection, functionalTest } from "./reports.ts";
import { riskAnalysis } from "./risk-analysis.ts";
import { complianceStatement, orderReview } from "./statements.ts";
import { burnerDeclaration, panelDeclaration, pumpDeclaration, waterRequirements } from "./supplies.ts";

type Text = (facts: Facts) => readonly TextPart[];

const byType: Readonly<Partial<Record<NonNullable<Document["type"]>, Text>>> = {
  "risk-analysis": riskAnalysis,
  "operating-instructions": instructions,
  "compliance-statement": complianceStatement,
  "final-inspection-report": finalInspection,
  correspondence: orderReview,
};

/** Documents of no type of their own, by a word of their title. */
const byTitle: readonly (readonly [word: RegExp, text: Text])[] = [
  [/functional test/i, functionalTest],
  [/burner/i, burnerDeclaration],
  [/feed pump/i, pumpDeclaration],
  [/control panel/i, panelDeclaration],
  [/water/i, waterRequirements],
];

/** The words of a document; throws when nobody has written any, so that none is handed over blank. */
export function textOf(facts: Facts, { id, type, title = "" }: Document): readonly TextPart[] {
  const known = type === undefined ? undefined : byType[type];
  const text = known ?? byTitle.find(([word]) => word.test(title))?.[1];
  if (text === undefined) throw new Error(`document ${id}, "${title}", has no words`);
  return text(facts);
}
