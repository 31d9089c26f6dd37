import type { Facts } from "../../book/facts.ts";
import { printed } from "../../sheets/original.ts";
import type { TextPart } from "../../sheets/text-document.ts";

/** What the maker of the burner declares, as the boiler's maker received it. */
export const burnerDeclaration = ({ equipment }: Facts): readonly TextPart[] => [
  {
    title: "What is declared",
    lines: ["The burner named above conforms to EN 676 and is fit for a furnace under pressure."],
  },
  {
    title: "Data",
    table: {
      columns: ["Figure", "Value"],
      shares: [60, 40],
      rows: [
        ["Type, serial", "EQ 3000, 26-0418"],
        ["Fuel", "natural gas, group H"],
        ["Greatest heat input of the boiler", printed(equipment.duty?.heatInput)],
        ["Range of the burner", "600 kW to 3100 kW, modulating"],
        ["Purge before ignition", "at least 30 s with full air"],
        ["Flame supervision", "ultraviolet, tested at each start"],
        ["Gas train", "two valves with proving of tightness"],
      ],
    },
  },
  {
    title: "Set for this boiler",
    lines: ["The greatest load is stopped mechanically and sealed at the heat input of the boiler."],
  },
];

/** What the maker of the feed pumps declares. */
export const pumpDeclaration = ({ equipment }: Facts): readonly TextPart[] => [
  {
    title: "What is declared",
    lines: [
      "The two pumps conform to Directive 2006/42/EC on machinery and are fit for feedwater of the temperature named.",
    ],
  },
  {
    title: "Data",
    table: {
      columns: ["Figure", "Pump 1", "Pump 2"],
      shares: [50, 25, 25],
      rows: [
        ["Serial", "RW 30417", "RW 30418"],
        ["Flow at the head below", "6.0 m³/h", "6.0 m³/h"],
        ["Head", "140 m", "140 m"],
        ["Greatest temperature of the water", "120 °C", "120 °C"],
        ["Tried at the works with", "water of 20 °C", "water of 20 °C"],
        ["Steam output they serve", printed(equipment.duty?.steamOutput), printed(equipment.duty?.steamOutput)],
      ],
    },
  },
  {
    title: "Use",
    lines: [
      "One pump runs, one is in reserve and starts by itself. Either alone feeds the greatest output with blow-down.",
    ],
  },
];

/** What the water must be like; limits the maker asks for, not quoted from a standard. */
export const waterRequirements = ({ equipment }: Facts): readonly TextPart[] => [
  {
    title: "Feedwater",
    table: {
      columns: ["Property", "The maker asks for"],
      shares: [50, 50],
      rows: [
        ["Look", "clear, no suspended matter"],
        ["Temperature", printed(equipment.duty?.feedwaterTemperature)],
        ["Hardness, Ca + Mg", "below 0.01 mmol/l"],
        ["Oxygen", "below 0.05 mg/l"],
        ["pH at 25 °C", "above 9.0"],
        ["Oil", "below 1 mg/l"],
        ["Iron", "below 0.3 mg/l"],
      ],
    },
  },
  {
    title: "Boiler water",
    table: {
      columns: ["Property", "The maker asks for"],
      shares: [50, 50],
      rows: [
        ["Conductivity at 25 °C", "below 6000 µS/cm"],
        ["pH at 25 °C", "10.5 to 12.0"],
        ["Alkalinity", "1 mmol/l to 15 mmol/l"],
        ["Phosphate, where it is dosed", "10 mg/l to 30 mg/l"],
        ["Foam", "none that lasts"],
      ],
    },
  },
  {
    title: "How it is kept",
    lines: [
      `Blow-down of about ${printed(equipment.duty?.blowdownFraction)} of the steam, continuous at N9, short at N5. Samples daily, entered in the boiler book. Values outside these limits for more than a day: ask the maker.`,
    ],
  },
];
