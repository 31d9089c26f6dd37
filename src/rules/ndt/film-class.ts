import { fromMemory } from "../../model/basis.ts";
import { optional, table, text, thing } from "../../model/input.ts";
import { exactly } from "../../model/quantity.ts";
import { owedBy } from "../../model/owes.ts";
import { filmClassOf, radiationOf, xRay } from "../../model/radiation.ts";
import { rule } from "../../model/rule.ts";
import { document, exposed, exposure, films, walls } from "./exposure.ts";

export const filmClass = rule({
  id: "film-class",
  title: "Films are as fine as their source and class ask for",
  basis: fromMemory(document, undefined, "film system classes for steel"),
  kind: "ndt-report#rows",
  when: films,
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    ...exposure,
    report: thing("record", {
      source: text("radiography.source"),
      made: text("radiography.techniqueClass"),
      way: optional(text("radiography.arrangement")),
      film: text("radiography.filmClass"),
    }),
    rays: table("film-class-x-ray"),
    gamma: table("film-class-gamma"),
  },
  owes: [owedBy("testing", "testing-complete", "report.film")],
  *check({ report, thicknesses, rays, gamma }) {
    const used = filmClassOf(report.film);
    if (used === undefined) {
      yield {
        at: [report, "film"],
        on: report,
        name: "form",
        message: `the films of report ${report.$.name} are "${report.film}", which names no class of ISO 11699-1`,
        why: "classes are written C1 to C6; a trade name alone says nothing here",
        hint: "state the class beside the trade name",
        unsure: true,
      };
      return;
    }
    const source = radiationOf(report.source);
    const penetrated = exactly(Math.max(...thicknesses.map(({ high }) => high)) * walls(report.way), "mm");
    // Of a source that nobody knows another rule speaks.
    if (source === undefined || (source.kind === xRay && source.kilovolts === undefined)) return;
    const coarsest = (
      source.kind === xRay
        ? rays(report.made, exactly(source.kilovolts ?? 0, "kV"), penetrated)
        : gamma(source.kind, report.made, penetrated)
    ).quantity("film");
    if (coarsest !== undefined && used > coarsest.value)
      yield {
        at: [report, "film"],
        on: report,
        name: "coarse",
        message: `the films of report ${report.$.name} are of class C${used}; class ${report.made} asks for C${coarsest.value} or finer`,
        why: report.source,
        hint: "compare with the report; if it is true, have the films made again",
      };
  },
  examples: [
    { name: "just as fine", given: filmed({ film: "C4" }), objections: [] },
    { name: "finer, with its trade name", given: filmed({ film: "D4 (C3)" }), objections: [] },
    {
      name: "coarser",
      given: filmed({ film: "C5" }),
      objections: ["the films of report RT-01 are of class C5; class B asks for C4 or finer"],
    },
    { name: "class A", given: filmed({ film: "C5", made: "A" }), objections: [] },
    {
      name: "soft rays ask for more",
      given: filmed({ film: "C4", source: "X-ray 150 kV" }),
      objections: ["the films of report RT-01 are of class C4; class B asks for C3 or finer"],
    },
    { name: "gamma", given: filmed({ film: "C4", source: "Se-75, 1 TBq" }), objections: [] },
    {
      name: "a trade name alone",
      given: filmed({ film: "D7" }),
      objections: ['the films of report RT-01 are "D7", which names no class of ISO 11699-1'],
    },
  ],
});

function filmed(report: Readonly<Record<string, string>>) {
  return exposed({ film: "C4", ...report });
}
