import { fromMemory } from "../../model/basis.ts";
import { list, optional, quantity, text } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule, type Rule } from "../../model/rule.ts";

/** Testing level that a quality level asks for, by the correlation of EN ISO 17635. */
const asked: Readonly<Record<string, string>> = { B: "B", C: "A", D: "A" };

const ultrasonic = { path: "method", equals: "UT" } as const;
const shared = { kind: "ndt-report", when: [ultrasonic], owner: "testing" } as const;
const owes = (input: string) => [owedBy("testing", "testing-complete", input)];

/** Testing level that an acceptance level of EN ISO 11666 rests on, by the same correlation. */
const restsOn: Readonly<Record<string, string>> = { "2": "B", "3": "A" };
const echoes: readonly string[] = ["EN ISO 11666", "ISO 11666"];

const testingLevel = rule({
  ...shared,
  id: "ultrasonic-level",
  title: "An ultrasonic test is made by the testing level that its quality level and acceptance level ask for",
  basis: fromMemory("EN ISO 17635", undefined, "testing level by quality level and acceptance level"),
  severity: "nonconformity",
  inputs: {
    quality: text("qualityLevel"),
    level: text("ultrasonic.testingLevel"),
    standard: optional(text("acceptance.standard")),
    judged: optional(text("acceptance.level")),
  },
  owes: owes("level"),
  *check({ quality, level, standard = "", judged = "" }, report) {
    const askers = [
      { who: `quality level ${quality}`, least: asked[quality] ?? "B" },
      ...(echoes.includes(standard) ? [{ who: `acceptance level ${judged}`, least: restsOn[judged] ?? "A" }] : []),
    ].filter(({ least }) => level < least);
    const [first] = askers;
    if (first !== undefined)
      yield {
        at: "level",
        message: `report ${report.name} tests by level ${level}; ${askers.map(({ who }) => who).join(" and ")} ${askers.length === 1 ? "asks" : "ask"} for level ${first.least}`,
        why: "a higher level looks from more sides and at more angles",
        hint: "compare with the report; else have the joints tested again",
      };
  },
  examples: [
    { name: "as asked", given: { quality: "C", level: "A" }, objections: [] },
    { name: "more than asked", given: { quality: "C", level: "B" }, objections: [] },
    {
      name: "acceptance level 3 on A",
      given: { quality: "C", level: "A", standard: "EN ISO 11666", judged: "3" },
      objections: [],
    },
    {
      name: "too low",
      given: { quality: "B", level: "A" },
      objections: ["report X-01 tests by level A; quality level B asks for level B"],
    },
    {
      name: "too low for the acceptance level",
      given: { quality: "C", level: "A", standard: "EN ISO 11666", judged: "2" },
      objections: ["report X-01 tests by level A; acceptance level 2 asks for level B"],
    },
    {
      name: "too low for both",
      given: { quality: "B", level: "A", standard: "EN ISO 11666", judged: "2" },
      objections: ["report X-01 tests by level A; quality level B and acceptance level 2 ask for level B"],
    },
  ],
});

const probes = rule({
  ...shared,
  id: "ultrasonic-probes",
  title: "An ultrasonic test is made with probes of the frequencies that are usual for welds",
  basis: fromMemory("EN ISO 17640", undefined, "2 MHz to 5 MHz"),
  severity: "query",
  inputs: { frequencies: list(quantity("ultrasonic.frequencies[]", "MHz")) },
  owes: owes("frequencies"),
  *check({ frequencies }, report) {
    const odd = frequencies.find(({ value }) => value < 2 - 1e-9 || value > 5 + 1e-9);
    if (odd !== undefined)
      yield {
        at: "frequencies",
        message: `report ${report.name} states a probe of ${odd.text}; 2 MHz to 5 MHz are usual for welds`,
        why: frequencies.map((one) => one.text).join(", "),
        hint: "compare with the report, or answer this query with the procedure",
      };
  },
  examples: [
    { name: "at both ends", given: { frequencies: ["2 MHz", "5 MHz"] }, objections: [] },
    {
      name: "one of them odd",
      given: { frequencies: ["4 MHz", "10 MHz"] },
      objections: ["report X-01 states a probe of 10 MHz; 2 MHz to 5 MHz are usual for welds"],
    },
  ],
});

const drift = rule({
  ...shared,
  id: "ultrasonic-drift",
  title: "The sensitivity of an ultrasonic test, as checked after it, is still what was set",
  basis: fromMemory(
    "EN ISO 17640",
    undefined,
    "checked at the end; where it is more than 4 dB less, the test is made again",
  ),
  severity: "nonconformity",
  inputs: { drift: quantity("ultrasonic.drift", "dB") },
  owes: owes("drift"),
  *check({ drift: found }, report) {
    if (found.value < -4)
      yield {
        at: "drift",
        message: `report ${report.name} found itself ${Number((-found.value).toFixed(1))} dB less sensitive at the end than it was set; all tested since the last check is to be tested again`,
        why: "what was too weak to be seen was not seen",
        hint: "add the report of the repeated test, or correct the figure",
      };
  },
  examples: [
    { name: "4 dB less", given: { drift: "-4 dB" }, objections: [] },
    { name: "more sensitive", given: { drift: "+5 dB" }, objections: [] },
    {
      name: "5 dB less",
      given: { drift: "-5 dB" },
      objections: [
        "report X-01 found itself 5 dB less sensitive at the end than it was set; all tested since the last check is to be tested again",
      ],
    },
  ],
});

/** Not owed: where the surface is as that of the block there is none. */
const transfer = rule({
  ...shared,
  id: "ultrasonic-transfer",
  title: "The correction of an ultrasonic test for surface and steel of the part is no greater than these explain",
  basis: fromMemory("EN ISO 17640", undefined, "up to 12 dB; above it the ground is to be found"),
  when: [ultrasonic, { path: "ultrasonic.transferCorrection", exists: true }],
  severity: "query",
  inputs: { transfer: quantity("ultrasonic.transferCorrection", "dB") },
  *check({ transfer: correction }, report) {
    if (correction.value > 12)
      yield {
        at: "transfer",
        message: `report ${report.name} corrects by ${correction.text} for the surface; above 12 dB the ground is to be found`,
        why: "so great a loss is no loss of coupling alone",
        hint: "have the surface dressed and the test repeated, or answer this query with the ground",
      };
  },
  examples: [
    { name: "at the limit", given: { transfer: "12 dB" }, objections: [] },
    {
      name: "above it",
      given: { transfer: "13 dB" },
      objections: ["report X-01 corrects by 13 dB for the surface; above 12 dB the ground is to be found"],
    },
  ],
});

/** The technique of an ultrasonic test, figure by figure: what is not stated is not judged, and never passed. */
export const ultrasonicTechnique: readonly Rule[] = [testingLevel, probes, drift, transfer];
