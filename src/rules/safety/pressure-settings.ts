import { commonPractice, ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, things } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { fittingOf, onSteamEquipment } from "../../requirements/boiler-conditions.ts";
import { brokenBound } from "../shared/bounds.ts";
import { owedBy } from "../../model/owes.ts";

export const controllerPressure = rule({
  id: "pressure-controller-setting",
  title:
    "A pressure controller lets the boiler reach its working pressure, and turns the firing on below where it turns it off",
  basis: ownChoice("a boiler that is turned off below its working pressure never gives its duty"),
  kind: "fitting",
  when: [fittingOf("pressure-controller"), onSteamEquipment],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    cutOut: quantity("cutOut", "bar"),
    cutIn: quantity("cutIn", "bar"),
    working: quantity("equipment.duty.workingPressure", "bar"),
  },
  owes: [owedBy("quality", "final-inspection", "cutOut", "cutIn")],
  *check({ cutOut, cutIn, working }, fitting) {
    const broken = brokenBound(cutOut, { working, cutIn }, [
      [">=", "working", "the working pressure"],
      [">", "cutIn", "the pressure at which it turns it on"],
    ]);
    if (broken !== undefined)
      yield {
        at: "cutOut",
        message: `pressure controller ${fitting.name} turns the firing off at ${broken.said}`,
        why: `off at ${cutOut.text}, on at ${cutIn.text}, working pressure ${working.text}`,
        hint: "compare with the record of the setting and correct the wrong figure, or have the controller set again",
        unsure: broken.unsure,
        related: [{ at: broken.name, message: `${broken.name === "working" ? working.text : cutIn.text} here` }],
      };
  },
  examples: [
    {
      name: "at the working pressure",
      given: { cutOut: "9.0 bar", cutIn: "8.9 bar", working: "9 bar" },
      objections: [],
    },
    {
      name: "below the working pressure",
      given: { cutOut: "8.9 bar", cutIn: "8 bar", working: "9 bar" },
      objections: ["pressure controller X-01 turns the firing off at 8.9 bar, below the working pressure, 9 bar"],
    },
    {
      name: "on where it turns off",
      given: { cutOut: "9.2 bar", cutIn: "9.2 bar", working: "9 bar" },
      objections: [
        "pressure controller X-01 turns the firing off at 9.2 bar, not above the pressure at which it turns it on, 9.2 bar",
      ],
    },
  ],
});

export const limiterPressure = rule({
  id: "pressure-limiter-setting",
  title: "A pressure limiter acts above the pressure controllers and below every safety valve",
  basis: commonPractice("firing is controlled, then cut for good, and only then does a valve open"),
  kind: "fitting",
  when: [fittingOf("pressure-limiter")],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    setting: quantity("settingPressure", "bar"),
    controllers: anyOf(
      things('equipment.<fitting:equipment>[sort="pressure-controller"]', { cutOut: quantity("cutOut", "bar") }),
    ),
    valves: anyOf(things("equipment.<safety-valve:equipment>", { set: quantity("setPressure", "bar") })),
    trials: anyOf(things("functionTests[]", { pressure: optional(quantity("pressure", "bar")) })),
  },
  owes: [owedBy("quality", "final-inspection", "setting", "controllers.cutOut")],
  *check({ setting, controllers, valves, trials }, fitting) {
    const hint = "compare with the record of the setting and correct the wrong figure, or have the limiter set again";
    const why = [
      ...controllers.map(({ $, cutOut }) => `${$.name} controls up to ${cutOut.text}`),
      ...valves.map(({ $, set }) => `${$.name} opens at ${set.text}`),
    ].join("; ");
    const [highest] = [...controllers].sort((a, b) => b.cutOut.high - a.cutOut.high);
    const [lowest] = [...valves].sort((a, b) => a.set.low - b.set.low);
    const over = highest === undefined ? "yes" : holds(setting, ">", highest.cutOut);
    if (highest !== undefined && over !== "yes")
      yield {
        at: "setting",
        name: "controller",
        message: `pressure limiter ${fitting.name} is set to ${setting.text}, not above where ${highest.$.name} turns the firing off, ${highest.cutOut.text}`,
        why,
        hint,
        unsure: over === "unsure",
        related: [{ at: [highest, "cutOut"], message: `${highest.cutOut.text} here` }],
      };
    if (lowest === undefined) return;
    const under = holds(setting, "<", lowest.set);
    if (under !== "yes")
      yield {
        at: "setting",
        name: "valve",
        message: `pressure limiter ${fitting.name} is set to ${setting.text}, not below safety valve ${lowest.$.name}, ${lowest.set.text}`,
        why,
        hint,
        unsure: under === "unsure",
        related: [{ at: [lowest, "set"], message: `${lowest.set.text} here` }],
      };
    for (const trial of trials) {
      if (trial.pressure === undefined) continue;
      const acted = holds(trial.pressure, "<", lowest.set);
      if (acted !== "yes")
        yield {
          at: [trial, "pressure"],
          name: trial.$.id,
          message: `pressure limiter ${fitting.name} cut the heat at ${trial.pressure.text}, not below safety valve ${lowest.$.name}, ${lowest.set.text}`,
          why,
          hint,
          unsure: acted === "unsure",
          related: [{ at: [lowest, "set"], message: `${lowest.set.text} here` }],
        };
    }
  },
  examples: [
    { name: "between", given: between("9.6 bar"), objections: [] },
    { name: "with nothing to compare", given: { setting: "9.6 bar" }, objections: [] },
    {
      name: "where the controller acts",
      given: between("9.2 bar"),
      objections: ["pressure limiter X-01 is set to 9.2 bar, not above where PC-01 turns the firing off, 9.2 bar"],
    },
    {
      name: "where the lower valve opens",
      given: between("10.0 bar"),
      objections: ["pressure limiter X-01 is set to 10.0 bar, not below safety valve SV-02, 10 bar"],
    },
    { name: "tried in time", given: { ...between("9.6 bar"), trials: [{ pressure: "9.7 bar" }, {}] }, objections: [] },
    {
      name: "tried too late",
      given: { ...between("9.6 bar"), trials: [{ pressure: "10.1 bar" }] },
      objections: ["pressure limiter X-01 cut the heat at 10.1 bar, not below safety valve SV-02, 10 bar"],
    },
  ],
});

function between(setting: string) {
  return {
    setting,
    controllers: [{ $: "PC-01", cutOut: "9.2 bar" }],
    valves: [
      { $: "SV-01", set: "10.3 bar" },
      { $: "SV-02", set: "10 bar" },
    ],
  };
}
