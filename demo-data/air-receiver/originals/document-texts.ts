import type { TextPart } from "../../sheets/text-document.ts";

/** Words of the maker's documents. */
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
            "compressor runs on, control fails",
            "safety valve PSV-310 set at PS, capacity above the compressor",
            "CAL-13, CAL-14",
          ],
          [
            "Rupture of the shell",
            "wall too thin, brittle steel",
            "calculation, P265GH tested at −20 °C, wall 8 mm against 5.87 mm",
            "CAL-05 to CAL-08, CRT-001 to 003",
          ],
          [
            "Corrosion inside",
            "condensate",
            "allowance 1.0 mm, coating, drain N4 at the lowest point",
            "TQ423-DOC-06, DRG-01",
          ],
          ["Overheating", "hot air from the compressor", "aftercooler of the client, TS 60 °C on the plate", "DOC-05"],
          [
            "Opening under pressure",
            "N6 opened too early",
            "warning on the blind flange, instructions",
            "DOC-05, DRG-03",
          ],
          ["Noise and jet of the valve", "valve blows", "outlet led to a safe place by the client", "DOC-05"],
          ["Transport", "vessel falls", "slings round the shell at the saddles, no lugs", "DOC-05"],
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
      title: "What the receiver is for",
      lines: [
        "Storage of compressed air up to 11 bar between −10 °C and 60 °C. Any other contents, pressure or temperature is not permitted.",
      ],
    },
    {
      title: "Setting up",
      articles: [
        [
          "Place",
          "Indoors, level, on the two saddles supplied by the client, with rubber between saddle and shell. One saddle must slide.",
        ],
        [
          "Piping",
          "Inlet to N1, outlet from N2, without forces on the nozzles. Safety valve upright on N3, nothing between valve and vessel; its outlet to a safe place, not narrower than DN 65.",
        ],
        ["Drain", "Valve on N4, drained every day or automatically."],
      ],
    },
    {
      title: "Use",
      articles: [
        ["Starting", "Close N4, open the inlet slowly, watch the gauge on N5, check all joints for tightness."],
        ["Stopping", "Shut off the inlet, blow down through N4 until the gauge reads nothing. Only then open N6."],
        ["Safety valve", "Seal unbroken. Lifted by hand once a year at not less than 9 bar. Set only by its maker."],
      ],
    },
    {
      title: "Upkeep",
      page: true,
      articles: [
        ["Each year", "Look outside: corrosion, coating, nozzles, plate, valve."],
        [
          "After 5 years",
          "Look inside through N6: coating, bottom line near N4, seams. Wall by ultrasound at four places of each course and of each end; at least 5.6 mm must be left of the courses, 5.5 mm of the ends.",
        ],
        ["Repairs", "No welding on the vessel without the maker and an inspection body."],
      ],
    },
    {
      title: "Limits that remain with the user",
      lines: [
        "External fire, frost in the drain, pulsation of the compressor and loads from piping are not covered by the design and are to be kept away by the user.",
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
          ["Nameplate as ordered, not stamped yet", "DRG-04 A, DOC-01", "serial and figures agree"],
          ["Outside: welds, marks, surface", "DRG-02 B", "no objection"],
          ["Inside through N6", "TQ423-DOC-06", "clean, coating whole"],
          ["Safety valve PSV-310, seal S-20419", "HV-C-55102", "seal unbroken, plate agrees"],
          ["Drain, gauge, blind flange with bolting", "DRG-03 B", "complete, torqued to 300 Nm"],
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
          ["Design for adequate strength", "calculation to EN 13445-3, joint coefficient 0.85", "CAL-01 to CAL-11"],
          ["Means of examination", "inspection opening N6, DN 300", "DRG-03"],
          ["Draining and venting", "N4 at the lowest point, N1 at the top", "DRG-01"],
          ["Corrosion", "allowance and coating", "TQ423-DOC-06"],
          ["Protection against exceeding limits", "safety valve, category IV", "SV-01, CAL-13, CAL-14"],
          ["Manufacture: joining", "approved procedures and welders", "WPS, WPQR, welder certificates"],
          ["Non-destructive tests", "testers approved by a third party", "reports VT, RT, MT, PT"],
          ["Traceability", "marks stamped before cutting", "marking list"],
          ["Final assessment", "final inspection and hydrostatic test", "DOC-07, HYD-01"],
          ["Marking and labelling", "nameplate", "DRG-04, NP-01"],
          ["Instructions", "in the language of the user", "DOC-05"],
          ["Materials", "EN 10028-2, EN 10216-2, EN 10222-2 with certificates 3.1", "CRT-001 to CRT-008"],
        ],
      },
    },
  ],
};
