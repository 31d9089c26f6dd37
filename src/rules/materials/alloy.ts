import { commonPractice, ownChoice } from "../../model/basis.ts";
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
export const seen = ["Cr", "Mo", "Ni", "Cu", "Mn", "V", "Nb", "Ti", "W", "Co"];
/** Spread of such a reading: percent of content, and share of it. */
export const [spread, share] = [0.05, 0.15];

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

/** Too light for rays that a hand-held instrument excites and that come through air. */
const light: readonly string[] = ["C", "N", "B", "H", "O"];

export const alloyBeyondMethod = rule({
  id: "alloy-beyond-method",
  title: "An analysis states no element that its method does not show",
  basis: commonPractice(
    "X-ray fluorescence shows no carbon, nitrogen, boron, hydrogen or oxygen: their rays do not leave steel and air",
  ),
  kind: "alloy-report#rows",
  when: [{ path: "record.method", equals: "X-ray fluorescence" }],
  severity: "query",
  owner: "testing",
  inputs: { found: list(thing("elements[]", { element: text("element"), value: quantity("value", "%") })) },
  *check({ found }, row) {
    const beyond = found.filter(({ element }) => light.includes(element));
    if (beyond.length > 0)
      yield {
        at: "found",
        accuses: [],
        message: `${row.name} states ${beyond.map(({ element, value }) => `${element} ${value.text}`).join(", ")} by X-ray fluorescence, which does not show ${beyond.length === 1 ? "it" : "them"}`,
        why: "such values are entered by hand, or taken from a library of grades",
        hint: "compare with the report: enter the method that was used, or leave out what was not measured",
      };
  },
  examples: [
    { name: "what it shows", given: { found: [{ element: "Cr", value: "0.05 %" }] }, objections: [] },
    {
      name: "carbon",
      given: {
        found: [
          { element: "Mn", value: "1.10 %" },
          { element: "C", value: "0.15 %" },
        ],
      },
      objections: ["X-01 states C 0.15 % by X-ray fluorescence, which does not show it"],
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
