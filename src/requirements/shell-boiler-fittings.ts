import { fittingOf, limiters, pressureFittings } from "./boiler-conditions.ts";
import { directive, owed } from "./row.ts";
import { commonPractice, fromMemory, type Basis } from "../model/basis.ts";
import type { Requirement } from "../model/requirement.ts";

const equipmentOfBoilers = (topic: string) => fromMemory("EN 12953-6", undefined, topic);
const mountings = equipmentOfBoilers("equipment every shell boiler has");

/** So many fittings of one sort on each boiler. */
function mounted(sort: string, title: string, basis: Basis = mountings, atLeast = 1): Requirement {
  const row = owed(
    `boiler-${sort}`,
    title,
    { kind: "equipment" },
    `<fitting:equipment>[sort="${sort}"]`,
    "final-inspection",
    "purchasing",
    basis,
  );
  return atLeast === 1 ? row : { ...row, atLeast };
}

const each = (...sorts: readonly string[]) => ({ kind: "fitting", when: [fittingOf(...sorts)] });
const assemblies = ["burner", "gas-train", "control-panel", "feed-pump", "economiser"];

/** Mountings of a steam boiler and what comes with them. What a boiler may lack is no row: its record owes what belongs to it. */
export const boilerFittings: readonly Requirement[] = [
  mounted("pressure-gauge", "A pressure gauge"),
  mounted("water-level-indicator", "Two water level indicators", equipmentOfBoilers("two level indicators"), 2),
  mounted("low-water-limiter", "Two low-water limiters", equipmentOfBoilers("two independent low-water limiters"), 2),
  mounted("level-controller", "A water level controller"),
  mounted("pressure-limiter", "A pressure limiter"),
  mounted("pressure-controller", "A pressure controller"),
  mounted("main-stop-valve", "A main stop valve"),
  mounted("feed-stop-valve", "A feed stop valve"),
  mounted("feed-check-valve", "A feed check valve"),
  mounted("feed-pump", "A feed pump"),
  mounted("blow-down-valve", "A blow-down valve"),
  mounted("sampling-point", "A sampling point", directive("Annex I, fired equipment: sampling of the boiler water")),
  mounted("air-vent", "An air vent"),
  mounted("inspection-opening", "An opening for inspection", directive("Annex I, means of examination")),
  mounted("burner", "A burner", fromMemory("EN 12953-7", undefined, "firing systems")),
  mounted(
    "control-panel",
    "A control panel",
    commonPractice("limiters and burner act in one circuit, built as a panel"),
  ),
  owed(
    "burner-gas-train",
    "A gas train for each burner of gas",
    { kind: "fitting", when: [fittingOf("burner"), { path: "fuel", equals: ["gas", "gas and oil"] }] },
    'equipment.<fitting:equipment>[sort="gas-train"]',
    "final-inspection",
    "purchasing",
    fromMemory("EN 12953-7", undefined, "gas train"),
  ),
  owed(
    "assembly-declaration",
    "The declaration of the supplier of each burner, gas train, panel, pump and economiser",
    each(...assemblies),
    "declaration",
    "final-inspection",
    "purchasing",
    commonPractice("a bought assembly comes with the declaration that its own law asks of its maker"),
  ),
  owed(
    "fitting-certificate",
    "The certificate of each fitting that bears pressure",
    each(...pressureFittings),
    "certificate.number",
    "final-inspection",
    "purchasing",
    commonPractice("bought fittings come with their certificates"),
  ),
  owed(
    "limiter-type-examination",
    "The type examination of each limiter",
    each(...limiters),
    "typeExamination",
    "final-inspection",
    "purchasing",
    fromMemory("EN 12953-9", undefined, "limiters are safety accessories: type approval or integrity level"),
  ),
  owed(
    "low-water-self-monitoring",
    "How each low-water limiter watches itself",
    each("low-water-limiter"),
    "selfMonitoring",
    "final-inspection",
    "purchasing",
    fromMemory("EN 12953-9", undefined, "self-monitoring water level limiters"),
  ),
  owed(
    "limiter-trial",
    "A trial of each limiter",
    each(...limiters),
    "functionTests",
    "final-inspection",
    "quality",
    commonPractice("each limiter is tried: the heat is cut, and stays cut"),
  ),
  owed(
    "panel-trial",
    "A trial of each control panel",
    each("control-panel"),
    "functionTests",
    "final-inspection",
    "quality",
    fromMemory("EN 50156-1", undefined, "verification of the safety circuit"),
  ),
];
