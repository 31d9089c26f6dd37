import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = { owner: "welding coordination" } as const;

export const qualificationCold = rule({
  ...shared,
  id: "qualification-cold",
  title: "The impact bars of a procedure test are broken as cold as the equipment may become",
  basis: fromMemory(
    "EN 13445-2, Annex B, and Directive 2014/68/EU, Annex I 7.5",
    undefined,
    "not above 20 °C, and not above the lowest temperature of the equipment",
  ),
  kind: "procedure-qualification",
  when: [{ path: "impactTested", equals: true }],
  severity: "query",
  inputs: {
    tests: anyOf(things("tests[]", { type: text("type"), temperature: optional(quantity("temperature", "°C")) })),
    coldest: optional(quantity("book.equipment.limits.minimumAllowableTemperature", "°C")),
  },
  *check({ tests, coldest }, subject) {
    const most = Math.min(20, coldest?.value ?? 20);
    for (const test of tests.filter(({ type }) => type === "impact")) {
      if (test.temperature === undefined)
        yield {
          at: test,
          accuses: [],
          name: `unstated ${test.$.id}`,
          message: `impact test ${test.$.name} states no temperature`,
          why: "steel is tougher when it is warmer",
          hint: "enter the temperature from the record",
        };
      else if (test.temperature.low - test.temperature.halfUnit > most)
        yield {
          at: [test, "temperature"],
          accuses: [],
          name: `warm ${test.$.id}`,
          message: `the impact bars of procedure qualification ${subject.name} were broken at ${test.temperature.text}, warmer than ${coldest === undefined || coldest.value > 20 ? "20 °C" : `the coldest service, ${coldest.text}`}`,
          why: test.$.name,
          hint: "name a qualification that was tested as cold, or answer this query with the method by which it is warm enough",
        };
    }
  },
  examples: [
    { name: "colder", given: broken("-20 °C"), objections: [] },
    {
      name: "warmer",
      given: broken("0 °C"),
      objections: [
        "the impact bars of procedure qualification X-01 were broken at 0 °C, warmer than the coldest service, -10 °C",
      ],
    },
    { name: "not stated", given: broken(), objections: ["impact test T-06 states no temperature"] },
  ],
});

function broken(temperature?: string) {
  return {
    tests: [{ $: "T-06", type: "impact", ...(temperature !== undefined && { temperature }) }],
    coldest: "-10 °C",
  };
}

export const polarityOfProcess = rule({
  ...shared,
  id: "polarity-of-process",
  title: "A procedure of several processes states for each the kind of current it was tested with",
  basis: fromMemory("EN ISO 15614-1", "2017", "kind of current and polarity"),
  kind: "welding-procedure#revisions",
  when: [{ path: "qualifications[].current", exists: true }],
  severity: "nonconformity",
  inputs: {
    processes: list(text("processes[]")),
    current: optional(text("current")),
    runs: anyOf(things("runs[]", { process: optional(text("process")), polarity: optional(text("polarity")) })),
    tested: list(
      thing("qualifications[]", { processes: anyOf(list(text("processes[]"))), current: optional(text("current")) }),
    ),
  },
  *check({ processes, current, runs, tested }, procedure) {
    if (processes.length < 2) return;
    for (const process of processes) {
      const own = runs.filter((run) => run.process === process && run.polarity !== undefined);
      const stated = own.length > 0 ? own.map(({ polarity }) => polarity) : [current];
      const proved = tested
        .filter((one) => one.processes.includes(process) && one.current !== undefined)
        .map((one) => one.current);
      const strange = stated.find((one) => one !== undefined && proved.length > 0 && !proved.includes(one));
      if (strange === undefined) continue;
      const [run] = own;
      yield {
        at: run === undefined ? "current" : [run, "polarity"],
        accuses: [],
        name: process,
        message: `${procedure.name} states ${strange} for process ${process}; it was tested on ${[...new Set(proved)].join(", ")}`,
        why: tested.map((one) => `${one.$.name}: ${one.processes.join(", ")} ${one.current ?? ""}`.trim()).join("; "),
        hint: "state the polarity of each process in its runs, or name a qualification on that current",
      };
    }
  },
  examples: [
    { name: "each its own", given: both("DC-"), objections: [] },
    {
      name: "one for both",
      given: both(),
      objections: ["X-01 states DC+ for process 141; it was tested on DC-"],
    },
    { name: "one process", given: { ...both(), processes: ["141"] }, objections: [] },
  ],
});

function both(tungsten?: string) {
  return {
    processes: ["135", "141"],
    current: "DC+",
    runs: [{ process: "135" }, { process: "141", ...(tungsten !== undefined && { polarity: tungsten }) }],
    tested: [
      { $: "WPQR-13", processes: ["135"], current: "DC+" },
      { $: "WPQR-14", processes: ["141"], current: "DC-" },
    ],
  };
}
