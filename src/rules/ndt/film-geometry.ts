import { derivedFrom, fromMemory } from "../../model/basis.ts";
import { quantity, text, thing, list } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { document, exposure, radiographs } from "./exposure.ts";

/** How much thicker the steel may be at the ends of a film than in its middle. */
const obliquely: ReadonlyMap<string, number> = new Map([
  ["A", 1.2],
  ["B", 1.1],
]);

/** Of a seam that runs straight along the film; of one that goes round the curvature decides, which is not judged here. */
export const filmLength = rule({
  id: "film-length",
  title: "A film of a straight seam shows no more than its distance allows",
  basis: fromMemory(document, undefined, "greatest area shown in one exposure: penetrated thickness at its ends"),
  kind: "ndt-report#rows",
  when: [
    ...radiographs,
    { path: "record.radiography.distance", exists: true },
    { path: "joint.role", equals: "longitudinal" },
  ],
  severity: "query",
  owner: "testing",
  inputs: {
    length: quantity("length", "mm"),
    report: thing("record", {
      made: text("radiography.techniqueClass"),
      distance: quantity("radiography.distance", "mm"),
    }),
    thicknesses: exposure.thicknesses,
  },
  *check({ length, report, thicknesses }, row) {
    const ratio = obliquely.get(report.made);
    if (ratio === undefined) return;
    const wall = Math.max(...thicknesses.map(({ high }) => high));
    const most = 2 * (report.distance.high + wall) * Math.sqrt(ratio ** 2 - 1);
    if (length.low <= most) return;
    yield {
      at: [report, "distance"],
      on: report,
      name: "length",
      accuses: [],
      message: `${row.name} shows ${length.text} from ${report.distance.text} away; about ${Math.floor(most)} mm are the most`,
      why: `at the ends of the film the rays go through more than ${ratio} times the thickness, class ${report.made}`,
      hint: "compare length and distance with the report; more exposures, or answer this query with the sketch of the set-up",
    };
  },
  examples: [
    { name: "far enough", given: filmed("300 mm", "700 mm"), objections: [] },
    { name: "just", given: filmed("236 mm", "250 mm"), objections: [] },
    {
      name: "too near",
      given: filmed("300 mm", "250 mm"),
      objections: ["X-01 shows 300 mm from 250 mm away; about 236 mm are the most"],
    },
    { name: "class A", given: filmed("340 mm", "250 mm", "A"), objections: [] },
  ],
});

function filmed(length: string, distance: string, made = "B") {
  return { length, report: { $: "RT-01", made, distance }, thicknesses: ["8.0 mm"] };
}

/** How far the source may stand from the middle, and still show all round alike. */
const aside = 0.1;

export const sourceInside = rule({
  id: "source-inside",
  title: "A source that stood inside a part, or at its centre, stood as far from the wall as the part is wide",
  basis: derivedFrom(
    "a source at the centre is half the inside diameter away, one inside no more than the inside diameter; a tenth aside is taken for the centre",
  ),
  kind: "ndt-report#rows",
  when: [
    ...radiographs,
    { path: "record.radiography.sourcePlace", exists: true },
    { path: "record.radiography.sourcePlace", equals: ["at the centre", "inside, off the centre"] },
    { path: "record.radiography.distance", exists: true },
    { path: "joint.outsideDiameter", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", {
      place: text("radiography.sourcePlace"),
      distance: quantity("radiography.distance", "mm"),
    }),
    joint: thing("joint", {
      diameter: quantity("outsideDiameter", "mm"),
      thicknesses: list(quantity("thicknesses[]", "mm")),
    }),
  },
  *check({ report, joint }, row) {
    const { place, distance } = report;
    const wide = joint.diameter.value - 2 * Math.min(...joint.thicknesses.map(({ value }) => value));
    const centre = place === "at the centre";
    const off = centre
      ? Math.abs(distance.value - wide / 2) > distance.halfUnit + (aside * wide) / 2
      : distance.low > wide;
    if (!off) return;
    yield {
      at: [report, "distance"],
      on: report,
      name: joint.diameter.text,
      accuses: [
        [report, "place"],
        [report, "distance"],
      ],
      message: `${row.name} shows joint ${joint.$.name} from ${distance.text} away with the source ${place}; ${centre ? `half its inside diameter is ${Math.round(wide / 2)}` : `its inside diameter is ${Math.round(wide)}`} mm`,
      why: `outside diameter ${joint.diameter.text}, thicknesses ${joint.thicknesses.map((one) => one.text).join(" and ")}`,
      hint: "compare place and distance with the report; correct the wrong one, else have it exposed again",
    };
  },
  examples: [
    { name: "at the centre", given: inside("at the centre", "592 mm"), objections: [] },
    { name: "a little aside", given: inside("at the centre", "560 mm"), objections: [] },
    {
      name: "at the centre, by a distance from outside",
      given: inside("at the centre", "700 mm"),
      objections: [
        "X-01 shows joint C1 from 700 mm away with the source at the centre; half its inside diameter is 592 mm",
      ],
    },
    { name: "inside", given: inside("inside, off the centre", "900 mm"), objections: [] },
    {
      name: "farther than it is wide",
      given: inside("inside, off the centre", "1300 mm"),
      objections: [
        "X-01 shows joint C1 from 1300 mm away with the source inside, off the centre; its inside diameter is 1184 mm",
      ],
    },
  ],
});

function inside(place: string, distance: string) {
  return {
    report: { $: "RT-01", place, distance },
    joint: { $: "C1", diameter: "1200 mm", thicknesses: ["8.0 mm", "8.0 mm"] },
  };
}

const widest = 100;
const thickest = 8;

export const doubleImage = rule({
  id: "double-image",
  title: "Both walls are shown on one film of small and thin pipes only",
  basis: fromMemory(document, undefined, "double wall, double image: outside diameter and wall thickness"),
  kind: "ndt-report#rows",
  when: [
    ...radiographs,
    { path: "joint.outsideDiameter", exists: true },
    { path: "record.radiography.arrangement", exists: true },
    {
      path: "record.radiography.arrangement",
      equals: [
        "double wall, double image, indicator on film side",
        "double wall, double image, indicator on source side",
      ],
    },
  ],
  severity: "query",
  owner: "testing",
  inputs: {
    report: thing("record", { way: text("radiography.arrangement") }),
    joint: thing("joint", {
      diameter: quantity("outsideDiameter", "mm"),
      thicknesses: list(quantity("thicknesses[]", "mm")),
    }),
  },
  *check({ report, joint }, row) {
    const wall = joint.thicknesses.toSorted((one, other) => other.value - one.value)[0];
    const beyond = [
      ...(joint.diameter.low > widest ? [`${joint.diameter.text} outside diameter, above ${widest} mm`] : []),
      ...(wall !== undefined && wall.low > thickest ? [`${wall.text} thick, above ${thickest} mm`] : []),
    ];
    if (beyond.length === 0) return;
    yield {
      at: [report, "way"],
      on: report,
      accuses: [],
      message: `${row.name} shows joint ${joint.$.name} by double image: ${beyond.join(", and ")}`,
      why: "of larger and thicker pipes the far wall hides flaws of the near one",
      hint: "compare the arrangement with the report; else have it shown wall by wall, or answer this query with what was agreed",
    };
  },
  examples: [
    { name: "a small pipe", given: shown("60.3 mm", "4.5 mm"), objections: [] },
    { name: "the largest", given: shown("100 mm", "8.0 mm"), objections: [] },
    {
      name: "a large one",
      given: shown("114.3 mm", "6.3 mm"),
      objections: ["X-01 shows joint F01 by double image: 114.3 mm outside diameter, above 100 mm"],
    },
    {
      name: "a thick one",
      given: shown("88.9 mm", "11.0 mm"),
      objections: ["X-01 shows joint F01 by double image: 11.0 mm thick, above 8 mm"],
    },
  ],
});

function shown(diameter: string, thickness: string) {
  return {
    report: { $: "RT-06", way: "double wall, double image, indicator on film side" },
    joint: { $: "F01", diameter, thicknesses: [thickness] },
  };
}
