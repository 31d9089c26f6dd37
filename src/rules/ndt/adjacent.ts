import { fromMemory } from "../../model/basis.ts";
import { familiesOf, isoName } from "../../model/imperfections.ts";
import { anyOf, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const surface = ["ISO 23277", "ISO 23278"];

export const indicationsAdjacent = rule({
  id: "indications-adjacent",
  title: "Linear indications of a surface test that lie close together are judged as one",
  basis: fromMemory(
    "EN ISO 23277, EN ISO 23278",
    undefined,
    "what lies nearer to its neighbour than the smaller of the two is long is one indication with it",
  ),
  kind: "ndt-report#rows",
  when: [
    { path: "record.method", equals: ["MT", "PT"] },
    { path: "indications[].at", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", { standard: text("acceptance.standard"), level: text("acceptance.level") }),
    thicknesses: list(quantity("joint.thicknesses[]", "mm")),
    indications: anyOf(
      things("indications[]", {
        type: optional(text("type")),
        at: optional(quantity("at", "mm")),
        length: optional(quantity("length", "mm")),
        verdict: optional(text("verdict")),
      }),
    ),
    limits: table("imperfection-limits"),
  },
  *check({ report, thicknesses, indications, limits }, row) {
    const standard = isoName(report.standard);
    const thickness = [...thicknesses].sort((a, b) => a.value - b.value)[0];
    if (!surface.includes(standard) || thickness === undefined) return;
    const most = limits(standard, report.level, "linear", thickness).quantity("length");
    if (most === undefined) return;
    const placed = indications
      .flatMap((one) => {
        const { at, length, type, verdict } = one;
        const linear = type !== undefined && familiesOf(type).includes("linear");
        return linear && verdict === "accepted" && at !== undefined && length !== undefined
          ? [{ one, from: at.value, to: at.value + length.value, length: length.value }]
          : [];
      })
      .sort((a, b) => a.from - b.from);
    const chains: (typeof placed)[] = [];
    for (const one of placed) {
      const chain = chains.at(-1);
      const last = chain?.at(-1);
      if (chain !== undefined && last !== undefined && one.from - last.to < Math.min(last.length, one.length))
        chain.push(one);
      else chains.push([one]);
    }
    for (const chain of chains) {
      const [first] = chain;
      const last = chain.at(-1);
      if (first === undefined || last === undefined || chain.length < 2) continue;
      // What is too long by itself is said of itself.
      if (chain.some(({ length }) => length > most.value)) continue;
      const together = last.to - first.from;
      if (together <= most.value) continue;
      // Side by side they may lie on both toes: their distance across is not recorded.
      const beside = chain.some((one, index) => index > 0 && one.from < (chain[index - 1]?.to ?? 0));
      yield {
        at: [last.one, "at"],
        accuses: [],
        name: last.one.$.id,
        unsure: beside,
        message: `${chain.length} linear indications of ${row.name} lie close together and are ${Number(together.toFixed(2))} mm long as one; ${most.text} is the most permitted`,
        why: chain.map(({ from, length }) => `${length} mm from ${from} mm`).join(", "),
        hint: "compare with the report; if it is so, have the place dressed or repaired and tested again",
        related: [{ at: [first.one, "at"], message: "the first of them" }],
      };
    }
  },
  examples: [
    { name: "far apart", given: found(310, 314), objections: [] },
    {
      name: "close together",
      given: found(310, 312),
      objections: [
        "2 linear indications of X-01 lie close together and are 3.4 mm long as one; 1.5 mm is the most permitted",
      ],
    },
    { name: "rejected", given: found(310, 312, "rejected"), objections: [] },
  ],
});

function found(first: number, second: number, verdict = "accepted") {
  const one = (at: number) => ({ type: "linear, at the toe", at: `${at} mm`, length: "1.4 mm", verdict });
  return {
    report: { standard: "EN ISO 23278", level: "2X" },
    thicknesses: ["8.0 mm"],
    indications: [one(first), one(second)],
  };
}
