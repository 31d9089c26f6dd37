import { fromMemory } from "../../model/basis.ts";
import { anyOf, date, list, optional, text, thing } from "../../model/input.ts";
import { canPrecede } from "../../model/dates.ts";
import { gasesIn } from "../welding-range/gases.ts";
import { sameClass } from "./filler-class.ts";
import { rule } from "../../model/rule.ts";

const log = fromMemory("EN ISO 3834-2", "2021", "production records of welding");

export const weldLogComplete = rule({
  id: "weld-log-complete",
  title: "A weld log has every layer from root to cap",
  basis: log,
  kind: "weld-log",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { layers: list(text("runs[].layer")) },
  *check({ layers }, subject) {
    const missing = layers.includes("full") ? [] : ["root", "cap"].filter((layer) => !layers.includes(layer));
    if (missing.length > 0)
      yield {
        at: "subject",
        accuses: [],
        message: `weld log ${subject.name} has no ${missing.join(" and no ")} layer`,
        why: `layers logged: ${[...new Set(layers)].join(", ")}`,
        hint: "enter the layer from the weld log sheet; ask the welding coordinator if the sheet lacks it",
      };
  },
  examples: [
    { name: "root, fill, cap", given: { layers: ["root", "fill", "cap"] }, objections: [] },
    { name: "single run", given: { layers: ["full"] }, objections: [] },
    { name: "no cap", given: { layers: ["root", "fill"] }, objections: ["weld log X-01 has no cap layer"] },
  ],
});

export const weldLogProcedure = rule({
  id: "weld-log-procedure",
  title: "A joint is welded to the procedure its design names",
  basis: log,
  kind: "weld-log",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { used: text("weldingProcedure"), joint: thing("joint", { planned: text("weldingProcedure") }) },
  *check({ used, joint }, subject) {
    if (used !== joint.planned)
      yield {
        at: "used",
        message: `joint ${joint.$.name} was welded to ${used.replace("@", " revision ")}; it is planned to ${joint.planned.replace("@", " revision ")}`,
        why: `weld log ${subject.name} names the one, the joint the other`,
        hint: "correct the slip, or have the other procedure approved for this joint",
        related: [{ at: [joint, "planned"], message: `planned here` }],
      };
  },
  examples: [
    { name: "as planned", given: { used: "WPS-03@2", joint: { planned: "WPS-03@2" } }, objections: [] },
    {
      name: "an earlier revision",
      given: { used: "WPS-03@1", joint: { $: "C2", planned: "WPS-03@2" } },
      objections: ["joint C2 was welded to WPS-03 revision 1; it is planned to WPS-03 revision 2"],
    },
  ],
});

export const fillerCertified = rule({
  id: "filler-certified",
  title: "A filler batch is of the class the procedure names, and was received before use",
  basis: fromMemory("EN ISO 3834-2", "2021", "welding consumables"),
  kind: "weld-log#runs",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    welded: date("date"),
    wanted: list(text("record.weldingProcedure.fillers[]")),
    gas: optional(text("record.weldingProcedure.shieldingGas")),
    process: optional(text("process")),
    batches: list(
      thing("batches[]", {
        processes: anyOf(list(text("processes[]"))),
        designation: text("designation"),
        classes: anyOf(list(text("classifications[]"))),
        received: date("received"),
        certificateBatch: optional(text("certificate.batch")),
        batch: text("batch"),
      }),
    ),
  },
  *check({ welded, wanted, gas, process, batches }, run) {
    const named = gas === undefined ? wanted : [...wanted, gas, ...gasesIn(gas)];
    for (const batch of batches) {
      const names = [batch.designation, ...batch.classes];
      // A batch for another process is the wrong batch, and said to be.
      const strange = process !== undefined && batch.processes.length > 0 && !batch.processes.includes(process);
      if (!strange && !named.some((wanted) => names.some((name) => sameClass(name, wanted))))
        yield {
          at: [batch, "designation"],
          on: batch,
          name: "class",
          message: `batch ${batch.$.name} is ${batch.designation}, which the procedure does not name`,
          why: `used in ${run.name}; the procedure names ${[...wanted, ...(gas === undefined ? [] : [gas])].join(", ")}`,
          hint: "correct the batch in the weld log, or have the other class approved",
        };
      if (canPrecede(batch.received, welded) === "no")
        yield {
          at: [batch, "received"],
          on: batch,
          name: "date",
          message: `batch ${batch.$.name} was used on ${welded.text}, before it was received on ${batch.received.text}`,
          why: `used in ${run.name}`,
          hint: "correct the batch or the date; else have the weld judged by the welding coordinator",
        };
      if (batch.certificateBatch !== undefined && batch.certificateBatch !== batch.batch)
        yield {
          at: [batch, "certificateBatch"],
          on: batch,
          name: "certificate",
          message: `batch ${batch.$.name} bears number ${batch.batch}; its certificate is for ${batch.certificateBatch}`,
          why: `used in ${run.name}`,
          hint: "ask for the certificate of this batch",
        };
    }
  },
  examples: [
    {
      name: "received that day, with its gas",
      given: {
        welded: "2026-05-27",
        wanted: ["G 42 4 M21 3Si1"],
        gas: "M21",
        batches: [
          { designation: "G 42 4 M21 3Si1", received: "2026-05-27", batch: "77", certificateBatch: "77" },
          { designation: "M21", received: "2026-05-02", batch: "8" },
        ],
      },
      objections: [],
    },
    {
      name: "named with its standard, and by the other one",
      given: {
        welded: "2026-05-27",
        wanted: ["EN ISO 14341-A - G 42 4 M21 3Si1", "ER70S-6"],
        batches: [
          { designation: "G 42 4 M21 3Si1", received: "2026-05-27", batch: "77" },
          {
            designation: "EN ISO 14341-A - G 46 4 M21 4Si1",
            classes: ["ER70S-6"],
            received: "2026-05-27",
            batch: "78",
          },
        ],
      },
      objections: [],
    },
    {
      name: "another class",
      given: {
        welded: "2026-05-27",
        wanted: ["G 42 4 M21 3Si1"],
        batches: [{ $: "B-2217", designation: "G 46 5 M21 4Mo", received: "2026-05-18", batch: "77" }],
      },
      objections: ["batch B-2217 is G 46 5 M21 4Mo, which the procedure does not name"],
    },
    {
      name: "not there yet",
      given: {
        welded: "2026-05-17",
        wanted: ["G"],
        batches: [{ $: "B-2217", designation: "G", received: "2026-05-18", batch: "77" }],
      },
      objections: ["batch B-2217 was used on 2026-05-17, before it was received on 2026-05-18"],
    },
    {
      name: "the certificate of another batch",
      given: {
        welded: "2026-05-27",
        wanted: ["G"],
        batches: [{ $: "B-2217", designation: "G", received: "2026-05-18", batch: "77", certificateBatch: "71" }],
      },
      objections: ["batch B-2217 bears number 77; its certificate is for 71"],
    },
  ],
});
