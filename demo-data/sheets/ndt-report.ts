import type { NdtReport } from "../generated/records.ts";
import { objectOf, type Facts } from "../book/facts.ts";
import { fields, heading } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { height, newSheet, withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { radiograph } from "../paper/radiograph.ts";
import { table } from "../paper/tables.ts";
import { cited, dayIn, figure, listed, printed } from "./original.ts";

const methods = {
  VT: "Visual test",
  MT: "Magnetic particle test",
  PT: "Penetrant test",
  RT: "Radiographic test",
  UT: "Ultrasonic test",
} as const;

/** What a report of a method is called. */
export const testOf = (method: NdtReport["method"]): string => methods[method];

/** Those of some fields that a report states. */
const stated = (all: readonly (readonly [string, string | number | undefined])[]) =>
  all.flatMap(([name, value]) => (value === undefined ? [] : [[name, printed(value)] as const]));

const both = (first: string | undefined, second: string | undefined) =>
  first === undefined || second === undefined ? (first ?? second) : `${first}, ${second}`;

const sourceOf = ({ source, distance, sourcePlace }: NonNullable<NdtReport["radiography"]>) =>
  [printed(source), printed(distance), sourcePlace].filter((one) => one !== undefined).join(", ");

/** The report of a non-destructive test; a radiographic one with its films. */
export function drawReport(paper: Paper, facts: Facts, report: NdtReport): void {
  let sheet = newSheet(paper, `${methods[report.method]}, report ${report.id}`);
  fields(sheet, [
    ["Object", `${objectOf(facts)}, serial ${facts.equipment.serial}`],
    ["Date", printed(report.date).slice(0, 16).replace("T", ", ")],
    ["Procedure", cited(report.procedure)],
    ["Drawing", cited(report.drawing)],
    ["Quality level", printed(report.qualityLevel)],
    [
      "Acceptance",
      `${printed(report.acceptance?.standard)}:${printed(report.acceptance?.edition)}, level ${printed(report.acceptance?.level)}`,
    ],
    ["Technique", printed(report.technique)],
    ["Instruments", listed(report.instruments)],
    ...(report.radiography === undefined
      ? []
      : ([
          ["Source, distance", sourceOf(report.radiography)],
          ...(report.radiography.arrangement === undefined
            ? []
            : ([["Arrangement", report.radiography.arrangement]] as const)),
          ["Film class, focus", `${printed(report.radiography.filmClass)}, ${printed(report.radiography.sourceSize)}`],
        ] as const)),
    ...stated([
      ["Indications seen by", report.seenBy],
      ["Magnetised in directions", report.directions],
      ["Tangential field", report.fieldStrength],
      ["Surface", report.surfaceTemperature],
      ["Penetrant, developer", both(report.penetrationTime, report.developmentTime)],
      ["Testing level", report.ultrasonic?.testingLevel],
      ["Probes", report.ultrasonic?.frequencies?.join(", ")],
      ["Transfer correction", report.ultrasonic?.transferCorrection],
      ["Check after the test", report.ultrasonic?.drift],
      ["Lighting", report.illuminance],
      ["Ultraviolet", report.irradiance],
    ]),
  ]);
  heading(sheet, "Results");
  const film = report.method === "RT";
  sheet = table(
    sheet,
    [
      { title: "Joint", share: 8 },
      ...(film ? [{ title: "Film", share: 15 }] : []),
      { title: "From", share: 10, align: "right" },
      { title: "To", share: 10, align: "right" },
      { title: "Length", share: 10, align: "right" },
      ...(film
        ? [
            { title: "Wire", share: 8 },
            { title: "Density", share: 12 },
          ]
        : []),
      { title: "Indications", share: 34 },
      { title: "Result", share: 12 },
    ],
    (report.rows ?? []).map((row) => [
      row.row === undefined || film ? row.joint : `${row.joint} (${row.row})`,
      ...(film ? [printed(row.film)] : []),
      printed(row.from),
      printed(row.to),
      printed(row.length),
      ...(film ? [printed(row.wire), (row.density ?? []).join(" – ")] : []),
      (row.indications ?? [])
        .map((one) =>
          [one.type, one.at === undefined ? "" : `at ${one.at}`, one.length ?? one.size ?? ""]
            .filter((part) => part !== "")
            .join(", "),
        )
        .join("; ") || "none to record",
      printed(row.result),
    ]),
    7.6,
  );
  sheet = withRoom(sheet, 66);
  signatures(sheet, [
    { role: `tested, level 2`, name: facts.name(report.operator), date: dayIn(report.date) },
    {
      role: "reviewed, level 3",
      name: facts.name(report.reviewer),
      date: dayIn(report.date),
      stamp: facts.stamp(report.laboratory ?? facts.maker),
    },
  ]);
  if (!film) return;
  if (sheet.y > height - 210) sheet = newSheet(paper, `Report ${report.id}, films`);
  heading(sheet, "Films, as drawn from the viewer");
  for (const row of report.rows ?? []) {
    if (sheet.y > height - 180) sheet = newSheet(paper, `Report ${report.id}, films`);
    drawFilm(sheet, row);
  }
}

function drawFilm(sheet: Sheet, row: NonNullable<NdtReport["rows"]>[number]): void {
  const rejected = row.indications?.find(({ verdict }) => verdict === "rejected");
  const long = figure(row.to) - figure(row.from);
  radiograph(sheet, {
    mark: printed(row.film),
    from: printed(row.from).replace(" mm", ""),
    to: printed(row.to).replace(" mm", ""),
    wire: printed(row.wire),
    ...(rejected !== undefined && {
      defect: [(figure(rejected.at) - figure(row.from)) / long, figure(rejected.length) / long] as const,
    }),
  });
}
