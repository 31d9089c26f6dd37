import { excerptSeen } from "../../model/basis.ts";
import { dewPoint, magnus } from "../../model/air.ts";
import { optional, quantity, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** K that steel stays warmer than the dew point, so that no water settles on it. */
const margin = 3;
/** Humidity above which most products are not applied, in percent. */
const dampest = 85;
/** K by which a dew point read off a table or a meter may differ from the computed one. */
const asRead = 1;

export const coatingDewPoint = rule({
  id: "coating-dew-point",
  title: "A layer is applied on steel at least 3 °C above the dew point, in air of at most 85 % humidity",
  basis: excerptSeen(
    "ISO 8502-4 and ISO 12944-7",
    `steel at least 3 °C above the dew point, humidity below 85 %, as summaries of both say; dew point: ${magnus}; one that was read may differ by 1 °C`,
  ),
  kind: "coating-report#layers",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    layer: text("layer"),
    steel: quantity("surfaceTemperature", "°C"),
    air: quantity("airTemperature", "°C"),
    humidity: quantity("humidity", "%"),
    stated: optional(quantity("dewPoint", "°C")),
  },
  *check({ layer, steel, air, humidity, stated }) {
    const dew = dewPoint(air.value, Math.min(100, humidity.value) / 100);
    const computed = `${dew.toFixed(1)} °C`;
    const why = `air ${air.text}, humidity ${humidity.text}: dew point ${computed}`;
    const counts = Math.min(dew, stated?.value ?? dew);
    const apart = stated === undefined ? 0 : Math.abs(stated.value - dew) - stated.halfUnit;
    if (stated !== undefined && apart > asRead)
      yield {
        at: "stated",
        name: "stated",
        message: `the dew point of layer ${layer} is stated as ${stated.text}; its air gives ${computed}`,
        why,
        hint: "compare the temperature, the humidity and the dew point with the report",
        related: [
          { at: "air", message: `${air.text} here` },
          { at: "humidity", message: `${humidity.text} here` },
        ],
      };
    // Where the figures contradict each other, that alone is said; where they agree, the lower one counts.
    else if (steel.high + steel.halfUnit < counts + margin)
      yield {
        at: "steel",
        name: "margin",
        message: `layer ${layer} was applied on steel of ${steel.text}; 3 °C above the dew point is ${(counts + margin).toFixed(1)} °C`,
        why,
        hint: "compare with the report; if it says so, raise a nonconformity report and have the coat judged",
      };
    else if (humidity.low - humidity.halfUnit > dampest)
      yield {
        at: "humidity",
        name: "humidity",
        unsure: true,
        message: `layer ${layer} was applied in air of ${humidity.text} humidity; above 85 % most products are not to be applied`,
        why,
        hint: "compare with the report; if it says so, answer this query with what the maker of the product permits",
      };
  },
  examples: [
    { name: "dry air", given: layerOf("19 °C", "21 °C", "46 %", "9 °C"), objections: [] },
    {
      name: "on the limit, by the dew point as read",
      given: layerOf("12.0 °C", "20 °C", "50 %", "9.0 °C"),
      objections: [],
    },
    { name: "on the limit", given: layerOf("12.3 °C", "20 °C", "50 %"), objections: [] },
    {
      name: "damp steel",
      given: layerOf("11 °C", "20 °C", "50 %"),
      objections: ["layer 1 was applied on steel of 11 °C; 3 °C above the dew point is 12.3 °C"],
    },
    {
      name: "a dew point of other air",
      given: layerOf("19 °C", "21 °C", "64 %", "9 °C"),
      objections: ["the dew point of layer 1 is stated as 9 °C; its air gives 13.9 °C"],
    },
    {
      name: "warm steel in fog",
      given: layerOf("25 °C", "20 °C", "90 %"),
      objections: ["layer 1 was applied in air of 90 % humidity; above 85 % most products are not to be applied"],
    },
  ],
});

function layerOf(steel: string, air: string, humidity: string, stated?: string) {
  return { layer: "1", steel, air, humidity, ...(stated !== undefined && { stated }) };
}
