import type { ProcedureQualification, WelderQualification, WeldingProcedure } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { bevel } from "../paper/bevel.ts";
import { fields, heading } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, withRoom, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { listed, printed } from "./original.ts";

type Span = { readonly minimum?: string; readonly maximum?: string } | undefined;
const span = (range: Span) => {
  if (range === undefined) return "–";
  const { minimum, maximum } = range;
  if (minimum === undefined) return `up to ${printed(maximum)}`;
  return maximum === undefined ? `from ${minimum}` : `${minimum} to ${maximum}`;
};

const modes = ({ current, transferModes }: Pick<ProcedureQualification, "current" | "transferModes">) =>
  [printed(current), ...(transferModes ?? [])].join(", ");

/** A welding procedure specification. */
export function drawWeldingProcedure(paper: Paper, facts: Facts, procedure: WeldingProcedure): void {
  const last = procedure.revisions?.at(-1);
  if (last === undefined) return;
  let sheet = newSheet(paper, `Welding procedure specification ${procedure.id}, revision ${last.revision}`);
  fields(sheet, [
    ["Title", printed(procedure.title)],
    ["Rests on", listed(last.qualifications)],
    ["Process", [listed(last.processes), last.mechanisation].filter((one) => one !== undefined).join(", ")],
    ["Joint", `${listed(last.jointTypes)}, ${listed(last.details)}`],
    ["Material group", listed(last.materialGroups)],
    ["Thickness", span(last.thickness)],
    ...(last.throat === undefined ? [] : [["Throat", span(last.throat)] as const]),
    ["Outside diameter", span(last.outsideDiameter)],
    ["Position", listed(last.positions)],
    ["Filler", listed(last.fillers)],
    ["Shielding gas", printed(last.shieldingGas)],
    ["Current, transfer", modes(last)],
    ["Heat input", span(last.heatInput)],
    ["Preheat, interpass", `at least ${printed(last.preheat)}, at most ${printed(last.interpass)}`],
    ["Heat treatment after welding", last.postWeldHeatTreatment === true ? "yes" : "none"],
  ]);
  heading(sheet, "Preparation and run sequence");
  bevel(sheet, last.jointTypes?.[0], last.details?.[0], last.gap === undefined ? undefined : span(last.gap));
  heading(sheet, "Runs");
  sheet = table(
    sheet,
    columns(["Run", "Process", "Filler Ø", "Current", "Voltage", "Travel speed"]),
    (last.runs ?? []).map((run) => [
      run.run,
      [printed(run.process), run.transferMode, run.polarity].filter((one) => one !== undefined).join(", "),
      printed(run.fillerDiameter),
      span(run.current),
      span(run.voltage),
      span(run.travelSpeed),
    ]),
  );
  const before = (procedure.revisions ?? []).slice(0, -1);
  if (before.length > 0) {
    heading(sheet, "Replaced");
    sheet = table(
      sheet,
      columns(["Revision", "Date", "Approved", "Thickness", "Throat"]),
      before.map((one) => [
        one.revision,
        printed(one.date),
        printed(one.approved),
        span(one.thickness),
        span(one.throat),
      ]),
    );
  }
  signatures(withRoom(sheet, 66), [
    { role: "welding coordinator", name: facts.name(last.preparedBy), date: printed(last.date) },
    { role: "checked", name: facts.name(last.checkedBy), date: printed(last.date) },
    { role: "approved", name: facts.name(last.approvedBy), date: printed(last.approved) },
  ]);
}

/** A procedure qualification record. */
export function drawQualification(paper: Paper, facts: Facts, record: ProcedureQualification): void {
  let sheet = newSheet(paper, `Welding procedure qualification record ${record.id}`);
  fields(sheet, [
    ["Certificate", printed(record.certificate)],
    [
      "Standard",
      `${printed(record.standard?.standard)}:${printed(record.standard?.edition)}${record.level === undefined ? "" : `, level ${record.level}`}`,
    ],
    ["Process", [listed(record.processes), record.mechanisation].filter((one) => one !== undefined).join(", ")],
    [
      "Test piece",
      `${printed(record.product)}, ${printed(record.testThickness)} ${record.testDiameter ?? ""}${record.layers === undefined ? "" : `, ${record.layers} run`}${record.throat === undefined ? "" : `, throat ${record.throat}`}`,
    ],
    ["Material", `${printed(record.grade)}, group ${printed(record.materialGroup)}`],
    ["Position, detail", `${listed(record.positions)}, ${printed(record.detail)}`],
    ["Filler", listed(record.fillers)],
    ["Shielding gas", printed(record.shieldingGas)],
    ["Current, transfer", modes(record)],
    ["Heat input", printed(record.heatInput)],
    ["Preheat, interpass", `${printed(record.preheat)}, ${printed(record.interpass)}`],
    ["Heat treatment after welding", record.postWeldHeatTreatment === true ? "yes" : "none"],
    ["Test date", printed(record.testDate)],
    ["Approved", printed(record.approved)],
  ]);
  heading(sheet, "Tests");
  sheet = table(
    sheet,
    columns(["No.", "Test", "Requirement", "Values", "Result"], [5, 12, 26, 26, 10]),
    (record.tests ?? []).map((test) => [
      test.test,
      printed(test.type),
      test.temperature === undefined ? printed(test.requirement) : `${printed(test.requirement)}, ${test.temperature}`,
      listed(test.value),
      printed(test.result),
    ]),
  );
  sheet = withRoom(sheet, 200);
  heading(sheet, "Range of qualification");
  fields(sheet, [
    ["Process", listed(record.range?.processes)],
    ["Joints", listed(record.range?.jointTypes)],
    ["Thickness", span(record.range?.thickness)],
    ["Outside diameter", span(record.range?.outsideDiameter)],
    ...(record.range?.throat === undefined ? [] : [["Throat", span(record.range.throat)] as const]),
    ["Positions", listed(record.range?.positions)],
    ["Heat input", span(record.range?.heatInput)],
    ["Preheat, at least", printed(record.range?.preheat)],
    ["Interpass, at most", printed(record.range?.interpass)],
  ]);
  signatures(sheet, [
    {
      role: "examiner",
      name: facts.first("inspection body"),
      date: printed(record.approved),
      stamp: facts.stamp(record.approvedBy ?? facts.body),
    },
  ]);
}

/** A welder certificate. */
export function drawWelder(paper: Paper, facts: Facts, record: WelderQualification): void {
  const sheet = newSheet(paper, "Welder's qualification test certificate");
  note(paper, "welder-qualification", record.id);
  fields(sheet, [
    ["Certificate", printed(record.certificate)],
    ["Welder, mark", `${facts.name(record.person)}, ${record.person}`],
    ["Designation", printed(record.designation)],
    ["Employer", facts.organisation(facts.maker).name],
    ["Standard", `${printed(record.standard?.standard)}:${printed(record.standard?.edition)}`],
    [
      "Test piece",
      [record.thickness, record.outsideDiameter, record.fillerGroup].filter((one) => one !== undefined).join(", "),
    ],
    ...(record.transferModes === undefined ? [] : [["Transfer", listed(record.transferModes)] as const]),
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
    {
      role: "examiner",
      name: printed(record.examiner),
      date: printed(record.testDate),
      stamp: facts.stamp(record.body ?? facts.body),
    },
  ]);
  heading(sheet, "Confirmation of the validity every six months");
  table(
    sheet,
    columns(["Date", "Confirmed by", "Work seen"]),
    (record.confirmations ?? []).map((one) => [one.date, facts.name(one.by), printed(one.evidence)]),
  );
}
