import { fromMemory } from "../../model/basis.ts";
import { table } from "../../model/input.ts";
import { exactly } from "../../model/quantity.ts";
import { radiationOf, xRay } from "../../model/radiation.ts";
import { rule } from "../../model/rule.ts";
import { document, exposed, exposure, radiographs, walls } from "./exposure.ts";

/** The curve is recalled, not read: a tenth above it decides nothing, three tenths are beyond what memory may be off. */
const [spare, plain] = [1.1, 1.3];

export const sourceRange = rule({
  id: "source-range",
  title: "A source of radiation is fit for the thickness it goes through",
  basis: fromMemory(document, undefined, "penetrated thickness of gamma sources, highest X-ray voltage"),
  kind: "ndt-report#rows",
  when: radiographs,
  severity: "nonconformity",
  owner: "testing",
  inputs: { ...exposure, ranges: table("gamma-range"), voltages: table("tube-voltage") },
  *check({ report, thicknesses, ranges, voltages }) {
    const source = radiationOf(report.source);
    const where = { at: [report, "source"], on: report } as const;
    const rays = `report ${report.$.name} names "${report.source}"`;
    // Of a source that nobody knows another rule speaks.
    if (source === undefined) return;
    const penetrated = Math.min(...thicknesses.map(({ low }) => low)) * walls(report.way);
    const through = `${Number(penetrated.toFixed(3))} mm of steel`;
    if (source.kind === xRay) {
      const most = voltages(exactly(penetrated, "mm")).quantity("most");
      if (most !== undefined && source.kilovolts !== undefined && source.kilovolts > spare * most.value)
        yield {
          ...where,
          name: "voltage",
          message: `${rays}; for ${through} about ${Math.round(most.value)} kV are the most`,
          why: "too hard rays show too little contrast; the curve is recalled, a tenth above it decides nothing",
          hint: "compare with the curve of the standard and answer this query, or have the films made again",
          unsure: source.kilovolts <= plain * most.value,
        };
      return;
    }
    const range = ranges(source.kind, report.made);
    const [from, to, agreed] = [range.quantity("from"), range.quantity("to"), range.quantity("agreed")];
    if (from === undefined || to === undefined || (penetrated >= from.value && penetrated <= to.value)) return;
    const open = agreed !== undefined && penetrated >= agreed.value && penetrated <= to.value;
    yield {
      ...where,
      name: "range",
      message: `${rays}; class ${report.made} takes it for ${from.text} to ${to.text}, and not for ${through}`,
      why: open ? `by agreement from ${agreed.text}` : "outside its range a source hides what it should show",
      hint: open
        ? "compare source and procedure with the report; answer this query with the agreement, or have the films made again"
        : "have the films made again with a source that is fit",
      unsure: open,
    };
  },
  examples: [
    { name: "X-ray", given: exposed({ source: "X-ray 180 kV, 4 mA" }), objections: [] },
    {
      name: "X-ray, too hard",
      given: exposed({ source: "X-ray 300 kV" }),
      objections: ['report RT-01 names "X-ray 300 kV"; for 8 mm of steel about 173 kV are the most'],
    },
    {
      name: "X-ray through two walls",
      given: exposed({ source: "X-ray 230 kV", way: "double wall, single image, indicator on film side" }),
      objections: [],
    },
    {
      name: "Ir-192 through thin steel",
      given: exposed({ source: "Ir-192" }),
      objections: ['report RT-01 names "Ir-192"; class B takes it for 20 mm to 90 mm, and not for 8 mm of steel'],
    },
    {
      name: "Se-75, by agreement",
      given: exposed({ source: "Se-75" }),
      objections: ['report RT-01 names "Se-75"; class B takes it for 14 mm to 40 mm, and not for 8 mm of steel'],
    },
    {
      name: "Ir-192, as thin as permitted",
      given: exposed({ source: "Ir-192", made: "A" }, ["20.0 mm"]),
      objections: [],
    },
  ],
});
