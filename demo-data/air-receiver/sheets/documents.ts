import { article, fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signature, signatures } from "../../paper/marks.ts";
import { height, left, newSheet, write, type Paper, type Sheet } from "../../paper/paper.ts";
import { certificates } from "../facts/certificates.ts";
import { pieceMarks } from "../facts/materials.ts";
import { documents } from "../facts/papers.ts";
import { nameOf, people } from "../facts/people.ts";
import { inspectionSteps } from "../facts/plan.ts";
import { equipment, parts } from "../facts/vessel.ts";
import { documentTexts } from "./document-texts.ts";
import { drawOpenings } from "./openings.ts";
import { printed, type OriginalSheet } from "./original.ts";

type Draw = (paper: Paper) => Sheet;

function drawDesignData(paper: Paper): Sheet {
  const sheet = newSheet(paper);
  fields(sheet, [
    ["Equipment", `${printed(equipment.name)}, serial ${equipment.serial}, tag ${printed(equipment.tag)}`],
    ["Standard", `${printed(equipment.designStandard?.standard)}:${printed(equipment.designStandard?.edition)}`],
    [
      "Contents",
      `${printed(equipment.fluid?.name)}, ${printed(equipment.fluid?.state)}, group ${printed(equipment.fluid?.group)}`,
    ],
    ["Maximum allowable pressure PS", printed(equipment.limits?.maximumAllowablePressure)],
    [
      "Allowable temperature TS",
      `${printed(equipment.limits?.minimumAllowableTemperature)} to ${printed(equipment.limits?.maximumAllowableTemperature)}`,
    ],
    ["Volume V", printed(equipment.volume)],
    ["Calculation pressure", printed(equipment.calculationPressure)],
    ["Calculation temperature", printed(equipment.calculationTemperature)],
    ["Test pressure", printed(equipment.testPressure)],
    ["Corrosion allowance", printed(equipment.corrosionAllowance)],
    ["Category, modules", `${printed(equipment.directive?.category)}, ${printed(equipment.directive?.module)}`],
    ["Flow to be relieved", printed(equipment.requiredFlow)],
    ["Source of that flow", printed(equipment.requiredFlowSource)],
    ["Empty mass", printed(equipment.emptyMass)],
  ]);
  heading(sheet, "Sizes");
  table(
    sheet,
    ["Part", "Nominal", "Least", "Inside Ø", "R", "r", "z"].map((title, index) => ({
      title,
      share: index === 0 ? 24 : 10,
    })),
    parts
      .slice(0, 4)
      .map((part) => [
        printed(part.name),
        printed(part.nominalThickness),
        printed(part.minimumThickness),
        printed(part.insideDiameter),
        printed(part.crownRadius),
        printed(part.knuckleRadius),
        printed(part.weldCoefficient),
      ]),
  );
  paragraph(
    sheet,
    "Wind, earthquake, external loads and fatigue need not be considered: the vessel stands indoors on two saddles, fewer than 1000 full pressure cycles are expected in its life.",
  );
  return sheet;
}

function drawMaterials(paper: Paper): Sheet {
  const sheet = newSheet(paper);
  table(
    sheet,
    [
      { title: "Part", share: 7 },
      { title: "Name", share: 44 },
      { title: "Qty", share: 6, align: "right" },
      { title: "Standard, grade", share: 34 },
      { title: "Size", share: 20 },
      { title: "Certificate", share: 10 },
    ],
    parts.map((part) => [
      part.id,
      printed(part.name),
      printed(part.quantity),
      `${printed(part.material?.standard)}:${printed(part.material?.edition)} ${printed(part.material?.grade)}`,
      [part.outsideDiameter === undefined ? undefined : `Ø ${part.outsideDiameter}`, part.nominalThickness]
        .filter((one) => one !== undefined)
        .join(" × "),
      printed(part.requiredCertificateType),
    ]),
    8,
  );
  paragraph(
    sheet,
    `Ordered with ${String(certificates.length)} certificates for ${String(pieceMarks.length)} pieces. Non-pressure parts: none are welded on; the saddles are the client's.`,
  );
  return sheet;
}

/** The plan as issued, or as it was signed step by step. */
function drawPlan(paper: Paper, completed: boolean): Sheet {
  let sheet = newSheet(paper, completed ? "Inspection and test plan, completed" : undefined);
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
    { title: completed ? "Done" : "Planned", share: 11 },
  ];
  const letter = (party: string, step: (typeof inspectionSteps)[number]) =>
    step.points
      ?.find((point) => point.party === party)
      ?.point?.charAt(0)
      .toUpperCase() ?? "–";
  const half = Math.ceil(inspectionSteps.length / 2);
  for (const [index, steps] of [inspectionSteps.slice(0, half), inspectionSteps.slice(half)].entries()) {
    if (index > 0) sheet = newSheet(paper, completed ? "Inspection and test plan, completed" : undefined);
    const top = sheet.y;
    table(
      sheet,
      columns,
      steps.map((step) => [
        String(step.step),
        printed(step.activity),
        printed(step.criterion),
        letter("maker", step),
        letter("inspection body", step),
        letter("client", step),
        printed(completed ? step.done : step.planned),
      ]),
      8,
    );
    if (completed && index > 0 && top < height)
      signatures(sheet, [
        { role: "quality control", name: nameOf("D2"), date: "2026-07-15" },
        { role: "inspection body", name: nameOf("E1"), date: "2026-07-15", stamp: "PENQUILLITH\n0000" },
        { role: "client", name: nameOf("P1"), date: "2026-07-15" },
      ]);
  }
  return sheet;
}

function drawPeople(paper: Paper): void {
  const sheet = newSheet(paper);
  paragraph(sheet, "Specimen signatures of all who sign in this book.");
  people.forEach(({ id, name, roles }, index) => {
    const x = left + (index % 2) * 250;
    const y = sheet.y + Math.floor(index / 2) * 56;
    write(sheet, id, x, y + 18, { size: 11, bold: true });
    write(sheet, name, x + 34, y + 14, { size: 9 });
    write(sheet, `${printed(roles?.[0]?.role)}, since ${printed(roles?.[0]?.from)}`, x + 34, y + 25, { size: 7.5 });
    signature(sheet, name, x + 40, y + 46);
  });
}

const text =
  (id: string): Draw =>
  (paper) => {
    let sheet = newSheet(paper);
    for (const part of documentTexts[id] ?? []) {
      if (part.page === true) sheet = newSheet(paper);
      heading(sheet, part.title);
      for (const line of part.lines ?? []) paragraph(sheet, line, 9.5);
      for (const [title, words] of part.articles ?? []) article(sheet, title, words);
      if (part.table !== undefined)
        table(
          sheet,
          part.table.columns.map((title, index) => ({ title, share: part.table?.shares?.[index] ?? 10 })),
          part.table.rows,
          8.5,
        );
    }
    return sheet;
  };

const draws: Readonly<Record<string, Draw>> = {
  "DOC-01": drawDesignData,
  "DOC-03": (paper) => drawPlan(paper, false),
  "DOC-04": drawMaterials,
  "DOC-09": drawOpenings,
};

const steps: OriginalSheet["shows"] = inspectionSteps.map(({ id }, index) => [
  "inspection-step",
  id,
  index < Math.ceil(inspectionSteps.length / 2) ? 1 : 2,
]);

export const documentSheets: readonly OriginalSheet[] = [
  ...documents.map((document): OriginalSheet => {
    const last = document.revisions?.at(-1);
    const day = printed(last?.approved);
    return {
      id: `ORG-${document.id}`,
      path: `documents/${document.id.toLowerCase()}.pdf`,
      title: printed(document.title),
      number: `${printed(document.number)} r. ${printed(last?.revision)}`,
      by: "TARNEQUILL",
      day,
      compared: day,
      shows: [["document", document.id], ...(document.id === "DOC-01" ? [["equipment", "TQ423-01"] as const] : [])],
      ...(document.id === "DOC-03" && { foresees: steps }),
      draw: (paper) => {
        const sheet = (draws[document.id] ?? text(document.id))(paper);
        signatures(sheet, [
          { role: "prepared", name: nameOf(printed(last?.preparedBy)), date: printed(last?.date) },
          { role: "checked", name: nameOf(printed(last?.checkedBy)), date: printed(last?.date) },
          { role: "approved", name: nameOf(printed(last?.approvedBy)), date: day },
        ]);
      },
    };
  }),
  {
    id: "ORG-PLAN",
    path: "documents/doc-03-completed.pdf",
    title: "Inspection and test plan, completed",
    number: "TQ423-DOC-03 r. 1",
    by: "TARNEQUILL",
    day: "2026-07-15",
    compared: "2026-07-16",
    shows: steps,
    draw: (paper) => {
      drawPlan(paper, true);
    },
  },
  {
    id: "ORG-PEOPLE",
    path: "documents/specimen-signatures.pdf",
    title: "Specimen signatures",
    number: "TQ423-18-SIG-01",
    by: "TARNEQUILL",
    day: "2026-02-10",
    compared: "2026-02-11",
    shows: people.map(({ id }) => ["person", id]),
    draw: drawPeople,
  },
];
