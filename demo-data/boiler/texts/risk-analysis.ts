import type { Facts } from "../../book/facts.ts";
import type { TextPart } from "../../sheets/text-document.ts";
import { printed } from "../../sheets/original.ts";

/** Hazards of the boiler, and what stands against each. */
export function riskAnalysis({ equipment, all }: Facts): readonly TextPart[] {
  const valves = all("safety-valve").map(({ tag }) => printed(tag));
  const { levels, limits } = equipment;
  const ps = printed(limits?.maximumAllowablePressure);
  return [
    {
      title: "Method",
      lines: [
        "Each hazard of Directive 2014/68/EU, Annex I, was taken in turn: cause, what happens, what stands against it in the design, in the fittings, and in the instructions. Measures are named in this order of rank. A hazard counts as met when what remains is named in the operating instructions.",
      ],
    },
    {
      title: "Hazards of pressure and heat",
      table: {
        columns: ["Hazard", "Cause", "Measure", "Where shown"],
        shares: [18, 26, 36, 20],
        rows: [
          [
            "Overpressure",
            "more heat than steam drawn off, control fails",
            `pressure limiter, and safety valves ${valves.join(", ")} set at ${ps} at most, together above the greatest output`,
            "steam-relief sheet, SV records",
          ],
          [
            "Lack of water",
            "feed fails, blow-down left open",
            `two limiters at ${printed(levels?.limiter)}, each cuts the firing off and locks; lowest water ${printed(levels?.lowestPermissible)}, heated surface ${printed(levels?.highestHeatedSurface)}`,
            "DRG-10, DOC-10",
          ],
          [
            "Collapse of the furnace",
            "pressure outside, out of round",
            "calculation, hoop, measured diameters",
            "CAL, DIM-03",
          ],
          [
            "Overheated plate or tube end",
            "scale, poor circulation",
            "water requirements, calculated metal temperatures, ligaments as drawn",
            "DOC-13, CAL",
          ],
          [
            "Break of a stay",
            "corrosion, bending",
            "stay areas with allowance, welds tested all round",
            "CAL, MT reports",
          ],
          ["Brittle break", "cold water at the test", "test water not below 10 °C, steel tested for impact", "HYD-01"],
          ["Corrosion inside", "oxygen, low pH", "allowance, feedwater treated, inspection openings", "DOC-13, DRG-01"],
        ],
      },
    },
    {
      title: "Hazards of firing and use",
      page: true,
      table: {
        columns: ["Hazard", "Cause", "Measure", "Where shown"],
        shares: [18, 26, 36, 20],
        rows: [
          [
            "Explosion in the furnace",
            "gas collects, ignition late",
            "purge and flame supervision of the burner",
            "DOC-11",
          ],
          [
            "Flame out of the sight door",
            "overpressure in the furnace",
            "interlocked door, damper supervised",
            "DOC-05",
          ],
          ["Burns at hot surfaces", "bare metal", "insulation and cladding, doors insulated", "DOC-05"],
          ["Steam jet at the valve", "valve blows", "outlets led to a safe place by the client", "DOC-05"],
          [
            "Water carried into the steam",
            "level too high, foam",
            "highest level alarm, drying pipe inside N1",
            "DRG-10",
          ],
          [
            "Opening under pressure",
            "manhole opened too early",
            "cover opens inwards, vent N8, instructions",
            "DOC-05",
          ],
          ["Fall during transport", "lug torn off", "lugs calculated for the empty boiler, spreader beam", "DRG-09"],
        ],
      },
    },
    {
      title: "What remains",
      lines: [
        "Scale and corrosion by untreated water, loads by pipework, frost in a boiler at rest, and work on gas lines are not kept away by the design. They are named in the instructions and in the requirements of the water.",
      ],
    },
  ];
}
