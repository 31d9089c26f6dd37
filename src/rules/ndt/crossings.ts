import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things, type Condition, type Thing } from "../../model/input.ts";
import { owedBy } from "../../model/owes.ts";
import type { Measure } from "../../model/quantity.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { isClosed, sayLength, spansOf } from "../../model/seam-lengths.ts";
import { asksFor } from "../../requirements/testing-conditions.ts";

const basis = fromMemory(
  "EN 12953-5, EN 13445-5",
  undefined,
  "where a part of a weld is tested, the crossings of longitudinal and circumferential butt welds are in it",
);

/** Longitudinal joints of the parts it joins end on a circumferential one. */
const crossed: readonly Condition[] = [
  { path: "pressureBearing", equals: true },
  { path: "type", equals: "butt" },
  { path: "role", equals: "circumferential" },
  { path: 'parts[].<joint:parts[]>[role="longitudinal"]', exists: true },
];
const volumetric: readonly string[] = ["RT", "UT"];

const crossing = { seam: thing("joint", {}), place: quantity("at", "mm") };
const shared = {
  length: quantity("length", "mm"),
  tests: list(thing("requiredTests[]", { method: text("method"), extent: quantity("extent", "%") })),
  seams: anyOf(things("parts[].<joint:parts[]>", { role: text("role"), type: text("type") })),
  crossings: anyOf(things("crossings[]", crossing)),
} as const;
interface Stated {
  readonly tests: readonly { readonly method: string; readonly extent: Measure }[];
  readonly seams: readonly Thing<{ role: ReturnType<typeof text>; type: ReturnType<typeof text> }>[];
  readonly crossings: readonly Thing<typeof crossing>[];
}

/** What is tested in part by a volumetric method, where nothing tests the whole. */
const partial = ({ tests }: Pick<Stated, "tests">) => {
  const found = tests.filter(({ method }) => volumetric.includes(method));
  return found.some(({ extent }) => extent.value >= 100 - 1e-9) ? [] : found;
};

const among = ({ seams }: Pick<Stated, "seams">, { seam }: Thing<typeof crossing>) =>
  seams.some(({ $ }) => $.id === seam.$.id);

/** Where joints end on this one is asked for where only a part of it is tested, and another is not named in its place. */
function* unstated(given: Stated) {
  const [test] = partial(given);
  if (test === undefined || given.crossings.some((one) => !among(given, one))) return;
  const ids = new Set(
    given.seams.filter(({ role, type }) => role === "longitudinal" && type === "butt").map(({ $ }) => $.id),
  );
  for (const id of ids)
    if (!given.crossings.some(({ seam }) => seam.$.id === id))
      yield {
        at: "subject",
        path: `crossings[joint="${id}"]`,
        why: `${test.method} ${test.extent.text}: what is tested holds every crossing`,
      } as const;
}

export const crossingsPlaced = rule({
  id: "crossings-placed",
  title: "Where joints end on another one is stated, and lies on it",
  basis,
  kind: "joint",
  when: [...crossed, { path: "requiredTests[].method", equals: volumetric }],
  severity: "nonconformity",
  owner: "design",
  inputs: shared,
  *check({ length, seams, crossings }, joint) {
    for (const one of crossings) {
      const { seam, place } = one;
      const strange = !among({ seams }, one);
      if (strange || place.low > length.high + 1)
        yield {
          at: strange ? one : [one, "place"],
          name: seam.$.id,
          message: strange
            ? `joint ${seam.$.name} is stated to end on joint ${joint.name}, and is no joint of the parts it joins`
            : `joint ${seam.$.name} is stated to end on joint ${joint.name} at ${place.text}; it is ${length.text} long`,
          why: `joints of its parts: ${seams.map(({ $ }) => $.name).join(", ")}`,
          hint: "compare with the weld map, and correct the crossing or the joint",
        };
    }
  },
  lacks: unstated,
  lacksDue: "design-approved",
  examples: [
    { name: "on the joint", given: placed([["L1", "3744 mm"]]), objections: [] },
    {
      name: "beyond it",
      given: placed([["L1", "3746 mm"]]),
      objections: ["joint L1 is stated to end on joint X-01 at 3746 mm; it is 3744 mm long"],
    },
    {
      name: "of other parts",
      given: placed([
        ["L1", "240 mm"],
        ["L3", "240 mm"],
      ]),
      objections: ["joint L3 is stated to end on joint X-01, and is no joint of the parts it joins"],
    },
    { name: "not stated", given: placed([]), objections: [], lacks: ['crossings[joint="L1"]'] },
    { name: "not stated, and tested whole", given: placed([], "100 %"), objections: [] },
  ],
});

const row = {
  from: optional(quantity("from", "mm")),
  to: optional(quantity("to", "mm")),
  length: quantity("length", "mm"),
  // Read only: a rejection that is still open accuses it, and then nothing of this counts.
  result: text("result"),
};

const shows = (one: Thing<typeof row>, { place }: Thing<typeof crossing>, seam: Measure) =>
  spansOf(one, seam, isClosed("circumferential"))?.some(([from, to]) => from <= place.low && place.high <= to) === true;

function crossingsBy(id: string, title: string, method: string): Rule {
  return rule({
    id,
    title,
    basis,
    kind: "joint",
    when: [asksFor(method), ...crossed],
    severity: "nonconformity",
    owner: "testing",
    inputs: { ...shared, rows: list(thing(`<ndt-report:rows[].joint>[record.method="${method}"]`, row)) },
    owes: [owedBy("testing", "testing-complete", "rows")],
    *check(given, joint) {
      const { length, rows, crossings } = given;
      if (!partial(given).some((test) => test.method === method)) return;
      const all = rows.filter(({ result }) => result !== "");
      const loose = all.filter((one) => spansOf(one, length, true) === undefined);
      // What is no crossing is said of the joint.
      const real = crossings.filter((one) => among(given, one) && one.place.low <= length.high + 1);
      for (const one of real)
        if (!all.some((film) => shows(film, one, length)))
          yield {
            at: one,
            name: one.seam.$.id,
            accuses: [],
            message: `${method} of joint ${joint.name} ${loose.length > 0 ? "is not said to show" : "does not show"} where joint ${one.seam.$.name} ends on it, at ${one.place.text}`,
            why: `tested: ${all.map((film) => `${film.$.name} ${sayLength(film)}`).join(", ")}`,
            hint:
              loose.length > 0
                ? "state from where to where the report tested"
                : "have the crossing tested and add the report, or correct where it lies",
            unsure: loose.length > 0,
            related: all.map((film) => ({ at: film, message: `tested ${sayLength(film)}` })),
          };
    },
    lacks: unstated,
    lacksDue: "design-approved",
    examples: [
      { name: "in the middle of a film", given: tested(["0 mm", "480 mm"]), objections: [] },
      { name: "at the end of a film", given: tested(["0 mm", "240 mm"]), objections: [] },
      { name: "on a film over the zero mark", given: tested(["3500 mm", "240 mm"]), objections: [] },
      {
        name: "a millimetre beside it",
        given: tested(["241 mm", "600 mm"]),
        objections: [`${method} of joint X-01 does not show where joint L1 ends on it, at 240 mm`],
      },
      {
        name: "on a film that does not say where it lies",
        given: tested([]),
        objections: [`${method} of joint X-01 is not said to show where joint L1 ends on it, at 240 mm`],
      },
      { name: "not stated", given: { ...tested([]), crossings: [] }, objections: [], lacks: ['crossings[joint="L1"]'] },
    ],
  });

  function tested([from, to]: readonly string[]) {
    return {
      ...placed([["L1", "240 mm"]], "10 %", method),
      rows: [
        {
          $: "R-01",
          length: "480 mm",
          result: "accepted",
          ...(from !== undefined && { from }),
          ...(to !== undefined && { to }),
        },
      ],
    };
  }
}

export const radiographedCrossings = crossingsBy(
  "radiographed-crossings",
  "Where a part of a joint is radiographed, the crossings are in it",
  "RT",
);
export const ultrasonicCrossings = crossingsBy(
  "ultrasonic-crossings",
  "Where a part of a joint is tested ultrasonically, the crossings are in it",
  "UT",
);

function placed(crossings: readonly (readonly [seam: string, place: string])[], extent = "10 %", method = "RT") {
  return {
    length: "3744 mm",
    tests: [{ method, extent }],
    seams: [{ $: "L1", role: "longitudinal", type: "butt" }],
    crossings: crossings.map(([$, place]) => ({ seam: { $ }, place })),
  };
}
