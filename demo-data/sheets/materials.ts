import type { ConsumableBatch, MillApproval, PieceMark } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, noteEnd, withRoom, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { inspected, listed, printed } from "./original.ts";

/** The approval of a mill's quality system, for its materials. */
export function drawApproval(paper: Paper, facts: Facts, approval: MillApproval): void {
  const body = approval.body ?? facts.body;
  const mill = facts.organisation(approval.mill);
  const sheet = newSheet(paper, "Certificate of a quality-assurance system of a material maker");
  note(paper, "mill-approval", approval.id);
  fields(sheet, [
    ["Certificate", printed(approval.certificate)],
    ["Maker of the material", mill.name],
    ["Works", printed(mill.address)],
    ["Products", listed(approval.forms)],
    ["Valid from", printed(approval.validFrom)],
    ["Valid to", printed(approval.validTo)],
  ]);
  heading(sheet, "Scope");
  paragraph(sheet, `${printed(approval.scope)}.`);
  paragraph(
    sheet,
    "The system was assessed specifically for materials. Documents of type 3.1 that the maker issues within this scope are accepted as certificates of specific product control.",
  );
  signatures(sheet, [
    {
      role: "for the body",
      name: facts.last("inspection body"),
      date: printed(approval.validFrom),
      stamp: facts.stamp(body),
    },
  ]);
}

/** The marking and cutting list of pieces; `remark` is written below it. */
export function drawMarks(
  paper: Paper,
  facts: Facts,
  marks: readonly PieceMark[],
  inspection: string,
  remark = "",
): void {
  let sheet = newSheet(paper, "Marking list and cutting list");
  const titles = ["Part", "Name", "Certificate, heat", "Piece", "New mark", "Area, length", "Marked", "Cut"];
  sheet = table(
    sheet,
    columns(titles, [6, 34, 20, 14, 12, 12, 12, 12]),
    marks.map((mark) => [
      mark.part,
      printed(facts.all("part").find(({ id }) => id === mark.part)?.name),
      printed(mark.certificateRow ?? mark.parent).replace("#", ", "),
      printed(mark.pieceNumber),
      printed(mark.mark),
      mark.area ?? mark.length ?? "",
      printed(mark.transfers?.[0]?.date),
      printed(mark.cut),
    ]),
    7.5,
    (index) => note(paper, "piece-mark", marks[index]?.id ?? ""),
  );
  sheet = withRoom(sheet, 100);
  paragraph(sheet, `All marks with hard stamps, 6 mm, low stress, before the piece was cut off.${remark}`);
  const last = marks.at(-1)?.transfers?.[0];
  signatures(sheet, [
    { role: "marked by", name: facts.name(last?.by), date: printed(last?.date) },
    { role: "looked on", name: facts.name(last?.witness), date: printed(last?.date) },
    inspected(facts, inspection),
  ]);
  // Who marked and who looked on stands below the list, for all of it.
  for (const { id } of marks) noteEnd(paper, "piece-mark", id);
}

/** The inspection document of a batch of filler, flux or gas. */
export function drawBatch(paper: Paper, facts: Facts, batch: ConsumableBatch): void {
  const sheet = newSheet(paper, `Inspection document ${printed(batch.certificate?.type)} for a welding consumable`);
  note(paper, "consumable-batch", batch.id);
  fields(sheet, [
    ["Number", printed(batch.certificate?.number)],
    ["Date", printed(batch.certificate?.issued)],
    ["Product", `${printed(batch.type)}, ${printed(batch.tradeName)}`],
    ["Designation", printed(batch.designation)],
    ["Batch", printed(batch.certificate?.batch)],
    ["Diameter", printed(batch.diameter)],
    ["Quantity", printed(batch.quantity)],
    ["Received", `${printed(batch.received)}, store number ${batch.id}`],
    ...(batch.usableUntil === undefined
      ? []
      : ([
          ["Usable until", batch.usableUntil],
          ["Processes", listed(batch.processes)],
        ] as const)),
  ]);
  for (const { temperature, time, date } of batch.dryings ?? [])
    paragraph(sheet, `Dried again by the maker: ${printed(temperature)}, ${printed(time)}, ${printed(date)}.`);
  paragraph(
    sheet,
    "The product complies with its standard. The figures of the batch are held by the maker and shown on request.",
  );
  const by = batch.manufacturer;
  signatures(sheet, [
    {
      role: "quality control of the supplier",
      name: by === undefined ? "–" : facts.signerOf(by),
      date: printed(batch.certificate?.issued),
    },
  ]);
}
