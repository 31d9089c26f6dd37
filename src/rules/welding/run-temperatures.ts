import { fromMemory } from "../../model/basis.ts";
import { list, optional, quantity, thing } from "../../model/input.ts";
import { atLeast, atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";

export const runTemperatures = rule({
  id: "run-temperatures",
  title: "A joint is welded within the temperatures of its procedure",
  basis: fromMemory(
    "EN ISO 15614-1",
    "2017",
    "lowest preheat and highest interpass temperature are essential variables",
  ),
  kind: "joint",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    procedure: thing("weldingProcedure", {
      preheat: quantity("preheat", "°C"),
      interpass: quantity("interpass", "°C"),
    }),
    logs: list(
      thing("<weld-log:joint>", {
        runs: list(
          thing("runs[]", { preheat: quantity("preheat", "°C"), interpass: optional(quantity("interpass", "°C")) }),
        ),
      }),
    ),
  },
  announces: [
    {
      awaits: "<weld-log:joint>.runs[].preheat",
      limits: [
        { path: "weldingProcedure.preheat", means: "temperature of the parts before welding", is: "at least" },
        { path: "weldingProcedure.interpass", means: "interpass temperature", is: "at most" },
      ],
    },
  ],
  *check({ procedure, logs }, joint) {
    const runs = logs.flatMap(({ runs }) => runs);
    const cold = runs.filter(({ preheat }) => atLeast(preheat, procedure.preheat) !== "yes");
    const [first] = cold;
    if (first !== undefined)
      yield {
        at: [first, "preheat"],
        name: "preheat",
        message: `joint ${joint.name} was welded from ${first.preheat.text}, below the preheat of ${procedure.$.name}, ${procedure.preheat.text}`,
        why: `logged for ${cold.map(({ $ }) => $.name).join(", ")}`,
        hint: "compare with the weld log sheet; if it is true, raise a nonconformity report and have it decided",
        unsure: cold.every(({ preheat }) => atLeast(preheat, procedure.preheat) === "unsure"),
      };
    const fell = runs.filter(
      ({ interpass }) => interpass !== undefined && atLeast(interpass, procedure.preheat) === "no",
    );
    const [coldest] = fell;
    if (coldest?.interpass !== undefined)
      yield {
        at: [coldest, "interpass"],
        name: "fell",
        message: `joint ${joint.name} had ${coldest.interpass.text} at most between runs, below the preheat of ${procedure.$.name}, ${procedure.preheat.text}`,
        why: `logged for ${fell.map(({ $ }) => $.name).join(", ")}`,
        hint: "compare with the weld log sheet; if it is true, raise a nonconformity report and have it decided",
      };
    const hot = runs.flatMap((run) =>
      run.interpass === undefined
        ? []
        : [{ run, at: run.interpass, answer: atMost(run.interpass, procedure.interpass) }],
    );
    const over = hot.filter(({ answer }) => answer !== "yes");
    const [worst] = over;
    if (worst !== undefined)
      yield {
        at: [worst.run, "interpass"],
        name: "interpass",
        message: `joint ${joint.name} reached ${worst.at.text} between runs, above the interpass temperature of ${procedure.$.name}, ${procedure.interpass.text}`,
        why: `logged for ${over.map(({ run }) => run.$.name).join(", ")}`,
        hint: "compare with the weld log sheet; if it is true, raise a nonconformity report and have it decided",
        unsure: over.every(({ answer }) => answer === "unsure"),
      };
  },
  examples: [
    {
      name: "on both limits",
      given: {
        procedure: { preheat: "15 °C", interpass: "220 °C" },
        logs: [{ runs: [{ preheat: "15 °C" }, { preheat: "15 °C", interpass: "220 °C" }] }],
      },
      objections: [],
    },
    {
      name: "cooled down between runs",
      given: {
        procedure: { $: "WPS-17 revision 1", preheat: "50 °C", interpass: "220 °C" },
        logs: [{ runs: [{ preheat: "55 °C" }, { $: "WL-S12#2", preheat: "55 °C", interpass: "41 °C" }] }],
      },
      objections: ["joint X-01 had 41 °C at most between runs, below the preheat of WPS-17 revision 1, 50 °C"],
    },
    {
      name: "parts too cold",
      given: {
        procedure: { $: "WPS-03 revision 2", preheat: "15 °C", interpass: "220 °C" },
        logs: [{ runs: [{ $: "WL-1, run root", preheat: "14 °C" }] }],
      },
      objections: ["joint X-01 was welded from 14 °C, below the preheat of WPS-03 revision 2, 15 °C"],
    },
    {
      name: "next run too soon",
      given: {
        procedure: { $: "WPS-03 revision 2", preheat: "15 °C", interpass: "220 °C" },
        logs: [{ runs: [{ $: "WL-1, run fill", preheat: "15 °C", interpass: "221 °C" }] }],
      },
      objections: [
        "joint X-01 reached 221 °C between runs, above the interpass temperature of WPS-03 revision 2, 220 °C",
      ],
    },
  ],
});
