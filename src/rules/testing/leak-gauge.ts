import { commonPractice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { ratioOf, sizeOf } from "../shared/sizes.ts";

const gauges = ["pressure gauge", "pressure transmitter", "recorder"];
/** Ends of the range of a gauge, as multiples of what is read on it. */
const [narrow, wide] = [1.1, 5];

export const leakGaugeFits = rule({
  id: "leak-gauge-fits",
  title: "The pressure of a leak test is read on a gauge whose range fits it",
  basis: commonPractice(
    "a gauge reads up to between 1.5 and 4 times the pressure; asked about below 1.1 and above 5 times",
  ),
  kind: "leak-test",
  severity: "query",
  owner: "testing",
  inputs: {
    pressure: quantity("pressure", "bar"),
    named: anyOf(
      things("instruments[]", {
        type: text("type"),
        end: optional(text("range.maximum")),
      }),
    ),
  },
  *check({ pressure, named }, test) {
    const own = named.filter(({ type }) => gauges.includes(type));
    const times = own.map(({ end }) => {
      const most = end === undefined ? undefined : sizeOf(end);
      return most === undefined ? undefined : ratioOf(most, { ...most, number: pressure.value, unit: "bar" });
    });
    const [first] = own;
    // One that fits is enough: a coarse one may stand beside it for the pump. That no gauge is named is found by itself.
    if (first === undefined || times.some((one) => one !== undefined && one >= narrow && one <= wide)) return;
    yield {
      at: "pressure",
      accuses: [],
      message: `leak test ${test.name} was made at ${pressure.text}, read on ${own.map(({ $, end }) => `${$.name}${end === undefined ? ", whose range is not stated" : ` up to ${end}`}`).join(", ")}`,
      why: "on a scale that is far too long so small a pressure is within the error of the gauge; on one too short nobody sees what is beyond",
      hint: "compare both with the report: correct the pressure or the gauge; else test again with a gauge that fits",
      unsure: times.includes(undefined),
      related: [{ at: first, message: "read on it" }],
    };
  },
  examples: [
    { name: "twice the pressure", given: read("0.3 bar", "0.6 bar"), objections: [] },
    {
      name: "the gauge of the pressure test",
      given: read("0.3 bar", "25 bar"),
      objections: ["leak test X-01 was made at 0.3 bar, read on PG-03 up to 25 bar"],
    },
    {
      name: "beside one that fits",
      given: {
        ...read("0.3 bar", "25 bar"),
        named: [...read("0.3 bar", "25 bar").named, ...read("0.3 bar", "1 bar").named],
      },
      objections: [],
    },
    {
      name: "a gauge without its range",
      given: { pressure: "0.3 bar", named: [{ $: "PG-03", type: "pressure gauge" }] },
      objections: ["leak test X-01 was made at 0.3 bar, read on PG-03, whose range is not stated"],
    },
    { name: "no gauge named", given: { pressure: "0.3 bar", named: [] }, objections: [] },
  ],
});

function read(pressure: string, most: string) {
  return { pressure, named: [{ $: "PG-03", type: "pressure gauge", end: most }] };
}
