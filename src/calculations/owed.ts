import { heatedRoles, ofSteamEquipment, tubeRoles } from "./shared/boiler.ts";
import { ownChoice } from "../model/basis.ts";
import type { Condition } from "../model/input.ts";
import type { Requirement } from "../model/requirement.ts";

const basis = ownChoice("a calculation cannot be checked without what it rests on");

interface Group {
  readonly name: string;
  readonly kind: string;
  readonly when: readonly Condition[];
  readonly due: string;
  readonly owner: string;
  /** Path and what it is called. */
  readonly needs: readonly (readonly [string, string])[];
}

const bearing: Condition = { path: "pressureBearing", equals: true };
const steam: Condition = { path: "fluid.state", equals: "steam" };
const allowances: Group["needs"] = [
  ["corrosionAllowance", "corrosion allowance"],
  ["thicknessUndertolerance", "undertolerance of the thickness"],
  ["weldCoefficient", "weld joint coefficient"],
  ["insideDiameter", "inside diameter"],
];
const wall: Group["needs"] = [
  ["outsideDiameter", "outside diameter"],
  ["corrosionAllowance", "corrosion allowance"],
  ["thicknessUndertolerance", "undertolerance of the thickness"],
];
const outside: Group["needs"] = [
  ...wall,
  ["unsupportedLength", "length between effective supports"],
  ["outOfRoundness", "out-of-roundness allowed for"],
];

const groups: readonly Group[] = [
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
    name: "furnace",
    kind: "part",
    when: [bearing, { path: "role", equals: "furnace" }],
    due: "design-approved",
    owner: "design",
    needs: [...outside, ["length", "length"]],
  },
  {
    name: "furnace-hoop",
    kind: "part",
    when: [bearing, { path: "role", equals: "furnace-hoop" }],
    due: "design-approved",
    owner: "design",
    needs: [
      ["unsupportedLength", "length it supports"],
      ["hoop", "section"],
      ["hoop.depth", "depth"],
      ["hoop.width", "width"],
      ["hoop.furnace", "furnace"],
      ["hoop.furnace.outsideDiameter", "outside diameter of the furnace"],
      ["hoop.furnace.corrosionAllowance", "corrosion allowance of the furnace"],
      ["hoop.furnace.thicknessUndertolerance", "undertolerance of the furnace's thickness"],
      ["corrosionAllowance", "corrosion allowance"],
      ["thicknessUndertolerance", "undertolerance of the thickness"],
    ],
  },
  {
    name: "reversal-chamber",
    kind: "part",
    when: [bearing, { path: "role", equals: "reversal-chamber" }],
    due: "design-approved",
    owner: "design",
    needs: outside,
  },
  {
    name: "access-tube",
    kind: "part",
    when: [bearing, { path: "role", equals: "access-tube" }],
    due: "design-approved",
    owner: "design",
    needs: [...outside, ["heating", "kind of heating"]],
  },
  {
    name: "smoke-tube",
    kind: "part",
    when: [bearing, { path: "role", equals: ["tube", "stay-tube"] }],
    due: "design-approved",
    owner: "design",
    needs: wall,
  },
  {
    name: "tube-field",
    kind: "part#tubeFields",
    when: [
      { path: "^.pressureBearing", equals: true },
      { path: "^.role", equals: "tube-plate" },
    ],
    due: "design-approved",
    owner: "design",
    needs: [
      ["tube", "kind of tube"],
      ["tube.outsideDiameter", "outside diameter of the tubes"],
      ["pattern", "pattern"],
      ["pitch", "pitch"],
      ["holeDiameter", "diameter of the holes"],
      ["expandedLength", "expanded length"],
      ["tubes", "number of plain tubes"],
    ],
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
    name: "finished-cylinder",
    kind: "part",
    when: [bearing, { path: "role", equals: ["furnace", "reversal-chamber", "access-tube"] }],
    due: "final-inspection",
    owner: "quality",
    needs: [["measuredDiameters", "out-of-roundness as measured"]],
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
    name: "steam-equipment",
    kind: "equipment",
    when: [steam],
    due: "design-approved",
    owner: "design",
    needs: [
      ["duty.steamOutput", "steam output"],
      ["duty.blowdownFraction", "share of continuous blow-down"],
      ["duty.workingPressure", "working pressure"],
      ["duty.feedwaterTemperature", "feedwater temperature at full output"],
      ["duty.feedwaterTemperatureHighest", "highest feedwater temperature"],
      ["duty.heatInput", "greatest heat input of the burner"],
      ["duty.efficiency", "efficiency"],
    ],
  },
  {
    name: "boiler-part",
    kind: "part",
    when: [bearing, { path: "role", equals: heatedRoles }, ofSteamEquipment],
    due: "design-approved",
    owner: "design",
    needs: [["heating", "way of heating"]],
  },
  {
    name: "boiler-tube",
    kind: "part",
    when: [bearing, { path: "role", equals: tubeRoles }, ofSteamEquipment],
    due: "design-approved",
    owner: "design",
    needs: [["heating", "way of heating"]],
  },
  {
    name: "steam-valve",
    kind: "safety-valve",
    when: [{ path: "medium.state", equals: "steam" }],
    due: "final-inspection",
    owner: "design",
    needs: [["backPressure", "back pressure while blowing"]],
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
      ...["A", "B"].flatMap((gauge): Group["needs"] => [
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
      { path: "^.type", equals: ["3.1", "3.2"] },
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
    owner: "welding coordinator",
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
export const owedToCalculations: readonly Requirement[] = groups.flatMap(({ name, kind, when, due, owner, needs }) =>
  needs.map(([path, called]) => ({
    id: `${name}-${path.replaceAll(/[^A-Za-z]+/g, "-").replace(/-$/, "")}`.toLowerCase(),
    title: `The ${called} of each ${name.replaceAll("-", " ")} is recorded`,
    each: { kind, when },
    needs: path,
    due,
    basis,
    owner,
  })),
);
