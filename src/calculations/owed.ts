import { owedOfBoilers } from "./shared/owed-boiler.ts";
import { allowed, bearing, requirementsOf, type OwedGroup } from "./shared/owed-group.ts";
import { ownChoice } from "../model/basis.ts";
import type { Requirement } from "../model/requirement.ts";

const basis = ownChoice("a calculation cannot be checked without what it rests on");
const allowances: OwedGroup["needs"] = [
  ...allowed,
  ["weldCoefficient", "weld joint coefficient"],
  ["insideDiameter", "inside diameter"],
];

const groups: readonly OwedGroup[] = [
  {
    name: "shell-course",
    kind: "part",
    when: [bearing, { path: "role", equals: "shell-course" }],
    due: "design-approved",
    owner: "design",
    needs: allowances,
  },
  {
    name: "end",
    kind: "part",
    when: [bearing, { path: "role", equals: "end" }],
    due: "design-approved",
    owner: "design",
    needs: [...allowances, ["crownRadius", "radius of the crown"], ["knuckleRadius", "radius of the knuckle"]],
  },
  {
    name: "finished-wall",
    kind: "part",
    when: [
      bearing,
      { path: "role", equals: ["shell-course", "end", "furnace", "furnace-hoop", "reversal-chamber", "access-tube"] },
    ],
    due: "final-inspection",
    owner: "quality",
    needs: [["measuredThickness", "measured thickness"]],
  },
  {
    name: "equipment",
    kind: "equipment",
    when: [{ path: "directive.inScope", equals: true }],
    due: "design-approved",
    owner: "design",
    needs: [["directive.category", "declared category"]],
  },
  {
    name: "gas-valve",
    kind: "safety-valve",
    when: [{ path: "medium.state", equals: "gas" }],
    due: "final-inspection",
    owner: "design",
    needs: [
      ["backPressure", "back pressure while blowing"],
      ["medium.molarMass", "molar mass of the gas"],
      ["medium.isentropicExponent", "isentropic exponent of the gas"],
      ["medium.compressibilityFactor", "compressibility factor of the gas"],
    ],
  },
  {
    name: "test",
    kind: "pressure-test",
    when: [],
    due: "pressure-test",
    owner: "quality",
    needs: [
      ...["A", "B"].flatMap((gauge): OwedGroup["needs"] => [
        [`gauges[gauge="${gauge}"].elevation`, `height of gauge ${gauge} above the top`],
        [`gauges[gauge="${gauge}"].instrument.range.maximum`, `range of gauge ${gauge}`],
        [`gauges[gauge="${gauge}"].instrument.accuracyClass`, `accuracy class of gauge ${gauge}`],
        [`gauges[gauge="${gauge}"].instrument.resolution`, `resolution of gauge ${gauge}`],
      ]),
      ["thermometers[].resolution", "resolution of the thermometers"],
      ["readings[].waterTemperature", "water temperature of the readings"],
    ],
  },
  {
    name: "heat",
    kind: "material-certificate#rows",
    when: [
      { path: "record.type", equals: ["3.1", "3.2"] },
      { path: "form", equals: ["plate", "tube", "pipe", "forging", "formed-end", "fitting"] },
    ],
    due: "material-received",
    owner: "purchasing",
    needs: ["C", "Mn", "Cr", "Mo", "Ni", "Cu"].map((element) => [
      `chemistry[element="${element}"]`,
      `content of ${element} in the ladle analysis`,
    ]),
  },
  {
    name: "run",
    kind: "weld-log#runs",
    when: [{ path: "travelSpeed", exists: true }],
    due: "welding",
    owner: "welding coordination",
    needs: [
      ["travelSpeed", "travel speed"],
      ["voltage", "arc voltage beside the travel speed"],
      ["current", "welding current beside the travel speed"],
    ],
  },
];

/**
 * What the calculations need of records that their schemas leave open because other records of the kind have no such
 * value. Part of every register; the conditions are those under which the calculation applies.
 */
export const owedToCalculations: readonly Requirement[] = requirementsOf([...groups, ...owedOfBoilers], basis);
