import { derivedFrom } from "../../model/basis.ts";
import { anyOf, list, quantity } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

const ofStations = {
  kind: "weld-log",
  severity: "nonconformity",
  owner: "shop",
} as const;
const hint = "compare with the fit-up sheet and correct the wrong figure";

/** Limits are held against the greatest offset: what is stated of a joint is that of its worst place. */
export const fitUpOffsetGreatest = rule({
  ...ofStations,
  id: "fit-up-offset-greatest",
  title: "The offset stated of a joint is the greatest of the places where it was measured",
  basis: derivedFrom("the greatest of several measurements"),
  when: [{ path: "fitUp.stations[].offset", exists: true }],
  inputs: { offset: quantity("fitUp.offset", "mm"), stations: anyOf(list(quantity("fitUp.stations[].offset", "mm"))) },
  owes: [owedBy("shop", "welding", "offset")],
  *check({ offset, stations }, log) {
    const [greatest] = [...stations].sort((one, other) => other.value - one.value);
    if (greatest !== undefined && holds(offset, "=", greatest) === "no")
      yield {
        at: "offset",
        message: `weld log ${log.name} states an offset of ${offset.text}; the greatest of its ${stations.length} places is ${greatest.text}`,
        why: stations.map((one) => one.text).join(", "),
        hint,
      };
  },
  examples: [
    { name: "the greatest", given: { offset: "0.8 mm", stations: ["0.4 mm", "0.8 mm"] }, objections: [] },
    {
      name: "another",
      given: { offset: "0.4 mm", stations: ["0.4 mm", "0.8 mm"] },
      objections: ["weld log X-01 states an offset of 0.4 mm; the greatest of its 2 places is 0.8 mm"],
    },
  ],
});

/** A root gap has a limit on both sides, so that it may be that of any place. */
export const fitUpGapAmong = rule({
  ...ofStations,
  id: "fit-up-gap-among",
  title: "The root gap stated of a joint is among those of the places where it was measured",
  basis: derivedFrom("a gap lies between the least and the greatest that were measured"),
  when: [{ path: "fitUp.stations[].gap", exists: true }],
  inputs: { gap: quantity("fitUp.gap", "mm"), stations: anyOf(list(quantity("fitUp.stations[].gap", "mm"))) },
  owes: [owedBy("shop", "welding", "gap")],
  *check({ gap, stations }, log) {
    const sorted = [...stations].sort((one, other) => one.value - other.value);
    const [least, most] = [sorted[0], sorted.at(-1)];
    if (least === undefined || most === undefined) return;
    if (holds(gap, ">=", least) !== "no" && holds(gap, "<=", most) !== "no") return;
    yield {
      at: "gap",
      message: `weld log ${log.name} states a root gap of ${gap.text}; its ${stations.length} places have ${least.text} to ${most.text}`,
      why: stations.map((one) => one.text).join(", "),
      hint,
    };
  },
  examples: [
    { name: "between them", given: { gap: "2.4 mm", stations: ["2.2 mm", "2.8 mm"] }, objections: [] },
    {
      name: "wider than any",
      given: { gap: "3.4 mm", stations: ["2.2 mm", "2.8 mm"] },
      objections: ["weld log X-01 states a root gap of 3.4 mm; its 2 places have 2.2 mm to 2.8 mm"],
    },
  ],
});
