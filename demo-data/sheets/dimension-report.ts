import type { DimensionCheck } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { cited, inspected, listed, printed } from "./original.ts";

/** A report of dimensions; `witnessed` ones bear the inspector's signature too. */
export function drawDimensions(paper: Paper, facts: Facts, check: DimensionCheck, witnessed: boolean): void {
  let sheet = newSheet(paper, printed(check.title));
  fields(sheet, [
    ["Sheet", check.id],
    ["Date", printed(check.date)],
    ["Drawing", cited(check.drawing)],
    ["Instruments", listed(check.instruments)],
  ]);
  sheet = table(
    sheet,
    [
      { title: "Feature", share: 38 },
      { title: "Nominal", share: 11, align: "right" },
      { title: "From", share: 11, align: "right" },
      { title: "To", share: 11, align: "right" },
      { title: "Measured", share: 32 },
      { title: "Result", share: 11 },
    ],
    (check.rows ?? []).map((row) => [
      row.feature,
      printed(row.nominal),
      printed(row.minimum),
      printed(row.maximum),
      listed(row.measured),
      printed(row.result),
    ]),
  );
  signatures(withRoom(sheet, 66), [
    { role: "quality control", name: facts.name(check.by), date: printed(check.date) },
    ...(witnessed ? [inspected(facts, printed(check.date))] : []),
  ]);
}
