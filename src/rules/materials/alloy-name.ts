import { fromMemory } from "../../model/basis.ts";
import { list, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { seen, share, spread } from "./alloy.ts";

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

/**
 * Percent from which a steel is alloyed with what it must not have unless it is called by it. Not Ni, V, Nb: fine-grained steels
 * have them without saying so, and quenched ones (S690Q) all of them.
 */
const alloyedFrom: ReadonlyMap<string, number> = new Map([
  ["Cr", 0.3],
  ["Mo", 0.08],
]);

/** How far a content may lie from what the name says: half of it. What is named without a figure is there with this percentage. */
const [around, trace] = [1 / 2, 0.03];

export const alloyAsNamed = rule({
  id: "alloy-as-named",
  title: "What a part was analysed with is what the name of its steel says",
  basis: fromMemory(
    "EN 10027-1 and EN 10020",
    undefined,
    "EN 10027-1: figures behind the symbols are four times the percentage of Cr, Co, Mn, Ni, Si, W and ten times that of Al, Be, Cu, Mo, Nb, Pb, Ta, Ti, V, Zr, percentages behind an X; EN 10020: from which content a steel is alloyed. Half of the content apart, and 0.03 % of what is named without a figure, are our choice",
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
    if (named.length > 0 && !named.some(({ element }) => found.some((one) => one.element === element))) {
      yield {
        at: "found",
        accuses: [],
        name: "nothing",
        unsure: true,
        message: `${row.name} is called ${grade} and states nothing of ${named.map(({ element }) => element).join(", ")}`,
        why: `analysed: ${found.map(({ element, value }) => `${element} ${value.text}`).join(", ")}`,
        hint: "enter these elements from the report; if they were not analysed, have them analysed",
      };
      return;
    }
    const stranger = (element: string) =>
      /^X|Q/.test(grade) || named.some((one) => one.element === element) ? undefined : alloyedFrom.get(element);
    const alloyed = found.flatMap(({ element, value }) => {
      const from = stranger(element);
      return from === undefined || value.low <= from * (1 + share) + spread
        ? []
        : [`${element} ${value.text}, by its name less than ${from} %`];
    });
    const other = named.flatMap(({ element, content }) => {
      const own = found.find((one) => one.element === element)?.value;
      if (own === undefined || !seen.includes(element)) return [];
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
    {
      name: "nothing of what it is called by",
      given: { grade: "25CrMo4", found: [{ element: "Mn", value: "0.71 %" }] },
      objections: ["X-01 is called 25CrMo4 and states nothing of Cr, Mo"],
    },
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
