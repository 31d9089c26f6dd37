import { calculation, type Calculation } from "../../src/model/calculation.ts";
import { basis, define, judged } from "../support/small-book.ts";
import { flag, oneOf, quantity } from "../support/small-kinds.ts";

export const kinds = {
  part: {
    thickness: quantity("mm", { due: "now" }),
    diameter: quantity("mm", { due: "now" }),
    pressure: quantity("MPa", { due: "now" }),
    allowance: quantity("mm"),
    bearing: flag({ due: "now" }),
    class: oneOf(["I", "II"], { due: "now" }),
  },
};
const empty = { limits: [], accept: [], covers: "a test", examples: [], basis } as const;
export const stress = calculation({
  ...empty,
  id: "stress",
  title: "Stress",
  appliesTo: { kind: "part", when: [{ path: "bearing", equals: true }] },
  inputs: { k: { path: "class", unit: "1", means: "class", options: ["I", "II"] } },
  steps: [{ symbol: "f", unit: "MPa", means: "design stress", formula: "'90 MPa' + '10 MPa'*k" }],
  compared: [],
});
/** t = 1 · 1000 / (2 · 90) = 5.5556 mm */
export const wall = calculation({
  ...empty,
  id: "wall",
  title: "Wall",
  appliesTo: { kind: "part", when: [{ path: "bearing", equals: true }] },
  inputs: {
    p: { path: "pressure", unit: "MPa", means: "pressure" },
    D: { path: "diameter", unit: "mm", means: "diameter" },
    f: { path: "calculation(stress).f", unit: "MPa", means: "design stress", unsafe: "high" },
    c: { path: "allowance", unit: "mm", means: "allowance", need: "optional" },
    e: { path: "thickness", unit: "mm", means: "thickness", unsafe: "high" },
  },
  steps: [
    { symbol: "t", unit: "mm", means: "required thickness", formula: "p*D/(2*f)" },
    { symbol: "tc", unit: "mm", means: "with allowance", formula: "t + c" },
    { symbol: "cat", unit: "1", means: "category", formula: "1*(p/p)", options: ["low", "high"] },
  ],
  accept: [{ left: "e", relation: ">=", right: "t", means: "thick enough", accuses: "e" }],
  compared: [{ symbol: "t", unsafe: "low" }],
  adopted: "e",
});
export const part = { thickness: "10 mm", diameter: "1000 mm", pressure: "1 MPa", bearing: true, class: "I" };
export const inputs = { p: "1 MPa", D: "1000 mm", f: "90 MPa", e: "10 mm" };

export interface Sheet {
  readonly inputs?: Readonly<Record<string, string>>;
  readonly results?: Readonly<Record<string, string>>;
  readonly adopted?: string;
  readonly calculation?: string;
}
const rows = (values: Readonly<Record<string, string>>) =>
  Object.entries(values).map(([symbol, text]) =>
    /^[a-zI]/.test(text) ? { symbol, word: text } : { symbol, value: text },
  );
export const sheet = ({ inputs: ins = inputs, results = {}, ...rest }: Sheet) => ({
  calculation: "wall",
  subject: "part:P1",
  inputs: rows(ins),
  results: rows(results),
  ...rest,
});
export const run = (one: Sheet, more: object = {}, calculations: readonly Calculation[] = [wall, stress], extra = {}) =>
  judged(define({ kinds, calculations }), {
    records: { part: { P1: { ...part, ...more } }, "calculation-sheet": { S1: sheet(one) }, ...extra },
  });
