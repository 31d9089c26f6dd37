import type { CoatingReport } from "../generated/records.ts";
import { orderOf, type Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { cited, clock, dayIn, listed, printed, signed, type OriginalSheet } from "./original.ts";
import { paperOf } from "./papers.ts";

const at = (moment: string | undefined) => `${dayIn(moment)} ${clock(moment)}`.trim();
const plain = (value: string | undefined) => printed(value).replace(" µm", "");

/** The report of a coat: how the steel was prepared, each layer with its air, the film zone by zone. */
export const coatingReport = (facts: Facts, record: CoatingReport): OriginalSheet =>
  paperOf(
    "coating-report",
    record,
    {
      path: `testing/${record.id.toLowerCase()}.pdf`,
      title: `Report of the coating: ${printed(record.surface)}`,
      number: printed(record.report),
      by: facts.maker,
      day: printed(record.date),
    },
    (paper) => drawCoatingReport(paper, facts, record),
  );

function drawCoatingReport(paper: Paper, facts: Facts, record: CoatingReport): void {
  let sheet = newSheet(paper, `Report of the coating: ${printed(record.surface)}`);
  fields(sheet, [
    ["Report", printed(record.report)],
    ["Order", orderOf(facts)],
    ["Procedure", cited(record.procedure)],
    ["Instruments", listed(record.instruments)],
    ["Prepared", at(record.prepared)],
    ["Grade found, asked for", `${printed(record.preparation)}, ${printed(record.preparationAsked)}`],
    ["Dry film permitted", `${printed(record.minimum)} to ${printed(record.maximum)}`],
    ["Nominal", printed(record.nominal)],
    ["Readings in each zone", `at least ${printed(record.readingsAsked)}`],
    ["Measured on", printed(record.date)],
  ]);
  heading(sheet, "Layers");
  sheet = table(
    sheet,
    columns(["Layer", "Product", "Batch", "Applied", "Steel", "Air", "Humidity", "Dew point"]),
    (record.layers ?? []).map((row) => [
      row.layer,
      printed(row.product),
      printed(row.batch),
      at(row.applied),
      printed(row.surfaceTemperature),
      printed(row.airTemperature),
      printed(row.humidity),
      printed(row.dewPoint),
    ]),
  );
  sheet = withRoom(sheet, 60);
  heading(sheet, "Dry film thickness in µm");
  sheet = table(
    sheet,
    columns(["Zone", "Readings", "Least", "Mean", "Greatest"], [22, 54, 8, 8, 8]),
    (record.zones ?? []).map((row) => [
      row.zone,
      (row.readings ?? []).map(plain).join(" "),
      plain(row.least),
      plain(row.mean),
      plain(row.greatest),
    ]),
    8.5,
  );
  if (record.poreTest !== undefined) {
    sheet = withRoom(sheet, 40);
    paragraph(sheet, `Pores looked for by ${record.poreTest}: ${printed(record.pores)} found.`, 9.5);
  }
  sheet = withRoom(sheet, 90);
  paragraph(sheet, `Result: ${printed(record.result)}.`, 9.5);
  signatures(sheet, signed(facts, record.signatures));
}
