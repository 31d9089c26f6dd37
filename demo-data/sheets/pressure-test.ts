import type { PressureTest } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading } from "../paper/blocks.ts";
import { chart } from "../paper/chart.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, withRoom, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { marksAround, marksOfTime, marksUpTo, minutes } from "./axis.ts";
import { cited, clock, figure, listed, printed, signed } from "./original.ts";

type Reading = NonNullable<PressureTest["readings"]>[number];

/** What happened at each reading, as the record lets it be seen. */
function eventsOf(facts: Facts, test: PressureTest): readonly string[] {
  const readings = test.readings ?? [];
  const allowable = figure(facts.equipment.limits?.maximumAllowablePressure);
  const timed: Readonly<Record<string, string>> = {
    [clock(test.visualExamination?.date)]: "examination ends",
    [clock(test.holdEnd)]: "hold ends",
    [clock(test.holdStart)]: "hold begins",
    [clock(test.pumpIsolated)]: "pump cut off",
  };
  const pressure = (at: number) => figure(readings[at]?.gaugeA);
  return readings.map(({ time }, at) => {
    const known = timed[clock(time)];
    if (known !== undefined) return known;
    if (at === 0) return "filled and vented";
    if (at === readings.length - 1) return "empty";
    if (pressure(at) === pressure(at - 1)) return "";
    if (time > printed(test.holdEnd)) return pressure(at) === allowable ? "lowered to PS" : "";
    if (time > printed(test.pumpIsolated) || pressure(at) !== pressure(at + 1)) return "";
    return pressure(at) === allowable ? "stop at PS" : "stop, looked round";
  });
}

function gaugesOf({ gauges = [] }: PressureTest): readonly (readonly [string, string])[] {
  return gauges.map(({ gauge, instrument, range, accuracyClass, resolution, elevation }) => {
    const below = figure(elevation);
    const place = below === 0 ? "top" : `${below < 0 ? "bottom" : "above"}, ${printed(elevation).replace("-", "−")}`;
    const kind = `class ${printed(accuracyClass).replace(" %", "")}, read to ${printed(resolution)}`;
    return [`Gauge ${gauge}, ${place}`, `${printed(instrument)}, 0 to ${printed(range)}, ${kind}`] as const;
  });
}

function procedureOf(facts: Facts, link: string | undefined): string {
  const [id, revision] = printed(link).split("@");
  const found = facts.all("procedure").find((one) => one.id === id);
  return `${found?.number ?? printed(id)} revision ${printed(revision)}`;
}

const bare = (value: string | undefined) => printed(value).split(" ")[0] ?? "";

/** The record of a hydrostatic test, with its readings and their curve. */
export function drawPressureTest(paper: Paper, facts: Facts, test: PressureTest): void {
  const readings = test.readings ?? [];
  const events = eventsOf(facts, test);
  let sheet = newSheet(paper, `Hydrostatic test, record ${test.id}`);
  fields(
    sheet,
    [
      ["Vessel", `serial ${printed(test.serial)}`],
      ["Date", printed(test.date)],
      ["Procedure", procedureOf(facts, test.procedure)],
      ["Drawing", cited(test.drawing)],
      ["Medium", printed(test.medium)],
      ["Required", printed(test.requiredPressure)],
      ["Held at the top", printed(test.testPressure)],
      ["Pump cut off", clock(test.pumpIsolated)],
      ["Hold", `${clock(test.holdStart)} to ${clock(test.holdEnd)}`],
      ...gaugesOf(test),
      ["Thermometer", listed(test.thermometers)],
    ],
    3,
  );
  sheet = table(
    sheet,
    [
      { title: "Time", share: 10 },
      { title: "A, bar", share: 10, align: "right" },
      { title: "B, bar", share: 10, align: "right" },
      { title: "Water, °C", share: 10, align: "right" },
      { title: "Metal, °C", share: 10, align: "right" },
      { title: "Event", share: 30 },
    ],
    readings.map((row, index) => [
      clock(row.time),
      bare(row.gaugeA),
      bare(row.gaugeB),
      bare(row.waterTemperature),
      bare(row.metalTemperature),
      events[index] ?? "",
    ]),
    8,
  );
  const looked = test.visualExamination;
  sheet = withRoom(sheet, 130);
  fields(sheet, [
    ["Every weld looked at", `at ${printed(looked?.pressure)}, ended ${clock(looked?.date)}: no leak`],
    ["Lasting deformation", `${printed(test.permanentSet)}, circumference at three stations`],
    ["Surface", test.coated === true ? "coated" : "bare and dry"],
    ["Water pumped in", printed(test.pumpedVolume)],
  ]);
  const names = signed(facts, test.signatures);
  signatures(
    sheet,
    names.map((one) => (one.role === "client" ? { ...one, role: "client, present" } : one)),
  );
  drawCurves(paper, test);
}

function drawCurves(paper: Paper, test: PressureTest): void {
  const readings = test.readings ?? [];
  const of = (value: (row: Reading) => string | undefined) =>
    readings.map((row) => [minutes(clock(row.time)), figure(value(row))] as const);
  const [first, last] = [readings[0], readings.at(-1)];
  const across = marksOfTime(clock(first?.time), clock(last?.time));
  const second = newSheet(paper, "Hydrostatic test, pressure over time");
  const most = Math.max(...readings.flatMap(({ gaugeA, gaugeB }) => [figure(gaugeA), figure(gaugeB)]));
  const instrument = (name: "A" | "B") => printed(test.gauges?.find(({ gauge }) => gauge === name)?.instrument);
  chart(second, {
    across,
    up: marksUpTo(most),
    unit: "bar",
    tall: 300,
    series: [
      { name: `A, ${instrument("A")}`, points: of((row) => row.gaugeA) },
      { name: `B, ${instrument("B")}`, points: of((row) => row.gaugeB), dashed: true },
    ],
    band: [minutes(clock(test.holdStart)), minutes(clock(test.holdEnd)), figure(test.testPressure)],
  });
  heading(second, "Water temperature");
  const water = of((row) => row.waterTemperature);
  chart(second, {
    across,
    up: marksAround(water.map(([, value]) => value)),
    unit: "°C",
    tall: 110,
    series: [{ name: listed(test.thermometers), points: water }],
  });
}
