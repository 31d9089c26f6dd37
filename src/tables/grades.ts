import { en10025 } from "./en-10025-2.ts";
import { en10028 } from "./en-10028-2.ts";
import { en10216 } from "./en-10216-2.ts";
import { en10217 } from "./en-10217-2.ts";
import { en10222 } from "./en-10222-2.ts";
import { en10273 } from "./en-10273.ts";
import type { Grade } from "./grade.ts";
import { fromMemory } from "../model/basis.ts";
import type { Table, TableKey, TableRow } from "../model/table.ts";

const shipped: readonly Grade[] = [...en10025, ...en10028, ...en10216, ...en10217, ...en10222, ...en10273];

/** Every grade, once for each edition its values stand in. */
export const grades: readonly Grade[] = shipped.flatMap((grade) =>
  [grade.edition, ...(grade.sameIn ?? [])].map((edition) => ({ ...grade, edition })),
);

const standard = [...new Set(grades.map((grade) => `${grade.standard}:${grade.edition}`))].join(", ");

const gradeKeys: readonly TableKey[] = [
  { name: "standard", match: "equal" },
  { name: "edition", match: "equal" },
  { name: "grade", match: "equal" },
];
const thickness: TableKey = { name: "thickness", match: "interval", unit: "mm" };
const keysOf = (grade: Grade) => ({ standard: grade.standard, edition: grade.edition, grade: grade.name });
const between = ({ over, upTo }: { readonly over: number; readonly upTo: number }) => ({ over, upTo });

/** Strength at room temperature by nominal thickness: least yield strength, least and greatest tensile strength. */
export const gradeStrength: Table = {
  id: "grade-strength",
  title: "Strength of steel grades at room temperature",
  standard,
  keys: [...gradeKeys, thickness],
  columns: {
    yieldStrength: { unit: "MPa", means: "least upper yield strength at 20 °C" },
    tensileStrength: { unit: "MPa", means: "least tensile strength at 20 °C" },
    tensileStrengthMost: { unit: "MPa", means: "greatest tensile strength at 20 °C" },
  },
  rows: grades.flatMap((grade) =>
    grade.strength.bands.map((band) => ({
      keys: { ...keysOf(grade), thickness: between(band) },
      values: {
        yieldStrength: `${band.yieldStrength} MPa`,
        tensileStrength: `${band.tensileStrength[0]} MPa`,
        tensileStrengthMost: `${band.tensileStrength[1]} MPa`,
      },
      basis: grade.strength.basis,
    })),
  ),
};

/** Least elongation after fracture by nominal thickness and direction of the test piece. */
export const gradeElongation: Table = {
  id: "grade-elongation",
  title: "Elongation after fracture of steel grades",
  standard,
  keys: [...gradeKeys, thickness, { name: "direction", match: "equal" }],
  columns: { elongation: { unit: "%", means: "least elongation after fracture at 20 °C" } },
  rows: grades.flatMap((grade) =>
    grade.strength.bands.flatMap((band) =>
      Object.entries(band.elongation).map(([direction, elongation]): TableRow => ({
        keys: { ...keysOf(grade), thickness: between(band), direction },
        values: { elongation },
        basis: grade.strength.basis,
      })),
    ),
  ),
};

/** Proof strength at elevated temperature by nominal thickness, as points to interpolate between. */
export const gradeProofStrength: Table = {
  id: "grade-proof-strength",
  title: "Least 0.2 % proof strength of steel grades at elevated temperature",
  standard,
  keys: [...gradeKeys, thickness],
  columns: { points: { means: "temperature and least proof strength", points: ["temperature", "proofStrength"] } },
  rows: grades.flatMap((grade) =>
    (grade.proofStrength?.bands ?? []).map((band): TableRow => ({
      keys: { ...keysOf(grade), thickness: between(band) },
      values: {
        points: band.values.map((value, index) => ({
          temperature: `${temperatureAt(grade, index)} °C`,
          proofStrength: `${value} MPa`,
        })),
      },
      basis: grade.proofStrength?.basis ?? grade.strength.basis,
    })),
  ),
};

function temperatureAt(grade: Grade, index: number): number {
  const temperature = grade.proofStrength?.temperatures[index];
  if (temperature === undefined)
    throw new RangeError(`${grade.name} of ${grade.standard} has a proof strength without temperature`);
  return temperature;
}

/** Limits of the ladle analysis: every limited element, or sum of elements, of a grade in one row. */
export const gradeChemistry: Table = {
  id: "grade-chemistry",
  title: "Limits of the ladle analysis of steel grades",
  standard,
  keys: gradeKeys,
  columns: {
    limits: {
      means: "element or sum of elements, side of the limit, content, and whether it must always be reported",
      points: ["element", "bound", "content", "report"],
    },
  },
  rows: grades.map((grade) => ({
    keys: keysOf(grade),
    values: {
      limits: grade.chemistry.limits.map(([element, bound, content, report]) => ({
        element,
        bound,
        content,
        report: report ?? "always",
      })),
    },
    basis: grade.chemistry.basis,
  })),
};

/** What the directive asks of any steel: for grades whose own limits are not at hand. */
const leastForAll: NonNullable<Grade["impact"]> = {
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, 7.5: at least 27 J at a temperature of at most 20 °C"),
  rows: [
    { temperature: 20, direction: "longitudinal", energy: 27 },
    { temperature: 20, direction: "transverse", energy: 27 },
  ],
};

/** Least impact energy by direction and test temperature: every row of a grade. */
export const gradeImpact: Table = {
  id: "grade-impact",
  title: "Least mean impact energy of steel grades",
  standard,
  keys: gradeKeys,
  columns: {
    points: {
      means: "direction, test temperature and least mean of three full-size notched bars",
      points: ["direction", "temperature", "energy"],
    },
  },
  rows: grades.map((grade) => {
    const { rows, basis } = grade.impact ?? leastForAll;
    return {
      keys: keysOf(grade),
      values: {
        points: rows.map(({ direction, temperature, energy }) => ({
          direction,
          temperature: `${temperature} °C`,
          energy: `${energy} J`,
        })),
      },
      basis,
    };
  }),
};

/** Material group and delivery conditions of a grade. */
export const gradeGroup: Table = {
  id: "grade-group",
  title: "Material groups of steel grades",
  standard: "ISO/TR 15608",
  keys: gradeKeys,
  columns: {
    group: { means: "material group, as listed for the grade" },
    delivery: { means: "delivery conditions of the standard", points: ["condition"] },
  },
  rows: grades.map((grade) => ({
    keys: keysOf(grade),
    values: {
      group: grade.group,
      delivery: grade.delivery.map((condition) => ({ condition })),
    },
    basis: fromMemory("ISO/TR 20172", undefined, "grouping of European materials"),
  })),
};
