import { fromMemory } from "../../model/basis.ts";
import { anyOf, count, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const magnetised = rule({
  id: "magnetised-in-two-directions",
  title: "A weld is magnetised in two directions",
  basis: fromMemory(
    "EN ISO 17638",
    undefined,
    "flaws of every direction show where the field crosses them: two directions",
  ),
  kind: "ndt-report",
  when: [
    { path: "method", equals: "MT" },
    { path: "directions", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: { directions: count("directions") },
  *check({ directions }, report) {
    if (directions < 2)
      yield {
        at: "directions",
        message: `report ${report.name} states one direction of magnetisation; a flaw along it does not show`,
        why: "two directions, about at right angles",
        hint: "compare with the report; if it is true, have the joints tested in the other direction",
      };
  },
  examples: [
    { name: "two", given: { directions: 2 }, objections: [] },
    {
      name: "one",
      given: { directions: 1 },
      objections: ["report X-01 states one direction of magnetisation; a flaw along it does not show"],
    },
  ],
});

/** N, by the current of a yoke; one that lifts less makes too weak a field. What is not stated is taken as alternating. */
const liftLeast = { AC: 44, DC: 177 } as const;

export const yokeLifts = rule({
  id: "yoke-lifts",
  title: "A magnetic yoke lifts 44 N, one of direct current 177 N",
  basis: fromMemory(
    "ASME BPVC Section V and EN ISO 9934-3",
    undefined,
    "alternating current: 4.5 kg, 44 N; direct current: 18 kg, 177 N",
  ),
  kind: "instrument",
  when: [
    { path: "type", equals: "magnetic yoke" },
    { path: "liftingForce", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    lift: quantity("liftingForce", "N"),
    current: optional(text("yokeCurrent")),
    reports: anyOf(things("<ndt-report:instruments[]>", {})),
  },
  *check({ lift, current, reports }, yoke) {
    const least = liftLeast[current === "DC" ? "DC" : "AC"];
    if (lift.high + lift.halfUnit >= least) return;
    yield {
      at: "lift",
      message: `yoke ${yoke.name} lifts ${lift.text}; ${least} N is the least${current === "DC" ? " of one of direct current" : ""}`,
      why: reports.length === 0 ? "no report names it" : `named in ${reports.map(({ $ }) => $.name).join(", ")}`,
      hint: "compare with its check; if it is true, have what was tested with it tested again",
    };
  },
  examples: [
    { name: "enough", given: { lift: "44 N" }, objections: [] },
    {
      name: "weak for direct current",
      given: { lift: "60 N", current: "DC" },
      objections: ["yoke X-01 lifts 60 N; 177 N is the least of one of direct current"],
    },
    {
      name: "weak",
      given: { lift: "36 N", reports: [{ $: "MT-01" }] },
      objections: ["yoke X-01 lifts 36 N; 44 N is the least"],
    },
  ],
});
