import { commonPractice } from "../../model/basis.ts";
import { anyOf, exists, list, optional, text, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { serving } from "../testing/instrument-uses.ts";

/** Of each method the kinds of instrument one of which it cannot do without; of a film the one that its density is read with. */
const needed: readonly (readonly [method: string, types: readonly string[], whatFor: string])[] = [
  ["RT", ["densitometer", "step tablet"], "the density of its films is read with"],
  ["UT", ["ultrasonic set"], "it is made with"],
  ["MT", ["magnetic yoke", "field meter"], "its field is made or measured with"],
];

/** Whether instruments of some kinds serve for a method at all: another kind may, and so may one whose kind nobody recorded. */
export function servesMethod(method: string, instruments: readonly { readonly type: string | undefined }[]): boolean {
  const [, types] = needed.find(([one]) => one === method) ?? [];
  return types === undefined || instruments.some(({ type }) => serves(type, types));
}

export const serves = (type: string | undefined, types: readonly string[]) =>
  type === undefined || type === "other" || types.includes(type);

/** A report names what its figures were read with: what is not named nobody can prove to be calibrated. */
export const instrumentsNamed: readonly Rule[] = needed.map(([method, types, whatFor]) =>
  rule({
    id: `instrument-of-${method.toLowerCase()}-named`,
    title: `A report of ${method} names the instrument that ${whatFor}`,
    basis: commonPractice("an instrument that is not named is not proved to be calibrated"),
    kind: "ndt-report",
    when: [{ path: "method", equals: method }],
    severity: "gap",
    owner: "testing",
    inputs: {
      instruments: anyOf(things("instruments[]", { type: optional(text("type")) })),
      named: anyOf(list(text("instruments[]"))),
      digital: exists("radiography.detector"),
    },
    *check({ instruments, named, digital }, report) {
      // A digital image has no density; an instrument of another kind may serve.
      if (digital || servesMethod(method, instruments)) return;
      // One that serves for no such test is said to be the wrong one.
      if (instruments.some(({ type }) => type !== undefined && !serving(method).includes(type))) return;
      yield {
        at: named.length === 0 ? "subject" : "named",
        accuses: [],
        message: `report ${report.name} names no ${types.join(" or ")}, which ${whatFor}`,
        why: named.length === 0 ? "it names no instrument" : `it names ${named.join(", ")}`,
        hint: "name the instrument that was used",
      };
    },
    examples: [
      {
        name: "named",
        given: { instruments: [{ type: types[0] ?? "" }], named: ["I-1"], digital: false },
        objections: [],
      },
      {
        name: "none named",
        given: { instruments: [], named: [], digital: false },
        objections: [`report X-01 names no ${types.join(" or ")}, which ${whatFor}`],
      },
      {
        name: "another named",
        given: { instruments: [{ type: "thermometer" }], named: ["I-1"], digital: false },
        objections: [`report X-01 names no ${types.join(" or ")}, which ${whatFor}`],
      },
      {
        name: "one that serves for no such test",
        given: { instruments: [{ type: "hardness tester" }], named: ["I-1"], digital: false },
        objections: [],
      },
      ...(method === "RT"
        ? [{ name: "a digital image", given: { instruments: [], named: [], digital: true }, objections: [] }]
        : []),
    ],
  }),
);
