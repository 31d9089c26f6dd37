import type { MaterialCertificate } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { listed, printed } from "./original.ts";

type Row = NonNullable<MaterialCertificate["rows"]>[number];

const join = (values: readonly (string | undefined)[], between: string) =>
  values.filter((value) => value !== undefined && value !== "").join(between);
const bare = (value: string | undefined) => (value ?? "–").replace(/ \S+$/, "");

/** A material certificate as its mill prints it. */
export function drawMaterialCertificate(paper: Paper, facts: Facts, certificate: MaterialCertificate): void {
  const rows = certificate.rows ?? [];
  let sheet = newSheet(paper, `Inspection certificate ${printed(certificate.type)}`);
  fields(sheet, [
    ["Document", `EN 10204:2004, type ${printed(certificate.type)}`],
    ["Number", printed(certificate.number)],
    ["Purchaser", facts.organisation(certificate.supplier ?? facts.maker).name],
    ["Order", printed(certificate.order)],
    ["Date", printed(certificate.issued)],
    ["Received by the maker", printed(certificate.received)],
  ]);
  heading(sheet, "Delivery");
  sheet = table(
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
  sheet = drawAnalysis(sheet, rows);
  sheet = drawTests(sheet, rows);
  sheet = withRoom(sheet, 130);
  heading(sheet, "Statement");
  paragraph(
    sheet,
    "We certify that the material described above was made and tested in accordance with the terms of the order and complies with it.",
  );
  const { name, function: role } = certificate.validatedBy ?? {};
  signatures(sheet, [
    {
      role: printed(role),
      name: printed(name),
      date: printed(certificate.issued),
      stamp: `${printed(name?.split(" ")[1]?.slice(0, 3).toUpperCase())}\nQA ${printed(certificate.type)}`,
    },
    ...(certificate.countersignedBy === undefined
      ? []
      : [
          {
            role: "countersigned",
            name: printed(certificate.countersignedBy.name),
            date: printed(certificate.issued),
            stamp: facts.stamp(certificate.countersignedBy.organisation ?? facts.body),
          },
        ]),
  ]);
}

function drawAnalysis(start: Sheet, rows: readonly Row[]): Sheet {
  const tested = rows.filter(({ chemistry }) => chemistry !== undefined);
  if (tested.length === 0) return start;
  const elements = [...new Set(tested.flatMap(({ chemistry }) => (chemistry ?? []).map(({ element }) => element)))];
  const carbon = tested.some((row) => row.carbonEquivalent !== undefined);
  const sum = tested.some((row) => row.sumCrCuMoNi !== undefined);
  const sheet = withRoom(start, 70);
  heading(sheet, "Ladle analysis, per cent by mass");
  const last = table(
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
  if (carbon) paragraph(last, "CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15", 7.5);
  return last;
}

function drawTests(start: Sheet, rows: readonly Row[]): Sheet {
  let sheet = start;
  const pulls = rows.flatMap((row) => row.tensile ?? []);
  if (pulls.length > 0) {
    sheet = withRoom(sheet, 70);
    heading(sheet, "Tensile test");
    sheet = table(
      sheet,
      columns(["Test", "Direction", "Temp.", "Yield", "Rm", "A", "Gauge length"], [12, 12, 12, 12, 12, 12, 13]),
      pulls.map((test) => [
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
    sheet = withRoom(sheet, 70);
    heading(sheet, "Impact test, V-notch");
    sheet = table(
      sheet,
      columns(["Test", "Direction", "Temp.", "Width", "Values", "Mean"], [12, 12, 12, 12, 24, 12]),
      bars.map((test) => [
        test.test,
        printed(test.direction),
        printed(test.temperature),
        printed(test.specimenWidth),
        listed(test.values),
        printed(test.mean),
      ]),
    );
  }
  return drawOthers(sheet, rows);
}

function drawOthers(start: Sheet, rows: readonly Row[]): Sheet {
  const sheet = withRoom(start, 70);
  heading(sheet, "Other tests");
  return table(
    sheet,
    columns(["Heat", "Test", "Requirement", "Result"], [15, 40, 15, 15]),
    rows.flatMap((row) => [
      ...(row.hardness ?? []).map(({ test, value }) => [row.heat, `hardness ${test}`, "as ordered", printed(value)]),
      ...(row.otherTests ?? []).map(({ test, requirement, result }) => [
        row.heat,
        test,
        printed(requirement),
        printed(result),
      ]),
    ]),
  );
}
