import { heatBalanceExamples } from "./heat-balance-examples.ts";
import { enthalpyOfBoilingWater, enthalpyOfSteam, enthalpyOfWater } from "./functions/steam.ts";
import { dutyInputs } from "./shared/duty.ts";
import { commonPractice, derivedFrom, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

export const heatBalance = calculation({
  id: "heat-balance",
  scope: "steam",
  title: "Heat balance of a steam boiler",
  basis: derivedFrom("conservation of energy: what the burner gives to the water, steam and blow-down carry away"),
  covers:
    "Dry saturated steam at the working pressure, feedwater at the pressure of the boiler, net calorific value. Superheaters, condensing flue-gas coolers and start-up are not covered.",
  appliesTo: { kind: "equipment", when: [{ path: "fluid.state", equals: "steam" }] },
  inputs: dutyInputs,
  owes: [owedBy("design", "design-approved", "D", "x", "pw", "tw", "th", "B", "η")],
  functions: [enthalpyOfSteam, enthalpyOfBoilingWater, enthalpyOfWater],
  steps: [
    {
      symbol: "p",
      unit: "bar(a)",
      means: "working pressure, absolute",
      formula: "patm + pw",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "hs",
      unit: "kJ/kg",
      means: "specific enthalpy of the steam",
      formula: "enthalpyOfSteam(p)",
      display: "h^″",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "hb",
      unit: "kJ/kg",
      means: "specific enthalpy of the blow-down, boiling water",
      formula: "enthalpyOfBoilingWater(p)",
      display: "h^′",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "hw",
      unit: "kJ/kg",
      means: "specific enthalpy of the feedwater at full output",
      formula: "enthalpyOfWater(p, tw)",
      display: "h_w",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "Φ",
      unit: "kW",
      means: "heat taken up at the declared output",
      formula: "(D*(hs - hw) + x*D*(hb - hw))/'3600 s/h'",
      round: { decimals: 0, direction: "nearest" },
    },
    {
      symbol: "ΦB",
      unit: "kW",
      means: "heat given at the greatest input of the burner",
      formula: "η*B",
      display: "Φ_B",
      round: { decimals: 0, direction: "nearest" },
    },
    {
      symbol: "F",
      unit: "1",
      means: "factor from and at 100 °C",
      formula: "(hs - hw)/'2257 kJ/kg'",
      basis: commonPractice(
        "ratings from and at 100 °C take 2257 kJ/kg as latent heat; IAPWS R7-97(2012) gives 2256.5 kJ/kg",
      ),
      round: { decimals: 4, direction: "nearest" },
    },
    {
      symbol: "DF",
      unit: "kg/h",
      means: "output from and at 100 °C",
      formula: "F*D",
      display: "D_100",
      round: { decimals: 0, direction: "nearest" },
    },
    {
      symbol: "hS",
      unit: "kJ/kg",
      means: "specific enthalpy of the steam at the maximum allowable pressure",
      formula: "enthalpyOfSteam(patm + PS)",
      display: "h_S^″",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "hm",
      unit: "kJ/kg",
      means: "lower of the two: it raises more steam",
      formula: "min(hs, hS)",
      display: "h_min^″",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "hh",
      unit: "kJ/kg",
      means: "specific enthalpy of the hottest feedwater",
      formula: "enthalpyOfWater(p, th)",
      display: "h_h",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "Dmax",
      unit: "kg/h",
      means: "steam that the greatest input of the burner can raise, without blow-down, from the hottest feedwater",
      formula: "ΦB/(hm - hh)*'3600 s/h'",
      display: "D_max",
      round: { decimals: 0, direction: "up" },
    },
  ],
  limits: [
    {
      left: "η",
      relation: "<=",
      right: "1",
      means: "the efficiency is at most 100 % of the net calorific value",
      basis: ownChoice("more is possible only where water of the flue gas condenses, which is not covered"),
    },
    {
      left: "pw",
      relation: "<=",
      right: "PS",
      means: "the working pressure is not above the maximum allowable pressure",
    },
  ],
  accept: [
    {
      left: "Φ",
      relation: "<=",
      right: "ΦB",
      means: "the burner gives the heat that the declared output takes up",
      accuses: "D",
    },
    {
      left: "ΦB",
      relation: "<=",
      right: "(1 + kB)*Φ",
      means: "the greatest input of the burner belongs to the declared output",
      wrong:
        "the greatest input of the burner gives {left}, but the declared output takes up {Φ}: at most {right} belongs to it",
      accuses: "B",
      basis: ownChoice(
        "a burner that gives much more than the declared output makes it another boiler: output, furnace and valves are to be declared for what it can give",
      ),
    },
    {
      name: "output from and at",
      left: "abs(DA - DF)",
      relation: "<=",
      right: "kA*DF",
      means: "the output stated from and at 100 °C follows from the steam output",
      wrong: "the output stated from and at 100 °C is {DA}, but {DF} follows from the steam output",
      accuses: "DA",
      needs: "DA",
    },
    {
      left: "th",
      relation: ">=",
      right: "tw",
      means: "the highest feedwater temperature is not below that at full output",
      accuses: "th",
    },
  ],
  compared: [
    { symbol: "Φ", unsafe: "low" },
    { symbol: "F", unsafe: "any" },
    { symbol: "DF", unsafe: "any" },
    { symbol: "Dmax", unsafe: "low" },
  ],
  examples: heatBalanceExamples,
});
