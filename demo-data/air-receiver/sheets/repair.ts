import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import { productionTests, repairs } from "../facts/repairs.ts";
import { printed } from "./original.ts";

const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

/** The records of repairs. */
export function drawRepair(paper: Paper): void {
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

/** The reports of production test plates. */
export function drawProductionTest(paper: Paper): void {
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
