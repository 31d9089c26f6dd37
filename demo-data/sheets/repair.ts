import type { ProductionTest, Repair } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { cited, listed, printed, signed } from "./original.ts";

/** The record of a repair. */
export function drawRepair(paper: Paper, facts: Facts, repair: Repair): void {
  const sheet = newSheet(paper, `Repair ${repair.id}`);
  fields(sheet, [
    ["Joint", repair.joint],
    ["Rejected by", printed(repair.rejected).replace("#", ", film ")],
    ["Place", `${printed(repair.from)} to ${printed(repair.to)} from the zero mark`],
    ["Depth", printed(repair.depth)],
    ["Procedure", cited(repair.weldingProcedure)],
    ["Welder, date", `${listed(repair.welders)}, ${printed(repair.date).slice(0, 16).replace("T", " ")}`],
    ["Batches", listed(repair.batches)],
    ["Excavation tested by", printed(repair.excavationTest)],
    ["Cycle", printed(repair.cycle)],
    ["Nonconformity report", printed(repair.nonconformity)],
  ]);
  paragraph(sheet, `Cause: ${printed(repair.cause)}.`);
  signatures(sheet, signed(facts, repair.signatures));
}

/** The report of a production test plate. */
export function drawProductionTest(paper: Paper, facts: Facts, test: ProductionTest): void {
  const sheet = newSheet(paper, "Report of a production test plate");
  fields(sheet, [
    ["Report", printed(test.report)],
    ["Plate", printed(test.mark)],
    ["Joints", listed(test.joints)],
    ["Plates", listed(test.certificateRows).replaceAll("#", ", heat ")],
    ["Procedure", cited(test.weldingProcedure)],
    ["Welded", `${printed(test.welded)} by ${listed(test.welders)}`],
  ]);
  heading(sheet, "Tensile test across the weld");
  table(
    sheet,
    columns(["Test", "Temp.", "Rm", "Broke in"]),
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
    columns(["Test", "Place", "Temp.", "Width", "Values", "Mean"], [10, 10, 10, 10, 18, 10]),
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
    columns(["Test", "Requirement", "Result"]),
    (test.otherTests ?? []).map((one) => [one.test, printed(one.requirement), printed(one.result)]),
  );
  signatures(withRoom(sheet, 66), signed(facts, test.signatures));
}
