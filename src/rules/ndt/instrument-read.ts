import { commonPractice } from "../../model/basis.ts";
import { anyOf, exists, optional, text, things } from "../../model/input.ts";
import { serving } from "../testing/instrument-uses.ts";
import { serves, servesMethod } from "./named-instruments.ts";
import { aKind } from "../shared/words.ts";
import { rule, type Rule } from "../../model/rule.ts";

const kebab = (name: string) => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

type Figure = "light" | "ultraviolet" | "field";

/** Kinds of instrument that read one figure of a test and nothing else; a light meter may have an ultraviolet cell. */
const read: Readonly<Record<string, readonly [called: string, ...figures: readonly Figure[]]>> = {
  "light meter": ["light", "light", "ultraviolet"],
  "ultraviolet meter": ["ultraviolet light", "ultraviolet"],
  "field meter": ["field strength", "field"],
};

/** What reads a figure of a test, and what the figure is called. */
const readers = {
  illuminance: ["light", ["light meter", "ultraviolet meter"]],
  irradiance: ["ultraviolet light", ["ultraviolet meter", "light meter"]],
  fieldStrength: ["field strength", ["field meter"]],
  surfaceTemperature: ["surface temperature", ["thermometer", "thermocouple", "recorder"]],
} as const;

/** The other way round: what is stated was read with something. */
export const figureRead: readonly Rule[] = Object.entries(readers).map(([figure, [called, types]]) =>
  rule({
    id: `${kebab(figure)}-read`,
    title: `A report that names what its method needs, and nothing that does not serve for it, names what its ${called} was read with`,
    basis: commonPractice("a figure whose instrument is not named is not proved to be of a calibrated one"),
    kind: "ndt-report",
    when: [{ path: figure, exists: true }],
    severity: "query",
    owner: "testing",
    inputs: {
      method: text("method"),
      instruments: anyOf(things("instruments[]", { type: optional(text("type")) })),
      stated: text(figure),
    },
    *check({ method, instruments, stated }, report) {
      if (instruments.some(({ type }) => serves(type, types))) return;
      // That it names none for its method, or one that serves for none of it, is said by that.
      if (!servesMethod(method, instruments)) return;
      if (instruments.some(({ type }) => type !== undefined && !serving(method).includes(type))) return;
      yield {
        at: "stated",
        accuses: [],
        message: `report ${report.name} states ${aKind(called)} of ${stated} and names no ${types.join(" or ")}`,
        why:
          instruments.length === 0
            ? "it names no instrument"
            : `it names ${instruments.map(({ $ }) => $.name).join(", ")}`,
        hint: "name what it was read with; if nothing was, answer this query",
      };
    },
    examples: [
      { name: "named", given: { method: "PT", stated: "500", instruments: [{ type: types[0] }] }, objections: [] },
      {
        name: "not named",
        given: { method: "PT", stated: "500", instruments: [] },
        objections: [`report X-01 states ${aKind(called)} of 500 and names no ${types.join(" or ")}`],
      },
    ],
  }),
);

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
