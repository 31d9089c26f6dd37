import { pressureBearing } from "./conditions.ts";
import { endCalculation, results, shellCalculation } from "./design-calculations.ts";
import { directive, inScope, owed, role, sheet } from "./row.ts";
import { heatedRoles, ofSteamEquipment, tubeRoles } from "../calculations/shared/boiler.ts";
import { excerptSeen } from "../model/basis.ts";
import type { Condition } from "../model/input.ts";
import type { Requirement } from "../model/requirement.ts";

/** A sheet of a calculation, for each of what it is made for. */
function calculated(
  id: string,
  title: string,
  kind: string,
  when: readonly Condition[],
  calculation: string,
  basis = results,
): Requirement {
  return owed(id, title, { kind, when }, sheet(calculation), "design-approved", "design", basis);
}

const part = (
  id: string,
  title: string,
  roles: readonly string[],
  calculation: string,
  more: readonly Condition[] = [],
) => calculated(id, title, "part", [pressureBearing, role(...roles), ...more], calculation);

const breathing = excerptSeen("Indian Boiler Regulations 1950", "regulation 590");
const plates = ["tube-plate", "flat-plate"];
const plateOf: readonly Condition[] = [
  { path: "record.pressureBearing", equals: true },
  { path: "record.role", equals: plates },
];
const openingOf: readonly Condition[] = [
  { path: "record.pressureBearing", equals: true },
  { path: "record.role", equals: "shell-course" },
];

/** Sheets of the design calculations, for each part by its role: no part is asked for that a boiler may lack. */
export const boilerCalculations: readonly Requirement[] = [
  calculated("saturation-sheet", "The saturation temperature", "equipment", [], "saturation"),
  calculated("heat-balance-sheet", "The heat balance", "equipment", [], "heat-balance"),
  part("metal-temperature-sheet", "The metal temperature of each heated part", heatedRoles, "metal-temperature", [
    ofSteamEquipment,
    { path: "heating", equals: ["convection", "radiation"] },
  ]),
  part("tube-temperature-sheet", "The metal temperature of each sort of tube", tubeRoles, "tube-temperature"),
  part(
    "boiler-part-stress",
    "A sheet of the design stress of each pressure part, of tubes and stays too",
    [...heatedRoles, ...tubeRoles],
    "design-stress",
  ),
  shellCalculation,
  endCalculation,
  part("furnace-calculation", "A calculation of each furnace", ["furnace"], "furnace"),
  part("furnace-hoop-calculation", "A calculation of each hoop of a furnace", ["furnace-hoop"], "furnace-hoop"),
  part(
    "reversal-chamber-calculation",
    "A calculation of each reversal chamber",
    ["reversal-chamber"],
    "reversal-chamber",
  ),
  part("access-tube-calculation", "A calculation of each access tube", ["access-tube"], "access-tube"),
  ...["furnace", "reversal-chamber", "access-tube"].map((one) =>
    part(`${one}-test-calculation`, `A calculation of each ${one.replace("-", " ")} at the test`, [one], `${one}-test`),
  ),
  part("smoke-tube-calculation", "A calculation of each sort of tube", tubeRoles, "smoke-tube"),
  part("plate-calculation", "A calculation of each tube plate and flat plate", plates, "flat-plate"),
  calculated(
    "region-calculation",
    "A calculation of each unstayed region of a plate",
    "part#regions",
    plateOf,
    "stayed-flat-plate",
  ),
  owed(
    "plate-breathing-spaces",
    "The breathing spaces of each tube plate and flat plate that is no wall of a reversal chamber",
    {
      kind: "part",
      when: [pressureBearing, role(...plates), ofSteamEquipment, { path: "heating", equals: ["none", "convection"] }],
    },
    "breathingSpaces",
    "design-approved",
    "design",
    breathing,
  ),
  calculated(
    "breathing-calculation",
    "A sheet of each breathing space",
    "part#breathingSpaces",
    [],
    "breathing-space",
    breathing,
  ),
  part("stay-calculation", "A calculation of each stay", ["stay"], "stay"),
  part("stay-tube-calculation", "A calculation of each sort of stay tube", ["stay-tube"], "stay-tube"),
  calculated("tube-nest-calculation", "A calculation of each field of tubes", "part#tubeFields", plateOf, "tube-nest"),
  calculated(
    "tube-pull-out-calculation",
    "The pull on the expanded tubes of each field",
    "part#tubeFields",
    [
      { path: "record.pressureBearing", equals: true },
      { path: "record.role", equals: "tube-plate" },
    ],
    "tube-pull-out",
  ),
  calculated(
    "branch-calculation",
    "A calculation of each opening with a branch",
    "part#openings",
    [...openingOf, { path: "branch", exists: true }],
    "shell-opening",
  ),
  calculated(
    "hole-calculation",
    "A calculation of each opening without a branch",
    "part#openings",
    [...openingOf, { path: "branch", exists: false }],
    "unreinforced-opening",
  ),
  part(
    "opening-spacing-sheet",
    "The distances of the openings of each shell course that has any",
    ["shell-course"],
    "opening-spacing",
    [{ path: "openings", exists: true }],
  ),
  calculated(
    "boiler-category-sheet",
    "The determination of the category of heated equipment",
    "equipment",
    [inScope],
    "heated-equipment-category",
    directive("Annex II, conformity assessment tables"),
  ),
  owed(
    "steam-valve-calculation",
    "The sizing of each safety valve for steam",
    { kind: "safety-valve" },
    sheet("steam-safety-valve"),
    "final-inspection",
    "design",
    directive("Annex I, safety accessories"),
  ),
  owed(
    "relief-calculation",
    "The steam the safety valves must take away",
    { kind: "equipment" },
    sheet("steam-relief"),
    "final-inspection",
    "design",
    directive("Annex I, protection against exceeding the allowable limits"),
  ),
];
