import type { Facts } from "../../book/facts.ts";
import { printed } from "../../sheets/original.ts";
import type { TextPart } from "../../sheets/text-document.ts";

/** Essential safety requirements, and where the book shows that they are met. */
export function complianceStatement({ equipment, all }: Facts): readonly TextPart[] {
  const standard = printed(equipment.designStandard?.standard);
  const certificates = all("material-certificate").map(({ id }) => id);
  const columns = ["Topic", "How it is met", "Evidence"];
  const shares = [26, 48, 26];
  return [
    {
      title: "Directive 2014/68/EU, Annex I: design",
      table: {
        columns,
        shares,
        rows: [
          [
            "Design for adequate strength",
            `calculation to ${standard} and the rules named on the design data, each part and opening`,
            "calculation sheets",
          ],
          ["Means of examination", "manhole M1, head inspection openings N10 to N13, access tube", "DRG-01, DRG-11"],
          ["Draining and venting", "N5 at the lowest point, N8 at the top", "DRG-01"],
          ["Corrosion", `allowance ${printed(equipment.corrosionAllowance)}, treated water`, "DOC-01, DOC-13"],
          ["Filling and discharge", "feed N4, blow-down N5, samples N9", "DRG-01"],
          ["Protection against exceeding limits", "safety valves, category IV; limiters", "SV records, DOC-10"],
          [
            "Fired equipment: overheating",
            "water levels, limiters, heat flux within the calculated one",
            "DRG-10, sheets",
          ],
          ["Fired equipment: accumulation of gas", "purge and flame supervision", "DOC-11"],
        ],
      },
    },
    {
      title: "Directive 2014/68/EU, Annex I: manufacture and what follows",
      page: true,
      table: {
        columns,
        shares,
        rows: [
          ["Manufacture: joining", "approved procedures and welders", "WPS, WPQR, welder certificates"],
          ["Manufacture: forming", "cold, strain below 5 %, no heat treatment needed", "PRC-ROLL"],
          ["Non-destructive tests", "testers approved by a third party", "reports VT, RT, UT, MT, PT"],
          ["Traceability", "marks transferred before cutting", "marking list"],
          ["Final assessment", "final inspection, hydrostatic test, safety devices tried", "DOC-07, HYD-01, DOC-10"],
          ["Marking and labelling", "nameplate", "DRG-12, NP-01"],
          ["Instructions", "in the language of the user", "DOC-05"],
          [
            "Materials",
            "harmonised standards, certificates of specific control for pressure parts",
            `${certificates[0] ?? "–"} to ${certificates.at(-1) ?? "–"}`,
          ],
        ],
      },
    },
    {
      title: "Not applicable",
      lines: [
        "Piping between units, assemblies of several pressure vessels, and external fire: nothing of the kind is delivered.",
      ],
    },
  ];
}

/** The order as the maker reviewed it before it was accepted. */
export function orderReview({ equipment, book, organisation }: Facts): readonly TextPart[] {
  const { duty, limits } = equipment;
  return [
    {
      title: "What was ordered",
      table: {
        columns: ["Item", "Asked for", "Offered"],
        shares: [30, 40, 30],
        rows: [
          ["Boiler", `${printed(equipment.name)}, ${printed(duty?.steamOutput)}`, "as asked"],
          [
            "Allowable pressure, temperature",
            `${printed(limits?.maximumAllowablePressure)}, ${printed(limits?.maximumAllowableTemperature)}`,
            "as asked",
          ],
          ["Feedwater", printed(duty?.feedwaterTemperature), "as asked"],
          ["Fuel", "natural gas, forced draught", "as asked"],
          ["Place", printed(book.site), "delivered to the door"],
          [
            "Inspection body",
            book.inspectionBody === undefined ? "–" : organisation(book.inspectionBody).name,
            "as asked",
          ],
          ["Book", "HTML and PDF, originals as scans", "as asked"],
        ],
      },
    },
    {
      title: "Technical part, 5.1: tests beyond the standard",
      lines: [
        "Radiography: longitudinal seams of furnace and reversal chamber over their whole length; other seams and the butt joints of flanges at least 10 %.",
        "Ultrasound of the corner joints of plates, at least 25 %. Magnetic particles at branches, stays and attachments, at least 25 %.",
        "Visual test of every weld over its whole length.",
      ],
    },
    {
      title: "Review",
      page: true,
      table: {
        columns: ["Question", "By", "Answer"],
        shares: [52, 18, 30],
        rows: [
          ["Is the duty within what the shop has built before?", "design", "yes, up to 6 t/h"],
          ["Are procedures and welders qualified for the joints?", "welding", "yes; 121 both sides to be confirmed"],
          ["Is the material on hand or bought in time?", "purchasing", "plates 2026-02-16, tubes 2026-02-20"],
          ["Are tests beyond the standard possible in the shop?", "quality", "yes, by the testers under contract"],
          ["Is the date of delivery kept?", "shop", "yes"],
          ["Differences between order and offer", "sales", "none left open"],
        ],
      },
    },
    {
      title: "Result",
      lines: [
        "The order is accepted as it stands. Contract reviewed with the client by telephone, minutes in the order's file.",
      ],
    },
  ];
}
