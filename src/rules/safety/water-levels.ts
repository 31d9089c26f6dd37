import { commonPractice } from "../../model/basis.ts";
import { quantity } from "../../model/input.ts";
import { exactly, holds, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { steamEquipment } from "../../requirements/boiler-conditions.ts";
import { owedBy } from "../../model/owes.ts";

const level = (name: string) => quantity(`levels.${name}`, "mm");
const sum = (a: Measure, b: Measure): Measure => ({
  ...exactly(a.value + b.value, a.unit),
  low: a.low + b.low,
  high: a.high + b.high,
});

/** From below: each level, what it is called, and how it stands to the one before. */
const ladder = [
  ["lowest", "lowest permissible water level", ">="],
  ["limiter", "level of the low-water limiters", ">="],
  ["normal", "normal water level", ">"],
  ["highest", "highest permissible water level", ">"],
  ["takeOff", "steam take-off", ">"],
] as const;

export const waterLevels = rule({
  id: "water-levels",
  scope: "steam",
  title: "The water levels of a boiler stand in order, the lowest well above what is heated",
  basis: commonPractice("heated surfaces stay covered until the heat is cut, and water stays out of the steam"),
  kind: "equipment",
  when: [steamEquipment],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    heated: level("highestHeatedSurface"),
    lowest: level("lowestPermissible"),
    limiter: level("limiter"),
    normal: level("normal"),
    highest: level("highest"),
    takeOff: level("steamTakeOff"),
    cover: quantity("profile.waterCoverLeast", "mm"),
  },
  owes: [owedBy("design", "design-approved", "heated", "lowest", "limiter", "normal", "highest", "takeOff")],
  *check({ heated, cover, ...levels }, equipment) {
    for (const [index, [name, called, relation]] of ladder.entries()) {
      const [before, below] = ladder[index - 1] ?? ["heated", "highest heated surface"];
      const floor = before === "heated" ? sum(heated, cover) : levels[before];
      const answer = holds(levels[name], relation, floor);
      if (answer === "yes") continue;
      const text = before === "heated" ? heated.text : levels[before].text;
      yield {
        at: name,
        name,
        // Either level may be the slip.
        accuses: [name, before],
        message: `the ${called} of ${equipment.name}, ${levels[name].text}, is not ${before === "heated" ? `${cover.text} ` : ""}above the ${below}, ${text}`,
        why:
          before === "heated"
            ? `at least ${cover.text} of water stand above what is heated`
            : "levels are measured upward from the lowest point of the shell",
        hint: "compare both with the arrangement drawing and correct the wrong one",
        unsure: answer === "unsure",
        related: [{ at: before, message: `${text} here` }],
      };
    }
  },
  examples: [
    { name: "in order, the lowest just high enough", given: levels({}), objections: [] },
    { name: "the limiters at the lowest level", given: levels({ limiter: "1460 mm" }), objections: [] },
    {
      name: "a millimetre too little water above the heated surface",
      given: levels({ heated: "1361 mm" }),
      objections: [
        "the lowest permissible water level of X-01, 1460 mm, is not 100 mm above the highest heated surface, 1361 mm",
      ],
    },
    {
      name: "limiters below the lowest level",
      given: levels({ limiter: "1459 mm" }),
      objections: [
        "the level of the low-water limiters of X-01, 1459 mm, is not above the lowest permissible water level, 1460 mm",
      ],
    },
    {
      name: "a normal level at the limiters",
      given: levels({ normal: "1465 mm" }),
      objections: [
        "the normal water level of X-01, 1465 mm, is not above the level of the low-water limiters, 1465 mm",
      ],
    },
    {
      name: "a highest level below the normal one",
      given: levels({ highest: "1470 mm" }),
      objections: [
        "the highest permissible water level of X-01, 1470 mm, is not above the normal water level, 1482 mm",
      ],
    },
    {
      name: "water in the steam take-off",
      given: levels({ takeOff: "1530 mm" }),
      objections: ["the steam take-off of X-01, 1530 mm, is not above the highest permissible water level, 1530 mm"],
    },
  ],
});

function levels(changes: Readonly<Record<string, string>>) {
  return {
    heated: "1360 mm",
    lowest: "1460 mm",
    limiter: "1465 mm",
    normal: "1482 mm",
    highest: "1530 mm",
    takeOff: "1880 mm",
    cover: "100 mm",
    ...changes,
  };
}
