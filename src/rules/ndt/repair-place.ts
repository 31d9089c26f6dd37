import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, thing, things } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { isClosed, spansOf, union } from "../../model/seam-lengths.ts";
import { rule } from "../../model/rule.ts";

/** A tape is read to a millimetre. */
const slack = 1;

type Spans = readonly (readonly [number, number])[];

interface Flaw {
  readonly at: Measure | undefined;
  readonly length: Measure | undefined;
}

/** Where a flaw lies; on a closed seam it may run over the zero mark. */
function flawOf({ at, length }: Flaw, closed: boolean, seam: Measure): Spans {
  const from = at?.value ?? 0;
  const to = from + (length?.value ?? 0);
  return closed && to > seam.value
    ? [
        [from, seam.value],
        [0, to - seam.value],
      ]
    : [[from, to]];
}

const within = (own: Spans, flaw: Spans): boolean =>
  union([...own, ...flaw]) <= union(own) + slack &&
  flaw.every(([from]) => own.some(([begin, end]) => from >= begin - slack && from <= end + slack));

export const repairTakesOut = rule({
  id: "repair-takes-out",
  title: "A repair takes out what was rejected",
  basis: ownChoice("a flaw that lies beside the repair is still in the weld"),
  kind: "repair",
  when: [
    { path: "from", exists: true },
    { path: "to", exists: true },
    { path: "rejected", exists: true },
    { path: "rejected.indications[].at", exists: true },
  ],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    from: quantity("from", "mm"),
    to: quantity("to", "mm"),
    joint: thing("joint", { role: text("role"), length: quantity("length", "mm") }),
    rejected: thing("rejected", {
      indications: anyOf(
        things("indications[]", {
          at: optional(quantity("at", "mm")),
          length: optional(quantity("length", "mm")),
          verdict: optional(text("verdict")),
        }),
      ),
    }),
  },
  *check({ from, to, joint, rejected }, repair) {
    const closed = isClosed(joint.role);
    const own = spansOf({ from, to, length: joint.length }, joint.length, closed) ?? [];
    const left = rejected.indications.find(
      (found) =>
        found.at !== undefined && found.verdict !== "accepted" && !within(own, flawOf(found, closed, joint.length)),
    );
    if (left?.at === undefined) return;
    yield {
      at: "from",
      accuses: ["from", "to"],
      message: `repair ${repair.name} runs from ${from.text} to ${to.text}; ${left.$.name} lies at ${left.at.text}${left.length === undefined ? "" : `, ${left.length.text} long`}`,
      why: `it is what ${rejected.$.name} rejected`,
      hint: "compare the lengths with the report and the repair sheet; if they are right, the flaw is to be taken out and tested",
      related: [{ at: left, message: "rejected here" }],
    };
  },
  examples: [
    { name: "the flaw and a little more", given: repaired("300 mm", "380 mm", "310 mm", "60 mm"), objections: [] },
    { name: "just the flaw", given: repaired("310 mm", "370 mm", "310 mm", "60 mm"), objections: [] },
    { name: "a point", given: repaired("310 mm", "370 mm", "340 mm"), objections: [] },
    { name: "over the zero mark", given: repaired("980 mm", "30 mm", "990 mm", "30 mm"), objections: [] },
    {
      name: "another flaw was accepted",
      given: repaired("310 mm", "370 mm", "500 mm", "20 mm", "accepted"),
      objections: [],
    },
    {
      name: "beside the flaw",
      given: repaired("410 mm", "480 mm", "310 mm", "70 mm"),
      objections: ["repair X-01 runs from 410 mm to 480 mm; indication 1 lies at 310 mm, 70 mm long"],
    },
    {
      name: "half of it",
      given: repaired("310 mm", "340 mm", "310 mm", "70 mm"),
      objections: ["repair X-01 runs from 310 mm to 340 mm; indication 1 lies at 310 mm, 70 mm long"],
    },
    {
      name: "a point beside it",
      given: repaired("410 mm", "480 mm", "310 mm"),
      objections: ["repair X-01 runs from 410 mm to 480 mm; indication 1 lies at 310 mm"],
    },
  ],
});

function repaired(from: string, to: string, at: string, length?: string, verdict = "rejected") {
  return {
    from,
    to,
    joint: { role: "circumferential", length: "1000 mm" },
    rejected: {
      $: "RT-03, row C2-1",
      indications: [{ $: "indication 1", at, verdict, ...(length !== undefined && { length }) }],
    },
  };
}

export const excavationTestedWhole = rule({
  id: "excavation-tested-whole",
  title: "An excavation is tested over its whole length",
  basis: ownChoice("what is left of a flaw lies at the ends of its excavation"),
  kind: "repair",
  when: [
    { path: "from", exists: true },
    { path: "to", exists: true },
    { path: "excavationTest.rows[].from", exists: true },
  ],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    from: quantity("from", "mm"),
    to: quantity("to", "mm"),
    joint: text("joint"),
    seam: thing("joint", { role: text("role"), length: quantity("length", "mm") }),
    report: optional(
      thing("excavationTest", {
        rows: anyOf(
          things("rows[]", {
            joint: text("joint"),
            from: optional(quantity("from", "mm")),
            to: optional(quantity("to", "mm")),
          }),
        ),
      }),
    ),
  },
  *check({ from, to, joint, seam, report }, repair) {
    if (report === undefined) return;
    const closed = isClosed(seam.role);
    const place = (one: { readonly from: Measure | undefined; readonly to: Measure | undefined }) =>
      spansOf({ ...one, length: seam.length }, seam.length, closed);
    const rows = report.rows.filter((row) => row.joint === joint);
    const tested = rows.map(place);
    // A row without its place is of the whole excavation.
    if (rows.length === 0 || tested.includes(undefined)) return;
    const dug = place({ from, to }) ?? [];
    const all = tested.flatMap((spans) => spans ?? []);
    if (union([...all, ...dug]) <= union(all) + slack) return;
    const [first] = rows;
    yield {
      at: "from",
      accuses: [],
      message: `repair ${repair.name} was excavated from ${from.text} to ${to.text}; report ${report.$.name} tested ${rows.map((row) => `${row.from?.text ?? ""} to ${row.to?.text ?? ""}`).join(", ")}`,
      why: "nothing shows that the defect was out where it was not tested",
      hint: "compare both lengths with the report and the repair sheet; if they are right, have the repair judged",
      related: first === undefined ? [] : [{ at: first, message: "tested here" }],
    };
  },
  examples: [
    { name: "a little more", given: dug(["305 mm", "385 mm"]), objections: [] },
    { name: "in two lengths", given: dug(["305 mm", "350 mm"], ["345 mm", "385 mm"]), objections: [] },
    {
      name: "a part of it",
      given: dug(["320 mm", "385 mm"]),
      objections: ["repair X-01 was excavated from 310 mm to 380 mm; report PT-01 tested 320 mm to 385 mm"],
    },
  ],
});

function dug(...rows: readonly (readonly [from: string, to: string])[]) {
  return {
    from: "310 mm",
    to: "380 mm",
    joint: "C2",
    seam: { role: "circumferential", length: "1000 mm" },
    report: { $: "PT-01", rows: rows.map(([from, to]) => ({ joint: "C2", from, to })) },
  };
}
