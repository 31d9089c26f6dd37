import { fromMemory, ownChoice } from "../../model/basis.ts";
import { date, list, quantity, table, text, thing } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { canPrecede } from "../../model/dates.ts";
import { rule } from "../../model/rule.ts";
import { owedBy } from "../../model/owes.ts";

const traced = fromMemory("Directive 2014/68/EU", undefined, "Annex I, traceability of materials of pressure parts");

/** Part → mark → certificate row: the steel that was ordered is the steel that was used. */
export const markMaterial = rule({
  id: "mark-material",
  title: "A piece is cut from the material its part asks for",
  basis: traced,
  kind: "piece-mark",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    part: thing("part", {
      standard: text("material.standard"),
      grade: text("material.grade"),
      form: text("material.form"),
    }),
    row: thing("certificateRow", { standard: text("standard"), grade: text("grade"), form: text("form") }),
  },
  *check({ part, row }, mark) {
    const other = (["standard", "grade", "form"] as const).filter((name) => part[name] !== row[name]);
    const [first] = other;
    if (first === undefined) return;
    const said = (material: typeof part | typeof row) => other.map((name) => `${name} ${material[name]}`).join(", ");
    yield {
      at: [row, first],
      message: `piece ${mark.name} is of ${said(row)}; part ${part.$.name} asks for ${said(part)}`,
      why: `the piece names certificate row ${row.$.name}`,
      hint: "compare the stamp with the certificate; correct the mark, or raise a nonconformity report and have the substitution approved",
      related: [{ at: [part, first], message: `${part[first]} asked for here` }],
    };
  },
  examples: [
    {
      name: "as asked",
      given: {
        part: { $: "1", standard: "EN 10028-2", grade: "P265GH", form: "plate" },
        row: { $: "CRT-001#84613", standard: "EN 10028-2", grade: "P265GH", form: "plate" },
      },
      objections: [],
    },
    {
      name: "another grade",
      given: {
        part: { $: "1", standard: "EN 10028-2", grade: "P265GH", form: "plate" },
        row: { $: "CRT-001#84613", standard: "EN 10028-2", grade: "P235GH", form: "plate" },
      },
      objections: ["piece X-01 is of grade P235GH; part 1 asks for grade P265GH"],
    },
    {
      name: "the certificate of another material",
      given: {
        part: { $: "1", standard: "EN 10028-2", grade: "P265GH", form: "plate" },
        row: { $: "CRT-002#70344", standard: "EN 10216-2", grade: "P265GH", form: "tube" },
      },
      objections: ["piece X-01 is of standard EN 10216-2, form tube; part 1 asks for standard EN 10028-2, form plate"],
    },
  ],
});

export const certificateType = rule({
  id: "certificate-type",
  title: "A certificate is of the type the part asks for, or a stricter one",
  basis: fromMemory("EN 10204", "2004", "types of inspection document"),
  kind: "piece-mark",
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    part: thing("part", { required: text("requiredCertificateType") }),
    certificate: thing("certificateRow.record", { type: text("type") }),
    types: table("certificate-type"),
  },
  *check({ part, certificate, types }, mark) {
    if (!types(part.required).texts("serve").includes(certificate.type))
      yield {
        at: [certificate, "type"],
        on: certificate,
        message: `certificate ${certificate.$.name} is of type ${certificate.type}; part ${part.$.name} needs ${part.required}`,
        why: `piece ${mark.name} of this part is covered by it`,
        hint: "ask the mill for the certificate of the type ordered, of the same heat",
        related: [{ at: [part, "required"], message: `${part.required} asked for here` }],
      };
  },
  examples: [
    {
      name: "same type",
      given: { part: { required: "3.1" }, certificate: { $: "CRT-001", type: "3.1" } },
      objections: [],
    },
    {
      name: "stricter",
      given: { part: { required: "3.1" }, certificate: { $: "CRT-001", type: "3.2" } },
      objections: [],
    },
    {
      name: "weaker",
      given: { part: { $: "4", required: "3.1" }, certificate: { $: "CRT-006", type: "2.2" } },
      objections: ["certificate CRT-006 is of type 2.2; part 4 needs 3.1"],
    },
  ],
});

export const certificateThickness = rule({
  id: "certificate-thickness",
  title: "The certified piece has the thickness of its part",
  basis: ownChoice("a plate of another thickness is another piece"),
  kind: "piece-mark",
  when: [{ path: "part.material.form", equals: ["plate", "formed-end"] }],
  severity: "nonconformity",
  owner: "purchasing",
  disputes: ["thickness"],
  inputs: {
    part: thing("part", {}),
    thickness: quantity("part.nominalThickness", "mm"),
    row: thing("certificateRow", { thickness: quantity("thickness", "mm") }),
  },
  *check({ part, thickness, row }, mark) {
    if (holds(row.thickness, "=", thickness) === "no")
      yield {
        at: [row, "thickness"],
        message: `piece ${mark.name} comes from ${row.thickness.text} material; part ${part.$.name} is ${thickness.text} thick`,
        why: `certificate row ${row.$.name} covers ${row.thickness.text}`,
        hint: "compare the stamp with the certificate; correct the mark, or have the other thickness approved",
        related: [{ at: "thickness", message: `${thickness.text} here` }],
      };
  },
  examples: [
    {
      name: "the same, in another unit",
      given: { part: {}, thickness: "8.0 mm", row: { thickness: "0.8 cm" } },
      objections: [],
    },
    {
      name: "another plate",
      given: { part: { $: "1" }, thickness: "8.0 mm", row: { $: "CRT-001#84613", thickness: "6.0 mm" } },
      objections: ["piece X-01 comes from 6.0 mm material; part 1 is 8.0 mm thick"],
    },
  ],
});

export const millApproved = rule({
  id: "mill-approved",
  title: "The mill of a 3.1 certificate had an approved quality system on its date",
  basis: fromMemory("EN 764-5", "2014", "specific product control on the maker's quality system"),
  kind: "material-certificate",
  when: [{ path: "type", equals: "3.1" }],
  severity: "nonconformity",
  owner: "purchasing",
  inputs: {
    issued: date("issued"),
    mill: thing("mill", {
      approvals: list(thing("<mill-approval:mill>", { from: date("validFrom"), to: date("validTo") })),
    }),
  },
  owes: [owedBy("purchasing", "material-received", "mill.approvals")],
  *check({ issued, mill }, certificate) {
    const { approvals } = mill;
    const inForce = approvals.some(
      ({ from, to }) => canPrecede(from, issued) === "yes" && canPrecede(issued, to) === "yes",
    );
    if (!inForce)
      yield {
        at: "issued",
        on: mill,
        message: `no approval of mill ${mill.$.name} was in force on ${issued.text}, the date of certificate ${certificate.name}`,
        why: `approvals on record: ${approvals.map(({ $, from, to }) => `${$.name} from ${from.text} to ${to.text}`).join("; ")}`,
        hint: "ask for the approval that covers the date, or for a 3.2 certificate",
        related: approvals.map((approval) => ({ at: [approval, "to"] as const, message: `ends ${approval.to.text}` })),
      };
  },
  examples: [
    {
      name: "on the last day",
      given: { issued: "2026-03-31", mill: { $: "M1", approvals: [{ from: "2023-04-01", to: "2026-03-31" }] } },
      objections: [],
    },
    {
      name: "one day late",
      given: {
        issued: "2026-04-01",
        mill: { $: "M1", approvals: [{ $: "MA-01", from: "2023-04-01", to: "2026-03-31" }] },
      },
      objections: ["no approval of mill M1 was in force on 2026-04-01, the date of certificate X-01"],
    },
  ],
});
