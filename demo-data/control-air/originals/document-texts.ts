import type { Facts } from "../../book/facts.ts";
import { figure } from "../../sheets/original.ts";
import type { TextPart } from "../../sheets/text-document.ts";

/** Thickness in mm that pressure alone asks of a part, by the maker's sheet; throws when no sheet has it. */
function asked(facts: Facts, part: string): number {
  const found = facts
    .all("calculation-sheet")
    .filter(({ subject }) => subject === `part:${part}`)
    .flatMap(({ results = [] }) => results)
    .find(({ symbol }) => symbol === "e");
  if (found === undefined) throw new Error(`no calculation sheet says what thickness ${part} needs`);
  return figure(found.value);
}

/** What must be left of a part when it is looked at: what pressure asks for and the allowance till it is looked at again. */
function leftOf(facts: Facts, part: string): string {
  const allowance = figure(facts.all("part").find(({ id }) => id === part)?.corrosionAllowance);
  const least = Math.ceil((asked(facts, part) + allowance) * 10 - 1e-6) / 10;
  return `${least.toFixed(1)} mm (${asked(facts, part).toFixed(2)} mm for the pressure and ${allowance.toFixed(1)} mm allowance)`;
}

/** Words of the documents that are the small vessel's own. */
export const documentTextsOf = (facts: Facts): Readonly<Record<string, readonly TextPart[]>> => ({
  "DOC-02": [
    {
      title: "Hazards considered",
      table: {
        columns: ["Hazard", "Cause", "Measure", "Where shown"],
        shares: [18, 26, 36, 20],
        rows: [
          [
            "Overpressure",
            "regulator fails open",
            "safety valve PSV-311 set at PS, capacity above the regulator",
            "calculation sheets, papers of the valve",
          ],
          [
            "Rupture of the shell",
            "wall too thin, brittle steel",
            "calculation, P265GH tested at −20 °C, wall 8 mm",
            "calculation sheets, material certificates",
          ],
          [
            "Corrosion inside",
            "condensate",
            "allowance 1.0 mm, drain N4 at the lowest point",
            "DRG-01, operating instructions",
          ],
          [
            "Too small to look into",
            "no opening for a hand",
            "endoscope through N1 and N2, wall by ultrasound",
            "operating instructions",
          ],
          [
            "Noise and jet of the valve",
            "valve blows",
            "outlet led to a safe place by the client",
            "operating instructions",
          ],
        ],
      },
    },
    {
      title: "What remains",
      lines: [
        "External fire was not assumed: the client's compressor house holds no fire load. It is named in the instructions.",
      ],
    },
  ],
  "DOC-05": [
    {
      title: "What the vessel is for",
      lines: [
        "Storage of dried control air up to 11 bar between −10 °C and 60 °C, fed from receiver V-310. Any other contents, pressure or temperature is not permitted.",
      ],
    },
    {
      title: "Setting up and use",
      articles: [
        ["Place", "Indoors, level, in the cradle supplied by the client, with rubber between cradle and shell."],
        [
          "Piping",
          "Inlet to N1, outlet from N2, without forces on the nozzles. Safety valve upright on N3, nothing between valve and vessel. Drain valve on N4, opened every day.",
        ],
        ["Stopping", "Shut off the inlet, blow down through N4 until the gauge of the outlet reads nothing."],
        ["Safety valve", "Seal unbroken. Lifted by hand once a year at not less than 9 bar. Set only by its maker."],
      ],
    },
    {
      title: "Upkeep",
      articles: [
        ["Each year", "Look outside: corrosion, nozzles, plate, valve."],
        [
          "After 5 years",
          `Inside by endoscope through N1 and N2. Wall by ultrasound at four places of the course and of each end. At least ${leftOf(facts, "P01")} must be left of the course, ${leftOf(facts, "P02")} of each end. Where more than the allowance has gone since the vessel was made, the maker is asked before it is used again.`,
        ],
        ["Repairs", "No welding on the vessel without the maker and an inspection body."],
      ],
    },
    {
      title: "Limits that remain with the user",
      lines: [
        "External fire, frost in the drain, pulsation and loads from piping are not covered by the design and are to be kept away by the user.",
      ],
    },
  ],
  "DOC-07": [
    {
      title: "Inspected on 2026-07-10 in Lintharrow",
      table: {
        columns: ["What", "Compared with", "Found"],
        shares: [38, 34, 28],
        rows: [
          ["Nameplate as ordered, not stamped yet", "DRG-03 A, DOC-01", "serial and figures agree"],
          ["Outside: welds, marks, surface", "DRG-02 B", "no objection"],
          ["Inside by endoscope through N1 and N2", "DRG-01 B", "clean and dry"],
          ["Safety valve PSV-311, seal S-20431", "HV-C-55110", "seal unbroken, plate agrees"],
          ["Records of material, welding, testing", "inspection and test plan", "complete up to step 250"],
          ["Instructions", "Directive 2014/68/EU, Annex I", "handed over"],
        ],
      },
    },
    {
      title: "Result",
      lines: [
        "The vessel conforms to the drawings and may be certified; the plate is stamped and fixed when the certificate is there. Present: maker D2, Penquillith Inspection E1, client P1.",
      ],
    },
  ],
  "DOC-08": [
    {
      title: "Essential safety requirements, Directive 2014/68/EU, Annex I",
      table: {
        columns: ["Topic", "How it is met", "Evidence"],
        shares: [26, 48, 26],
        rows: [
          ["Design for adequate strength", "calculation to EN 13445-3, joint coefficient 0.85", "calculation sheets"],
          [
            "Means of examination",
            "too small for access: endoscope through N1 and N2, wall measured from outside",
            "DOC-05",
          ],
          ["Draining and venting", "N4 at the lowest point, N3 at the top", "DRG-01"],
          ["Corrosion", "allowance 1.0 mm, dried air", "DOC-01"],
          [
            "Protection against exceeding limits",
            "safety valve, category IV",
            "papers of the valve, calculation sheets",
          ],
          ["Manufacture: joining", "approved procedures and welders", "WPS, WPQR, welder certificates"],
          ["Non-destructive tests", "testers approved by a third party", "reports VT, RT, PT"],
          ["Traceability", "marks stamped before cutting", "marking list"],
          ["Final assessment", "final inspection and hydrostatic test", "their reports"],
          ["Marking and labelling", "nameplate", "DRG-03"],
          ["Instructions", "in the language of the user", "DOC-05"],
          ["Materials", "EN 10028-2 and EN 10216-2 with certificates 3.1", "DOC-04, material certificates"],
        ],
      },
    },
  ],
});
