import type {
  ProcedureQualification,
  WelderQualification,
  WeldingProcedure,
  WeldLog,
} from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf, organisationOf } from "../facts/people.ts";
import { qualifications } from "../facts/qualifications.ts";
import { welding } from "../facts/welding-procedures.ts";
import { joints } from "../facts/vessel.ts";
import { welderQualifications } from "../facts/welders.ts";
import { productionTests, repairs } from "../facts/repairs.ts";
import { weldLogs } from "../facts/welding.ts";
import { bevel } from "./bevel.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";

type Span = { readonly minimum?: string; readonly maximum?: string } | undefined;
const span = (range: Span) =>
  range === undefined
    ? "–"
    : range.maximum === undefined
      ? `from ${printed(range.minimum)}`
      : `${printed(range.minimum)} to ${range.maximum}`;
const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

function drawProcedure(paper: Paper, procedure: WeldingProcedure): void {
  const last = procedure.revisions?.at(-1);
  if (last === undefined) return;
  const sheet = newSheet(paper, `Welding procedure specification ${procedure.id}, revision ${last.revision}`);
  fields(sheet, [
    ["Title", printed(procedure.title)],
    ["Rests on", listed(last.qualifications)],
    ["Process", listed(last.processes)],
    ["Joint", `${listed(last.jointTypes)}, ${listed(last.details)}`],
    ["Material group", listed(last.materialGroups)],
    ["Thickness", span(last.thickness)],
    ["Outside diameter", span(last.outsideDiameter)],
    ["Position", listed(last.positions)],
    ["Filler", listed(last.fillers)],
    ["Shielding gas", printed(last.shieldingGas)],
    ["Current, transfer", `${printed(last.current)} ${last.transferMode ?? ""}`],
    ["Heat input", span(last.heatInput)],
    ["Preheat, interpass", `at least ${printed(last.preheat)}, at most ${printed(last.interpass)}`],
    ["Heat treatment after welding", last.postWeldHeatTreatment === true ? "yes" : "none"],
  ]);
  heading(sheet, "Preparation and run sequence");
  bevel(sheet, last.jointTypes?.[0] === "branch");
  heading(sheet, "Runs");
  table(
    sheet,
    ["Run", "Process", "Filler Ø", "Current", "Voltage", "Travel speed"].map((title) => ({ title, share: 10 })),
    (last.runs ?? []).map((run) => [
      run.run,
      printed(run.process),
      printed(run.fillerDiameter),
      span(run.current),
      span(run.voltage),
      span(run.travelSpeed),
    ]),
  );
  signatures(sheet, [
    { role: "welding coordinator", name: nameOf("M1"), date: printed(last.date) },
    { role: "checked", name: nameOf("D2"), date: printed(last.date) },
    { role: "approved", name: nameOf("R1"), date: printed(last.approved) },
  ]);
}

function drawQualification(paper: Paper, record: ProcedureQualification): void {
  const sheet = newSheet(paper, `Welding procedure qualification record ${record.id}`);
  fields(sheet, [
    ["Certificate", printed(record.certificate)],
    [
      "Standard",
      `${printed(record.standard?.standard)}:${printed(record.standard?.edition)}, level ${printed(record.level)}`,
    ],
    ["Process", listed(record.processes)],
    ["Test piece", `${printed(record.product)}, ${printed(record.testThickness)} ${record.testDiameter ?? ""}`],
    ["Material", `${printed(record.grade)}, group ${printed(record.materialGroup)}`],
    ["Position, detail", `${listed(record.positions)}, ${printed(record.detail)}`],
    ["Filler", listed(record.fillers)],
    ["Heat input", printed(record.heatInput)],
    ["Test date", printed(record.testDate)],
    ["Approved", printed(record.approved)],
  ]);
  heading(sheet, "Tests");
  table(
    sheet,
    ["No.", "Test", "Requirement", "Values", "Result"].map((title, index) => ({
      title,
      share: [5, 12, 26, 26, 10][index] ?? 10,
    })),
    (record.tests ?? []).map((test) => [
      test.test,
      printed(test.type),
      printed(test.requirement),
      listed(test.value),
      printed(test.result),
    ]),
  );
  heading(sheet, "Range of qualification");
  fields(sheet, [
    ["Process", listed(record.range?.processes)],
    ["Joints", listed(record.range?.jointTypes)],
    ["Thickness", span(record.range?.thickness)],
    ["Outside diameter", span(record.range?.outsideDiameter)],
    ["Positions", listed(record.range?.positions)],
    ["Heat input", span(record.range?.heatInput)],
    ["Preheat, at least", printed(record.range?.preheat)],
    ["Interpass, at most", printed(record.range?.interpass)],
  ]);
  signatures(sheet, [
    { role: "examiner", name: nameOf("E1"), date: printed(record.approved), stamp: "PENQUILLITH\n0000" },
  ]);
}

function drawWelder(paper: Paper, record: WelderQualification): void {
  const sheet = newSheet(paper, "Welder's qualification test certificate");
  fields(sheet, [
    ["Certificate", printed(record.certificate)],
    ["Welder, mark", `${nameOf(record.person)}, ${record.person}`],
    ["Designation", printed(record.designation)],
    ["Employer", organisationOf("TARNEQUILL").name],
    ["Test date", printed(record.testDate)],
    ["Valid to", `${printed(record.validTo)}, prolongation by ${printed(record.route)}`],
  ]);
  heading(sheet, "Range of qualification");
  fields(sheet, [
    ["Process", listed(record.range?.processes)],
    ["Product, weld", `${listed(record.range?.products)}; ${listed(record.range?.weldTypes)}`],
    ["Filler groups", listed(record.range?.fillerGroups)],
    ["Deposited thickness", span(record.range?.thickness)],
    ["Outside diameter", span(record.range?.outsideDiameter)],
    ["Positions", listed(record.range?.positions)],
    ["Details", listed(record.range?.details)],
    ["Supplementary fillet test", record.supplementaryFillet === true ? "yes" : "no"],
  ]);
  signatures(sheet, [
    { role: "examiner", name: printed(record.examiner), date: printed(record.testDate), stamp: "PENQUILLITH\n0000" },
  ]);
  heading(sheet, "Confirmation of the validity every six months");
  table(
    sheet,
    ["Date", "Confirmed by", "Work seen"].map((title) => ({ title, share: 10 })),
    (record.confirmations ?? []).map((one) => [one.date, nameOf(printed(one.by)), printed(one.evidence)]),
  );
}

function drawLogs(paper: Paper, logs: readonly WeldLog[]): void {
  const sheet = newSheet(paper, "Weld log");
  table(
    sheet,
    [
      { title: "Joint", share: 7 },
      { title: "Procedure", share: 10 },
      { title: "Fit-up: gap, offset", share: 11 },
      { title: "Layer", share: 7 },
      { title: "Welder", share: 8 },
      { title: "Month, day, time", share: 15 },
      { title: "Batches", share: 15 },
      { title: "°C", share: 7, align: "right" },
      { title: "A", share: 6, align: "right" },
      { title: "V", share: 6, align: "right" },
      { title: "mm/min", share: 8, align: "right" },
      { title: "kJ/mm", share: 8, align: "right" },
    ],
    logs.flatMap((log) =>
      (log.runs ?? []).map((run, index) => [
        index === 0 ? log.joint : "",
        index === 0 ? printed(log.weldingProcedure).replace("@", " r. ") : "",
        index === 0 ? `${printed(log.fitUp?.gap)}, ${printed(log.fitUp?.offset)}` : "",
        run.layer,
        listed(run.welders),
        `${printed(run.date).slice(5, 16).replace("T", " ")}${run.finished === undefined ? "" : ` to ${run.finished.slice(11, 16)}`}`,
        listed(run.batches),
        (run.interpass ?? run.preheat ?? "").replace(" °C", ""),
        (run.current ?? "").replace(" A", ""),
        (run.voltage ?? "").replace(" V", ""),
        (run.travelSpeed ?? "").replace(" mm/min", ""),
        (run.heatInput ?? "").replace(" kJ/mm", ""),
      ]),
    ),
    7.2,
  );
  paragraph(
    sheet,
    "°C: preheat of the root, highest interpass temperature of fill and cap. Position PA, rotated. Measured with WM-02. Dates are of 2026; the joint was finished at the second time.",
  );
  const days = logs.map((log) => printed(log.runs?.[0]?.date).slice(0, 10)).sort();
  const welders = [...new Set(logs.flatMap((log) => (log.runs ?? []).flatMap((run) => run.welders ?? [])))];
  signatures(sheet, [
    ...welders.map((id) => ({ role: `welder ${id}`, name: nameOf(id), date: printed(days.at(-1)) })),
    { role: "welding coordinator", name: nameOf("M1"), date: printed(days.at(-1)) },
  ]);
  const lengths = logs.map(({ joint }) => `${joint} ${printed(joints.find(({ id }) => id === joint)?.length)}`);
  paragraph(sheet, `Length of the joints: ${lengths.join(", ")}.`, 8);
}

const sheetOf = (
  id: string,
  path: string,
  title: string,
  number: string,
  by: string,
  day: string,
): Omit<OriginalSheet, "shows" | "draw"> => ({
  id,
  path: `welding/${path}.pdf`,
  title,
  number,
  by,
  day,
  compared: daysLater(day, 2),
});

function logSheet(number: number, day: string, chosen: RegExp): OriginalSheet {
  const logs = weldLogs.filter(({ joint }) => chosen.test(joint));
  return {
    ...sheetOf(
      `ORG-WELD-LOG-${number}`,
      `weld-log-${number}`,
      `Weld log, sheet ${number}`,
      `TQ423-07-WL-${number}`,
      "TARNEQUILL",
      day,
    ),
    shows: logs.map(({ id }) => ["weld-log", id]),
    draw: (paper) => {
      drawLogs(paper, logs);
    },
  };
}

function drawRepair(paper: Paper): void {
  for (const repair of repairs) {
    const sheet = newSheet(paper, `Repair ${repair.id}`);
    fields(sheet, [
      ["Joint", repair.joint],
      ["Rejected by", printed(repair.rejected).replace("#", ", film ")],
      ["Place", `${printed(repair.from)} to ${printed(repair.to)} from the zero mark`],
      ["Depth", printed(repair.depth)],
      ["Procedure", printed(repair.weldingProcedure).replace("@", " revision ")],
      ["Welder, date", `${listed(repair.welders)}, ${printed(repair.date).slice(0, 16).replace("T", " ")}`],
      ["Batches", listed(repair.batches)],
      ["Excavation tested by", printed(repair.excavationTest)],
      ["Cycle", printed(repair.cycle)],
      ["Nonconformity report", printed(repair.nonconformity)],
    ]);
    paragraph(sheet, `Cause: ${printed(repair.cause)}.`);
    signatures(sheet, [
      { role: "welder", name: nameOf("W07"), date: "2026-06-12" },
      { role: "welding coordinator", name: nameOf("M1"), date: "2026-06-12" },
    ]);
  }
}

function drawProductionTest(paper: Paper): void {
  for (const test of productionTests) {
    const sheet = newSheet(paper, "Report of a production test plate");
    fields(sheet, [
      ["Report", printed(test.report)],
      ["Plate", printed(test.mark)],
      ["Joints", listed(test.joints)],
      ["Plates", listed(test.certificateRows).replaceAll("#", ", heat ")],
      ["Procedure", printed(test.weldingProcedure).replace("@", " revision ")],
      ["Welded", `${printed(test.welded)} by ${listed(test.welders)}`],
    ]);
    heading(sheet, "Tensile test across the weld");
    table(
      sheet,
      ["Test", "Temp.", "Rm", "Broke in"].map((title) => ({ title, share: 10 })),
      (test.tensile ?? []).map((one) => [
        one.test,
        printed(one.temperature),
        printed(one.tensileStrength),
        printed(one.breakLocation),
      ]),
    );
    heading(sheet, "Impact test");
    table(
      sheet,
      ["Test", "Place", "Temp.", "Width", "Values", "Mean"].map((title, index) => ({
        title,
        share: index === 4 ? 18 : 10,
      })),
      (test.impact ?? []).map((one) => [
        one.test,
        printed(one.location),
        printed(one.temperature),
        printed(one.specimenWidth),
        listed(one.values),
        printed(one.mean),
      ]),
    );
    heading(sheet, "Other tests");
    table(
      sheet,
      ["Test", "Requirement", "Result"].map((title) => ({ title, share: 10 })),
      (test.otherTests ?? []).map((one) => [one.test, printed(one.requirement), printed(one.result)]),
    );
    signatures(sheet, [{ role: "laboratory", name: nameOf("L1"), date: printed(test.date), stamp: "LARKMETRIC\n041" }]);
  }
}

const welderSheet = (person: string, day: string): OriginalSheet => {
  const held = welderQualifications.filter((one) => one.person === person);
  return {
    ...sheetOf(
      `ORG-WELDER-${person}`,
      `welder-${person.toLowerCase()}`,
      `Certificates of welder ${person}`,
      `${printed(held[0]?.certificate)} ff.`,
      "PENQUILLITH",
      day,
    ),
    compared: "2026-05-22",
    shows: held.map(({ id }, index) => ["welder-qualification", id, index + 1]),
    draw: (paper) => {
      for (const one of held) drawWelder(paper, one);
    },
  };
};

export const weldingSheets: readonly OriginalSheet[] = [
  ...welding.map((procedure): OriginalSheet => ({
    ...sheetOf(
      `ORG-${procedure.id}`,
      procedure.id.toLowerCase(),
      `Welding procedure ${procedure.id}`,
      procedure.id,
      "TARNEQUILL",
      "2026-05-19",
    ),
    shows: [["welding-procedure", procedure.id]],
    draw: (paper) => {
      drawProcedure(paper, procedure);
    },
  })),
  ...qualifications.map((record): OriginalSheet => ({
    ...sheetOf(
      `ORG-${record.id}`,
      record.id.toLowerCase(),
      `Procedure qualification ${record.id}`,
      printed(record.certificate),
      "PENQUILLITH",
      printed(record.approved),
    ),
    compared: "2026-05-20",
    shows: [["procedure-qualification", record.id]],
    draw: (paper) => {
      drawQualification(paper, record);
    },
  })),
  welderSheet("W03", "2026-05-20"),
  welderSheet("W07", "2026-04-22"),
  logSheet(1, "2026-06-03", /^(L1|L2|C1)$/),
  logSheet(2, "2026-06-10", /^(C2|C3)$/),
  logSheet(3, "2026-06-12", /^N/),
  {
    ...sheetOf("ORG-C2R1", "repair-c2r1", "Repair C2R1", "TQ423-07-R-01", "TARNEQUILL", "2026-06-12"),
    shows: [["repair", "C2R1"]],
    draw: drawRepair,
  },
  {
    ...sheetOf(
      "ORG-TP-01",
      "production-test",
      "Production test plate 423 TP1",
      "LK-26-0881",
      "LARKMETRIC",
      "2026-06-15",
    ),
    shows: [["production-test", "TP-01"]],
    draw: drawProductionTest,
  },
];
