import type { ProcedureQualification, WelderQualification, WeldingProcedure } from "../../../src/generated/records.ts";
import { fields, heading, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf, organisationOf } from "../facts/people.ts";
import { bevel } from "./bevel.ts";
import { printed } from "./original.ts";

type Span = { readonly minimum?: string; readonly maximum?: string } | undefined;
const span = (range: Span) =>
  range === undefined
    ? "–"
    : range.maximum === undefined
      ? `from ${printed(range.minimum)}`
      : `${printed(range.minimum)} to ${range.maximum}`;
const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

/** A welding procedure specification. */
export function drawProcedure(paper: Paper, procedure: WeldingProcedure): void {
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

/** A procedure qualification record. */
export function drawQualification(paper: Paper, record: ProcedureQualification): void {
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

/** A welder certificate. */
export function drawWelder(paper: Paper, record: WelderQualification): void {
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
