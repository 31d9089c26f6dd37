import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";

/** Testing level that a quality level asks for, by the correlation of EN ISO 17635. */
const asked: Readonly<Record<string, string>> = { B: "B", C: "A", D: "A" };

export const ultrasonicTechnique = rule({
  id: "ultrasonic-technique",
  title: "An ultrasonic test is made by the level, with probes and a sensitivity, that find what it is judged by",
  basis: fromMemory(
    "EN ISO 17635 and EN ISO 17640",
    undefined,
    "testing level by quality level; 2 MHz to 5 MHz; what was set is checked at the end, 4 dB less and the test is made again",
  ),
  kind: "ndt-report",
  when: [{ path: "method", equals: "UT" }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    quality: text("qualityLevel"),
    level: optional(text("ultrasonic.testingLevel")),
    frequencies: anyOf(list(quantity("ultrasonic.frequencies[]", "MHz"))),
    transfer: optional(quantity("ultrasonic.transferCorrection", "dB")),
    drift: optional(quantity("ultrasonic.drift", "dB")),
  },
  // The ground of a correction is not: where the surface is as the block, there is none.
  owes: [owedBy("testing", "testing-complete", "level", "frequencies", "drift")],
  *check({ quality, level, frequencies, transfer, drift }, report) {
    const least = asked[quality] ?? "B";
    if (level !== undefined && level < least)
      yield {
        at: "level",
        name: "level",
        message: `report ${report.name} tests by level ${level}; quality level ${quality} asks for level ${least}`,
        why: "a higher level looks from more sides and at more angles",
        hint: "compare with the report; else have the joints tested again",
      };
    const odd = frequencies.find(({ value }) => value < 2 - 1e-9 || value > 5 + 1e-9);
    if (odd !== undefined)
      yield {
        at: "frequencies",
        name: "frequency",
        message: `report ${report.name} states a probe of ${odd.text}; 2 MHz to 5 MHz are usual for welds`,
        why: frequencies.map((one) => one.text).join(", "),
        hint: "compare with the report, or answer this query with the procedure",
        unsure: true,
      };
    if (transfer !== undefined && transfer.value > 12)
      yield {
        at: "transfer",
        name: "transfer",
        message: `report ${report.name} corrects by ${transfer.text} for the surface; above 12 dB the ground is to be found`,
        why: "so great a loss is no loss of coupling alone",
        hint: "have the surface dressed and the test repeated, or answer this query with the ground",
        unsure: true,
      };
    if (drift !== undefined && drift.value < -4)
      yield {
        at: "drift",
        name: "drift",
        message: `report ${report.name} found itself ${Number((-drift.value).toFixed(1))} dB less sensitive at the end than it was set; all tested since the last check is to be tested again`,
        why: "what was too weak to be seen was not seen",
        hint: "add the report of the repeated test, or correct the figure",
      };
  },
  examples: [
    {
      name: "as usual",
      given: { quality: "C", level: "A", frequencies: ["2 MHz", "5 MHz"], transfer: "12 dB", drift: "-4 dB" },
      objections: [],
    },
    { name: "nothing stated", given: { quality: "B", frequencies: [] }, objections: [] },
    {
      name: "too low a level",
      given: { quality: "B", level: "A", frequencies: [] },
      objections: ["report X-01 tests by level A; quality level B asks for level B"],
    },
    {
      name: "odd figures",
      given: { quality: "C", level: "B", frequencies: ["4 MHz", "10 MHz"], transfer: "13 dB", drift: "-5 dB" },
      objections: [
        "report X-01 states a probe of 10 MHz; 2 MHz to 5 MHz are usual for welds",
        "report X-01 corrects by 13 dB for the surface; above 12 dB the ground is to be found",
        "report X-01 found itself 5 dB less sensitive at the end than it was set; all tested since the last check is to be tested again",
      ],
    },
  ],
});
