import { fromMemory } from "../../model/basis.ts";
import { list, optional, quantity, table, text, thing } from "../../model/input.ts";
import { atLeast, exactly } from "../../model/quantity.ts";
import { owedBy } from "../../model/owes.ts";
import { radiationOf, xRay } from "../../model/radiation.ts";
import { rule } from "../../model/rule.ts";
import { radiographs, walls } from "./exposure.ts";

export const imageNoise = rule({
  id: "image-noise",
  title: "A digital radiograph has as little noise as its source and class ask for",
  basis: fromMemory(
    "EN ISO 17636-2",
    undefined,
    "least normalised signal-to-noise ratio; of gamma rays it is not at hand",
  ),
  kind: "ndt-report#rows",
  when: [...radiographs, { path: "record.radiography.detector", exists: true }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    ratio: quantity("signalToNoise", "1"),
    report: thing("record", {
      source: text("radiography.source"),
      made: text("radiography.techniqueClass"),
      way: optional(text("radiography.arrangement")),
    }),
    thicknesses: list(quantity("joint.thicknesses[]", "mm")),
    limits: table("image-noise"),
  },
  owes: [owedBy("testing", "testing-complete", "ratio")],
  *check({ ratio, report, thicknesses, limits }, row) {
    const source = radiationOf(report.source);
    if (source?.kind !== xRay || source.kilovolts === undefined) {
      yield {
        at: [report, "source"],
        on: report,
        accuses: [],
        name: "source",
        unsure: true,
        message: `the images of report ${report.$.name} are by "${report.source}", of which no least signal-to-noise ratio is at hand`,
        why: `${row.name} has ${ratio.text}`,
        hint: "compare with the table of the standard, and answer this query",
      };
      return;
    }
    const penetrated = exactly(Math.max(...thicknesses.map(({ high }) => high)) * walls(report.way), "mm");
    const least = limits(report.made, exactly(source.kilovolts, "kV"), penetrated).quantity("least");
    if (least !== undefined && atLeast(ratio, least) !== "yes")
      yield {
        at: "ratio",
        message: `${row.name} has a signal-to-noise ratio of ${ratio.text}; class ${report.made} asks for ${least.text} or more`,
        why: report.source,
        hint: "compare with the report; if it is true, have the image made again, longer exposed or averaged over more",
      };
  },
  examples: [
    { name: "just enough", given: image("100"), objections: [] },
    {
      name: "too noisy",
      given: image("99"),
      objections: ["X-01 has a signal-to-noise ratio of 99; class B asks for 100 or more"],
    },
    { name: "class A", given: image("70", { made: "A" }), objections: [] },
    {
      name: "a softer source",
      given: image("110", { source: "X-ray 140 kV" }),
      objections: ["X-01 has a signal-to-noise ratio of 110; class B asks for 120 or more"],
    },
    {
      name: "a source without a limit here",
      given: image("110", { source: "Ir 192" }),
      objections: ['the images of report RT-01 are by "Ir 192", of which no least signal-to-noise ratio is at hand'],
    },
  ],
});

function image(ratio: string, changes: Readonly<Record<string, string>> = {}) {
  return { ratio, report: { $: "RT-01", source: "X-ray 180 kV", made: "B", ...changes }, thicknesses: ["8.0 mm"] };
}
