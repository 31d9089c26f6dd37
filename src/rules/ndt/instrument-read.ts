import { commonPractice } from "../../model/basis.ts";
import { anyOf, exists, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

type Figure = "light" | "ultraviolet" | "field";

/** Kinds of instrument that read one figure of a test and nothing else; a light meter may have an ultraviolet cell. */
const read: Readonly<Record<string, readonly [called: string, ...figures: readonly Figure[]]>> = {
  "light meter": ["light", "light", "ultraviolet"],
  "ultraviolet meter": ["ultraviolet light", "ultraviolet"],
  "field meter": ["field strength", "field"],
};

export const instrumentRead = rule({
  id: "instrument-of-test-read",
  title: "What a meter was taken along for is in the report of the test",
  basis: commonPractice("who names a meter has read it; what it read is what limits are held against"),
  kind: "ndt-report",
  when: [
    { path: "instruments", exists: true },
    { path: "instruments[].type", equals: Object.keys(read) },
  ],
  severity: "gap",
  owner: "testing",
  inputs: {
    instruments: anyOf(things("instruments[]", { type: text("type") })),
    light: exists("illuminance"),
    ultraviolet: exists("irradiance"),
    field: exists("fieldStrength"),
  },
  *check({ instruments, ...stated }, report) {
    for (const { $, type } of instruments) {
      const [called, ...figures] = read[type] ?? [];
      if (called === undefined || figures.some((figure) => stated[figure])) continue;
      yield {
        at: "subject",
        accuses: [],
        name: $.id,
        message: `report ${report.name} names ${type} ${$.id} and states no ${called}`,
        why: "what it read is what a limit is held against",
        hint: "enter the reading from the report; if it was not used, take the instrument out",
      };
    }
  },
  examples: [
    { name: "read", given: { instruments: [{ $: "LM-01", type: "light meter" }], light: true }, objections: [] },
    {
      name: "by its other cell",
      given: { instruments: [{ $: "LM-01", type: "light meter" }], ultraviolet: true },
      objections: [],
    },
    {
      name: "a field that was measured, and no figure of it",
      given: {
        instruments: [
          { $: "FM-01", type: "field meter" },
          { $: "MY-01", type: "magnetic yoke" },
        ],
      },
      objections: ["report X-01 names field meter FM-01 and states no field strength"],
    },
  ],
});
