import type { Facts } from "../../book/facts.ts";
import { listed, printed } from "../../sheets/original.ts";
import type { TextPart } from "../../sheets/text-document.ts";

/** The final inspection, what was compared with what. */
export function finalInspection({ equipment, all }: Facts): readonly TextPart[] {
  const valves = all("safety-valve");
  const seals = valves.map(({ bench }) => printed(bench?.sealNumber));
  return [
    {
      title: "Boiler and marking",
      table: {
        columns: ["What", "Compared with", "Found"],
        shares: [38, 34, 28],
        rows: [
          ["Nameplate as ordered, not stamped yet", "DRG-12, DOC-01", "serial and figures agree"],
          ["Outside: welds, marks, surface", "DRG-02", "no objection"],
          ["Furnace and reversal chamber, through the access tube", "DRG-03, DRG-11", "clean, no mark of tools"],
          ["Tube ends, front and rear", "DRG-07", "all expanded, stay tubes welded"],
          ["Inside through M1", "DRG-01", "clean, nothing left inside"],
          ["Nozzles, flanges, covers, gaskets", "DRG-05", "complete"],
          ["Saddles, lugs", "DRG-09", "no objection"],
        ],
      },
    },
    {
      title: "Safety devices",
      table: {
        columns: ["What", "Compared with", "Found"],
        shares: [38, 34, 28],
        rows: [
          [`Safety valves ${listed(valves.map(({ tag }) => printed(tag)))}`, "certificates, plates", "agree"],
          [`Seals ${listed(seals)}`, "certificates", "unbroken"],
          ["Limiters of level and pressure", "DOC-10", "tried, locked"],
          ["Level indicators, plate of the lowest level", "DRG-10", "at the drawn height"],
        ],
      },
    },
    {
      title: "Papers",
      page: true,
      table: {
        columns: ["What", "Compared with", "Found"],
        shares: [38, 34, 28],
        rows: [
          ["Certificates of materials and marks", "material list", "each piece traced to its heat"],
          ["Weld log, procedures, welders", "DRG-02", "every joint from root to cap"],
          ["Reports of tests", "extent of the order, 5.1", "fulfilled"],
          ["Nonconformity reports, deviations", "register of quality control", "all closed"],
          ["Hydrostatic test", "HYD-01", "accepted"],
          ["Papers of burner and feed pumps", "DOC-11, DOC-12", "declared for this boiler"],
          ["Instructions, water requirements", "DOC-05, DOC-13", "handed over"],
        ],
      },
    },
    {
      title: "Result",
      lines: [
        `The boiler, serial ${equipment.serial}, conforms to the drawings and may be certified. Present: quality control D2, inspection body E1, client P2.`,
      ],
    },
  ];
}

/** The functional test under steam. */
export function functionalTest({ equipment, all }: Facts): readonly TextPart[] {
  const { duty, levels, limits } = equipment;
  const valves = all("safety-valve").map(({ tag, setPressure }) => [
    `Safety valve ${printed(tag)}`,
    `opens at ${printed(setPressure)}, seal unbroken`,
    "not lifted; set on the bench",
    "–",
  ]);
  return [
    {
      title: "Test bay, 2026-05-12",
      lines: [
        "Boiler with its burner, both feed pumps and its own limiters, steam to the atmosphere through the test silencer. Fuel: natural gas from the bay. Gauge PG-04, thermometer TH-07.",
      ],
    },
    {
      title: "Limiters and safety devices",
      table: {
        columns: ["Device", "Must act at", "Found", "Result"],
        shares: [30, 34, 26, 10],
        rows: [
          ["Water-level limiter 1", `${printed(levels?.limiter)}, burner off and locked`, "1466 mm, locked", "passed"],
          ["Water-level limiter 2", `${printed(levels?.limiter)}, burner off and locked`, "1465 mm, locked", "passed"],
          ["High-level alarm", `${printed(levels?.highest)}, feed off`, "1529 mm", "passed"],
          [
            "Pressure limiter",
            `below ${printed(limits?.maximumAllowablePressure)}, locked`,
            "9.7 bar, locked",
            "passed",
          ],
          ["Pressure control", `${printed(duty?.workingPressure)}, load follows`, "8.8 bar to 9.1 bar", "passed"],
          ["Flame guard", "off within 1 s", "0.6 s", "passed"],
          ["Gas pressure, low and high", "off and locked", "both locked", "passed"],
          ["Draught and air supervision", "off and locked", "locked", "passed"],
          ...valves,
        ],
      },
    },
    {
      title: "Output",
      table: {
        columns: ["Load", "Pressure", "Feedwater", "Steam, by feed meter", "Flue gas", "O₂"],
        shares: [12, 14, 14, 24, 14, 12],
        rows: [
          ["40 %", "9.0 bar", "104 °C", "1610 kg/h", "204 °C", "4.1 %"],
          ["70 %", "9.0 bar", "105 °C", "2820 kg/h", "218 °C", "3.6 %"],
          ["100 %", "9.0 bar", "105 °C", "4010 kg/h", "232 °C", "3.2 %"],
        ],
      },
    },
    { title: "Result", lines: ["The guaranteed output is reached and every limiter stops the burner. Accepted."] },
  ];
}
