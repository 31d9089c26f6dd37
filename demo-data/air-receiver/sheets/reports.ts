import type { NdtReport } from "../../../src/generated/records.ts";
import { fields, heading, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { height, newSheet, type Paper, type Sheet } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import { radiograph } from "./radiograph.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";

const methods = {
  VT: "Visual test",
  MT: "Magnetic particle test",
  PT: "Penetrant test",
  RT: "Radiographic test",
  UT: "Ultrasonic test",
} as const;
const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

function drawReport(paper: Paper, report: NdtReport): void {
  let sheet = newSheet(paper, `${methods[report.method]}, report ${report.id}`);
  fields(sheet, [
    ["Object", "air receiver, serial TQ423-01"],
    ["Date", printed(report.date).slice(0, 16).replace("T", ", ")],
    ["Procedure", printed(report.procedure).replace("@", " revision ")],
    ["Drawing", printed(report.drawing).replace("@", " revision ")],
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
          ["Source, distance", `${printed(report.radiography.source)}, ${printed(report.radiography.distance)}`],
          ["Film class, focus", `${printed(report.radiography.filmClass)}, ${printed(report.radiography.sourceSize)}`],
        ] as const)),
    ...(report.surfaceTemperature === undefined
      ? []
      : ([
          ["Surface", report.surfaceTemperature],
          ["Lighting", "900 lx"],
        ] as const)),
  ]);
  heading(sheet, "Results");
  const film = report.method === "RT";
  table(
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
  signatures(sheet, [
    { role: `tested, level 2`, name: nameOf(printed(report.operator)), date: printed(report.date).slice(0, 10) },
    {
      role: "reviewed, level 3",
      name: nameOf(printed(report.reviewer)),
      date: printed(report.date).slice(0, 10),
      stamp: "GLIMMERFIELD\n112",
    },
  ]);
  if (!film) return;
  heading(sheet, "Films, as drawn from the viewer");
  for (const row of report.rows ?? []) {
    if (sheet.y > height - 180) sheet = newSheet(paper, `Report ${report.id}, films`);
    drawFilm(sheet, row);
  }
}

function drawFilm(sheet: Sheet, row: NonNullable<NdtReport["rows"]>[number]): void {
  const number = (text: string | undefined) => Number((text ?? "0").split(" ")[0]);
  const rejected = row.indications?.find(({ verdict }) => verdict === "rejected");
  const long = number(row.to) - number(row.from);
  radiograph(sheet, {
    mark: printed(row.film),
    from: printed(row.from).replace(" mm", ""),
    to: printed(row.to).replace(" mm", ""),
    wire: printed(row.wire),
    ...(rejected !== undefined && {
      defect: [(number(rejected.at) - number(row.from)) / long, number(rejected.length) / long] as const,
    }),
  });
}

/** The paper of a test report. */
export const reportSheet = (report: NdtReport): OriginalSheet => {
  const day = printed(report.date).slice(0, 10);
  return {
    id: `ORG-${report.id}`,
    path: `testing/${report.id.toLowerCase()}.pdf`,
    title: `${methods[report.method]}, report ${report.id}`,
    number: `GT-26-423-${report.id}`,
    by: "GLIMMERFIELD",
    day,
    compared: daysLater(day, 2),
    shows: [["ndt-report", report.id]],
    draw: (paper) => {
      drawReport(paper, report);
    },
  };
};
