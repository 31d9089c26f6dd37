import { commonPractice, ownChoice } from "../../model/basis.ts";
import { quantity, text } from "../../model/input.ts";
import { atLeast } from "../../model/quantity.ts";
import { heldThrough } from "../../requirements/testing-conditions.ts";
import { rule } from "../../model/rule.ts";

const water: readonly string[] = ["water", "water with additive"];
const gases: readonly string[] = ["air", "nitrogen"];

export const examinationPressure = rule({
  id: "examination-pressure",
  title: "Joints are examined at no less than the maximum allowable pressure",
  basis: commonPractice("the look at the joints is made at the allowable pressure or above, after the hold"),
  kind: "pressure-test",
  when: [heldThrough],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    examined: quantity("visualExamination.pressure", "bar"),
    allowable: quantity("equipment.limits.maximumAllowablePressure", "bar"),
  },
  *check({ examined, allowable }, test) {
    if (atLeast(examined, allowable.low) !== "yes")
      yield {
        at: "examined",
        message: `the joints were examined at ${examined.text} in pressure test ${test.name}; at least ${allowable.text} is required, the maximum allowable pressure`,
        why: "a joint that weeps at the allowable pressure may be dry below it",
        hint: "correct the pressure if it was copied wrongly; else repeat the examination under pressure",
        related: [{ at: "allowable", message: "the maximum allowable pressure" }],
      };
  },
  examples: [
    { name: "at the allowable pressure", given: { examined: "11 bar", allowable: "11 bar" }, objections: [] },
    { name: "at the test pressure", given: { examined: "1.58 MPa", allowable: "11 bar" }, objections: [] },
    {
      name: "a tenth below it",
      given: { examined: "10.9 bar", allowable: "11 bar" },
      objections: [
        "the joints were examined at 10.9 bar in pressure test X-01; at least 11 bar is required, the maximum allowable pressure",
      ],
    },
    {
      name: "at a bound that says nothing",
      given: { examined: "<12 bar", allowable: "11 bar" },
      objections: [
        "the joints were examined at <12 bar in pressure test X-01; at least 11 bar is required, the maximum allowable pressure",
      ],
    },
  ],
});

export const stoppedTest = rule({
  id: "stopped-test-rejected",
  title: "A pressure test that was broken off is rejected",
  basis: ownChoice("what was not held to its end has shown nothing; times and examination of it are not asked for"),
  kind: "pressure-test",
  when: [{ path: "stopped", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: { ground: text("stopped"), result: text("result") },
  *check({ ground, result }, test) {
    if (result !== "rejected")
      yield {
        at: "result",
        message: `pressure test ${test.name} was broken off, and its result is ${result}`,
        why: `broken off: ${ground}`,
        hint: "compare with the report; enter it as rejected with the test that followed, or take away why it was broken off",
        related: [{ at: "ground", message: "broken off" }],
      };
  },
  examples: [
    { name: "rejected", given: { ground: "gasket leaked", result: "rejected" }, objections: [] },
    {
      name: "accepted",
      given: { ground: "gasket leaked", result: "accepted" },
      objections: ["pressure test X-01 was broken off, and its result is accepted"],
    },
  ],
});

/** A test with another medium than water is judged in part: which part, nobody is left to guess. */
export const mediumOfTest = rule({
  id: "pressure-test-medium",
  title: "A pressure test that is not made with water is decided by design and the inspection body",
  basis: ownChoice("what a recomputation does not cover is said, and somebody decides it"),
  kind: "pressure-test",
  severity: "query",
  owner: "design",
  inputs: { medium: text("medium") },
  *check({ medium }, test) {
    if (water.includes(medium)) return;
    const gas = gases.includes(medium);
    yield {
      at: "medium",
      message: gas
        ? `pressure test ${test.name} was made with ${medium}: time, pressure and gauges of its hold are judged as for water, its drop of pressure, the energy stored and the pressure that a test with gas needs are not`
        : `pressure test ${test.name} was made with ${medium}: neither its hold nor its drop of pressure is judged, because the weight of a column of it is not known`,
      why: `medium: ${medium}`,
      hint: "record the decision of design and inspection body on this test as an answered query",
    };
  },
  examples: [
    { name: "water", given: { medium: "water" }, objections: [] },
    { name: "water with additive", given: { medium: "water with additive" }, objections: [] },
    {
      name: "air",
      given: { medium: "air" },
      objections: [
        "pressure test X-01 was made with air: time, pressure and gauges of its hold are judged as for water, its drop of pressure, the energy stored and the pressure that a test with gas needs are not",
      ],
    },
    {
      name: "oil",
      given: { medium: "oil" },
      objections: [
        "pressure test X-01 was made with oil: neither its hold nor its drop of pressure is judged, because the weight of a column of it is not known",
      ],
    },
  ],
});
