import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, table, text, things, type Row } from "../../model/input.ts";
import { atMost, exactly } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { limit, own, reread, strictest } from "./load-limits.ts";

interface Rate {
  readonly at: "loading" | "heating" | "cooling";
  readonly called: string;
}

const rates: readonly Rate[] = [
  { at: "loading", called: "loaded at" },
  { at: "heating", called: "heated at" },
  { at: "cooling", called: "cooled at" },
];

export const heatTreatmentRates = rule({
  id: "heat-treatment-rates",
  title: "A heat treatment is loaded, heated and cooled no faster than thickness and procedure permit",
  basis: fromMemory(
    "EN 13445-4",
    undefined,
    "loading temperature, rates of heating and cooling; what the procedure states binds as well",
  ),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    type: text("type"),
    loading: optional(quantity("loadingTemperature", "°C")),
    heating: optional(quantity("heatingRate", "K/h")),
    cooling: optional(quantity("coolingRate", "K/h")),
    parts: anyOf(things("parts[]", { thickness: quantity("nominalThickness", "mm") })),
    joints: anyOf(things("joints[]", { thicknesses: list(quantity("thicknesses[]", "mm")) })),
    procedure: own,
    limits: table("heat-treatment-rates"),
  },
  *check(given, charge) {
    const { type, procedure, limits, parts, joints } = given;
    const walls = [
      ...parts.map(({ thickness }) => thickness.value),
      ...joints.flatMap(({ thicknesses }) => thicknesses.map(({ value }) => value)),
    ];
    if (walls.length === 0) return;
    const thickest = exactly(Math.max(...walls), "mm");
    const row: Row = limits(type, thickest);
    for (const { at, called } of rates) {
      const value = given[at];
      const most = strictest(
        [limit(row.quantity(at), `${thickest.text} mm thick`), limit(procedure?.[at], procedure?.$.name ?? "")],
        "most",
      );
      if (value !== undefined && most !== undefined && atMost(value, most.value) !== "yes")
        yield {
          at,
          name: at,
          message: `${type} ${charge.name} was ${called} ${value.text}; ${most.value.text} is the most for it`,
          why: most.by,
          hint: reread,
          unsure: atMost(value, most.value) === "unsure",
        };
    }
  },
  examples: [
    {
      name: "at the limits",
      given: paced({ loading: "400 °C", heating: "220 K/h", cooling: "280 K/h" }),
      objections: [],
    },
    { name: "not stated", given: paced({}), objections: [] },
    {
      name: "loaded hot, heated and cooled fast",
      given: paced({ loading: "450 °C", heating: "230 K/h", cooling: "300 K/h" }),
      objections: [
        "stress relief X-01 was loaded at 450 °C; 400 °C is the most for it",
        "stress relief X-01 was heated at 230 K/h; 220 K/h is the most for it",
        "stress relief X-01 was cooled at 300 K/h; 280 K/h is the most for it",
      ],
    },
    {
      name: "50 mm thick",
      given: paced({ heating: "111 K/h" }, "50 mm"),
      objections: ["stress relief X-01 was heated at 111 K/h; 110 K/h is the most for it"],
    },
    {
      name: "normalising has no such limits",
      given: paced({ type: "normalising", loading: "800 °C" }),
      objections: [],
    },
    {
      name: "but those of its procedure",
      given: {
        ...paced({ type: "normalising", loading: "800 °C" }),
        procedure: { $: "PRC-1 revision 0", loading: "400 °C" },
      },
      objections: ["normalising X-01 was loaded at 800 °C; 400 °C is the most for it"],
    },
  ],
});

function paced(changes: Readonly<Record<string, string>>, thickness = "20 mm") {
  return { type: "stress relief", parts: [{ thickness }], joints: [], ...changes };
}
