import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, optional, text, things, type Thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { ratioOf, sizeOf } from "../shared/sizes.ts";
import { aKind } from "../shared/words.ts";
import { gauges, heats, lengths } from "./instrument-uses.ts";

/** What names instruments and states what was read. */
interface Read {
  readonly id: string;
  /** The records or rows that name an instrument, and below them what it read and all that were named for it. */
  readonly uses: string;
  readonly readings: string;
  readonly instruments: string;
  readonly types: readonly string[];
  readonly called: string;
}

const named = "instruments[]";
const sizes = [...lengths, "other"];

const read: readonly Read[] = [
  {
    id: "size",
    uses: "<dimension-check:instruments[]>",
    readings: "rows[].measured[]",
    instruments: named,
    types: sizes,
    called: "size",
  },
  {
    id: "surface-temperature",
    uses: "<ndt-report:instruments[]>",
    readings: "surfaceTemperature",
    instruments: named,
    types: heats,
    called: "surface temperature",
  },
  {
    id: "preheat",
    uses: "<weld-log:runs[].instruments[]>",
    readings: "preheat",
    instruments: named,
    types: heats,
    called: "preheat temperature",
  },
  {
    id: "interpass",
    uses: "<weld-log:runs[].instruments[]>",
    readings: "interpass",
    instruments: named,
    types: heats,
    called: "interpass temperature",
  },
  {
    id: "bore",
    uses: "<tube-end-group:instruments[]>",
    readings: "measured[].insideAfter",
    instruments: named,
    types: sizes,
    called: "bore",
  },
  {
    id: "coat",
    uses: "<coating-report:instruments[]>",
    readings: "zones[].greatest",
    instruments: named,
    types: ["coating thickness meter"],
    called: "thickness of the coat",
  },
  {
    id: "water-temperature",
    uses: "<pressure-test:thermometers[]>",
    readings: "readings[].waterTemperature",
    instruments: "thermometers[]",
    types: heats,
    called: "temperature of the medium",
  },
  {
    id: "set-pressure",
    uses: "<safety-valve:bench.instrument>",
    readings: "record.setPressure",
    instruments: "instrument",
    types: gauges,
    called: "set pressure",
  },
];

const instrument = {
  type: optional(text("type")),
  from: optional(text("range.minimum")),
  to: optional(text("range.maximum")),
};
type Range = Pick<Thing<typeof instrument>, "from" | "to">;

/** Whether an instrument may have read a value; undefined where its range is not stated, or of another sort. */
function mayRead({ from, to }: Range, reading: string): boolean | undefined {
  const [value, low, high] = [sizeOf(reading), sizeOf(from ?? ""), sizeOf(to ?? "")];
  if (value === undefined || high === undefined) return undefined;
  const share = ratioOf(value, high);
  if (share === undefined) return undefined;
  // Only what begins above zero has a beginning in other units too: a scale of temperatures keeps its own.
  const begun = low === undefined ? undefined : low.number > 0 ? ratioOf(value, low) : undefined;
  const above = begun === undefined ? low?.unit !== value.unit || value.number >= low.number : begun >= 1 - 1e-9;
  return above && share <= 1 + 1e-9;
}

/** What is read where an instrument has no scale was not read with it: one question of the instrument, however often it was used. */
export const readingsInRange: readonly Rule[] = read.map(({ id, uses, readings, instruments, types, called }) =>
  rule({
    id: `${id}-in-range`,
    title: `No ${called} lies beyond the range of the one instrument that may have read it`,
    basis: commonPractice("an instrument reads between the ends of its range only"),
    kind: "instrument",
    when: [
      { path: "type", equals: types },
      { path: "range.maximum", exists: true },
      { path: `${uses}.${readings}`, exists: true },
    ],
    severity: "nonconformity",
    owner: "quality",
    inputs: {
      from: instrument.from,
      to: instrument.to,
      uses: anyOf(
        things(uses, { values: anyOf(list(text(readings))), instruments: anyOf(things(instruments, instrument)) }),
      ),
    },
    *check({ from, to, uses: all }, own) {
      const beyond = all.flatMap((use) => {
        const others = use.instruments.filter(({ $, type }) => $.id !== own.id && (!type || types.includes(type)));
        const value = use.values.find(
          (one) => mayRead({ from, to }, one) === false && others.every((other) => mayRead(other, one) === false),
        );
        return value === undefined ? [] : [{ use, value }];
      });
      const [first, ...more] = beyond;
      if (first === undefined) return;
      yield {
        at: [first.use, "values"],
        accuses: [],
        message: `${first.use.$.name}: ${aKind(called)} of ${first.value} lies beyond the range of ${own.name}${more.length === 0 ? "" : `; ${more.length} more alike`}`,
        why: `${own.name}: ${from ?? "?"} to ${to ?? "?"}`,
        hint: "compare reading and instrument with the paper; name what it was read with, else have it measured again",
        related: more.slice(0, 3).map(({ use, value }) => ({ at: [use, "values"], message: value })),
      };
    },
    examples: [
      { name: "within", given: reading(types, "50 mm", "25 mm", "75 mm"), objections: [] },
      { name: "at both ends", given: reading(types, "75 mm", "75 mm", "75 mm"), objections: [] },
      { name: "a range of another sort", given: reading(types, "50 mm", "0 bar", "25 bar"), objections: [] },
      {
        name: "beyond",
        given: reading(types, "76 mm", "25 mm", "75 mm"),
        objections: [`U-01: ${aKind(called)} of 76 mm lies beyond the range of X-01`],
      },
      {
        name: "below, in another unit",
        given: reading(types, "2.4 cm", "25 mm", "75 mm"),
        objections: [`U-01: ${aKind(called)} of 2.4 cm lies beyond the range of X-01`],
      },
      {
        name: "beyond, with another beside it of which no range is stated",
        given: reading(types, "76 mm", "25 mm", "75 mm", { $: "I-02", type: types[0] ?? "" }),
        objections: [],
      },
      {
        name: "beyond, with another beside it that reads no farther",
        given: reading(types, "76 mm", "25 mm", "75 mm", { $: "I-02", type: types[0] ?? "", to: "50 mm" }),
        objections: [`U-01: ${aKind(called)} of 76 mm lies beyond the range of X-01`],
      },
    ],
  }),
);

function reading(
  [type = ""]: readonly string[],
  value: string,
  from: string,
  to: string,
  ...beside: readonly Readonly<Record<string, string>>[]
) {
  return { from, to, uses: [{ $: "U-01", values: [value], instruments: [{ $: "X-01", type, from, to }, ...beside] }] };
}
