import { commonPractice, fromMemory } from "../../model/basis.ts";
import { optional, quantity } from "../../model/input.ts";
import { atLeast } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);

/** Weight of a column of cold water, in bar for each mm. */
const barPerMillimetre = 9.80665e-5;

/** Below this share of the pressure the head is left out: the usual rule of boiler standards. */
const headLeftOut = 0.03;

export const calculationPressureCovers = rule({
  id: "calculation-pressure-covers",
  title: "The calculation pressure covers the maximum allowable pressure and the head of the contents",
  basis: directive("Annex I, 2.2.3: calculation pressures not below the maximum allowable ones, with static head"),
  kind: "equipment",
  severity: "nonconformity",
  owner: "design",
  inputs: {
    calculated: quantity("calculationPressure", "bar"),
    allowed: quantity("limits.maximumAllowablePressure", "bar"),
    level: optional(quantity("levels.highest", "mm")),
  },
  *check({ calculated, allowed, level }, equipment) {
    const head = level === undefined ? 0 : level.high * barPerMillimetre;
    const counted = head > headLeftOut * allowed.low ? head : 0;
    const needed = { ...allowed, low: allowed.low + counted, high: allowed.high + counted };
    const enough = atLeast(calculated, needed);
    if (enough === "yes") return;
    const withHead =
      counted === 0 ? "" : ` and ${counted.toFixed(2)} bar of head up to the highest level, ${level?.text ?? ""}`;
    yield {
      at: "calculated",
      message: `equipment ${equipment.name} is calculated for ${calculated.text}, below its maximum allowable pressure of ${allowed.text}${withHead}`,
      why: `maximum allowable pressure ${allowed.text}${withHead}`,
      hint: "correct the pressure that is wrong; if both are as written, design calculates anew for the allowable pressure",
      unsure: enough === "unsure",
    };
  },
  examples: [
    {
      name: "the same pressure",
      given: { calculated: "11 bar", allowed: "11 bar" },
      objections: [],
    },
    { name: "in another unit, above", given: { calculated: "1.2 MPa", allowed: "11 bar" }, objections: [] },
    {
      name: "half of it",
      given: { calculated: "5.5 bar", allowed: "11 bar" },
      objections: ["equipment X-01 is calculated for 5.5 bar, below its maximum allowable pressure of 11 bar"],
    },
    {
      name: "a head below three percent is left out",
      given: { calculated: "10 bar", allowed: "10 bar", level: "1530 mm" },
      objections: [],
    },
    {
      name: "a head that counts",
      given: { calculated: "1 bar", allowed: "1 bar", level: "1500 mm" },
      objections: [
        "equipment X-01 is calculated for 1 bar, below its maximum allowable pressure of 1 bar and 0.15 bar of head up to the highest level, 1500 mm",
      ],
    },
    {
      name: "a head that counts, and is in it",
      given: { calculated: "1.15 bar", allowed: "1 bar", level: "1500 mm" },
      objections: [],
    },
  ],
});

export const calculationTemperatureCovers = rule({
  id: "calculation-temperature-covers",
  title: "The calculation temperature is not below the maximum allowable temperature",
  basis: directive("Annex I, 2.2.3: calculation temperatures with margins of safety"),
  kind: "equipment",
  severity: "nonconformity",
  owner: "design",
  inputs: {
    calculated: quantity("calculationTemperature", "°C"),
    allowed: quantity("limits.maximumAllowableTemperature", "°C"),
  },
  *check({ calculated, allowed }, equipment) {
    const enough = atLeast(calculated, allowed);
    if (enough === "yes") return;
    yield {
      at: "calculated",
      message: `equipment ${equipment.name} is calculated for ${calculated.text}, below its maximum allowable temperature of ${allowed.text}`,
      why: `maximum allowable temperature ${allowed.text}`,
      hint: "correct the temperature that is wrong; if both are as written, design takes the strength at the allowable temperature",
      unsure: enough === "unsure",
    };
  },
  examples: [
    { name: "the same", given: { calculated: "185 °C", allowed: "185 °C" }, objections: [] },
    { name: "above", given: { calculated: "200 °C", allowed: "185 °C" }, objections: [] },
    { name: "in kelvin", given: { calculated: "459 K", allowed: "185 °C" }, objections: [] },
    {
      name: "below",
      given: { calculated: "60 °C", allowed: "185 °C" },
      objections: ["equipment X-01 is calculated for 60 °C, below its maximum allowable temperature of 185 °C"],
    },
  ],
});

export const allowanceOfPart = rule({
  id: "corrosion-allowance-of-part",
  title: "A part has no smaller corrosion allowance than the equipment",
  basis: commonPractice(
    "what the equipment states for all parts holds for each, unless design decides otherwise on record",
  ),
  kind: "part",
  when: [{ path: "corrosionAllowance", exists: true }],
  severity: "query",
  owner: "design",
  inputs: {
    own: quantity("corrosionAllowance", "mm"),
    general: optional(quantity("book.equipment.corrosionAllowance", "mm")),
  },
  *check({ own, general }, part) {
    if (general === undefined || atLeast(own, general) === "yes") return;
    yield {
      at: "own",
      message: `part ${part.name} has a corrosion allowance of ${own.text}, less than the ${general.text} of the equipment`,
      why: `corrosion allowance of the equipment: ${general.text}`,
      hint: "correct the allowance; if the part needs less (a lining, a material that does not corrode), answer this query",
    };
  },
  examples: [
    { name: "that of the equipment", given: { own: "1.0 mm", general: "1.0 mm" }, objections: [] },
    { name: "more", given: { own: "2.0 mm", general: "1.0 mm" }, objections: [] },
    { name: "none stated for the equipment", given: { own: "0 mm" }, objections: [] },
    {
      name: "less",
      given: { own: "0.1 mm", general: "1.0 mm" },
      objections: ["part X-01 has a corrosion allowance of 0.1 mm, less than the 1.0 mm of the equipment"],
    },
  ],
});
