import { fromMemory } from "../../model/basis.ts";
import { quantity, table, text } from "../../model/input.ts";
import { atLeast, atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { limit, load, own, reread, steelsOf, strictest, thickestOf } from "./load-limits.ts";

export const heatTreatmentHeld = rule({
  id: "heat-treatment-held",
  title: "A heat treatment holds the temperature of its steel for as long as the thickness asks for",
  basis: fromMemory(
    "EN 13445-4",
    undefined,
    "temperature and time by material group and thickness; what the procedure states binds as well",
  ),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    type: text("type"),
    lowest: quantity("holdingLowest", "°C"),
    highest: quantity("holdingHighest", "°C"),
    time: quantity("holdingTime", "min"),
    ...load,
    procedure: own,
    ranges: table("heat-treatment-range"),
  },
  *check(given, charge) {
    const { type, lowest, highest, time, procedure, ranges } = given;
    const thickness = thickestOf(given);
    if (thickness === undefined) return;
    const rows = steelsOf(given).map((steel) => ({
      by: `${steel.grade}, group ${steel.group}, ${thickness.text}`,
      row: ranges(type, steel.group, steel.grade, thickness),
    }));
    const of = (column: string) => rows.map(({ row, by }) => limit(row.quantity(column), by));
    const said = procedure?.$.name ?? "";
    const name = `${type} ${charge.name}`;
    const least = strictest([...of("from"), limit(procedure?.lowest, said)], "least");
    const most = strictest([...of("to"), limit(procedure?.highest, said)], "most");
    const hold = strictest([...of("time"), limit(procedure?.time, said)], "least");
    if (highest.value < lowest.value)
      yield {
        at: "lowest",
        accuses: ["lowest", "highest"],
        name: "swapped",
        message: `${name} is entered as held between ${lowest.text} at the lowest and ${highest.text} at the highest`,
        why: "the lowest lies above the highest",
        hint: "compare with the chart and correct them",
      };
    else {
      if (least !== undefined && atLeast(lowest, least.value) !== "yes")
        yield {
          at: "lowest",
          name: "cold",
          message: `${name} held ${lowest.text} at the lowest; ${least.value.text} is the least for it`,
          why: least.by,
          hint: reread,
          unsure: atLeast(lowest, least.value) === "unsure",
        };
      if (most !== undefined && atMost(highest, most.value) !== "yes")
        yield {
          at: "highest",
          name: "hot",
          message: `${name} held ${highest.text} at the highest; ${most.value.text} is the most for it`,
          why: most.by,
          hint: reread,
          unsure: atMost(highest, most.value) === "unsure",
        };
    }
    if (hold !== undefined && atLeast(time, hold.value) !== "yes")
      yield {
        at: "time",
        name: "short",
        message: `${name} held for ${time.text}; ${hold.value.text} is the least for it`,
        why: hold.by,
        hint: reread,
        unsure: atLeast(time, hold.value) === "unsure",
      };
  },
  examples: [
    { name: "stress relief", given: charge({}), objections: [] },
    {
      name: "at 400 °C for ten minutes",
      given: charge({ lowest: "400 °C", highest: "410 °C", time: "10 min" }),
      objections: [
        "stress relief X-01 held 400 °C at the lowest; 550 °C is the least for it",
        "stress relief X-01 held for 10 min; 30 min is the least for it",
      ],
    },
    {
      name: "too hot",
      given: charge({ highest: "601 °C" }),
      objections: ["stress relief X-01 held 601 °C at the highest; 600 °C is the most for it"],
    },
    { name: "16Mo3 may be hotter", given: charge({ highest: "620 °C" }, "16Mo3", "1.2"), objections: [] },
    {
      name: "60 mm thick",
      given: charge({ time: "54 min" }, "P265GH", "1.1", "60 mm"),
      objections: ["stress relief X-01 held for 54 min; 55 min is the least for it"],
    },
    {
      name: "normalising",
      given: charge({ type: "normalising", lowest: "890 °C", highest: "940 °C", time: "12 min" }),
      objections: [],
    },
    {
      name: "normalising, too cold",
      given: charge({ type: "normalising", lowest: "790 °C", highest: "900 °C" }),
      objections: ["normalising X-01 held 790 °C at the lowest; 880 °C is the least for it"],
    },
    {
      name: "the procedure asks for more",
      given: { ...charge({}), procedure: { $: "PRC-HT revision 0", lowest: "570 °C", time: "60 min" } },
      objections: [
        "stress relief X-01 held 560 °C at the lowest; 570 °C is the least for it",
        "stress relief X-01 held for 40 min; 60 min is the least for it",
      ],
    },
    {
      name: "ends exchanged",
      given: charge({ lowest: "590 °C", highest: "560 °C" }),
      objections: ["stress relief X-01 is entered as held between 590 °C at the lowest and 560 °C at the highest"],
    },
  ],
});

function charge(changes: Readonly<Record<string, string>>, grade = "P265GH", group = "1.1", thickness = "20 mm") {
  return {
    type: "stress relief",
    lowest: "560 °C",
    highest: "590 °C",
    time: "40 min",
    parts: [],
    joints: [{ thicknesses: [thickness, "80 mm"], parts: [{ grade, group }] }],
    ...changes,
  };
}
