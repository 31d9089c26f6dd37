import { fields, heading, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { heatTreatments } from "../facts/materials.ts";
import { nameOf } from "../facts/people.ts";
import { pressureTest, readings } from "../facts/pressure-test.ts";
import { chart } from "./chart.ts";
import { printed } from "./original.ts";

const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
const clock = (text: string | undefined) => printed(text).slice(11, 16);

/** The record of the hydrostatic test, with its chart. */
export function drawTest(paper: Paper): void {
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

/** The forming record of the ends, with the furnace chart. */
export function drawForming(paper: Paper): void {
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
