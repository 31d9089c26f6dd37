import { commonPractice, fromMemory } from "../../model/basis.ts";
import { anyOf, exists, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const runMeasured = rule({
  id: "run-measured",
  title: "What a run states was measured: it names the meters, and states at least one figure",
  basis: fromMemory("EN ISO 3834-2", "2021", "production records; measuring equipment of welding"),
  kind: "weld-log#runs",
  severity: "gap",
  owner: "welding coordination",
  inputs: {
    interpass: exists("interpass"),
    current: exists("current"),
    voltage: exists("voltage"),
    heat: exists("heatInput"),
    preheat: exists("preheat"),
    instruments: anyOf(things("instruments[]", { type: optional(text("type")) })),
    named: anyOf(list(text("instruments[]"))),
  },
  *check({ interpass, current, voltage, heat, preheat, instruments, named }, run) {
    if (!interpass && !current && !voltage && !heat && !preheat)
      yield {
        at: "subject",
        accuses: [],
        name: "figures",
        message: `${run.name} states neither current nor voltage nor a temperature`,
        why: "nothing shows that it was welded within its procedure",
        hint: "enter the figures of the weld log sheet",
      };
    const heats = ["thermometer", "thermocouple", "recorder", "other"];
    const serves = ({ type }: (typeof instruments)[number]) => type === undefined || heats.includes(type);
    if (interpass && named.length > 0 && !instruments.some(serves))
      yield {
        at: "named",
        accuses: [],
        name: "thermometer",
        unsure: true,
        message: `${run.name} states an interpass temperature and names no thermometer`,
        why: `it names ${named.join(", ")}`,
        hint: "name the thermometer that was used; of a temperature crayon answer this query with its make",
      };
  },
  examples: [
    {
      name: "measured, and with what",
      given: {
        ...figures(true),
        instruments: [{ type: "welding meter" }, { type: "thermometer" }],
        named: ["WM-02", "TH-06"],
      },
      objections: [],
    },
    {
      name: "no thermometer",
      given: { ...figures(true), instruments: [{ type: "welding meter" }], named: ["WM-02"] },
      objections: ["X-01 states an interpass temperature and names no thermometer"],
    },
    {
      name: "no figure",
      given: { ...figures(false), instruments: [], named: [] },
      objections: ["X-01 states neither current nor voltage nor a temperature"],
    },
  ],
});

function figures(stated: boolean) {
  return { interpass: stated, current: stated, voltage: stated, heat: stated, preheat: stated };
}

export const everyWelderSigns = rule({
  kind: "weld-log",
  owner: "welding coordination",
  id: "every-welder-signs",
  title: "Every welder of a joint signs its weld log",
  basis: commonPractice("a welder answers with his signature for what he welded himself"),
  when: [{ path: "signatures[].person", exists: true }],
  severity: "gap",
  inputs: {
    welders: list(thing("runs[].welders[]", {})),
    signed: anyOf(list(text("signatures[].person"))),
  },
  *check({ welders, signed }, log) {
    const all = new Set(welders.map(({ $ }) => $.id));
    const missing = [...all].filter((one) => !signed.includes(one));
    // Where none of them signed, somebody else did: that is found by who signed.
    if (missing.length === 0 || missing.length === all.size) return;
    yield {
      at: "signed",
      accuses: [],
      message: `${missing.join(" and ")} welded for weld log ${log.name} and did not sign it`,
      why: `signed by ${signed.join(", ")}`,
      hint: "enter the signature of the sheet, or have it signed",
    };
  },
  examples: [
    {
      name: "both",
      given: { welders: [{ $: "W03" }, { $: "W12" }], signed: ["W12", "W03", "M1"] },
      objections: [],
    },
    {
      name: "one of two",
      given: { welders: [{ $: "W03" }, { $: "W12" }], signed: ["W03", "M1"] },
      objections: ["W12 welded for weld log X-01 and did not sign it"],
    },
    { name: "none of them", given: { welders: [{ $: "W03" }], signed: ["M1"] }, objections: [] },
  ],
});
