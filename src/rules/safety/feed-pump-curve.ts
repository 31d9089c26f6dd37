import { commonPractice } from "../../model/basis.ts";
import { anyOf, quantity, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const pumpCurve = rule({
  id: "feed-pump-curve",
  title: "A feed pump gives less pressure the more it delivers",
  basis: commonPractice("the curve of a centrifugal pump falls from its shut-off head"),
  kind: "fitting",
  scope: "shell-boilers",
  when: [
    { path: "sort", equals: "feed-pump" },
    { path: "pumpPoints", exists: true },
  ],
  severity: "query",
  owner: "supplier",
  inputs: {
    points: anyOf(things("pumpPoints[]", { flow: quantity("flow", "kg/h"), pressure: quantity("pressure", "bar") })),
  },
  *check({ points }, pump) {
    const along = [...points].sort((a, b) => a.flow.value - b.flow.value || b.pressure.value - a.pressure.value);
    for (const [index, point] of along.entries()) {
      const before = along[index - 1];
      if (before === undefined || point.pressure.low <= before.pressure.high) continue;
      yield {
        at: [point, "pressure"],
        accuses: [],
        message: `feed pump ${pump.name} gives ${point.pressure.text} at ${point.flow.text}, and ${before.pressure.text} at ${before.flow.text}`,
        why: `points: ${along.map(({ flow, pressure }) => `${flow.text} at ${pressure.text}`).join(", ")}`,
        hint: "compare each point with the pump's sheet; if its curve rises, answer this query with the sheet",
      };
      return;
    }
  },
  examples: [
    { name: "falling", given: curve("11.1 bar"), objections: [] },
    {
      name: "a digit too many",
      given: curve("111 bar"),
      objections: ["feed pump X-01 gives 111 bar at 4800 kg/h, and 11.6 bar at 4300 kg/h"],
    },
  ],
});

function curve(pressure: string) {
  return {
    points: [
      { flow: "5600 kg/h", pressure: "10.6 bar" },
      { flow: "4300 kg/h", pressure: "11.6 bar" },
      { flow: "4800 kg/h", pressure },
    ],
  };
}
