import { ownChoice } from "../model/basis.ts";
import { anyOf, list, optional, quantity, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";

export const printedMean = rule({
  id: "impact-mean",
  title: "A printed mean of impact values is the mean of the values",
  basis: ownChoice("arithmetic: a mean that does not follow from its values shows a slip of the pen in one of them"),
  kind: "material-certificate#rows",
  when: [{ path: "impact", exists: true }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    tests: anyOf(
      list(
        thing("impact[]", { values: anyOf(list(quantity("values[]", "J"))), mean: optional(quantity("mean", "J")) }),
      ),
    ),
  },
  *check({ tests }, row) {
    for (const [index, test] of tests.entries()) {
      const { mean, values } = test;
      if (mean === undefined || values.length === 0) continue;
      const computed = values.reduce((sum, one) => sum + one.value, 0) / values.length;
      if (Math.abs(computed - mean.value) > mean.halfUnit * (1 + 1e-9) + 1e-9)
        yield {
          name: String(index + 1),
          at: [test, "mean"],
          message: `the mean of the impact values of ${row.id} is printed as ${mean.text}, but is ${computed.toFixed(1)} J`,
          why: `values: ${values.map(({ text: value }) => value).join(", ")}`,
          hint: "compare with the certificate; ask the mill which figure is right",
        };
    }
  },
  examples: [
    { name: "rounded", given: { tests: [{ values: ["61 J", "64 J", "70 J"], mean: "65 J" }] }, objections: [] },
    {
      name: "a slip",
      given: { tests: [{ values: ["61 J", "64 J", "70 J"], mean: "75 J" }] },
      objections: ["the mean of the impact values of X-01 is printed as 75 J, but is 65.0 J"],
    },
  ],
});
