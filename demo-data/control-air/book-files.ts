import { filesOf } from "../book/book-files.ts";
import type { Sheeted } from "../book/calculation-sheets.ts";
import { factsOf } from "../book/facts.ts";
import { file, recordsOf, type Edition, type RecordFile } from "../book/records.ts";
import { withSheets } from "../book/with-sheets.ts";
import { lentFiles } from "../order/records.ts";
import { inspectionSteps } from "./facts/plan.ts";
import { serial } from "./facts/vessel.ts";
import { originalsOf } from "./originals/index.ts";
import { recordFiles } from "./records.ts";

export const vesselEdition: Edition = { revision: "0", cutOff: "2026-07-17" };

const ofTest = ["pressure-hold"];
const ofValve = ["gas-safety-valve", "relief-capacity"];

const job: Sheeted = {
  job: serial,
  dayOf: ({ calculation: { id } }) =>
    ofTest.includes(id) ? "2026-06-23" : ofValve.includes(id) ? "2026-06-30" : "2026-03-02",
};

/** The plan, when the sheets have their numbers. */
function planFor(files: readonly RecordFile[]): RecordFile {
  const sheets = recordsOf(files, "calculation-sheet");
  const idsOf = (isOne: (calculation: string) => boolean) =>
    sheets.filter(({ calculation }) => isOne(calculation)).map(({ id }) => id);
  const steps = inspectionSteps({
    design: idsOf((id) => ![...ofTest, ...ofValve].includes(id)),
    test: idsOf((id) => ofTest.includes(id)),
    valve: idsOf((id) => ofValve.includes(id)),
  });
  return file("plan/steps.json", "inspection-step", steps);
}

/** Every file of the book folder of the order's second vessel by its path. */
export function bookFiles({ cutOff }: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const sheeted = withSheets(recordFiles(cutOff), job, lentFiles);
  const files = [...sheeted, planFor(sheeted)];
  const facts = factsOf([...files, ...lentFiles]);
  return filesOf({ facts, files, originals: originalsOf(facts), cutOff });
}
