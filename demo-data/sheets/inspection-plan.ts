import type { InspectionStep } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { inspected, printed } from "./original.ts";

function letter(party: "maker" | "inspection body" | "client", { points = [] }: InspectionStep): string {
  const point = points.find((one) => one.party === party)?.point;
  return point?.charAt(0).toUpperCase() ?? "–";
}

/** The inspection plan as issued, or, with the day of its completion, as it was signed step by step. */
export function drawPlan(paper: Paper, facts: Facts, completed?: string): Sheet {
  const title = completed === undefined ? paper.title : "Inspection and test plan, completed";
  let sheet = newSheet(paper, title);
  paragraph(
    sheet,
    "H hold, W witness, R review, A approve, P performs and records. Notice for H and W: at least five working days.",
    8,
  );
  const columns = [
    { title: "Step", share: 5, align: "right" as const },
    { title: "Activity", share: 36 },
    { title: "Criterion", share: 27 },
    { title: "Maker", share: 8 },
    { title: "Body", share: 6 },
    { title: "Client", share: 6 },
    { title: completed === undefined ? "Planned" : "Done", share: 11 },
  ];
  const steps = facts.all("inspection-step");
  const half = Math.ceil(steps.length / 2);
  for (const chosen of [steps.slice(0, half), steps.slice(half)]) {
    if (chosen[0] !== steps[0]) sheet = newSheet(paper, title);
    sheet = table(
      sheet,
      columns,
      chosen.map((step) => [
        String(step.step),
        printed(step.activity),
        printed(step.criterion),
        letter("maker", step),
        letter("inspection body", step),
        letter("client", step),
        printed(completed === undefined ? step.planned : step.done),
      ]),
      8,
      (index) => note(paper, "inspection-step", chosen[index]?.id ?? ""),
    );
  }
  if (completed !== undefined) {
    sheet = withRoom(sheet, 66);
    signatures(sheet, [
      { role: "quality control", name: facts.first("quality control"), date: completed },
      inspected(facts, completed),
      { role: "client", name: facts.first("client"), date: completed },
    ]);
  }
  return sheet;
}
