import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const alloyAsPart = rule({
  id: "alloy-as-part",
  title: "A part is found to be of the steel that the parts list asks for",
  basis: ownChoice("two statements of one fact"),
  kind: "alloy-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: { found: text("grade"), asked: text("part.material.grade"), known: table("grade-yield") },
  *check({ found, asked, known }, row) {
    if (found === asked) return;
    yield {
      at: "found",
      // A number or a family of steels is no other grade for certain.
      unsure: known(found).quantity("tensile") === undefined,
      message: `${row.name} was found to be ${found}; the part is to be ${asked}`,
      why: `parts list: ${asked}`,
      hint: "compare with the report; if it says so, stop the part and raise a nonconformity report",
      related: [{ at: "asked", message: `${asked} here` }],
    };
  },
  examples: [
    { name: "as asked", given: { found: "P265GH", asked: "P265GH" }, objections: [] },
    {
      name: "a family of steels",
      given: { found: "unalloyed steel", asked: "P265GH" },
      objections: ["X-01 was found to be unalloyed steel; the part is to be P265GH"],
    },
    {
      name: "another steel",
      given: { found: "16Mo3", asked: "P265GH" },
      objections: ["X-01 was found to be 16Mo3; the part is to be P265GH"],
    },
  ],
});

/** Elements that a hand-held instrument tells apart well enough. */
const seen = ["Cr", "Mo", "Ni", "Cu", "Mn", "V", "Nb", "Ti", "W", "Co"];
/** Spread of such a reading: percent of content, and share of it. */
const [spread, share] = [0.05, 0.15];

/** What a figure in the name of an alloyed steel is divided by; elements without a figure are there and no more. */
const factors: ReadonlyMap<string, number> = new Map([
  ...["Cr", "Co", "Mn", "Ni", "Si", "W"].map((element) => [element, 4] as const),
  ...["Al", "Be", "Cu", "Mo", "Nb", "Pb", "Ta", "Ti", "V", "Zr"].map((element) => [element, 10] as const),
]);

/** Elements of a name such as 13CrMo4-5 or X5CrNi18-10, with their content in percent where the name has one. */
function namedIn(grade: string): readonly { readonly element: string; readonly content?: number }[] {
  const match = /^(X?)\d+((?:[A-Z][a-z]?)+)(\d+(?:-\d+)*)(?:\+.*)?$/.exec(grade.replaceAll(" ", ""));
  if (match === null) return [];
  const [, high, symbols = "", figures = ""] = match;
  const contents = figures.split("-").map(Number);
  return [...symbols.matchAll(/[A-Z][a-z]?/g)].map(([element], index) => {
    const figure = contents[index];
    const factor = high === "X" ? 1 : factors.get(element);
    return { element, ...(figure !== undefined && factor !== undefined && { content: figure / factor }) };
  });
}

/** Percent from which a steel is alloyed with an element; a steel that is not called by it has less. */
const alloyedFrom: Readonly<Record<string, number>> = {
  Cr: 0.3,
  Mo: 0.08,
  Ni: 0.3,
  V: 0.1,
  Nb: 0.06,
  Ti: 0.05,
  W: 0.3,
  Co: 0.3,
};

/** How far a content may lie from what the name says: a third of it. What is named without a figure is there with this. */
const [around, trace] = [1 / 3, 0.08];

export const alloyAsNamed = rule({
  id: "alloy-as-named",
  title: "What a part was analysed with is what the name of its steel says",
  basis: fromMemory(
    "EN 10027-1 and EN 10020",
    undefined,
    "EN 10027-1: figures behind the symbols are four times the percentage of Cr, Co, Mn, Ni, Si, W and ten times that of Al, Be, Cu, Mo, Nb, Pb, Ta, Ti, V, Zr, percentages behind an X; EN 10020: from which content a steel is alloyed. A third of the content apart is our choice",
  ),
  kind: "alloy-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    grade: text("grade"),
    found: list(thing("elements[]", { element: text("element"), value: quantity("value", "%") })),
  },
  *check({ grade, found }, row) {
    const named = namedIn(grade);
    const stranger = (element: string) =>
      grade.startsWith("X") || named.some((one) => one.element === element) ? undefined : alloyedFrom[element];
    const alloyed = found.flatMap(({ element, value }) => {
      const from = stranger(element);
      return from === undefined || value.low <= from * (1 + share) + spread
        ? []
        : [`${element} ${value.text}, by its name less than ${from} %`];
    });
    const other = named.flatMap(({ element, content }) => {
      const own = found.find((one) => one.element === element)?.value;
      if (own === undefined) return [];
      const [least, most] =
        content === undefined ? [trace, Infinity] : [content * (1 - around), content * (1 + around)];
      if (own.high + own.halfUnit >= least && own.low - own.halfUnit <= most) return [];
      const about = content === undefined ? "alloyed with it" : `about ${Number(content.toFixed(2))} %`;
      return [`${element} ${own.text}, by its name ${about}`];
    });
    const wrong = [...other, ...alloyed];
    if (wrong.length > 0)
      yield {
        at: "found",
        message: `${row.name} is called ${grade} and was analysed with ${wrong.join("; ")}`,
        why: `analysed: ${found.map(({ element, value }) => `${element} ${value.text}`).join(", ")}`,
        hint: "compare with the report; if it says so, the part is of another steel: stop it and raise a nonconformity report",
      };
  },
  examples: [
    { name: "as named", given: identified("25CrMo4", "1.04 %", "0.21 %"), objections: [] },
    { name: "two figures", given: identified("13CrMo4-5", "0.92 %", "0.49 %"), objections: [] },
    { name: "high-alloyed", given: identified("X5CrNiMo17-12-2", "17.1 %", "2.1 %"), objections: [] },
    { name: "no alloyed steel", given: identified("P265GH", "0.05 %", "0.01 %"), objections: [] },
    {
      name: "an alloyed steel in the place of one that is not",
      given: identified("P265GH", "0.98 %", "0.21 %"),
      objections: [
        "X-01 is called P265GH and was analysed with Cr 0.98 %, by its name less than 0.3 %; Mo 0.21 %, by its name less than 0.08 %",
      ],
    },
    {
      name: "another steel",
      given: identified("25CrMo4", "0.12 %", "0.02 %"),
      objections: [
        "X-01 is called 25CrMo4 and was analysed with Cr 0.12 %, by its name about 1 %; Mo 0.02 %, by its name alloyed with it",
      ],
    },
  ],
});

function identified(grade: string, chromium: string, molybdenum: string) {
  return {
    grade,
    found: [
      { element: "Cr", value: chromium },
      { element: "Mo", value: molybdenum },
    ],
  };
}

export const alloyAsCertificate = rule({
  id: "alloy-as-certificate",
  title: "What a part is made of, as analysed on the part, is what its certificate states",
  basis: commonPractice(
    "a hand-held analysis of Cr, Mo, Ni, Cu, Mn, V, Nb, Ti, W, Co is off by 0.05 % and 15 % of the content at most; others it does not tell",
  ),
  kind: "alloy-report#rows",
  when: [
    { path: "part.<piece-mark:part>.certificateRow", exists: true },
    { path: "part.<piece-mark:part>.certificateRow.chemistry[]", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("record.method"),
    found: list(thing("elements[]", { element: text("element"), value: quantity("value", "%") })),
    certified: anyOf(
      things("part.<piece-mark:part>.certificateRow", {
        chemistry: anyOf(things("chemistry[]", { element: text("element"), value: optional(quantity("value", "%")) })),
      }),
    ),
  },
  *check({ method, found, certified }, row) {
    const compared = found.filter(
      ({ element }) =>
        seen.includes(element) &&
        certified.some(({ chemistry }) => chemistry.some((one) => one.element === element && one.value !== undefined)),
    );
    if (compared.length === 0 && certified.length > 0) {
      yield {
        at: "found",
        accuses: [],
        name: "nothing",
        unsure: true,
        message: `${row.name} states no element that the certificate of its part states and such an analysis tells`,
        why: `analysed: ${found.map(({ element }) => element).join(", ")}`,
        hint: "enter the other elements of report and certificate, or answer this query",
      };
      return;
    }
    // A part of several pieces is of one of its heats.
    const apart = certified.map(({ $, chemistry }) => ({
      name: $.name,
      wrong: found.flatMap(({ element, value }) => {
        const own = chemistry.find((one) => one.element === element)?.value;
        if (own === undefined || !seen.includes(element)) return [];
        const off = Math.max(value.low - own.high, own.low - value.high);
        return off > spread + share * own.value
          ? [{ element, said: `${element} ${value.text}, certified ${own.text}` }]
          : [];
      }),
    }));
    const [nearest] = [...apart].sort((a, b) => a.wrong.length - b.wrong.length);
    if (nearest === undefined || nearest.wrong.length === 0) return;
    yield {
      at: "found",
      accuses: [],
      message: `${row.name} was analysed with ${nearest.wrong.map(({ said }) => said).join("; ")}`,
      why: `${nearest.name}; by ${method}`,
      hint: "compare both papers; if they say so, prove by an analysis of a laboratory which heat the part is of",
    };
  },
  examples: [
    { name: "as certified, as near as such an instrument reads", given: analysed("1.20 %", "0.09 %"), objections: [] },
    {
      name: "an alloy steel in its place",
      given: analysed("0.60 %", "1.05 %"),
      objections: ["X-01 was analysed with Mn 0.60 %, certified 1.10 %; Cr 1.05 %, certified 0.05 %"],
    },
    {
      name: "nothing that can be compared",
      given: { ...analysed("1.20 %", "0.09 %"), found: [{ element: "C", value: "0.15 %" }] },
      objections: ["X-01 states no element that the certificate of its part states and such an analysis tells"],
    },
  ],
});

function analysed(manganese: string, chromium: string) {
  return {
    method: "X-ray fluorescence",
    found: [
      { element: "Mn", value: manganese },
      { element: "Cr", value: chromium },
      { element: "C", value: "1 %" },
    ],
    certified: [
      {
        $: "CRT-001#1",
        chemistry: [
          { element: "Mn", value: "1.10 %" },
          { element: "Cr", value: "0.05 %" },
          { element: "C", value: "0.15 %" },
        ],
      },
    ],
  };
}
