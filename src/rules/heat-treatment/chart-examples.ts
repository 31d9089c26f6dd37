/** Charts as they are drawn, and as they are not. */
export const chartExamples = [
  { name: "as logged", given: charted(), objections: [] },
  {
    name: "times backwards",
    given: charted({}, [point("10:30"), point("10:10"), point("10:50")]),
    objections: ["the chart of stress relief X-01 runs backwards, or stands still, at 2026-04-02T10:10+02:00"],
  },
  {
    name: "one point",
    given: charted({}, [point("10:30")]),
    objections: ["the chart of stress relief X-01 has one point, which shows no time at temperature"],
  },
  {
    name: "a point before it began",
    given: charted({}, [point("06:30"), point("10:00"), point("10:30"), point("10:40")]),
    objections: [
      "the chart of stress relief X-01 has a point at 2026-04-02T06:30+02:00, outside of 2026-04-02T07:00+02:00 to 2026-04-02T13:00+02:00",
      "the chart of stress relief X-01 has no point for more than 30 min before 2026-04-02T10:00+02:00",
    ],
  },
  {
    name: "a thermocouple less",
    given: charted({}, [point("10:00"), point("10:20", ["565 °C"]), point("10:40")]),
    objections: ["the chart of stress relief X-01 has 1 temperatures at 2026-04-02T10:20+02:00, and 2 thermocouples"],
  },
  {
    name: "hotter than logged",
    given: charted({}, [point("10:00"), point("10:20", ["565 °C", "640 °C"]), point("10:40")]),
    objections: [
      "the chart of stress relief X-01 shows 640 °C at 2026-04-02T10:20+02:00, above the highest that is logged, 580 °C",
      "stress relief X-01 is logged with a greatest rate of heating of 150 K/h; its chart shows 210 K/h up to 2026-04-02T10:20+02:00",
      "stress relief X-01 is logged with a greatest rate of cooling of 150 K/h; its chart shows 210 K/h up to 2026-04-02T10:40+02:00",
    ],
  },
  {
    name: "colder in between",
    given: charted({}, [point("10:00"), point("10:20", ["540 °C", "545 °C"]), point("10:40")]),
    objections: [
      "the chart of stress relief X-01 falls to 540 °C at 2026-04-02T10:20+02:00, below the lowest that is logged for the hold, 560 °C",
    ],
  },
  {
    name: "never hot",
    given: charted({}, [point("10:00", ["400 °C", "410 °C"]), point("10:40", ["400 °C", "410 °C"])]),
    objections: [
      "the chart of stress relief X-01 has no point at 560 °C or above, the lowest that is logged for the hold",
    ],
  },
  {
    name: "held for less",
    given: charted({ time: "90 min" }, [
      point("09:30", ["500 °C", "505 °C"]),
      point("10:00"),
      point("10:20"),
      point("10:40"),
      point("10:50", ["550 °C", "550 °C"]),
    ]),
    objections: ["stress relief X-01 is logged as held for 90 min; its chart leaves room for 80 min"],
  },
  {
    name: "held for more than its points show",
    given: charted({ time: "50 min" }),
    objections: ["stress relief X-01 is logged as held for 50 min; the points of its chart show 40 min"],
  },
  {
    name: "no points for an hour",
    given: charted({ time: "60 min" }, [point("10:00"), point("11:00")]),
    objections: ["the chart of stress relief X-01 has no point for more than 30 min before 2026-04-02T11:00+02:00"],
  },
  {
    name: "heated faster than logged",
    given: charted({ loading: "20 °C" }),
    objections: [
      "stress relief X-01 is logged with a greatest rate of heating of 150 K/h; its chart shows 183 K/h up to 2026-04-02T10:00+02:00",
    ],
  },
  {
    name: "longer than the whole",
    given: charted({ time: "700 min" }),
    objections: [
      "stress relief X-01 is logged as held for 700 min; its chart leaves room for 360 min",
      "stress relief X-01 is logged as held for 700 min; it lasted 360 min as a whole",
    ],
  },
];

function point(time: string, temperatures: readonly string[] = ["565 °C", "570 °C"]) {
  return { $: time, time: `2026-04-02T${time}+02:00`, temperatures };
}

function charted(
  changes: Readonly<Record<string, string>> = {},
  readings: readonly ReturnType<typeof point>[] = [point("10:00"), point("10:20"), point("10:40")],
) {
  return {
    type: "stress relief",
    started: "2026-04-02T07:00+02:00",
    finished: "2026-04-02T13:00+02:00",
    loading: "180 °C",
    heating: "150 K/h",
    cooling: "150 K/h",
    lowest: "560 °C",
    highest: "580 °C",
    time: "40 min",
    readings,
    thermocouples: [],
    ...changes,
  };
}
