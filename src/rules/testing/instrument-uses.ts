import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, things, type Condition } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { aKind } from "../shared/words.ts";

interface Use {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
  readonly when?: readonly Condition[];
  /** "measured", as in "calliper CA-05 measured in ..." */
  readonly what: string;
  readonly types: readonly string[];
}

export const lengths = ["thickness meter", "ultrasonic set", "calliper", "micrometer", "tape", "weld gauge"];
export const heats = ["thermometer", "thermocouple", "recorder"];
export const gauges = ["pressure gauge", "pressure transmitter", "recorder"];
const lights = ["light meter", "ultraviolet meter"];

/** Of a test by a method what it is called, and kinds of instrument that serve for it. */
const methods: Readonly<Record<string, readonly [what: string, types: readonly string[]]>> = {
  VT: ["visual testing", [...lights, ...lengths, ...heats]],
  MT: ["magnetic particle testing", ["magnetic yoke", "field meter", ...lights, ...heats]],
  PT: ["penetrant testing", [...lights, ...heats]],
  RT: ["radiography", ["densitometer", "step tablet", "light meter", ...lengths, ...heats]],
  UT: ["ultrasonic testing", ["ultrasonic set", ...lengths, ...heats]],
};

/** Kinds of instrument that serve for a test by a method. */
export const serving = (method: string): readonly string[] => methods[method]?.[1] ?? [];

const uses: readonly Use[] = [
  {
    id: "instruments-of-dimensions",
    kind: "dimension-check",
    path: "instruments[]",
    what: "a measurement of sizes",
    types: [...lengths, "coating thickness meter", "hardness tester"],
  },
  {
    id: "instruments-of-tube-ends",
    kind: "tube-end-group",
    path: "instruments[]",
    what: "a measurement of tube ends",
    types: [...lengths, ...heats, "welding meter"],
  },
  {
    id: "thermometers-of-pressure-test",
    kind: "pressure-test",
    path: "thermometers[]",
    what: "a temperature",
    types: heats,
  },
  {
    id: "instruments-of-heat-treatment",
    kind: "heat-treatment",
    path: "instruments[]",
    what: "a temperature",
    types: heats,
  },
  {
    id: "instruments-of-run",
    kind: "weld-log#runs",
    path: "instruments[]",
    what: "a run of welding",
    types: ["welding meter", "recorder", ...heats],
  },
  {
    id: "instruments-of-coating",
    kind: "coating-report",
    path: "instruments[]",
    what: "a measurement of a coat",
    types: ["coating thickness meter", ...heats],
  },
  {
    id: "instruments-of-hardness",
    kind: "hardness-report",
    path: "instruments[]",
    what: "a test of hardness",
    types: ["hardness tester"],
  },
  {
    id: "instruments-of-leak-test",
    kind: "leak-test",
    path: "instruments[]",
    what: "a leak test",
    types: [...gauges, ...heats],
  },
  // An analyser is of no kind that is listed, so that none of those serves.
  {
    id: "instruments-of-analysis",
    kind: "alloy-report",
    path: "instruments[]",
    what: "an analysis of steel",
    types: [],
  },
  { id: "gauge-of-bench", kind: "safety-valve", path: "bench.instrument", what: "a pressure", types: gauges },
  ...Object.entries(methods).map(([method, [what, types]]): Use => ({
    id: `instruments-of-${method.toLowerCase()}`,
    kind: "ndt-report",
    path: "instruments[]",
    when: [{ path: "method", equals: method }],
    what,
    types,
  })),
];

/** Whoever names an instrument names one that can measure what was measured. `other` says nothing, and fits all. */
export const instrumentUses: readonly Rule[] = uses.map(({ id, kind, path, when = [], what, types }) =>
  rule({
    id,
    title: `The instruments named in ${aKind(kind)} serve for ${what}`,
    basis: commonPractice("what an instrument reads, and what is read in each kind of test"),
    kind,
    when: [...when, { path, exists: true }],
    severity: "nonconformity",
    owner: "quality",
    inputs: { named: anyOf(list(text(path))), instruments: anyOf(things(path, { type: text("type") })) },
    *check({ instruments }, subject) {
      for (const instrument of instruments)
        if (instrument.type !== "other" && !types.includes(instrument.type))
          yield {
            at: "named",
            name: instrument.$.id,
            accuses: [],
            message: `${subject.name} names ${instrument.type} ${instrument.$.name} for ${what}`,
            why: types.length === 0 ? "such is read with an analyser" : `such are read with: ${types.join(", ")}`,
            hint: "name the instrument that was used, or correct what kind of instrument this one is",
            related: [{ at: [instrument, "type"], message: `${instrument.type} here` }],
          };
    },
    examples: [
      {
        name: "one that serves",
        given: { instruments: [{ type: types[0] ?? "other" }, { type: "other" }] },
        objections: [],
      },
      {
        name: "one that does not",
        given: { instruments: [{ $: "I-9", type: "scale of masses" }] },
        objections: [`X-01 names scale of masses I-9 for ${what}`],
      },
    ],
  }),
);
