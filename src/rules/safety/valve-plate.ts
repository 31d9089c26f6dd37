import { commonPractice, ownChoice } from "../../model/basis.ts";
import { optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { fluidNamesOfState, fluidOf } from "../shared/fluids.ts";

/** Nominal sizes in the order in which they stand: "DN 50 / DN 65, d0 20 mm". */
const sizesIn = (text: string) => [...text.matchAll(/\bDN\s*(\d+)/gu)].map(([, size]) => Number(size));

export const valveSize = rule({
  id: "valve-size",
  title: "A safety valve is wider at its inlet than where it flows, and no narrower at its outlet",
  basis: commonPractice("the flow is throttled in the seat, and expands behind it"),
  kind: "safety-valve",
  when: [{ path: "size", exists: true }],
  severity: "query",
  owner: "supplier",
  inputs: { size: text("size"), bore: optional(quantity("flowDiameter", "mm")) },
  *check({ size, bore }, valve) {
    const [inlet, outlet] = sizesIn(size);
    const fault =
      inlet === undefined || outlet === undefined
        ? "states no nominal size of inlet and outlet"
        : outlet < inlet
          ? `has an outlet of DN ${outlet}, smaller than its inlet of DN ${inlet}`
          : bore !== undefined && bore.low >= inlet
            ? `flows through ${bore.text}, and its inlet is of DN ${inlet}`
            : undefined;
    if (fault === undefined) return;
    yield {
      at: "size",
      message: `safety valve ${valve.name} ${fault}`,
      why: `size as stated: ${size}`,
      hint: "compare with its certificate: write both sizes, as DN 25 / DN 40, or correct the wrong figure",
    };
  },
  examples: [
    { name: "as usual", given: { size: "DN 25 / DN 40", bore: "20 mm" }, objections: [] },
    {
      name: "swapped",
      given: { size: "DN 40 / DN 25" },
      objections: ["safety valve X-01 has an outlet of DN 25, smaller than its inlet of DN 40"],
    },
    {
      name: "narrower than its seat",
      given: { size: "DN 25 / DN 40", bore: "38 mm" },
      objections: ["safety valve X-01 flows through 38 mm, and its inlet is of DN 25"],
    },
    {
      name: "one size",
      given: { size: "DN 25" },
      objections: ["safety valve X-01 states no nominal size of inlet and outlet"],
    },
  ],
});

export const valveBody = rule({
  id: "valve-body-number",
  title: "The number on a safety valve is that of the body that approved it",
  basis: ownChoice("one fact has one value, wherever it is written"),
  kind: "safety-valve",
  when: [
    { path: "bodyNumber", exists: true },
    { path: "certificate.body.number", exists: true },
  ],
  severity: "query",
  owner: "supplier",
  inputs: { number: text("bodyNumber"), body: thing("certificate.body", { number: text("number") }) },
  *check({ number, body }, valve) {
    if (number === body.number) return;
    yield {
      at: "number",
      accuses: ["number"],
      message: `safety valve ${valve.name} bears the number ${number}; ${body.$.name}, which approved it, has ${body.number}`,
      why: "one body has one number",
      hint: "compare with the plate of the valve and the certificate, and correct the wrong one",
      related: [{ at: [body, "number"], message: `${body.number} here` }],
    };
  },
  examples: [
    { name: "its number", given: { number: "0000", body: { number: "0000" } }, objections: [] },
    {
      name: "another",
      given: { number: "0001", body: { $: "BODY", number: "0000" } },
      objections: ["safety valve X-01 bears the number 0001; BODY, which approved it, has 0000"],
    },
  ],
});

export const valveMedium = rule({
  id: "valve-medium",
  title: "A safety valve discharges its medium in the state that the name of the medium tells",
  basis: ownChoice("steam, gas and liquid are calculated each in its own way"),
  kind: "safety-valve",
  when: [{ path: "medium.name", equals: fluidNamesOfState }],
  severity: "nonconformity",
  owner: "design",
  inputs: { name: text("medium.name"), state: text("medium.state") },
  *check({ name, state }, valve) {
    const told = fluidOf(name)?.state;
    if (told === undefined || told === state) return;
    yield {
      at: "state",
      accuses: ["name", "state"],
      message: `safety valve ${valve.name} discharges ${name} as ${state}`,
      why: `${name} is ${told === "gas" ? "a gas" : told === "liquid" ? "a liquid" : told}`,
      hint: "compare with its certificate and correct the name or the state",
    };
  },
  examples: [
    { name: "steam", given: { name: "saturated steam", state: "steam" }, objections: [] },
    {
      name: "air as steam",
      given: { name: "compressed air", state: "steam" },
      objections: ["safety valve X-01 discharges compressed air as steam"],
    },
  ],
});

export const benchMedium = rule({
  id: "valve-bench-medium",
  title: "A safety valve for gas or steam is not set with a liquid, one for a liquid not with gas or steam",
  basis: commonPractice(
    "a valve for gas or steam pops, one for liquid lifts with the pressure: each is set with its own",
  ),
  kind: "safety-valve",
  when: [{ path: "bench.medium", equals: fluidNamesOfState }],
  severity: "query",
  owner: "supplier",
  inputs: { used: text("bench.medium"), state: text("medium.state"), name: text("medium.name") },
  *check({ used, state, name }, valve) {
    const told = fluidOf(used)?.state;
    if (told === undefined || (told === "liquid") === (state === "liquid")) return;
    yield {
      at: "used",
      accuses: ["used"],
      message: `safety valve ${valve.name} was set with ${used}; it discharges ${name}`,
      why: `${used} is ${told === "liquid" ? "a liquid" : told}, its medium ${state}`,
      hint: "compare with the bench record; if it was set so, have it set again, or answer this query with the maker's word",
    };
  },
  examples: [
    { name: "steam by air", given: { used: "air", state: "steam", name: "saturated steam" }, objections: [] },
    {
      name: "air by water",
      given: { used: "water", state: "gas", name: "air" },
      objections: ["safety valve X-01 was set with water; it discharges air"],
    },
  ],
});
