import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, quantity, thing, things } from "../../model/input.ts";
import { printFigure } from "../../model/print-number.ts";
import { atLeast } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf, onSteamEquipment } from "../../requirements/boiler-conditions.ts";
import { owedBy } from "../../model/owes.ts";

const said = (value: number, unit: string) => `${printFigure(value)} ${unit}`;

export const feedPumpDuty = rule({
  id: "feed-pump-duty",
  scope: "shell-boilers",
  title: "A feed pump feeds the boiler at its pressure with margin, above it, and while the safety valves blow",
  basis: fromMemory("TRD 401", undefined, "feed pumps of steam boilers; the factors stand in the profile"),
  kind: "fitting",
  when: [fittingOf("feed-pump"), onSteamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    points: list(thing("pumpPoints[]", { flow: quantity("flow", "kg/h"), pressure: quantity("pressure", "bar") })),
    output: quantity("equipment.duty.steamOutput", "kg/h"),
    most: quantity("equipment.limits.maximumAllowablePressure", "bar"),
    valves: anyOf(things("equipment.<safety-valve:equipment>", { set: quantity("setPressure", "bar") })),
    flowFactor: quantity("profile.feedFlowFactor", "1"),
    pressureFactor: quantity("profile.feedPressureFactor", "1"),
    reserve: quantity("profile.feedReserveFactor", "1"),
  },
  owes: [owedBy("quality", "final-inspection", "points")],
  *check({ points, output, most, valves, flowFactor, pressureFactor, reserve }, pump) {
    const duties = [
      { name: "flow", flow: flowFactor.value * output.high, pressure: most.high },
      { name: "pressure", flow: output.high, pressure: pressureFactor.value * most.high },
      ...(valves.length === 0
        ? []
        : [{ name: "reserve", flow: 0, pressure: reserve.value * Math.max(...valves.map(({ set }) => set.high)) }]),
    ];
    for (const { name, flow, pressure } of duties) {
      const shown = points.some(
        (point) =>
          point.flow.low > 0 && atLeast(point.flow, flow) === "yes" && atLeast(point.pressure, pressure) === "yes",
      );
      if (shown) continue;
      yield {
        at: "points",
        name,
        message: `no point of feed pump ${pump.name} shows ${flow === 0 ? "any flow" : said(flow, "kg/h")} at ${said(pressure, "bar")}`,
        why: `points: ${points.map((point) => `${point.flow.text} at ${point.pressure.text}`).join("; ")}`,
        hint: "enter the point of the curve that shows it; if there is none, the pump is too small",
        related: [
          { at: "output", message: `steam output ${output.text}` },
          { at: "most", message: `${most.text} here` },
        ],
      };
    }
  },
  examples: [
    {
      name: "just all three",
      given: pump(["5000 kg/h", "10 bar"], ["4000 kg/h", "11 bar"], ["3800 kg/h", "10.6 bar"]),
      objections: [],
    },
    { name: "one point shows all", given: pump(["5 t/h", "12 bar"]), objections: [] },
    { name: "no safety valve to compare with", given: { ...pump(["5 t/h", "11 bar"]), valves: [] }, objections: [] },
    {
      name: "too little at the pressure",
      given: pump(["4999 kg/h", "12 bar"]),
      objections: ["no point of feed pump X-01 shows 5000 kg/h at 10 bar"],
    },
    {
      name: "too little above it",
      given: pump(["5000 kg/h", "10.9 bar"]),
      objections: ["no point of feed pump X-01 shows 4000 kg/h at 11 bar"],
    },
    {
      name: "too little while the valves blow",
      given: { ...pump(["5000 kg/h", "11 bar"]), valves: [{ set: "10.0 bar" }, { set: "11 bar" }] },
      objections: ["no point of feed pump X-01 shows any flow at 11.33 bar"],
    },
    {
      name: "a pump that is shut off",
      given: pump(["5000 kg/h", "11 bar"], ["0 kg/h", "14 bar"]),
      objections: [],
    },
    {
      name: "pressure without flow",
      given: { ...pump(["5000 kg/h", "11 bar"], ["0 kg/h", "14 bar"]), valves: [{ set: "11 bar" }] },
      objections: ["no point of feed pump X-01 shows any flow at 11.33 bar"],
    },
  ],
});

function pump(...points: readonly (readonly [flow: string, pressure: string])[]) {
  return {
    points: points.map(([flow, pressure]) => ({ flow, pressure })),
    output: "4000 kg/h",
    most: "10 bar",
    valves: [{ set: "10 bar" }],
    flowFactor: "1.25",
    pressureFactor: "1.1",
    reserve: "1.03",
  };
}
