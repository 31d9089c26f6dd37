import {
  expandedEnds,
  fittingOf,
  limiters,
  onSteamEquipment,
  pressureFittings,
  steamEquipment,
  weldedEnds,
  wetFittings,
} from "./boiler-conditions.ts";
import { directive, owed } from "./row.ts";
import { requirementsOf, type OwedGroup } from "../calculations/shared/owed-group.ts";
import { commonPractice, ownChoice } from "../model/basis.ts";
import type { Requirement } from "../model/requirement.ts";

const levels: OwedGroup["needs"] = [
  ["levels.highestHeatedSurface", "highest heated surface"],
  ["levels.lowestPermissible", "lowest permissible water level"],
  ["levels.limiter", "level of the low-water limiters"],
  ["levels.normal", "normal water level"],
  ["levels.highest", "highest permissible water level"],
  ["levels.steamTakeOff", "steam take-off"],
];
const ofItsBoiler: OwedGroup["needs"] = levels.map(([path, called]) => [`equipment.${path}`, called]);

/** What tells one measuring chain from another. */
const marks: OwedGroup["needs"] = [
  ["sensor", "mark of the sensing element"],
  ["switchingUnit", "mark of the switching unit"],
];

const design = { due: "design-approved", owner: "design" } as const;
const fitting = { kind: "fitting", due: "final-inspection", owner: "quality" } as const;
const tubeEnds = { kind: "tube-end-group", due: "testing-complete", owner: "quality" } as const;

const groups: readonly OwedGroup[] = [
  { name: "steam-equipment", kind: "equipment", when: [steamEquipment], ...design, needs: levels },
  {
    name: "level-fitting",
    kind: "fitting",
    when: [fittingOf("water-level-indicator", "low-water-limiter", "high-water-limiter"), onSteamEquipment],
    ...design,
    needs: ofItsBoiler,
  },
  {
    name: "boiler-fitting",
    kind: "fitting",
    when: [fittingOf("pressure-controller", "feed-pump", "burner"), onSteamEquipment],
    ...design,
    needs: [
      ["equipment.duty.steamOutput", "steam output"],
      ["equipment.duty.workingPressure", "working pressure"],
      ["equipment.duty.heatInput", "heat input"],
    ],
  },
  {
    name: "level-limiter",
    ...fitting,
    when: [fittingOf("low-water-limiter", "high-water-limiter")],
    needs: [["switchLevel", "level it switches at"]],
  },
  {
    name: "level-indicator",
    ...fitting,
    when: [fittingOf("water-level-indicator")],
    needs: [
      ["visibleMinimum", "lowest level that shows"],
      ["visibleMaximum", "highest level that shows"],
    ],
  },
  {
    name: "pressure-controller",
    ...fitting,
    when: [fittingOf("pressure-controller")],
    needs: [
      ["cutOut", "pressure it turns the firing off at"],
      ["cutIn", "pressure it turns the firing on at"],
    ],
  },
  {
    name: "pressure-limiter",
    ...fitting,
    when: [fittingOf("pressure-limiter")],
    needs: [["settingPressure", "setting"]],
  },
  {
    name: "limiter",
    ...fitting,
    when: [fittingOf(...limiters)],
    needs: [["lockOut", "kind of reset"], ["failSafe", "behaviour at a failure"], ...marks],
  },
  {
    name: "low-water-limiter",
    ...fitting,
    when: [fittingOf("low-water-limiter")],
    needs: [
      ["branch", "connection to the boiler"],
      ["circuit", "safety circuit"],
    ],
  },
  {
    name: "controller",
    ...fitting,
    when: [fittingOf("level-controller", "pressure-controller")],
    needs: marks,
  },
  {
    name: "pressure-gauge",
    ...fitting,
    when: [fittingOf("pressure-gauge")],
    needs: [
      ["gaugeRange.maximum", "range"],
      ["redMark", "red mark"],
    ],
  },
  {
    name: "feed-pump",
    ...fitting,
    when: [fittingOf("feed-pump")],
    needs: [["pumpPoints", "list of points of the curve"]],
  },
  {
    name: "burner",
    ...fitting,
    when: [fittingOf("burner")],
    needs: [
      ["heatInputMost", "greatest heat input"],
      ["fuel", "fuel"],
    ],
  },
  {
    name: "pressure-fitting",
    ...fitting,
    when: [fittingOf(...pressureFittings)],
    needs: [["allowablePressure", "allowable pressure"]],
  },
  {
    name: "wet-fitting",
    ...fitting,
    when: [fittingOf(...wetFittings)],
    needs: [["allowableTemperature", "allowable temperature"]],
  },
  {
    name: "expanded-group",
    ...tubeEnds,
    when: [expandedEnds],
    needs: [
      ["procedure", "procedure for expanding"],
      ["measured", "sample as measured"],
    ],
  },
  {
    name: "welded-group",
    ...tubeEnds,
    when: [weldedEnds],
    needs: [
      ["weldingProcedure", "welding procedure"],
      ["welders", "list of welders"],
      ["position", "position of welding"],
      ["tube.outsideDiameter", "outside diameter of the tubes"],
    ],
  },
];

/** What the rules about tube ends and fittings need, where the schemas leave it open. Part of every register. */
export const owedOfBoilers: readonly Requirement[] = [
  owed(
    "field-tube-ends",
    "The ends of each field of tubes, as they were made",
    { kind: "part#tubeFields" },
    "<tube-end-group:field>",
    "testing-complete",
    "quality",
    commonPractice("a record of tube ends is part of the book of every boiler and exchanger"),
  ),
  owed(
    "tube-end-welder-qualification",
    "A qualification for each welder of tube ends",
    { kind: "tube-end-group", when: [weldedEnds] },
    "welders[].<welder-qualification:person>",
    "testing-complete",
    "welding coordination",
    directive("Annex I, permanent joining: qualified personnel"),
  ),
  ...requirementsOf(groups, ownChoice("a rule cannot judge what is not recorded")),
];
