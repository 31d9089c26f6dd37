import type { Facts } from "../../book/facts.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { completionOriginals } from "./completion.ts";
import { calculationOriginals, documentOriginals, drawingOriginals } from "./design.ts";
import { testingOriginals, weldingOriginals } from "./making.ts";
import { materialOriginals, procedureOriginals, type ParagraphsOf } from "./supply.ts";
import { earlier, workingDaysLater } from "./working-days.ts";

/**
 * Every original of a boiler's book: a paper for each record that has one, those of a sort bound together. Data are
 * compared with a paper two working days after it, at the latest on the day of the issue. `paragraphsOf` gives the
 * words of a procedure where its author has written them.
 */
export function originalsOf(facts: Facts, paragraphsOf: ParagraphsOf = () => undefined): readonly OriginalSheet[] {
  const cutOff = facts.all("issue")[0]?.dataCutOff ?? "9999-12-31";
  return [
    ...drawingOriginals(facts),
    ...documentOriginals(facts),
    ...calculationOriginals(facts),
    ...procedureOriginals(facts, paragraphsOf),
    ...materialOriginals(facts),
    ...weldingOriginals(facts),
    ...testingOriginals(facts),
    ...completionOriginals(facts),
  ].map((one) => ({ ...one, compared: earlier(workingDaysLater(one.day, 2), cutOff) }));
}
