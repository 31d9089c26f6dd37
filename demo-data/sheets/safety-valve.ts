import type { SafetyValve } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, type Paper } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { cited, printed } from "./original.ts";

/** What the certificate says of the medium: the figures of a gas only where it was sized for one. */
function mediumOf({ medium }: SafetyValve): readonly (readonly [string, string])[] {
  const first = ["Medium", `${printed(medium?.name)}, ${printed(medium?.temperature)}`] as const;
  if (medium?.molarMass === undefined) return [first, ["State", printed(medium?.state)]];
  const { molarMass, isentropicExponent, compressibilityFactor } = medium;
  return [first, ["M, k, Z", `${molarMass}, ${printed(isentropicExponent)}, ${printed(compressibilityFactor)}`]];
}

/** The certificate of a safety valve, with its bench test. */
export function drawValve(paper: Paper, facts: Facts, valve: SafetyValve): void {
  const { certificate, plate, bench } = valve;
  const sheet = newSheet(paper, "Certificate of a safety valve");
  fields(sheet, [
    ["Certificate", printed(certificate?.number)],
    ["Date", printed(certificate?.date)],
    ["Tag, serial", `${printed(valve.tag)}, ${printed(valve.serial)}`],
    ["Model, size", `${printed(valve.model)}, ${printed(valve.size)}`],
    ["Type examination", printed(certificate?.typeExamination)],
    ["Category, body", `${printed(valve.category)}, ${printed(valve.bodyNumber)}`],
    ["Flow diameter, area", `${printed(valve.flowDiameter)}, ${printed(valve.flowArea)}`],
    ["Coefficient of discharge Kdr", printed(valve.coefficient)],
    ["Set pressure", printed(valve.setPressure)],
    ["Overpressure, back pressure", `${printed(valve.overpressure)}, ${printed(valve.backPressure)}`],
    ...mediumOf(valve),
    ["Certified capacity", printed(valve.certifiedCapacity)],
    ["Atmospheric pressure", printed(valve.atmosphericPressure)],
    ["Stamped on the plate", `${printed(plate?.serial)}, ${printed(plate?.setPressure)}, ${printed(plate?.capacity)}`],
    ["Seal", printed(bench?.sealNumber)],
  ]);
  const medium = bench?.medium === "air" ? "dry air" : printed(bench?.medium);
  heading(
    sheet,
    `Bench test of ${printed(bench?.date)}, gauge ${printed(bench?.instrument)}, ${medium}, ${cited(bench?.procedure)}`,
  );
  table(
    sheet,
    columns(["Opening", "Opened at", "Closed at"]),
    (bench?.readings ?? []).map((row) => [String(row.number), printed(row.pop), printed(row.reseat)]),
    9,
  );
  paragraph(
    sheet,
    `Seat tight at ${printed(bench?.seatTestPressure)}. Sealed with lead seal ${printed(bench?.sealNumber)}.`,
  );
  signatures(sheet, [
    {
      role: "bench tester",
      name: facts.name(bench?.tester),
      date: printed(certificate?.date),
      stamp: facts.stamp(valve.manufacturer ?? facts.maker),
    },
  ]);
}
