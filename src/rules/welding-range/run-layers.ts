import { ownChoice } from "../../model/basis.ts";
import { list, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** A weld of one run is logged as one, and a weld of several runs as several. */
export const runLayers = rule({
  id: "run-layers",
  title: "A single-run weld is logged as one full run, a multi-run weld in layers",
  basis: ownChoice("the detail of a weld says how many runs it has; a log that says otherwise is another weld"),
  kind: "weld-log",
  when: [{ path: "joint.detail", equals: ["sl", "ml"] }],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: { layers: list(text("runs[].layer")), joint: thing("joint", { detail: text("detail") }) },
  *check({ layers, joint }, log) {
    const wrong =
      joint.detail === "sl" ? layers.some((one) => one !== "full") : joint.detail === "ml" && layers.length === 1;
    if (wrong)
      yield {
        at: "layers",
        message: `weld log ${log.name} has ${layers.join(", ")}; joint ${joint.$.name} is a ${joint.detail === "sl" ? "single-run" : "multi-run"} weld`,
        why: "the procedure test for the one does not cover the other",
        hint: "correct the layers of the log, or the detail of the joint",
        related: [{ at: [joint, "detail"], message: "detail of the joint" }],
      };
  },
  examples: [
    { name: "one run", given: { layers: ["full"], joint: { detail: "sl" } }, objections: [] },
    { name: "layers", given: { layers: ["root", "cap"], joint: { detail: "ml" } }, objections: [] },
    {
      name: "layers of a single-run weld",
      given: { layers: ["root", "cap"], joint: { $: "A5", detail: "sl" } },
      objections: ["weld log X-01 has root, cap; joint A5 is a single-run weld"],
    },
    {
      name: "one run of a multi-run weld",
      given: { layers: ["full"], joint: { $: "S11", detail: "ml" } },
      objections: ["weld log X-01 has full; joint S11 is a multi-run weld"],
    },
  ],
});
