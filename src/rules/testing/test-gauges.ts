import { commonPractice } from "../../model/basis.ts";
import { text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const read: readonly string[] = ["pressure gauge", "pressure transmitter"];

export const testGauges = rule({
  id: "test-gauges",
  title: "The pressure of the test is read on two gauges; one may be a recorder where the profile has it",
  basis: commonPractice("one gauge is checked by another"),
  kind: "pressure-test",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    chart: text("profile.chartAsSecondGauge"),
    gauges: things("gauges[]", {
      letter: text("gauge"),
      type: text("instrument.type"),
      instrument: text("instrument"),
    }),
  },
  *check({ chart, gauges }, test) {
    const twice = gauges.find(
      (one, index) => gauges.findIndex(({ instrument }) => instrument === one.instrument) < index,
    );
    if (twice !== undefined)
      yield {
        at: [twice, "instrument"],
        name: "twice",
        message: `gauge ${twice.letter} of pressure test ${test.name} is the same instrument as another, ${twice.instrument}`,
        why: `gauges: ${gauges.map(({ letter, instrument }) => `${letter} ${instrument}`).join(", ")}`,
        hint: "name the second gauge that stood beside it; else repeat the test, or have it accepted by who witnessed it",
      };
    const recorders = gauges.filter(({ type }) => type === "recorder");
    for (const gauge of gauges.filter(({ type }) => type !== "recorder" && !read.includes(type)))
      yield {
        at: [gauge, "type"],
        name: gauge.letter,
        accuses: [],
        message: `gauge ${gauge.letter} of pressure test ${test.name} is a ${gauge.type}`,
        why: "a pressure is read on a gauge or a transmitter",
        hint: "correct the instrument the test names, or its kind",
      };
    const [first] = recorders;
    if (first === undefined || (chart === "yes" && recorders.length < gauges.length)) return;
    yield {
      at: [first, "type"],
      name: "recorder",
      accuses: [],
      message: `gauge ${recorders.map(({ letter }) => letter).join(" and ")} of pressure test ${test.name} is a recorder`,
      why: chart === "yes" ? "one gauge at least is read directly" : "the profile asks for two gauges that are read",
      hint: "name the gauge that stood beside it; else repeat the test, or have it accepted by who witnessed it",
    };
  },
  examples: [
    { name: "two gauges", given: gauges("no", "pressure gauge", "pressure transmitter"), objections: [] },
    { name: "a gauge and a chart", given: gauges("yes", "pressure gauge", "recorder"), objections: [] },
    {
      name: "a chart where the profile has none",
      given: gauges("no", "pressure gauge", "recorder"),
      objections: ["gauge B of pressure test X-01 is a recorder"],
    },
    {
      name: "two charts",
      given: gauges("yes", "recorder", "recorder"),
      objections: ["gauge A and B of pressure test X-01 is a recorder"],
    },
    {
      name: "one gauge, named twice",
      given: { ...gauges("no", "pressure gauge", "pressure gauge", "PG-A") },
      objections: ["gauge B of pressure test X-01 is the same instrument as another, PG-A"],
    },
    {
      name: "no gauge at all",
      given: gauges("yes", "pressure gauge", "thermometer"),
      objections: ["gauge B of pressure test X-01 is a thermometer"],
    },
  ],
});

function gauges(chart: string, a: string, b: string, second = "PG-B") {
  return {
    chart,
    gauges: [
      { letter: "A", type: a, instrument: "PG-A" },
      { letter: "B", type: b, instrument: second },
    ],
  };
}
