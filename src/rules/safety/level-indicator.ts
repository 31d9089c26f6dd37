import { commonPractice } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf, onSteamEquipment } from "../../requirements/boiler-conditions.ts";
import { brokenBound } from "../shared/bounds.ts";
import { owedBy } from "../../model/owes.ts";

export const indicatorRange = rule({
  id: "level-indicator-range",
  title: "A water level indicator shows every permissible level",
  basis: commonPractice(
    "the marks of the lowest and the highest level lie in the glass; rules of the American family end the glass above the lowest level instead",
  ),
  kind: "fitting",
  when: [fittingOf("water-level-indicator"), onSteamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    from: quantity("visibleMinimum", "mm"),
    to: quantity("visibleMaximum", "mm"),
    lowest: quantity("equipment.levels.lowestPermissible", "mm"),
    highest: quantity("equipment.levels.highest", "mm"),
  },
  owes: [owedBy("quality", "final-inspection", "from", "to")],
  *check({ from, to, ...levels }, fitting) {
    const ends = [
      ["from", "starts", brokenBound(from, levels, [["<=", "lowest", "the lowest permissible water level"]])],
      ["to", "ends", brokenBound(to, levels, [[">=", "highest", "the highest permissible water level"]])],
    ] as const;
    for (const [at, does, broken] of ends)
      if (broken !== undefined)
        yield {
          at,
          name: at,
          message: `the glass of water level indicator ${fitting.name} ${does} at ${broken.said}`,
          why: "a level that does not show cannot be watched",
          hint: "compare with the arrangement drawing; correct the figure, or have the indicator placed anew",
          unsure: broken.unsure,
          related: [{ at: broken.name, message: `${levels[broken.name].text} here` }],
        };
  },
  examples: [
    { name: "just from the lowest to the highest", given: glass("1460 mm", "1530 mm"), objections: [] },
    {
      name: "from a millimetre higher",
      given: glass("1461 mm", "1530 mm"),
      objections: [
        "the glass of water level indicator X-01 starts at 1461 mm, above the lowest permissible water level, 1460 mm",
      ],
    },
    {
      name: "to a millimetre lower",
      given: glass("1460 mm", "1529 mm"),
      objections: [
        "the glass of water level indicator X-01 ends at 1529 mm, below the highest permissible water level, 1530 mm",
      ],
    },
    {
      name: "upside down",
      given: glass("1530 mm", "1460 mm"),
      objections: [
        "the glass of water level indicator X-01 starts at 1530 mm, above the lowest permissible water level, 1460 mm",
        "the glass of water level indicator X-01 ends at 1460 mm, below the highest permissible water level, 1530 mm",
      ],
    },
  ],
});

function glass(from: string, to: string) {
  return { from, to, lowest: "1460 mm", highest: "1530 mm" };
}
