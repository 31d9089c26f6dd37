import { ownChoice } from "../../model/basis.ts";
import { list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { depositedIn, runOfLog } from "./deposited.ts";

const basis = ownChoice("the layers of a weld fill its joint: no more, but for the excess of its cap, and no less");
const butt: readonly string[] = ["butt", "t-butt", "corner", "branch"];
/** Excess of cap and root, and the readings of a weld gauge, in mm. */
const excess = 3;
const short = 1;

export const depositedFits = rule({
  id: "deposited-fits-joint",
  title: "What the runs of a joint deposited fills the joint, and no more",
  basis,
  kind: "weld-log",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    runs: list(thing("runs[]", runOfLog)),
    joint: thing("joint", {
      type: text("type"),
      deposited: optional(quantity("depositedThickness", "mm")),
      thicknesses: list(quantity("thicknesses[]", "mm")),
    }),
  },
  *check({ runs, joint }, log) {
    if (!butt.includes(joint.type)) return;
    const stated = runs.filter(({ deposited }) => deposited !== undefined);
    const total = depositedIn(stated);
    const [thinnest] = [...joint.thicknesses].sort((a, b) => a.low - b.low);
    const takes = joint.deposited ?? thinnest;
    if (total === undefined || takes === undefined) return;
    const whole = stated.length === runs.length;
    if (total.low <= takes.high + excess && (!whole || total.high >= takes.low - short)) return;
    yield {
      at: "runs",
      message: `the runs of joint ${joint.$.name} add up to ${total.text} deposited; the joint takes ${takes.text}`,
      why: `weld log ${log.name}: ${stated.map(({ layer, deposited }) => `${layer} ${deposited?.text ?? ""}`).join(" + ")}; up to ${excess} mm more is excess of the cap, up to ${short} mm less a reading`,
      hint: "correct the thickness of the layers, or that of the joint",
      related: [{ at: [joint, "thicknesses"], message: "the joint" }],
    };
  },
  examples: [
    { name: "fills it", given: log("8.0 mm", "3.0 mm", "5.0 mm"), objections: [] },
    { name: "with 3 mm of excess", given: log("8.0 mm", "3.0 mm", "8.0 mm"), objections: [] },
    {
      name: "more than it takes",
      given: log("8.0 mm", "8.0 mm", "10.0 mm", "10.0 mm"),
      objections: ["the runs of joint L1 add up to 28.0 mm deposited; the joint takes 8.0 mm"],
    },
    { name: "a millimetre less, as read", given: log("8.0 mm", "3.0 mm", "4.0 mm"), objections: [] },
    {
      name: "less than fills it",
      given: log("8.0 mm", "3.0 mm", "3.9 mm"),
      objections: ["the runs of joint L1 add up to 6.9 mm deposited; the joint takes 8.0 mm"],
    },
    { name: "one layer not stated: no more than an upper end", given: log("8.0 mm", "3.0 mm", ""), objections: [] },
    { name: "nothing stated", given: log("8.0 mm", "", ""), objections: [] },
    { name: "a fillet weld", given: { ...log("8.0 mm", "20.0 mm"), joint: joint("8.0 mm", "fillet") }, objections: [] },
  ],
});

/** One welder and one process lay the whole joint; of several, nobody knows the share of each unless it is stated. */
export const depositedStated = rule({
  id: "deposited-stated",
  title: "Of a joint by several welders or processes each run states what it deposited",
  basis: ownChoice("a joint's thickness tells nothing of a share in it, which is what a welder is qualified for"),
  kind: "weld-log",
  severity: "query",
  owner: "welding coordination",
  inputs: {
    runs: list(thing("runs[]", runOfLog)),
    people: list(thing("runs[].welders[]", {})),
    joint: thing("joint", { type: text("type") }),
  },
  *check({ runs, people, joint }) {
    if (!butt.includes(joint.type)) return;
    const processes = [...new Set(runs.map(({ process }) => process))];
    const welders = [...new Set(people.map(({ $ }) => $.name))];
    const silent = runs.filter(({ deposited }) => deposited === undefined);
    if (silent.length === 0 || (processes.length < 2 && welders.length < 2)) return;
    yield {
      at: "runs",
      accuses: [],
      message: `joint ${joint.$.id} was welded by ${welders.join(" and ")} with ${processes.join(" and ")}; ${silent.map(({ layer }) => layer).join(" and ")} ${silent.length === 1 ? "states" : "state"} no deposited thickness`,
      why: "each welder is qualified for what he deposited with one process",
      hint: "enter the thickness of each layer from the weld log sheet",
    };
  },
  examples: [
    { name: "one welder, one process", given: several(["135", "W07", ""], ["135", "W07", ""]), objections: [] },
    {
      name: "two welders, each run stated",
      given: several(["135", "W07", "3.0 mm"], ["135", "W03", "5.0 mm"]),
      objections: [],
    },
    {
      name: "two welders",
      given: several(["135", "W07", "3.0 mm"], ["135", "W03", ""]),
      objections: ["joint L1 was welded by W07 and W03 with 135; cap states no deposited thickness"],
    },
    {
      name: "two processes",
      given: several(["141", "W07", ""], ["135", "W07", ""]),
      objections: ["joint L1 was welded by W07 with 141 and 135; root and cap state no deposited thickness"],
    },
  ],
});

function joint(takes: string, type = "butt") {
  return { $: "L1", type, thicknesses: [takes, takes] };
}

function log(takes: string, ...layers: readonly string[]) {
  const names = ["root", "fill", "cap"];
  return {
    runs: layers.map((deposited, index) => ({
      layer: names[index] ?? "cap",
      process: "135",
      welders: ["W07"],
      ...(deposited !== "" && { deposited }),
    })),
    joint: joint(takes),
  };
}

function several(...runs: readonly (readonly [process: string, welder: string, deposited: string])[]) {
  return {
    runs: runs.map(([process, welder, deposited], index) => ({
      layer: index === 0 ? "root" : "cap",
      process,
      welders: [welder],
      ...(deposited !== "" && { deposited }),
    })),
    people: runs.map(([, welder]) => ({ $: welder })),
    joint: { $: "L1", type: "butt" },
  };
}
