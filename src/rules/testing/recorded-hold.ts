import { ownChoice } from "../../model/basis.ts";
import { canPrecede, type DateValue } from "../../model/dates.ts";
import { date, list } from "../../model/input.ts";
import { heldThrough } from "../../requirements/testing-conditions.ts";
import { rule } from "../../model/rule.ts";

/** The times of a hold in their order, with the day of the test. */
export const recordedHold = rule({
  id: "recorded-hold",
  title: "The recorded hold lies within the readings and after the pump was isolated",
  basis: ownChoice("a hold that nobody read is not evidenced"),
  kind: "pressure-test",
  when: [heldThrough],
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    day: date("date"),
    isolated: date("pumpIsolated"),
    from: date("holdStart"),
    to: date("holdEnd"),
    readings: list(date("readings[].time")),
  },
  *check({ day, isolated, from, to, readings }, test) {
    const ordered = [...readings].sort((a, b) => a.from - b.from);
    const [first, last] = [ordered[0], ordered.at(-1)];
    if (first === undefined || last === undefined) return;
    const order: readonly (readonly [DateValue, DateValue, string, "isolated" | "from" | "to" | "readings"])[] = [
      [from, to, `the hold ends at ${to.text}, before it begins at ${from.text}`, "to"],
      [isolated, from, `the hold begins at ${from.text}, before the pump was isolated at ${isolated.text}`, "from"],
      [first, from, `the hold begins at ${from.text}, before the first reading at ${first.text}`, "from"],
      [to, last, `the hold ends at ${to.text}, after the last reading at ${last.text}`, "to"],
    ];
    const broken = order.find(([earlier, later]) => canPrecede(earlier, later) === "no");
    if (broken !== undefined)
      yield {
        at: broken[3],
        message: `pressure test ${test.name}: ${broken[2]}`,
        why: `${readings.length} readings, ${first.text} to ${last.text}; pump isolated at ${isolated.text}`,
        hint: "compare with the chart and the reading sheet; correct the wrong time, else repeat the test",
      };
    else if (!readings.some((one) => one.day === day.day))
      yield {
        at: "day",
        message: `pressure test ${test.name} is dated ${day.day}; its readings are of ${first.day}`,
        why: `${readings.length} readings, ${first.text} to ${last.text}`,
        hint: "compare with the test report; correct the date or the readings",
      };
  },
  examples: [
    { name: "from the first reading to the last", given: hold({}), objections: [] },
    {
      name: "a minute before the first reading",
      given: hold({ from: "2026-07-01T09:59+02:00", isolated: "2026-07-01T09:50+02:00" }),
      objections: [
        "pressure test X-01: the hold begins at 2026-07-01T09:59+02:00, before the first reading at 2026-07-01T10:00+02:00",
      ],
    },
    {
      name: "a minute after the last reading",
      given: hold({ to: "2026-07-01T10:31+02:00" }),
      objections: [
        "pressure test X-01: the hold ends at 2026-07-01T10:31+02:00, after the last reading at 2026-07-01T10:30+02:00",
      ],
    },
    {
      name: "begun with the pump still on",
      given: hold({ isolated: "2026-07-01T10:01+02:00" }),
      objections: [
        "pressure test X-01: the hold begins at 2026-07-01T10:00+02:00, before the pump was isolated at 2026-07-01T10:01+02:00",
      ],
    },
    {
      name: "ended before it began",
      given: hold({ to: "2026-07-01T09:30+02:00" }),
      objections: [
        "pressure test X-01: the hold ends at 2026-07-01T09:30+02:00, before it begins at 2026-07-01T10:00+02:00",
      ],
    },
    {
      name: "dated another day",
      given: hold({ day: "2026-07-02" }),
      objections: ["pressure test X-01 is dated 2026-07-02; its readings are of 2026-07-01"],
    },
  ],
});

function hold(changes: Readonly<Record<string, string>>) {
  return {
    day: "2026-07-01",
    isolated: "2026-07-01T10:00+02:00",
    from: "2026-07-01T10:00+02:00",
    to: "2026-07-01T10:30+02:00",
    readings: ["2026-07-01T10:00+02:00", "2026-07-01T10:15+02:00", "2026-07-01T10:30+02:00"],
    ...changes,
  };
}
