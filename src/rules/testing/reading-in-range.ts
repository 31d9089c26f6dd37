import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, optional, text, things, type Condition, type Thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { ratioOf, sizeOf } from "../shared/sizes.ts";
import { AKind, aKind, kindName } from "../shared/words.ts";
import { gauges, heats, lengths } from "./instrument-uses.ts";

/** Readings of a record, and what they were read with. */
interface Read {
  readonly id: string;
  readonly kind: string;
  /** Kind of the record the readings stand in. */
  readonly record: string;
  readonly instruments: string;
  readonly readings: string;
  readonly types: readonly string[];
  readonly called: string;
  readonly when?: readonly Condition[];
}

const read: readonly Read[] = [
  {
    id: "size",
    kind: "dimension-check#rows",
    record: "dimension-check",
    instruments: "record.instruments[]",
    readings: "measured[]",
    types: [...lengths, "other"],
    called: "size",
  },
  {
    id: "surface-temperature",
    kind: "ndt-report",
    record: "ndt-report",
    instruments: "instruments[]",
    readings: "surfaceTemperature",
    types: heats,
    called: "surface temperature",
  },
  {
    id: "preheat",
    kind: "weld-log#runs",
    record: "weld-log",
    instruments: "instruments[]",
    readings: "preheat",
    types: heats,
    called: "preheat temperature",
  },
  {
    id: "interpass",
    kind: "weld-log#runs",
    record: "weld-log",
    instruments: "instruments[]",
    readings: "interpass",
    types: heats,
    called: "interpass temperature",
  },
  {
    id: "bore",
    kind: "tube-end-group#measured",
    record: "tube-end-group",
    instruments: "record.instruments[]",
    readings: "insideAfter",
    types: [...lengths, "other"],
    called: "bore",
  },
  {
    id: "coat",
    kind: "coating-report#zones",
    record: "coating-report",
    instruments: "record.instruments[]",
    readings: "greatest",
    types: ["coating thickness meter"],
    called: "thickness of the coat",
  },
  {
    id: "water-temperature",
    kind: "pressure-test",
    record: "pressure-test",
    instruments: "thermometers[]",
    readings: "readings[].waterTemperature",
    types: heats,
    called: "temperature of the medium",
  },
  {
    id: "set-pressure",
    kind: "safety-valve",
    record: "safety-valve",
    instruments: "bench.instrument",
    readings: "setPressure",
    types: gauges,
    called: "set pressure",
  },
];

const instrument = {
  type: optional(text("type")),
  from: optional(text("range.minimum")),
  to: optional(text("range.maximum")),
};
type Instrument = Thing<typeof instrument>;

/** Whether a reading lies within the range of an instrument; undefined where the range says nothing of it. */
function holds({ from, to }: Instrument, reading: string): boolean | undefined {
  const [value, low, high] = [sizeOf(reading), sizeOf(from ?? ""), sizeOf(to ?? "")];
  if (value === undefined || high === undefined) return undefined;
  const share = ratioOf(value, high);
  if (share === undefined) return undefined;
  // Ends below zero: what is compared with them keeps its sign.
  const above = low === undefined || low.unit !== value.unit || value.number >= low.number;
  return above && share <= 1 + 1e-9;
}

/** What is read where an instrument has no scale was not read with it. */
export const readingsInRange: readonly Rule[] = read.map(
  ({ id, kind, record, instruments, readings, types, called, when = [] }) =>
    rule({
      id: `${id}-in-range`,
      title: `${AKind(record)} states no ${called} beyond the range of what it was read with`,
      basis: commonPractice("an instrument reads between the ends of its range only"),
      kind,
      when: [...when, { path: readings, exists: true }, { path: `${instruments}.range.maximum`, exists: true }],
      severity: "nonconformity",
      owner: "quality",
      inputs: { values: anyOf(list(text(readings))), used: anyOf(things(instruments, instrument)) },
      *check({ values, used }, subject) {
        const own = used.filter(({ type }) => type !== undefined && types.includes(type));
        // One whose range nobody recorded may have read it.
        if (own.some(({ to }) => to === undefined)) return;
        const beyond = values.filter((value) => {
          const said = own.flatMap((one) => holds(one, value) ?? []);
          return said.length > 0 && !said.includes(true);
        });
        const [first] = beyond;
        const [one] = own;
        if (first === undefined || one === undefined) return;
        yield {
          at: "values",
          // What one instrument is said to have read is one question, however often it was used.
          on: one,
          name: called,
          accuses: [],
          message: `${subject.name}: ${aKind(called)} of ${first} lies beyond the range of ${own.map(({ $ }) => $.name).join(", ")}`,
          why: own.map(({ $, from, to }) => `${$.name}: ${from ?? "?"} to ${to ?? "?"}`).join("; "),
          hint: `compare reading and instrument with the ${kindName(record)}; name what it was read with, else have it measured again`,
        };
      },
      examples: [
        { name: "within", given: readWith(types, "50 mm", "25 mm", "75 mm"), objections: [] },
        { name: "at the end", given: readWith(types, "75 mm", "25 mm", "75 mm"), objections: [] },
        { name: "a range of another sort", given: readWith(types, "50 mm", "0 bar", "25 bar"), objections: [] },
        {
          name: "beyond",
          given: readWith(types, "76 mm", "25 mm", "75 mm"),
          objections: [`X-01: ${aKind(called)} of 76 mm lies beyond the range of I-01`],
        },
        {
          name: "below",
          given: readWith(types, "24 mm", "25 mm", "75 mm"),
          objections: [`X-01: ${aKind(called)} of 24 mm lies beyond the range of I-01`],
        },
      ],
    }),
);

function readWith([type = ""]: readonly string[], value: string, from: string, to: string) {
  return { values: [value], used: [{ $: "I-01", type, from, to }] };
}
