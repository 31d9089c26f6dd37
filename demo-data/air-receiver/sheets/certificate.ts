import type { MaterialCertificate } from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { organisationOf } from "../facts/people.ts";
import { printed } from "./original.ts";

type Row = NonNullable<MaterialCertificate["rows"]>[number];

const join = (values: readonly (string | undefined)[], between: string) =>
  values.filter((value) => value !== undefined && value !== "").join(between);
const bare = (value: string | undefined) => (value ?? "–").replace(/ \S+$/, "");

/** A material certificate as its mill prints it. */
export function drawCertificate(paper: Paper, certificate: MaterialCertificate): void {
  const rows = certificate.rows ?? [];
  const sheet = newSheet(paper, `Inspection certificate ${printed(certificate.type)}`);
  fields(sheet, [
    ["Document", `EN 10204:2004, type ${printed(certificate.type)}`],
    ["Number", printed(certificate.number)],
    [
      "Purchaser",
      certificate.supplier === undefined ? "Tarnequill Boiler Works" : organisationOf(certificate.supplier).name,
    ],
    ["Order", printed(certificate.order)],
    ["Date", printed(certificate.issued)],
    ["Received by the maker", printed(certificate.received)],
  ]);
  heading(sheet, "Delivery");
  table(
    sheet,
    [
      { title: "Heat", share: 10 },
      { title: "Test unit", share: 12 },
      { title: "Pcs", share: 5, align: "right" },
      { title: "Product", share: 13 },
      { title: "Standard, grade, condition", share: 30 },
      { title: "Size", share: 22 },
      { title: "Mass", share: 10, align: "right" },
    ],
    rows.map((row) => [
      row.heat,
      printed(row.testUnit),
      printed(row.pieces),
      printed(row.form),
      `${printed(row.standard)}:${printed(row.edition)} ${printed(row.grade)} ${printed(row.deliveryCondition)}`,
      join([row.thickness, row.width, row.length, row.diameter === undefined ? undefined : `Ø ${row.diameter}`], " × "),
      printed(row.mass),
    ]),
  );
  drawAnalysis(sheet, rows);
  drawTests(sheet, rows);
  heading(sheet, "Statement");
  paragraph(
    sheet,
    "We certify that the material described above was made and tested in accordance with the terms of the order and complies with it.",
  );
  signatures(sheet, [
    {
      role: printed(certificate.validatedBy?.function),
      name: printed(certificate.validatedBy?.name),
      date: printed(certificate.issued),
      stamp: `${printed(certificate.validatedBy?.name?.split(" ")[1]?.slice(0, 3).toUpperCase())}\nQA 3.1`,
    },
  ]);
}

function drawAnalysis(sheet: Parameters<typeof table>[0], rows: readonly Row[]): void {
  const tested = rows.filter(({ chemistry }) => chemistry !== undefined);
  if (tested.length === 0) return;
  const elements = [...new Set(tested.flatMap(({ chemistry }) => (chemistry ?? []).map(({ element }) => element)))];
  const carbon = tested.some((row) => row.carbonEquivalent !== undefined);
  const sum = tested.some((row) => row.sumCrCuMoNi !== undefined);
  heading(sheet, "Ladle analysis, per cent by mass");
  table(
    sheet,
    [
      { title: "Heat", share: 9 },
      ...elements.map((element) => ({ title: element, share: 7, align: "right" as const })),
      ...(sum ? [{ title: "Cr+Cu+Mo+Ni", share: 12, align: "right" as const }] : []),
      ...(carbon ? [{ title: "CE", share: 7, align: "right" as const }] : []),
    ],
    tested.map((row) => [
      row.heat,
      ...elements.map((element) => bare(row.chemistry?.find((one) => one.element === element)?.value)),
      ...(sum ? [bare(row.sumCrCuMoNi)] : []),
      ...(carbon ? [bare(row.carbonEquivalent)] : []),
    ]),
    6.6,
  );
  if (carbon) paragraph(sheet, "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15", 7.5);
}

function drawTests(sheet: Parameters<typeof table>[0], rows: readonly Row[]): void {
  const pulls = rows.flatMap((row) => (row.tensile ?? []).map((test) => ({ row, test })));
  if (pulls.length > 0) {
    heading(sheet, "Tensile test");
    table(
      sheet,
      ["Test", "Direction", "Temp.", "Yield", "Rm", "A", "Gauge length"].map((title, index) => ({
        title,
        share: index === 6 ? 13 : 12,
      })),
      pulls.map(({ test }) => [
        test.test,
        printed(test.direction),
        printed(test.temperature),
        `${printed(test.yieldKind)} ${printed(test.yieldStrength)}`,
        printed(test.tensileStrength),
        printed(test.elongation),
        printed(test.gaugeLength),
      ]),
    );
  }
  const bars = rows.flatMap((row) => row.impact ?? []);
  if (bars.length > 0) {
    heading(sheet, "Impact test, V-notch");
    table(
      sheet,
      ["Test", "Direction", "Temp.", "Width", "Values", "Mean"].map((title, index) => ({
        title,
        share: index === 4 ? 24 : 12,
      })),
      bars.map((test) => [
        test.test,
        printed(test.direction),
        printed(test.temperature),
        printed(test.specimenWidth),
        (test.values ?? []).join(", "),
        printed(test.mean),
      ]),
    );
  }
  const others = rows.flatMap((row) => [
    ...(row.hardness ?? []).map(({ test, value }) => [row.heat, `hardness ${test}`, "as ordered", printed(value)]),
    ...(row.otherTests ?? []).map(({ test, requirement, result }) => [
      row.heat,
      test,
      printed(requirement),
      printed(result),
    ]),
  ]);
  heading(sheet, "Other tests");
  table(
    sheet,
    ["Heat", "Test", "Requirement", "Result"].map((title, index) => ({ title, share: index === 1 ? 40 : 15 })),
    others,
  );
}
