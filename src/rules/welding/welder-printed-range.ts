import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text } from "../../model/input.ts";
import { atLeast, atMost, type Measure } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { diametersCovered, positionRange, testPiece, thicknessRange, welderRanges } from "./welder-range.ts";

/** What a certificate prints of one variable, with what its test piece gives; empty: nothing is wrong. */
type Fault = readonly [input: Printed, fault: string] | undefined;
type Ended = "thickness" | "diameter";
type Printed = "processes" | "weldTypes" | "groups" | "details" | "held" | `${Ended}${"From" | "To"}`;

/** Choices that are printed: each is one that the test gives, and what was tested is among them. */
function choices(
  input: Printed,
  what: string,
  printed: readonly string[],
  tested: string,
  gives: readonly string[],
): Fault {
  if (printed.length === 0) return undefined;
  const wide = printed.filter((one) => !gives.includes(one));
  if (wide.length > 0) return [input, `${what} ${wide.join(", ")}, where the test piece gives ${gives.join(", ")}`];
  if (!printed.includes(tested)) return [input, `${what} ${printed.join(", ")}, without ${tested}, which was tested`];
  return undefined;
}

const below = (value: Measure, end: Measure | undefined) => end !== undefined && atLeast(value, end) === "no";
const above = (value: Measure, end: Measure | undefined) => end !== undefined && atMost(value, end) === "no";

interface Ends {
  readonly from: Measure | undefined;
  readonly to: Measure | undefined;
}

/** Ends that are printed: they lie within what the test gives, and around what was tested. */
function ends(input: Ended, what: string, printed: Ends, tested: Measure | undefined, gives: Ends): Fault {
  const { from, to } = printed;
  const low = from !== undefined && below(from, gives.from);
  const high = to !== undefined && above(to, gives.to);
  if (low || high)
    return [
      low ? `${input}From` : `${input}To`,
      `${what} ${low ? `from ${from.text}` : `to ${to?.text ?? ""}`}, where the test piece gives ${said(gives)}`,
    ];
  if (tested !== undefined && (below(tested, from) || above(tested, to)))
    return [
      below(tested, from) ? `${input}From` : `${input}To`,
      `${what} ${said(printed)}, without ${tested.text}, which was tested`,
    ];
  return undefined;
}

const said = ({ from, to }: Ends) =>
  [from && `from ${from.text}`, to && `to ${to.text}`].filter(Boolean).join(" ") || "any";

export const welderPrintedRange = rule({
  id: "welder-printed-range",
  title: "The range a welder's certificate prints is what its test piece gives, and holds what was tested",
  basis: fromMemory("EN ISO 9606-1", "2017", "ranges of qualification"),
  kind: "welder-qualification",
  when: [
    { path: "range", exists: true },
    { path: "standard.standard", equals: "EN ISO 9606-1" },
    { path: "weldType", equals: ["butt", "fillet"] },
  ],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    ...welderRanges,
    ...testPiece,
    processes: anyOf(list(text("range.processes[]"))),
    weldTypes: anyOf(list(text("range.weldTypes[]"))),
    groups: anyOf(list(text("range.fillerGroups[]"))),
    details: anyOf(list(text("range.details[]"))),
    held: anyOf(list(text("range.positions[]"))),
    thicknessFrom: optional(quantity("range.thickness.minimum", "mm")),
    thicknessTo: optional(quantity("range.thickness.maximum", "mm")),
    diameterFrom: optional(quantity("range.outsideDiameter.minimum", "mm")),
    diameterTo: optional(quantity("range.outsideDiameter.maximum", "mm")),
  },
  *check(values, certificate) {
    const { process, weldType, fillerGroup, thickness, outsideDiameter, positions, detail, supplementaryFillet } =
      values;
    const extra = supplementaryFillet === true && weldType === "butt";
    const [low, high] = thicknessRange(values, values);
    const covered = [
      ...positionRange(values, values),
      ...(extra ? values.positionRange("fillet", "PB").texts("covers") : []),
    ];
    const given = diametersCovered(values, values.held.length === 0 ? positions : values.held, values);
    const faults = [
      choices("processes", "processes", values.processes, process, values.processRange(process).texts("covers")),
      choices("weldTypes", "types of weld", values.weldTypes, weldType, extra ? ["butt", "fillet"] : [weldType]),
      fillerGroup === undefined
        ? undefined
        : choices("groups", "fillers", values.groups, fillerGroup, values.fillerRange(fillerGroup).texts("covers")),
      choices("details", "details", values.details, detail, [
        ...values.detailRange(detail).texts("covers"),
        ...(extra ? values.detailRange("sl").texts("covers") : []),
      ]),
      ...positions.map((one) => choices("held", "positions", values.held, one, covered)).slice(0, 1),
      ends("thickness", "thickness", { from: values.thicknessFrom, to: values.thicknessTo }, thickness, {
        from: low,
        to: high,
      }),
      given === undefined
        ? undefined
        : ends(
            "diameter",
            "outside diameter",
            { from: values.diameterFrom, to: values.diameterTo },
            values.product === "pipe" ? outsideDiameter : undefined,
            given,
          ),
    ].filter((fault) => fault !== undefined);
    const [first] = faults;
    if (first !== undefined)
      yield {
        at: first[0],
        accuses: [],
        message: `certificate ${certificate.name} prints ${faults.map(([, fault]) => fault).join("; and ")}`,
        why: "recomputed from the test piece; what a certificate prints beyond that covers nothing",
        hint: "compare test piece and range with the certificate; if it prints so, ask the examining body",
      };
  },
  examples: [
    { name: "as the tables say", given: printed({}), objections: [] },
    {
      name: "narrower, around what was tested",
      given: printed({ thicknessTo: "10 mm", held: ["PF"] }),
      objections: [],
    },
    {
      name: "wider in thickness",
      given: printed({ thicknessTo: "126 mm" }),
      objections: ["certificate X-01 prints thickness to 126 mm, where the test piece gives from 3 mm to 16 mm"],
    },
    {
      name: "without the thickness that was tested",
      given: printed({ thicknessFrom: "30 mm", thicknessTo: undefined }),
      objections: ["certificate X-01 prints thickness from 30 mm, without 8.0 mm, which was tested"],
    },
    {
      name: "a process that no test of this gives",
      given: printed({ processes: ["135", "141"] }),
      objections: ["certificate X-01 prints processes 141, where the test piece gives 135, 138"],
    },
    {
      name: "without the type of weld that was tested",
      given: printed({ weldTypes: ["fillet"] }),
      objections: ["certificate X-01 prints types of weld fillet, where the test piece gives butt"],
    },
    {
      name: "with the fillet weld that was made beside it",
      given: printed({ weldTypes: ["butt", "fillet"], supplementaryFillet: "true" }),
      objections: [],
    },
    {
      name: "pipes too small for a test of plates",
      given: printed({ diameterFrom: "50 mm" }),
      objections: ["certificate X-01 prints outside diameter from 50 mm, where the test piece gives from 75 mm"],
    },
    {
      name: "pipes smaller than half the tested",
      given: printed({
        product: "pipe",
        outsideDiameter: "168.3 mm",
        positions: ["H-L045"],
        held: [],
        diameterFrom: "16 mm",
      }),
      objections: ["certificate X-01 prints outside diameter from 16 mm, where the test piece gives from 84.15 mm"],
    },
  ],
});

function printed(changes: Readonly<Record<string, string | readonly string[] | undefined>>) {
  const all = {
    process: "135",
    product: "plate",
    weldType: "butt",
    fillerGroup: "FM1",
    thickness: "8.0 mm",
    positions: ["PF"],
    detail: "ss nb",
    processes: ["135", "138"],
    weldTypes: ["butt"],
    groups: ["FM1", "FM2"],
    details: ["ss nb", "bs"],
    held: ["PA", "PF"],
    thicknessFrom: "3.0 mm",
    thicknessTo: "16.0 mm",
    ...changes,
  };
  const stated = Object.entries<string | readonly string[] | undefined>(all).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, name === "supplementaryFillet" ? value === "true" : value] as const],
  );
  return Object.fromEntries(stated);
}
