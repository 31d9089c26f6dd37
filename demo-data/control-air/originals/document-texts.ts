import type { TextPart } from "../../sheets/text-document.ts";

/** Words of the documents that are the small vessel's own. */
export const documentTexts: Readonly<Record<string, readonly TextPart[]>> = {
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
            "calculation sheets, SV-01",
          ],
          [
            "Rupture of the shell",
            "wall too thin, brittle steel",
            "calculation, P265GH tested at −20 °C, wall 8 mm",
            "calculation sheets, CRT-003, CRT-009",
          ],
          ["Corrosion inside", "condensate", "allowance 1.0 mm, drain N4 at the lowest point", "DRG-01, DOC-05"],
          [
            "Too small to look into",
            "no opening for a hand",
            "endoscope through N1 and N2, wall by ultrasound",
            "DOC-05",
          ],
          ["Noise and jet of the valve", "valve blows", "outlet led to a safe place by the client", "DOC-05"],
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
          "Inside by endoscope through N1 and N2. Wall by ultrasound at four places of the course and of each end; at least 5.6 mm must be left.",
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
          ["Nameplate, serial and figures", "DRG-03 A, DOC-01", "agree"],
          ["Outside: welds, marks, surface", "DRG-02 B", "no objection"],
          ["Inside by endoscope through N1 and N2", "DRG-01 B", "clean and dry"],
          ["Safety valve PSV-311, seal S-20431", "HV-C-55110", "seal unbroken, plate agrees"],
          ["Records of material, welding, testing", "inspection and test plan", "complete up to step 260"],
          ["Instructions", "Directive 2014/68/EU, Annex I", "handed over"],
        ],
      },
    },
    {
      title: "Result",
      lines: [
        "The vessel conforms to the drawings and may be certified. Present: maker D2, Penquillith Inspection E1, client P1.",
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
          ["Protection against exceeding limits", "safety valve, category IV", "SV-01, calculation sheets"],
          ["Manufacture: joining", "approved procedures and welders", "WPS, WPQR, welder certificates"],
          ["Non-destructive tests", "testers approved by a third party", "reports VT, RT, PT"],
          ["Traceability", "marks stamped before cutting", "marking list"],
          ["Final assessment", "final inspection and hydrostatic test", "DOC-07, HYD-01"],
          ["Marking and labelling", "nameplate", "DRG-03, NP-01"],
          ["Instructions", "in the language of the user", "DOC-05"],
          ["Materials", "EN 10028-2 and EN 10216-2 with certificates 3.1", "CRT-003, CRT-005, CRT-009"],
        ],
      },
    },
  ],
};
