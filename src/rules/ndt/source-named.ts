import { ownChoice } from "../../model/basis.ts";
import { text } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { radiationOf, xRay } from "../../model/radiation.ts";
import { rule } from "../../model/rule.ts";

export const sourceNamed = rule({
  id: "source-named",
  title: "A radiographic report names a source of radiation, and of X-rays their voltage",
  basis: ownChoice("thickness, film and indicator are judged by the source: of an unknown one nothing can be said"),
  kind: "ndt-report",
  when: [{ path: "method", equals: "RT" }],
  severity: "nonconformity",
  owner: "testing",
  inputs: { named: text("radiography.source") },
  owes: [owedBy("testing", "testing-complete", "named")],
  *check({ named }, report) {
    const source = radiationOf(named);
    if (source !== undefined && (source.kind !== xRay || source.kilovolts !== undefined)) return;
    yield {
      at: "named",
      message: `report ${report.name} names "${named}" as its source, of which ${source === undefined ? "nothing is known here" : "the voltage is not stated"}`,
      why: "the source decides which thickness it shows, and which film it needs",
      hint: "write the source with its voltage in kV, or the isotope, such as Se-75",
    };
  },
  examples: [
    { name: "X-rays", given: { named: "X-ray 180 kV, 4 mA" }, objections: [] },
    { name: "an isotope", given: { named: "Se-75, 1 TBq" }, objections: [] },
    {
      name: "X-rays of no voltage",
      given: { named: "X-ray" },
      objections: ['report X-01 names "X-ray" as its source, of which the voltage is not stated'],
    },
    {
      name: "no source known",
      given: { named: "good light" },
      objections: ['report X-01 names "good light" as its source, of which nothing is known here'],
    },
  ],
});
