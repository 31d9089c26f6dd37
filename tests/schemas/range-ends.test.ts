import { expect, it } from "vitest";
import { isObject, type JsonObject } from "../../src/model/json.ts";
import { objectIn, schemas } from "./read-schemas.ts";

/** What a lower end is called, and its upper end. */
const ends = [
  ["from", "to"],
  ["started", "finished"],
  ["holdStart", "holdEnd"],
  ...["minimum:maximum", "lowest:highest", "least:most", "validFrom:validTo", "cutIn:cutOut"].map((pair) =>
    pair.split(":"),
  ),
] as const;

/** Ends that something else holds against each other, or that may be swapped. */
const otherwise: Readonly<Record<string, string>> = {
  "fitting: cutIn, cutOut": "the rule on controllers, which must differ",
  "heat-treatment: started, finished": "the rule on the order of times",
  "ndt-report rows: from, to": "places on a closed seam run over the zero mark",
  "mill-approval: validFrom, validTo": "the rule on the period of an approval",
  "piece-mark transfers: from, to": "marks, not quantities",
  "pressure-test: holdStart, holdEnd": "the rule on the recorded hold",
  "repair: from, to": "places on a closed seam run over the zero mark",
};

/** Pairs of names in one object of which one is the other with the other end's word: `holdingLowest`, `holdingHighest`. */
function pairsIn(names: readonly string[]): readonly (readonly [string, string])[] {
  const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
  return ends.flatMap(([low = "", high = ""]) =>
    names.flatMap((name) => {
      const upper = name === low ? high : name.replace(new RegExp(`${low}(?=[A-Z])`), high);
      const swapped = upper === name ? name.replace(capital(low), capital(high)) : upper;
      return swapped !== name && names.includes(swapped) ? [[name, swapped] as const] : [];
    }),
  );
}

function objectsOf(
  schema: JsonObject,
  where: string,
): readonly { readonly where: string; readonly schema: JsonObject }[] {
  const properties = Object.entries(objectIn(schema, "properties"));
  return [
    { where, schema },
    ...properties.flatMap(([name, one]) => {
      if (!isObject(one)) return [];
      const inner = isObject(one["items"]) ? one["items"] : one;
      return isObject(inner["properties"]) ? objectsOf(inner, `${where} ${name}`) : [];
    }),
  ];
}

it("each upper end of a range names its lower end, or something else compares them", () => {
  const open = [...schemas].flatMap(([kind, schema]) =>
    objectsOf(schema, kind).flatMap(({ where, schema: object }) => {
      const properties = objectIn(object, "properties");
      return pairsIn(Object.keys(properties))
        .filter(([low, high]) => objectIn(properties, high)["x-not-below"] !== low)
        .map(([low, high]) => `${where}: ${low}, ${high}`);
    }),
  );
  expect([...new Set(open)].sort()).toEqual(Object.keys(otherwise).sort());
});
