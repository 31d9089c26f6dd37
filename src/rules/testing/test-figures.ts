import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { date, list, optional, quantity, text, thing } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { heldThrough } from "../../requirements/testing-conditions.ts";
import { rule, type Rule } from "../../model/rule.ts";

/** As the calculation prints it. */
const roundedUp = (pressure: number) => (Math.ceil(pressure * 100 - 1e-6) / 100).toFixed(2);

const figures = {
  kind: "pressure-test",
  severity: "nonconformity",
  owner: "quality",
} as const;
const again =
  "compare with the report and the drawing; correct the figure, or repeat the test at the pressure required";

const required = rule({
  ...figures,
  id: "required-test-pressure",
  title: "The test pressure that a report requires is that of the design",
  basis: derivedFrom("the report asks for no less than the recomputed test pressure"),
  inputs: {
    required: quantity("requiredPressure", "bar"),
    computed: quantity("equipment.calculation(test-pressure).PT", "bar"),
  },
  *check({ required: asked, computed }, test) {
    // Half a unit of the last digit: 15.7 bar may stand for 15.73.
    if (asked.high + asked.halfUnit < computed.low)
      yield {
        at: "required",
        message: `pressure test ${test.name} requires ${asked.text}; the design requires ${roundedUp(computed.value)} bar`,
        why: "recomputed from the allowable pressure and the design stresses",
        hint: again,
      };
  },
  examples: [
    { name: "as computed", given: { required: "15.73 bar", computed: "15.73 bar" }, objections: [] },
    {
      name: "too little is asked for",
      given: { required: "1.573 bar", computed: "15.73 bar" },
      objections: ["pressure test X-01 requires 1.573 bar; the design requires 15.73 bar"],
    },
  ],
});

/** A test that was rejected reached what it reached. */
const reached = rule({
  ...figures,
  id: "test-pressure-reached",
  title: "An accepted pressure test reached the pressure that its report requires",
  basis: derivedFrom("the test reaches what its report asks for"),
  when: [heldThrough, { path: "result", equals: "accepted" }],
  inputs: { required: quantity("requiredPressure", "bar"), reached: quantity("testPressure", "bar") },
  *check({ required: asked, reached: most }, test) {
    if (holds(most, ">=", asked) === "no")
      yield {
        at: "required",
        message: `pressure test ${test.name} requires ${asked.text} and reached ${most.text}`,
        why: `test pressure as reported: ${most.text}`,
        hint: again,
        related: [{ at: "reached", message: `${most.text} here` }],
      };
  },
  examples: [
    { name: "reached", given: { required: "15.73 bar", reached: "15.8 bar" }, objections: [] },
    {
      name: "more is asked for than was reached",
      given: { required: "157.3 bar", reached: "15.8 bar" },
      objections: ["pressure test X-01 requires 157.3 bar and reached 15.8 bar"],
    },
  ],
});

/** K; what stands full of water takes its temperature within a few degrees before pressure is raised. */
const apart = 10;

const temperatures = rule({
  id: "metal-near-water",
  title: "Metal and water of a pressure test are of about one temperature",
  basis: commonPractice("pressure is raised when metal and water have come to about one temperature"),
  kind: "pressure-test",
  when: [{ path: "readings[].metalTemperature", exists: true }],
  severity: "query",
  owner: "quality",
  inputs: {
    readings: list(
      thing("readings[]", {
        time: text("time"),
        water: quantity("waterTemperature", "°C"),
        metal: optional(quantity("metalTemperature", "°C")),
      }),
    ),
  },
  *check({ readings }, test) {
    const far = readings.filter(
      ({ water, metal }) => metal !== undefined && Math.abs(metal.value - water.value) > apart,
    );
    const [first] = far;
    if (first?.metal === undefined) return;
    yield {
      at: [first, "metal"],
      accuses: [],
      message: `the metal has ${first.metal.text} and the water ${first.water.text} at ${first.time} in pressure test ${test.name}`,
      why: far.length === 1 ? "one reading of that kind" : `${far.length} readings of that kind`,
      hint: "compare with the reading sheet; if it is so, answer this query with why pressure was raised",
      related: [{ at: [first, "water"], message: `${first.water.text} here` }],
    };
  },
  examples: [
    {
      name: "near to each other",
      given: { readings: [{ time: "10:00", water: "14.5 °C", metal: "14.8 °C" }] },
      objections: [],
    },
    {
      name: "far from each other",
      given: { readings: [{ time: "10:00", water: "14.5 °C", metal: "1.48 °C" }] },
      objections: ["the metal has 1.48 °C and the water 14.5 °C at 10:00 in pressure test X-01"],
    },
  ],
});

const examined = rule({
  id: "examination-during-test",
  title: "The joints are examined while the equipment stands under pressure",
  basis: derivedFrom("the look at the joints lies between the begin of the hold and the last reading"),
  kind: "pressure-test",
  when: [heldThrough],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    looked: date("visualExamination.date"),
    from: date("holdStart"),
    readings: list(date("readings[].time")),
  },
  *check({ looked, from, readings }, test) {
    const last = [...readings].sort((a, b) => a.from - b.from).at(-1);
    if (last === undefined || (canPrecede(from, looked) !== "no" && canPrecede(looked, last) !== "no")) return;
    yield {
      at: "looked",
      message: `the joints were examined on ${looked.text}; pressure test ${test.name} was held from ${from.text} and last read on ${last.text}`,
      why: "outside these times nothing shows that there was pressure",
      hint: "compare with the report; correct the time, or examine the joints again under pressure",
      related: [{ at: "from", message: `held from ${from.text}` }],
    };
  },
  examples: [
    {
      name: "after the hold",
      given: { looked: "2026-06-23T11:55+02:00", from: "2026-06-23T10:52+02:00", readings: ["2026-06-23T12:01+02:00"] },
      objections: [],
    },
    {
      name: "on the day, without a time",
      given: { looked: "2026-06-23", from: "2026-06-23T10:52+02:00", readings: ["2026-06-23T12:01+02:00"] },
      objections: [],
    },
    {
      name: "a month before",
      given: { looked: "2026-05-23", from: "2026-06-23T10:52+02:00", readings: ["2026-06-23T12:01+02:00"] },
      objections: [
        "the joints were examined on 2026-05-23; pressure test X-01 was held from 2026-06-23T10:52+02:00 and last read on 2026-06-23T12:01+02:00",
      ],
    },
    {
      name: "after the pressure was let off",
      given: { looked: "2026-06-24", from: "2026-06-23T10:52+02:00", readings: ["2026-06-23T12:01+02:00"] },
      objections: [
        "the joints were examined on 2026-06-24; pressure test X-01 was held from 2026-06-23T10:52+02:00 and last read on 2026-06-23T12:01+02:00",
      ],
    },
  ],
});

/** Figures of a pressure test held against the design and against each other. */
export const pressureTestFigures: readonly Rule[] = [required, reached, temperatures, examined];
