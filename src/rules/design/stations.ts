import { ownChoice } from "../../model/basis.ts";
import { count, list, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const measuredAtStations = rule({
  id: "measured-at-stations",
  title: "A dimension has a reading for each place at which it was to be measured",
  basis: ownChoice("places and readings stand in one row; one reading says nothing of the other places"),
  kind: "dimension-check#rows",
  when: [{ path: "stations", exists: true }],
  severity: "nonconformity",
  owner: "quality",
  inputs: { feature: text("feature"), stations: count("stations"), measured: list(text("measured[]")) },
  *check({ feature, stations, measured }) {
    if (measured.length >= stations) return;
    yield {
      at: "measured",
      message: `${feature} is measured at ${stations} places and has ${measured.length === 1 ? "1 reading" : `${measured.length} readings`}`,
      why: `measured: ${measured.join(", ")}`,
      hint: "add the readings that are missing, or measure again",
      related: [{ at: "stations", message: `${stations} places here` }],
    };
  },
  examples: [
    { name: "one for each", given: row("7.6 mm", "7.4 mm"), objections: [] },
    { name: "one more", given: row("7.6 mm", "7.4 mm", "7.5 mm"), objections: [] },
    {
      name: "a series of one",
      given: row("7.6 mm"),
      objections: ["knuckle is measured at 2 places and has 1 reading"],
    },
  ],
});

function row(...measured: readonly string[]) {
  return { feature: "knuckle", stations: 2, measured };
}
