import { commonPractice, fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, things } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "production-test", owner: "testing" } as const;

/** Where a notch must lie, and how reports say so. */
const notches: readonly (readonly [place: string, said: RegExp])[] = [
  ["weld metal", /^(?!.*(heat|fusion|\bHAZ\b)).*(weld|deposit|\bWM\b|VWT)/iu],
  ["heat affected zone", /heat|fusion|\bHAZ\b|VHT/iu],
];

/** Plates from which impact bars of half width can be cut, in mm. */
const barsFrom = 6;

export const productionTestSet = rule({
  ...shared,
  id: "production-test-set",
  title:
    "A production test is pulled, bent and cut; from six millimetres on impact bars of the weld and of the zone beside it are broken",
  basis: commonPractice("a test plate gives what a procedure test gives: tensile, bend and macro section, impact bars"),
  severity: "gap",
  inputs: {
    tensile: list(text("tensile[].test")),
    others: list(text("otherTests[].test")),
    places: anyOf(list(text("impact[].location"))),
    thicknesses: anyOf(list(quantity("certificateRows[].thickness", "mm"))),
  },
  owes: [owedBy("testing", "testing-complete", "tensile", "others")],
  *check({ others, places, thicknesses }, test) {
    const said = others.join(", ");
    const missing = [
      /bend/iu.test(said) ? "" : "bend test",
      /macro|section/iu.test(said) ? "" : "macro section",
      ...(places.length === 0 || thicknesses.every(({ value }) => value < barsFrom)
        ? []
        : notches.map(([place, word]) => (places.some((one) => word.test(one)) ? "" : `impact bars of the ${place}`))),
    ].filter((one) => one !== "");
    if (missing.length > 0)
      yield {
        at: "others",
        accuses: [],
        message: `production test ${test.name} reports no ${missing.join(", and no ")}`,
        why: `reported: ${[said, ...places.map((place) => `impact, ${place}`)].join(", ")}`,
        hint: "enter it from the laboratory's report, under these names; if the order asks for less, answer this with the order",
      };
  },
  *lacks({ places, thicknesses }) {
    const thick = thicknesses.find(({ value }) => value >= barsFrom);
    if (places.length === 0 && thick !== undefined)
      yield { at: "subject", path: "impact", why: `${thick.text}: impact bars can be cut` };
  },
  lacksDue: "testing-complete",
  examples: [
    { name: "all of them", given: made({}), objections: [] },
    { name: "a thin plate", given: made({ places: [], thicknesses: ["5 mm"] }), objections: [] },
    { name: "no impact bars", given: made({ places: [] }), objections: [], lacks: ["impact"] },
    {
      name: "of the weld alone",
      given: made({ places: ["weld metal"] }),
      objections: ["production test X-01 reports no impact bars of the heat affected zone"],
    },
    {
      name: "the zone beside the weld twice, in other words",
      given: made({ places: ["HAZ of the weld", "fusion line"] }),
      objections: ["production test X-01 reports no impact bars of the weld metal"],
    },
    {
      name: "not cut",
      given: made({ others: ["bend, face and root"] }),
      objections: ["production test X-01 reports no macro section"],
    },
  ],
});

function made(changes: Readonly<Record<string, readonly string[]>>) {
  return {
    tensile: ["T1"],
    others: ["bend, face and root", "macro section"],
    places: ["weld metal", "heat affected zone"],
    thicknesses: ["8 mm"],
    ...changes,
  };
}

/** Room temperature of tensile tests, in °C. */
const room = [10, 35] as const;

export const productionTestRoom = rule({
  ...shared,
  id: "production-test-room",
  title: "A production test is pulled at room temperature, 10 °C to 35 °C",
  basis: fromMemory("EN ISO 6892-1", undefined, "room temperature of a tensile test"),
  severity: "query",
  when: [{ path: "tensile[].temperature", exists: true }],
  inputs: { tests: anyOf(things("tensile[]", { temperature: optional(quantity("temperature", "°C")) })) },
  *check({ tests }, test) {
    const within = tests.some(
      ({ temperature }) => temperature === undefined || (temperature.value >= room[0] && temperature.value <= room[1]),
    );
    const [first] = tests;
    if (!within && first !== undefined)
      yield {
        at: [first, "temperature"],
        accuses: [],
        message: `production test ${test.name} was pulled at ${tests.map(({ temperature }) => temperature?.text ?? "").join(", ")}, and never at room temperature`,
        why: "the strength of a steel is named at 10 °C to 35 °C",
        hint: "compare with the laboratory's report; a test in the heat comes beside one at room temperature",
      };
  },
  examples: [
    { name: "in a room", given: { tests: [{ temperature: "20 °C" }] }, objections: [] },
    {
      name: "in the heat too",
      given: { tests: [{ temperature: "20 °C" }, { temperature: "300 °C" }] },
      objections: [],
    },
    {
      name: "in the heat alone",
      given: { tests: [{ temperature: "200 °C" }] },
      objections: ["production test X-01 was pulled at 200 °C, and never at room temperature"],
    },
  ],
});
