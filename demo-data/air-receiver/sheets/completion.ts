import type { BodyCertificate } from "../../../src/generated/records.ts";
import { article, fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { roundStamp, signatures } from "../../paper/marks.ts";
import { left, newSheet, right, type Paper } from "../../paper/paper.ts";
import { bodyCertificates, declaration, nameplate } from "../facts/legal.ts";
import { heatTreatments } from "../facts/materials.ts";
import { nameOf, organisationOf } from "../facts/people.ts";
import { pressureTest, readings, safetyValve } from "../facts/pressure-test.ts";
import { chart } from "./chart.ts";
import { drawPlate } from "./nameplate.ts";
import { printed, type OriginalSheet } from "./original.ts";

const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
const clock = (text: string | undefined) => printed(text).slice(11, 16);

function drawTest(paper: Paper): void {
  const sheet = newSheet(paper, "Hydrostatic test, record HYD-01");
  fields(
    sheet,
    [
      ["Vessel", `serial ${printed(pressureTest.serial)}`],
      ["Date", printed(pressureTest.date)],
      ["Procedure", "TB-QP-09 revision 4"],
      ["Drawing", "DRG-01 revision B"],
      ["Medium", printed(pressureTest.medium)],
      ["Required", printed(pressureTest.requiredPressure)],
      ["Held at the top", printed(pressureTest.testPressure)],
      ["Pump cut off", clock(pressureTest.pumpIsolated)],
      ["Hold", `${clock(pressureTest.holdStart)} to ${clock(pressureTest.holdEnd)}`],
      ["Gauge A, top", "PG-03, 0 to 25 bar, class 1.0"],
      ["Gauge B, bottom, −1200 mm", "PG-04, 0 to 25 bar, class 1.0"],
      ["Thermometer", "TH-02"],
    ],
    3,
  );
  table(
    sheet,
    [
      { title: "Time", share: 10 },
      { title: "A, bar", share: 10, align: "right" },
      { title: "B, bar", share: 10, align: "right" },
      { title: "Water, °C", share: 10, align: "right" },
      { title: "Metal, °C", share: 10, align: "right" },
      { title: "Event", share: 30 },
    ],
    readings.map((row) => [...row]),
    8,
  );
  const looked = pressureTest.visualExamination;
  fields(sheet, [
    ["Every weld looked at", `at ${printed(looked?.pressure)}, ended ${clock(looked?.date)}: no leak`],
    ["Lasting deformation", `${printed(pressureTest.permanentSet)}, circumference at three stations`],
    ["Surface", pressureTest.coated === true ? "coated" : "bare and dry"],
    ["Water pumped in", printed(pressureTest.pumpedVolume)],
  ]);
  signatures(sheet, [
    { role: "quality control", name: nameOf("D2"), date: printed(pressureTest.date) },
    { role: "inspection body", name: nameOf("E1"), date: printed(pressureTest.date), stamp: "PENQUILLITH\n0000" },
    { role: "client, present", name: nameOf("P1"), date: printed(pressureTest.date) },
  ]);
  const second = newSheet(paper, "Hydrostatic test, pressure over time");
  const across = ["10:00", "10:15", "10:30", "10:45", "11:00", "11:15", "11:30", "11:45", "12:00"].map((label) => ({
    at: minutes(label),
    label,
  }));
  const of = (column: 1 | 2 | 3) => readings.map((row) => [minutes(row[0]), Number(row[column])] as const);
  chart(second, {
    across: [...across, { at: minutes("12:05"), label: "" }],
    up: [0, 4, 8, 12, 16, 20],
    unit: "bar",
    tall: 300,
    series: [
      { name: "A, PG-03", points: of(1) },
      { name: "B, PG-04", points: of(2), dashed: true },
    ],
    band: [minutes("10:52"), minutes("11:27"), 15.8],
  });
  heading(second, "Water temperature");
  chart(second, {
    across: [...across, { at: minutes("12:05"), label: "" }],
    up: [14, 14.5, 15],
    unit: "°C",
    tall: 110,
    series: [{ name: "TH-02", points: of(3) }],
  });
}

function drawForming(paper: Paper): void {
  for (const record of heatTreatments) {
    const sheet = newSheet(paper, "Forming record and normalising of two ends");
    fields(sheet, [
      ["Ends", "two, Ø 1200 outside, R 960, r 185, heats 83950 and 83962"],
      ["Forming", "crown pressed, knuckle spun, cold, 2026-04-20"],
      ["Charge", printed(record.charge)],
      ["Procedure", "BE-W-12 revision 3"],
      ["Furnace", `${clock(record.started)} to ${clock(record.finished)}, ${printed(record.started).slice(0, 10)}`],
      ["Loaded at, heated at", `${printed(record.loadingTemperature)}, ${printed(record.heatingRate)}`],
      [
        "Holding",
        `${printed(record.holdingTime)}, ${printed(record.holdingLowest)} to ${printed(record.holdingHighest)}`,
      ],
      ["Cooling", "in still air"],
    ]);
    table(
      sheet,
      ["Time", "Thermocouple 1", "Thermocouple 2"].map((title) => ({ title, share: 10 })),
      (record.readings ?? []).map((row) => [clock(row.time), ...(row.temperatures ?? [])]),
    );
    heading(sheet, "Furnace temperature");
    const held = (record.readings ?? []).map(
      (row) => [minutes(clock(row.time)), Number((row.temperatures?.[0] ?? "0").split(" ")[0])] as const,
    );
    chart(sheet, {
      across: ["06:30", "08:00", "09:30", "11:00", "12:30", "13:30"].map((label) => ({ at: minutes(label), label })),
      up: [0, 200, 400, 600, 800, 1000],
      unit: "°C",
      tall: 190,
      series: [
        { name: "TR-11", points: [[400, 310], [568, 898], ...held.slice(1), [620, 760], [700, 420], [790, 140]] },
      ],
    });
    signatures(sheet, [
      { role: "furnace supervisor", name: nameOf("F1"), date: "2026-04-23", stamp: "BOWLTHORNE\nENDS" },
    ]);
  }
}

function drawValve(paper: Paper): void {
  const valve = safetyValve;
  const sheet = newSheet(paper, "Certificate of a safety valve");
  fields(sheet, [
    ["Certificate", printed(valve.certificate?.number)],
    ["Date", printed(valve.certificate?.date)],
    ["Tag, serial", `${printed(valve.tag)}, ${printed(valve.serial)}`],
    ["Model, size", `${printed(valve.model)}, ${printed(valve.size)}`],
    ["Type examination", printed(valve.certificate?.typeExamination)],
    ["Category, body", `${printed(valve.category)}, ${printed(valve.bodyNumber)}`],
    ["Flow diameter, area", `${printed(valve.flowDiameter)}, ${printed(valve.flowArea)}`],
    ["Coefficient of discharge Kdr", printed(valve.coefficient)],
    ["Set pressure", printed(valve.setPressure)],
    ["Overpressure, back pressure", `${printed(valve.overpressure)}, ${printed(valve.backPressure)}`],
    ["Medium", `${printed(valve.medium?.name)}, ${printed(valve.medium?.temperature)}`],
    [
      "M, k, Z",
      `${printed(valve.medium?.molarMass)}, ${printed(valve.medium?.isentropicExponent)}, ${printed(valve.medium?.compressibilityFactor)}`,
    ],
    ["Certified capacity", printed(valve.certifiedCapacity)],
    ["Atmospheric pressure", printed(valve.atmosphericPressure)],
    [
      "Stamped on the plate",
      `${printed(valve.plate?.serial)}, ${printed(valve.plate?.setPressure)}, ${printed(valve.plate?.capacity)}`,
    ],
    ["Seal", printed(valve.bench?.sealNumber)],
  ]);
  heading(sheet, `Bench test of ${printed(valve.bench?.date)}, gauge PG-07, dry air`);
  table(
    sheet,
    ["Opening", "Opened at", "Closed at"].map((title) => ({ title, share: 10 })),
    (valve.bench?.readings ?? []).map((row) => [String(row.number), printed(row.pop), printed(row.reseat)]),
    9,
  );
  paragraph(
    sheet,
    `Seat tight at ${printed(valve.bench?.seatTestPressure)}. Sealed with lead seal ${printed(valve.bench?.sealNumber)}.`,
  );
  signatures(sheet, [
    { role: "bench tester", name: nameOf("V1"), date: printed(valve.certificate?.date), stamp: "HOLLYVANE\nBENCH 2" },
  ]);
}

function drawNameplate(paper: Paper): void {
  const sheet = newSheet(paper, "Facsimile of the nameplate");
  drawPlate(sheet, left + 40, sheet.y + 14, true);
  sheet.y += 340;
  paragraph(
    sheet,
    `Rubbing taken after stamping, ${printed(nameplate.fixed)}. Plate fixed with four rivets to its holder at nozzle N6.`,
  );
  signatures(sheet, [
    { role: "shop", name: nameOf("S1"), date: printed(nameplate.fixed) },
    { role: "inspection body", name: nameOf("E1"), date: printed(nameplate.fixed), stamp: "PENQUILLITH\n0000" },
  ]);
}

function drawCertificate(paper: Paper, record: BodyCertificate): void {
  const final = record.type === "product verification";
  const sheet = newSheet(
    paper,
    final ? "Certificate of conformity, module F" : "EU-type examination certificate, module B, production type",
  );
  fields(sheet, [
    ["Certificate", printed(record.number)],
    ["Date", printed(record.date)],
    ["Maker", organisationOf("TARNEQUILL").name],
    ["Product", `compressed-air receiver AR 3000-11${final ? `, serial ${printed(record.serial)}` : ""}`],
    ["PS", printed(record.maximumAllowablePressure)],
    ["TS", `${printed(record.minimumAllowableTemperature)} to ${printed(record.maximumAllowableTemperature)}`],
    ["V", printed(record.volume)],
    ["Fluid", `air, group ${printed(record.fluidGroup)}`],
    ["Category, modules", `${printed(record.category)}, ${printed(record.module)}`],
    ["Drawings", (record.drawings ?? []).map((one) => one.replace("@", " ")).join(", ")],
    ...(final
      ? ([
          ["Test pressure, date", `${printed(record.testPressure)}, ${printed(record.testDate)}`],
          ["Year of manufacture", printed(record.year)],
        ] as const)
      : ([
          ["Valid to", printed(record.validTo)],
          ["Designed to", "EN 13445:2021"],
        ] as const)),
  ]);
  paragraph(
    sheet,
    final
      ? "The vessel was examined and tested. It conforms to the type described in certificate PQ-B-26-0041 and to the requirements of Directive 2014/68/EU that apply to it. The number 0000 may be stamped beside the CE marking."
      : "The technical documentation and the production type were examined. The type meets the essential safety requirements of Directive 2014/68/EU that apply to it.",
    10,
  );
  signatures(sheet, [{ role: "for the body", name: nameOf(printed(record.signatory)), date: printed(record.date) }]);
  roundStamp(sheet, "PENQUILLITH\nINSPECTION\n0000", right - 60, sheet.y + 30);
}

function drawDeclaration(paper: Paper): void {
  const sheet = newSheet(paper, "EU declaration of conformity");
  paragraph(
    sheet,
    `${printed(declaration.makerName)}, ${printed(declaration.makerAddress)}, declares under its sole responsibility that the pressure equipment`,
    10,
  );
  paragraph(sheet, printed(declaration.description), 12);
  paragraph(
    sheet,
    `conforms to ${(declaration.legislation ?? []).join(", ")}. Harmonised standards applied: ${(declaration.standards ?? []).map((one) => `${one.standard}:${printed(one.edition)}`).join(", ")}.`,
    10,
  );
  fields(sheet, [
    ["Number", printed(declaration.number)],
    ["Serial, year", `${printed(declaration.serial)}, ${printed(declaration.year)}`],
    ["PS", printed(declaration.maximumAllowablePressure)],
    [
      "TS",
      `${printed(declaration.minimumAllowableTemperature)} to ${printed(declaration.maximumAllowableTemperature)}`,
    ],
    ["V", printed(declaration.volume)],
    ["Test pressure, date", `${printed(declaration.testPressure)}, ${printed(declaration.testDate)}`],
    ["Category, modules", `${printed(declaration.category)}, ${printed(declaration.module)}`],
    ["Body", `${printed(declaration.bodyNumber)}, ${printed(declaration.bodyName)}`],
    ["Certificates", bodyCertificates.map(({ number }) => printed(number)).join(", ")],
    ["Place, date", `${printed(declaration.place)}, ${printed(declaration.date)}`],
  ]);
  signatures(sheet, [
    {
      role: printed(declaration.function),
      name: nameOf(printed(declaration.signatory)),
      date: printed(declaration.date),
    },
  ]);
  article(sheet, "Note", "A demonstration. No such vessel, maker or body exists, and nothing is declared.");
}

const sheetOf = (
  id: string,
  path: string,
  title: string,
  number: string,
  by: string,
  day: string,
  compared: string,
) => ({
  id: `ORG-${id}`,
  path,
  title,
  number,
  by,
  day,
  compared,
});

export const completionSheets: readonly OriginalSheet[] = [
  {
    ...sheetOf(
      "FORMING",
      "materials/forming-record.pdf",
      "Forming record of the ends",
      "BE-26-N-077",
      "BOWLTHORNE",
      "2026-05-11",
      "2026-05-12",
    ),
    shows: [["heat-treatment", "HT-01"]],
    draw: drawForming,
  },
  {
    ...sheetOf(
      "HYD-01",
      "testing/hyd-01.pdf",
      "Hydrostatic test",
      "TQ423-11-HYD-01",
      "TARNEQUILL",
      "2026-06-23",
      "2026-06-24",
    ),
    shows: [["pressure-test", "HYD-01"]],
    draw: drawTest,
  },
  {
    ...sheetOf(
      "SV-01",
      "completion/safety-valve.pdf",
      "Certificate of the safety valve",
      "HV-C-55102",
      "HOLLYVANE",
      "2026-06-26",
      "2026-06-30",
    ),
    shows: [["safety-valve", "SV-01"]],
    draw: drawValve,
  },
  {
    ...sheetOf(
      "NP-01",
      "completion/nameplate.pdf",
      "Facsimile of the nameplate",
      "TQ423-12-NP-01",
      "TARNEQUILL",
      "2026-07-08",
      "2026-07-09",
    ),
    shows: [["nameplate", "NP-01"]],
    draw: drawNameplate,
  },
  ...bodyCertificates.map((record): OriginalSheet => ({
    ...sheetOf(
      record.id,
      `completion/${record.id.toLowerCase()}.pdf`,
      printed(record.type),
      printed(record.number),
      "PENQUILLITH",
      printed(record.date),
      record.id === "BC-01" ? "2026-05-14" : "2026-07-15",
    ),
    shows: [["body-certificate", record.id]],
    draw: (paper) => {
      drawCertificate(paper, record);
    },
  })),
  {
    ...sheetOf(
      "EU-01",
      "completion/declaration.pdf",
      "EU declaration of conformity",
      "TQ423-EU-01",
      "TARNEQUILL",
      "2026-07-15",
      "2026-07-16",
    ),
    shows: [["declaration", "EU-01"]],
    draw: drawDeclaration,
  },
];
