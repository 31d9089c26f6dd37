import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Readings that are alike by chance in two logs of a few runs, in nobody's experience. */
const tooMany = 8;

export const readingsCopied = rule({
  id: "readings-copied",
  title: "No weld log has all its readings in common with another",
  basis: commonPractice(
    "currents, voltages, speeds and temperatures scatter: eight and more that all agree were copied",
  ),
  kind: "book",
  when: [{ path: "book.weld-log.runs[].current", exists: true }],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    logs: anyOf(
      things("book.weld-log", {
        runs: anyOf(
          things("runs[]", {
            preheat: optional(quantity("preheat", "°C")),
            interpass: optional(quantity("interpass", "°C")),
            current: optional(quantity("current", "A")),
            voltage: optional(quantity("voltage", "V")),
            speed: optional(quantity("travelSpeed", "mm/min")),
          }),
        ),
      }),
    ),
  },
  *check({ logs }) {
    const alike = new Map<string, (typeof logs)[number][]>();
    for (const log of logs) {
      const readings = log.runs.flatMap(({ preheat, interpass, current, voltage, speed }) => [
        preheat,
        interpass,
        current,
        voltage,
        speed,
      ]);
      if (readings.filter((one) => one !== undefined).length < tooMany) continue;
      const all = readings.map((one) => one?.text ?? "").join(" / ");
      alike.set(all, [...(alike.get(all) ?? []), log]);
    }
    for (const [first, ...others] of alike.values()) {
      if (first === undefined || others.length === 0) continue;
      yield {
        at: first,
        on: first,
        accuses: [],
        name: "alike",
        message: `weld logs ${[first, ...others].map(({ $ }) => $.name).join(", ")} state the same readings in every run`,
        why: `${first.runs.length} runs each, equal to the last digit`,
        hint: "compare with the weld log sheets; enter what was measured at each joint, or answer this query",
        related: others.map((one) => ({ at: one, message: "the same here" })),
      };
    }
  },
  examples: [
    { name: "scattered", given: { logs: [log("A", "142 A"), log("B", "143 A")] }, objections: [] },
    {
      name: "copied",
      given: { logs: [log("A", "142 A"), log("B", "142 A")] },
      objections: ["weld logs A, B state the same readings in every run"],
    },
    {
      name: "of one run, by chance",
      given: {
        logs: [
          { $: "A", runs: log("A", "142 A").runs.slice(0, 1) },
          { $: "B", runs: log("B", "142 A").runs.slice(0, 1) },
        ],
      },
      objections: [],
    },
  ],
});

function log(id: string, current: string) {
  const run = { preheat: "15 °C", current, voltage: "19.0 V", speed: "160 mm/min" };
  return { $: id, runs: [run, { ...run, interpass: "140 °C" }] };
}

/** mm. */
const inTurn = 500;

export const welderAtOneJoint = rule({
  id: "welder-at-one-joint",
  title: "A welder is not logged at two joints at the same time",
  basis: commonPractice(
    "who welds two joints in turn logs each of them when he is at it; welds up to 500 mm long are welded in turn to keep cool",
  ),
  kind: "person",
  when: [{ path: "<weld-log:runs[].welders[]>.finished", exists: true }],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    runs: anyOf(
      things("<weld-log:runs[].welders[]>", {
        log: text("record.id"),
        joint: text("record.joint"),
        length: optional(quantity("record.joint.length", "mm")),
        day: date("date"),
        finished: optional(date("finished")),
      }),
    ),
  },
  *check({ runs }, welder) {
    // Short welds are welded in turn to keep them cool.
    const short = (run: (typeof runs)[number]) => run.length !== undefined && run.length.value <= inTurn;
    const logs = new Map<string, (typeof runs)[number][]>();
    for (const run of runs) if (run.day.text.includes("T")) logs.set(run.log, [...(logs.get(run.log) ?? []), run]);
    const spans = [...logs.values()].flatMap((own) => {
      const [first] = [...own].sort((a, b) => a.day.from - b.day.from);
      const last = own
        .flatMap(({ finished }) => finished ?? [])
        .sort((a, b) => a.from - b.from)
        .at(-1);
      // Over several days nobody knows when he went away and came back.
      return first === undefined || last === undefined || last.day !== first.day.day ? [] : [{ first, last }];
    });
    spans.sort((a, b) => a.first.day.from - b.first.day.from);
    const pairs = spans.flatMap((one, index) => {
      const before = spans[index - 1];
      return before !== undefined &&
        before.first.joint !== one.first.joint &&
        !(short(before.first) && short(one.first)) &&
        canPrecede(before.last, one.first.day) === "no"
        ? [{ before, one }]
        : [];
    });
    const [pair] = pairs;
    if (pair === undefined) return;
    yield {
      at: pair.one.first,
      accuses: [],
      message: `${welder.name} is logged at joint ${pair.before.first.joint} until ${pair.before.last.text}, and at joint ${pair.one.first.joint} from ${pair.one.first.day.text}`,
      why: pairs.map(({ before, one }) => `${before.first.log} and ${one.first.log}`).join("; "),
      hint: "compare the hours with both weld log sheets; if he welded them in turn, answer this query",
      related: [{ at: pair.before.first, message: "logged here too" }],
    };
  },
  examples: [
    {
      name: "one after the other",
      given: { runs: [...at("A", "08:00", "09:40"), ...at("B", "09:40", "11:00")] },
      objections: [],
    },
    {
      name: "at the same time",
      given: { runs: [...at("A", "07:50", "11:10"), ...at("B", "08:00", "09:40")] },
      objections: [
        "X-01 is logged at joint A until 2026-06-12T11:10+02:00, and at joint B from 2026-06-12T08:00+02:00",
      ],
    },
    {
      name: "two logs of one joint",
      given: { runs: [...at("A", "07:50", "11:10"), ...at("A", "08:00", "09:40", "WL-2")] },
      objections: [],
    },
    {
      name: "two short welds in turn",
      given: {
        runs: [...at("A", "07:50", "11:10"), ...at("B", "08:00", "09:40")].map((one) => ({ ...one, length: "67 mm" })),
      },
      objections: [],
    },
    { name: "days alone", given: { runs: [{ log: "A", joint: "A", day: "2026-06-12" }] }, objections: [] },
  ],
});

function at(joint: string, from: string, to: string, log = joint) {
  const time = (hour: string) => `2026-06-12T${hour}+02:00`;
  return [{ log, joint, day: time(from), finished: time(to) }];
}
