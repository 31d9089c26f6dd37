import { commonPractice, fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { atLeast } from "../../model/quantity.ts";
import { exactly } from "../../model/quantity.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { firstFew } from "../shared/words.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";

const records = fromMemory("EN ISO 3834-2", "2021", "welding consumables: batch testing, storage and handling");

/** What is welded with batches: the runs of a log, and a repair. */
const welded = [
  { id: "consumables-complete", kind: "weld-log#runs", called: "run", when: [] },
  { id: "repair-consumables-complete", kind: "repair", called: "repair", when: [weldedRepair] },
] as const;

export const consumablesComplete: readonly Rule[] = welded.map(({ id, kind, called, when }) =>
  rule({
    id,
    title: `A ${called} names a batch of everything its process consumes, each for that process, its certificate issued before use`,
    basis: records,
    kind,
    when,
    fault: "consumables-complete",
    severity: "nonconformity",
    owner: "welding coordination",
    inputs: {
      process: text("process"),
      day: date("date"),
      consumed: table("process-consumables"),
      named: anyOf(list(text("batches[]"))),
      batches: list(
        thing("batches[]", {
          type: text("type"),
          processes: list(text("processes[]")),
          issued: date("certificate.issued"),
        }),
      ),
    },
    *check({ process, day, consumed, batches }, run) {
      const row = consumed(process);
      const wanted = [row.texts("filler"), row.texts("beside")].filter((one) => one.length > 0);
      const lacking = wanted.filter((one) => !batches.some(({ type }) => one.includes(type)));
      if (lacking.length > 0)
        yield {
          at: "named",
          accuses: [],
          name: "missing",
          message: `${run.name} names no batch of ${lacking.map((one) => one.join(" or ")).join(", no batch of ")}`,
          why: `welded by ${process}; batches: ${batches.map(({ $, type }) => `${$.name} (${type})`).join(", ")}`,
          hint: "enter the batch from the weld log sheet; if nobody knows it, raise a nonconformity report",
        };
      for (const batch of batches) {
        if (!batch.processes.includes(process))
          yield {
            at: [batch, "processes"],
            on: batch,
            accuses: [],
            name: `process ${process}`,
            message: `batch ${batch.$.name} is for process ${batch.processes.join(", ")}, and was used with ${process}`,
            why: `used in ${run.name}`,
            hint: "correct the batch or the process; else have the weld judged by the welding coordinator",
          };
        if (canPrecede(batch.issued, day) === "no")
          yield {
            at: [batch, "issued"],
            on: batch,
            name: "issued",
            message: `the certificate of batch ${batch.$.name} was issued on ${batch.issued.text}, after it was used on ${day.text}`,
            why: `used in ${run.name}`,
            hint: "correct the batch or the date; else have the weld judged by the welding coordinator",
          };
      }
    },
    examples: [
      { name: "wire and gas", given: fed(["wire", "135"], ["shielding gas", "135"]), objections: [] },
      { name: "nothing but gas", given: fed(["shielding gas", "135"]), objections: ["X-01 names no batch of wire"] },
      { name: "no gas", given: fed(["wire", "135"]), objections: ["X-01 names no batch of shielding gas"] },
      {
        name: "a wire for another process",
        given: fed(["wire", "121"], ["shielding gas", "135"]),
        objections: ["batch B-1 is for process 121, and was used with 135"],
      },
      {
        name: "certified a day later",
        given: { ...fed(["wire", "135"], ["shielding gas", "135"]), day: "2026-04-28" },
        objections: [
          "the certificate of batch B-1 was issued on 2026-04-29, after it was used on 2026-04-28",
          "the certificate of batch B-2 was issued on 2026-04-29, after it was used on 2026-04-28",
        ],
      },
    ],
  }),
);

function fed(...batches: readonly (readonly [type: string, process: string])[]) {
  return {
    process: "135",
    day: "2026-05-27",
    batches: batches.map(([type, process], index) => ({
      $: `B-${index + 1}`,
      type,
      processes: [process],
      issued: "2026-04-29",
    })),
  };
}

export const batchCertificate = rule({
  id: "batch-certificate",
  title: "A batch of filler is certified by results, at least type 2.2",
  basis: commonPractice("fillers of pressure equipment come with type 2.2 or better; the order may ask for more"),
  kind: "consumable-batch",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    type: text("certificate.type"),
    what: text("type"),
  },
  *check({ type, what }, batch) {
    if (type === "2.1")
      yield {
        at: "type",
        name: "type",
        message: `batch ${batch.name} is certified by type 2.1`,
        why: `${what}: a statement without results proves nothing of the metal it deposits`,
        hint: "ask the maker for a certificate with results",
      };
  },
  examples: [
    { name: "by results", given: { type: "2.2", what: "wire" }, objections: [] },
    {
      name: "by a statement",
      given: { type: "2.1", what: "wire" },
      objections: ["batch X-01 is certified by type 2.1"],
    },
  ],
});

const least = { temperature: exactly(250, "°C"), time: exactly(1, "h") };

export const batchDried = rule({
  id: "batch-dried",
  title: "Basic electrodes and flux that were dried were dried before use, hot and long enough",
  basis: commonPractice(
    "basic electrodes and flux: 300 °C to 350 °C for two hours; below 250 °C or an hour moisture stays",
  ),
  kind: "consumable-batch",
  // What else is dried takes no harm from moisture, and is not judged.
  when: [
    { path: "dryings", exists: true },
    { path: "type", equals: ["flux", "covered electrode"] },
  ],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    type: text("type"),
    designation: text("designation"),
    dryings: things("dryings[]", {
      day: date("date"),
      temperature: optional(quantity("temperature", "°C")),
      time: optional(quantity("time", "h")),
    }),
    runs: anyOf(things("<weld-log:runs[].batches[]>", { day: date("date") })),
  },
  *check({ type, designation, dryings, runs }, batch) {
    const basic = type === "flux" || (type === "covered electrode" && /\bB\b/u.test(designation));
    for (const drying of dryings) {
      const { temperature, time, day } = drying;
      const cool = basic && temperature !== undefined && atLeast(temperature, least.temperature) !== "yes";
      const short = basic && time !== undefined && atLeast(time, least.time) !== "yes";
      if (cool || short)
        yield {
          at: [drying, cool ? "temperature" : "time"],
          name: `drying ${day.text}`,
          message: `batch ${batch.name} was dried at ${temperature?.text ?? "no stated temperature"} for ${time?.text ?? "no stated time"}`,
          why: `${type} ${designation}: at least ${least.temperature.text} for ${least.time.text}`,
          hint: "compare with the drying record and the maker's advice",
        };
    }
    const [first] = [...dryings].sort((a, b) => a.day.from - b.day.from);
    const early = first === undefined ? [] : runs.filter(({ day }) => canPrecede(first.day, day) === "no");
    if (first !== undefined && early.length > 0)
      yield {
        at: [first, "day"],
        name: "order",
        message: `batch ${batch.name} was first dried on ${first.day.text}, after it was used`,
        why: firstFew(early.map(({ $, day }) => `${$.name} on ${day.text}`)),
        hint: "enter the drying before that use, or have the welds judged",
      };
  },
  examples: [
    {
      name: "hot and long enough, the day before",
      given: {
        type: "flux",
        designation: "S A AB 1",
        dryings: [{ temperature: "300 °C", time: "2 h", day: "2026-03-01" }, { day: "2026-03-09" }],
        runs: [{ day: "2026-03-02" }],
      },
      objections: [],
    },
    {
      name: "rutile electrodes, only warmed",
      given: {
        type: "covered electrode",
        designation: "E 42 0 RR 12",
        dryings: [{ temperature: "100 °C", time: "1 h", day: "2026-03-01" }],
      },
      objections: [],
    },
    {
      name: "lukewarm, after use",
      given: {
        type: "flux",
        designation: "S A AB 1",
        dryings: [{ temperature: "80 °C", time: "0.5 h", day: "2026-03-03" }],
        runs: [{ $: "WL-1", day: "2026-03-02" }],
      },
      objections: [
        "batch X-01 was dried at 80 °C for 0.5 h",
        "batch X-01 was first dried on 2026-03-03, after it was used",
      ],
    },
  ],
});
