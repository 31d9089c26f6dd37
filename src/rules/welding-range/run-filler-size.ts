import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { window, windowsFor } from "./windows.ts";

export const runFillerSize = rule({
  id: "run-filler-size",
  title: "A run is laid with a filler of a size that its procedure names for its layer, else for its process",
  basis: fromMemory("EN ISO 15609-1", "2019", "size of the filler of each run"),
  kind: "weld-log#runs",
  when: [
    { path: "batches[].diameter", exists: true },
    { path: "record.weldingProcedure.runs[].fillerDiameter", exists: true },
  ],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    layer: text("layer"),
    process: text("process"),
    batches: anyOf(
      things("batches[]", {
        diameter: optional(quantity("diameter", "mm")),
        processes: anyOf(list(text("processes[]"))),
      }),
    ),
    procedure: thing("record.weldingProcedure", { windows: anyOf(things("runs[]", window)) }),
  },
  *check({ layer, process, batches, procedure }, run) {
    const sizes = windowsFor(procedure.windows, process, layer).flatMap(({ diameter }) => diameter ?? []);
    for (const batch of batches) {
      const { diameter } = batch;
      // A batch for another process is the wrong batch, and said to be.
      if (batch.processes.length > 0 && !batch.processes.includes(process)) continue;
      if (diameter === undefined || sizes.some((one) => holds(diameter, "=", one) !== "no")) continue;
      if (sizes.length === 0) {
        yield {
          at: "layer",
          accuses: [],
          name: "no size",
          unsure: true,
          message: `${procedure.$.name} names no size of filler for layer "${layer}" by process ${process}; batch ${batch.$.name} has a diameter of ${diameter.text}`,
          why: "it names sizes for its other runs",
          hint: "enter the size from the procedure, or have it approved for this layer",
        };
        return;
      }
      yield {
        at: [batch, "diameter"],
        on: batch,
        accuses: [[batch, "diameter"]],
        name: "size",
        message: `batch ${batch.$.name} has a diameter of ${diameter.text}; ${procedure.$.name} names ${[...new Set(sizes.map((one) => one.text))].join(", ")} for this layer`,
        why: `used in ${run.name}`,
        hint: "correct the batch in the weld log, or have the other size approved",
      };
    }
  },
  examples: [
    { name: "the wire it names, and gas", given: laid({ diameter: "1.2 mm" }, {}), objections: [] },
    {
      name: "a layer without a size",
      given: {
        ...laid({ $: "B-1", diameter: "1.0 mm" }),
        procedure: { $: "WPS-03 revision 2", windows: [{ name: "root" }] },
      },
      objections: [
        'WPS-03 revision 2 names no size of filler for layer "root" by process 135; batch B-1 has a diameter of 1.0 mm',
      ],
    },
    {
      name: "a wire of another size",
      given: laid({ $: "B-1", diameter: "1.0 mm" }),
      objections: ["batch B-1 has a diameter of 1.0 mm; WPS-03 revision 2 names 1.2 mm for this layer"],
    },
  ],
});

function laid(...batches: readonly Readonly<Record<string, string>>[]) {
  return {
    layer: "root",
    process: "135",
    batches,
    procedure: { $: "WPS-03 revision 2", windows: [{ name: "root", process: "135", diameter: "1.2 mm" }] },
  };
}
