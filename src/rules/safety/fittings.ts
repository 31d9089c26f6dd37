import { derivedFrom, excerptSeen, fromMemory } from "../../model/basis.ts";
import { flag, quantity, text, type Input, type Inputs } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule, type RuleExample } from "../../model/rule.ts";
import {
  fittingOf,
  limiters,
  onSteamEquipment,
  pressureFittings,
  wetFittings,
} from "../../requirements/boiler-conditions.ts";
import { brokenBound } from "../shared/bounds.ts";
import { fittingName } from "../shared/words.ts";
import { owedBy } from "../../model/owes.ts";

const accessories = fromMemory(
  "Directive 2014/68/EU",
  undefined,
  "Annex I, assemblies: components are fit for the limits of the whole",
);

interface Rating extends Inputs {
  readonly sort: Input<string>;
  readonly allowed: Input<Measure>;
  readonly most: Input<Measure>;
}

/** What a fitting may be used up to, against the limit of its equipment. */
const usableUpTo = ({
  allowed,
  most,
  unit,
  named,
  sorts,
  ...own
}: {
  readonly id: string;
  readonly title: string;
  readonly examples: readonly RuleExample<Rating>[];
  readonly allowed: string;
  readonly most: string;
  readonly unit: string;
  readonly named: string;
  readonly sorts: readonly string[];
}) =>
  rule({
    ...own,
    basis: accessories,
    kind: "fitting",
    when: [fittingOf(...sorts)],
    severity: "nonconformity",
    owner: "purchasing",
    inputs: {
      sort: text("sort"),
      allowed: quantity(allowed, unit),
      most: quantity(`equipment.limits.${most}`, unit),
    },
    owes: [owedBy("quality", "final-inspection", "allowed")],
    *check({ sort, allowed: own, most: limit }, fitting) {
      const broken = brokenBound(own, { most: limit }, [[">=", "most", named]]);
      if (broken !== undefined)
        yield {
          at: "allowed",
          message: `${fittingName(sort)} ${fitting.name} may be used up to ${broken.said}`,
          why: "the weakest fitting limits the equipment",
          hint: "compare with the plate and the certificate; exchange the fitting if it is true",
          unsure: broken.unsure,
          related: [{ at: "most", message: `${limit.text} here` }],
        };
    },
  });

export const fittingPressure = usableUpTo({
  id: "fitting-pressure",
  title: "A fitting may be used at the maximum allowable pressure of its equipment",
  allowed: "allowablePressure",
  most: "maximumAllowablePressure",
  unit: "bar",
  named: "the maximum allowable pressure",
  sorts: pressureFittings,
  examples: [
    { name: "just enough", given: { sort: "air-vent", allowed: "10 bar", most: "10.0 bar" }, objections: [] },
    {
      name: "too little",
      given: { sort: "main-stop-valve", allowed: "9.9 bar", most: "10 bar" },
      objections: ["main stop valve X-01 may be used up to 9.9 bar, below the maximum allowable pressure, 10 bar"],
    },
  ],
});

export const fittingTemperature = usableUpTo({
  id: "fitting-temperature",
  title: "A fitting that holds water or steam may be used at the maximum allowable temperature of its equipment",
  allowed: "allowableTemperature",
  most: "maximumAllowableTemperature",
  unit: "°C",
  named: "the maximum allowable temperature",
  sorts: wetFittings,
  examples: [
    { name: "just enough", given: { sort: "air-vent", allowed: "185 °C", most: "185 °C" }, objections: [] },
    {
      name: "too little",
      given: { sort: "water-level-indicator", allowed: "180 °C", most: "185 °C" },
      objections: [
        "water level indicator X-01 may be used up to 180 °C, below the maximum allowable temperature, 185 °C",
      ],
    },
  ],
});

export const limiterLocks = rule({
  id: "limiter-locks",
  title: "A limiter keeps the heat cut until it is reset by hand",
  basis: excerptSeen("EN 12953-6", "scope: beyond its limits the supply of energy is interrupted and locked out"),
  kind: "fitting",
  when: [fittingOf(...limiters)],
  severity: "nonconformity",
  owner: "design",
  inputs: { sort: text("sort"), locks: flag("lockOut"), highWater: text("profile.highWaterLock") },
  owes: [owedBy("quality", "final-inspection", "locks")],
  *check({ sort, locks, highWater }, fitting) {
    if (!locks && (sort !== "high-water-limiter" || highWater === "required"))
      yield {
        at: "locks",
        message: `${fittingName(sort)} ${fitting.name} does not lock out`,
        why: "what starts again by itself is a controller, not a limiter",
        hint: "correct the record, or have the circuit changed and tried again",
      };
  },
  examples: [
    { name: "it does", given: { sort: "pressure-limiter", locks: true, highWater: "required" }, objections: [] },
    {
      name: "it does not",
      given: { sort: "low-water-limiter", locks: false, highWater: "not required" },
      objections: ["low-water limiter X-01 does not lock out"],
    },
    {
      name: "of high water, where the profile lets it",
      given: { sort: "high-water-limiter", locks: false, highWater: "not required" },
      objections: [],
    },
    {
      name: "of high water, where it does not",
      given: { sort: "high-water-limiter", locks: false, highWater: "required" },
      objections: ["high-water limiter X-01 does not lock out"],
    },
  ],
});

export const limiterFailsSafe = rule({
  id: "limiter-fails-safe",
  title: "A failure of a limiter cuts the heat",
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, safety accessories: fail-safe modes, self-diagnosis"),
  kind: "fitting",
  when: [fittingOf(...limiters)],
  severity: "nonconformity",
  owner: "design",
  inputs: { sort: text("sort"), safe: flag("failSafe") },
  owes: [owedBy("quality", "final-inspection", "safe")],
  *check({ sort, safe }, fitting) {
    if (!safe)
      yield {
        at: "safe",
        message: `the heat stays on when ${fittingName(sort)} ${fitting.name} fails`,
        why: "a limiter that fails unnoticed is no limiter",
        hint: "correct the record, or have the circuit changed and tried again",
      };
  },
  examples: [
    { name: "it does", given: { sort: "low-water-limiter", safe: true }, objections: [] },
    {
      name: "it does not",
      given: { sort: "low-water-limiter", safe: false },
      objections: ["the heat stays on when low-water limiter X-01 fails"],
    },
  ],
});

export const burnerHeatInput = rule({
  id: "burner-heat-input",
  scope: "fired",
  title: "A burner is set to no more heat than the boiler is designed for",
  basis: derivedFrom("the safety valves are sized for the heat input of the design"),
  kind: "fitting",
  when: [fittingOf("burner"), onSteamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: { most: quantity("heatInputMost", "kW"), design: quantity("equipment.duty.heatInput", "kW") },
  owes: [owedBy("quality", "final-inspection", "most")],
  *check({ most, design }, burner) {
    const broken = brokenBound(most, { design }, [["<=", "design", "the heat input of the design"]]);
    if (broken !== undefined)
      yield {
        at: "most",
        message: `burner ${burner.name} is set to ${broken.said}`,
        why: "what the burner gives, the safety valves must be able to take away",
        hint: "compare with the record of the setting; have the burner set down, or calculate the boiler for more",
        unsure: broken.unsure,
        related: [{ at: "design", message: `${design.text} here` }],
      };
  },
  examples: [
    { name: "as designed", given: { most: "2950 kW", design: "2950 kW" }, objections: [] },
    {
      name: "more",
      given: { most: "2.96 MW", design: "2950 kW" },
      objections: ["burner X-01 is set to 2.96 MW, above the heat input of the design, 2950 kW"],
    },
  ],
});
