import { fieldOfPlate, greatestField, greatestRegion, regionOfPlate } from "./functions/plates.ts";
import { least } from "./functions/parts.ts";
import { wallLeft, wallOf } from "./shared/wall.ts";
import { excerptSeen } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const regions = (...thicknesses: readonly number[]) => thicknesses.map((one) => ({ thickness: `${one} mm` }));

const wall = wallOf("thickness");

export const flatPlate = calculation({
  id: "flat-plate",
  title: "Flat plate of stayed regions",
  basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 574, as repeated in a worked sheet"),
  covers:
    "Required thickness of a flat plate, a tube plate among them, from its regions and its fields of tubes, of which the most demanding decides. Openings in the plate are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: ["tube-plate", "flat-plate"] },
    ],
  },
  inputs: {
    regions: { path: "regions[]", unit: "rows", means: "regions of the plate", rows: regionOfPlate },
    fields: {
      path: "tubeFields[]",
      unit: "rows",
      means: "fields of tubes, where it has any",
      need: "any",
      rows: fieldOfPlate,
    },
    e0: { path: "profile.plateLeast", unit: "mm", means: "least thickness of any such plate" },
    ...wall.inputs,
  },
  owes: [owedBy("design", "design-approved", "regions", "c", "δ")],
  functions: [greatestRegion, greatestField, least],
  steps: [
    {
      symbol: "e",
      unit: "mm",
      means: "thickness the regions ask for, without allowances",
      formula: "greatestRegion(regions)",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "et",
      unit: "mm",
      means: "least nominal thickness for expanded tubes",
      formula: "greatestField(fields)",
      display: "e_t",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "ereq",
      unit: "mm",
      means: "required nominal thickness",
      formula: "max(e + c + δ, et, e0)",
      display: "e_req",
      round: { decimals: 2, direction: "up" },
    },
    wall.analysis,
    ...wall.measured,
  ],
  limits: [wallLeft],
  accept: [wall.thickEnough, wall.measuredEnough],
  compared: [
    { symbol: "e", unsafe: "low" },
    { symbol: "et", unsafe: "low" },
    { symbol: "ereq", unsafe: "low" },
  ],
  adopted: "en",
  examples: [
    {
      source: "worked by hand: the second region decides, 17.6 + 0.75 + 0.3; exactly as thick as required",
      class: "constructed",
      given: { regions: regions(12, 17.6, 9), fields: [], e0: 8, c: 0.75, δ: 0.3, en: 18.65 },
      expect: { e: 17.6, et: 0, ereq: 18.65, ea: 17.6, emin: 18.35 },
      within: 1e-9,
    },
    {
      source: "constructed: the tubes decide, and the plate is too thin for them",
      class: "constructed",
      given: { regions: regions(9), fields: regions(12.7, 14.3), e0: 8, c: 0.75, δ: 0.3, en: 14 },
      expect: { e: 9, et: 14.3, ereq: 14.3 },
      within: 1e-9,
    },
    {
      source: "constructed: the least plate decides; measured exactly what must be left",
      class: "constructed",
      given: {
        regions: regions(6),
        fields: [],
        e0: 8,
        c: 0.75,
        δ: 0.3,
        en: 8,
        measured: [{ value: "6.75 mm" }, { value: "7.9 mm" }],
      },
      expect: { ereq: 8, em: 6.75, emin: 6.75 },
      within: 1e-9,
    },
    {
      source: "constructed: one reading a hundredth too thin",
      class: "constructed",
      given: { regions: regions(6), fields: [], e0: 8, c: 0.75, δ: 0.3, en: 8, measured: [{ value: "6.74 mm" }] },
      expect: { em: 6.74, emin: 6.75 },
      within: 1e-9,
    },
    {
      source: "constructed: allowances eat the whole thickness",
      class: "constructed",
      given: { regions: regions(6), fields: [], e0: 8, c: 5, δ: 3, en: 8 },
      expect: { ea: 0 },
      within: 1e-9,
      outside: ["a thickness is left after allowances"],
    },
  ],
});
