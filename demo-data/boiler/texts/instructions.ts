import type { Facts } from "../../book/facts.ts";
import { printed } from "../../sheets/original.ts";
import type { TextPart } from "../../sheets/text-document.ts";

/** The operating instructions, on three pages. */
export function instructions({ equipment, all }: Facts): readonly TextPart[] {
  const { limits, duty, levels } = equipment;
  const valves = all("safety-valve").map(({ tag }) => printed(tag));
  return [
    {
      title: "What the boiler is for",
      lines: [
        `Saturated steam up to ${printed(limits?.maximumAllowablePressure)}, at most ${printed(duty?.steamOutput)}, from feedwater of ${printed(duty?.feedwaterTemperature)}. Any other use, fuel or pressure is not permitted.`,
        "Only trained boiler attendants may run it. The boiler house is locked to others.",
      ],
    },
    {
      title: "Setting up",
      articles: [
        [
          "Place",
          "Level on the two saddles; the rear one must slide. Room to draw a tube: 4.2 m before the front plate.",
        ],
        ["Piping", "Steam, feed and blow-down without forces on the nozzles. Blow-down to a vessel of its own."],
        [
          "Safety valves",
          `${valves.join(" and ")} upright, nothing between valve and boiler, outlets apart to a safe place, drained at the lowest point.`,
        ],
        ["Flue", "Draught between 0 Pa and −50 Pa at the outlet; explosion doors not blocked."],
        ["Electricity", "Limiters hard-wired in the chain of the burner; no bridge may be set."],
      ],
    },
    {
      title: "Starting from cold",
      page: true,
      articles: [
        [
          "Water",
          `Fill to ${printed(levels?.normal)} above the inside bottom, not colder than 20 K below the steel. Vent N8 open.`,
        ],
        ["Fire", "Smallest load until steam leaves the vent, at least 90 min from cold. Close the vent at 0.5 bar."],
        ["Looking round", "At 2 bar and at working pressure: manhole, covers, tube ends at the doors, gauges."],
        [
          "Limiters",
          "Each water-level limiter, the pressure limiter and the flame guard tried before the first full load.",
        ],
      ],
    },
    {
      title: "Running",
      articles: [
        ["Each shift", "Both level indicators blown through; gauges compared; feed pump and reserve tried."],
        ["Each day", "Bottom blow-down 3 s to 5 s; samples of feedwater and boiler water, entered in the boiler book."],
        ["Each month", "Limiters tried by lowering the water; safety valves lifted by hand at 8 bar or more."],
        [
          "Water too low",
          `Below ${printed(levels?.lowestPermissible)} with the fire still on: fire off by hand, no feed. Let the boiler cool, call the maker.`,
        ],
        ["Limiter has locked", "Find the cause before it is released; enter both in the boiler book."],
      ],
    },
    {
      title: "Stopping and rest",
      page: true,
      articles: [
        ["Stopping", "Fire off, feed to the upper level, steam valve shut, vent opened below 0.5 bar."],
        ["Cooling", "In still air, at least 12 h; no cold water on hot plates."],
        ["Rest", "Up to four weeks wet, filled to the vent with treated water; longer dry, with drying agent."],
        ["Frost", "Drained wholly through N5 when the house may freeze."],
      ],
    },
    {
      title: "Upkeep and inspection",
      articles: [
        ["Each year", "Fire side and water side looked at: furnace crown, tube ends, stays, level openings, doors."],
        [
          "After 3 years",
          "Inside through M1 and the head inspection openings; furnace diameters against report DIM-03.",
        ],
        ["After 9 years", "Hydrostatic test, walls by ultrasound at the places of reports DIM-01 to DIM-03."],
        [
          "Tubes",
          "May be expanded again twice; stay tubes only by the maker. No tube may be plugged without his word.",
        ],
        ["Repairs", "No welding on the boiler without the maker and an inspection body."],
      ],
    },
    {
      title: "Limits that remain with the user",
      lines: [
        "Quality of the water, loads of pipework, frost, work on the gas line and the training of attendants are the user's. National rules for inspection come before these instructions where they ask for more.",
      ],
    },
  ];
}
