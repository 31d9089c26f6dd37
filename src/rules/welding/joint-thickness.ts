import { fromMemory, ownChoice } from "../../model/basis.ts";
import { list, optional, quantity, thing } from "../../model/input.ts";
import { atLeast, atMost, holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { span } from "./thickness-range.ts";

export const jointInProcedure = rule({
  id: "joint-in-procedure",
  title: "A joint lies within the thickness range of its welding procedure",
  basis: fromMemory("EN ISO 15609-1", "2019", "thickness range of the specification"),
  kind: "joint",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    thicknesses: list(quantity("thicknesses[]", "mm")),
    procedure: thing("weldingProcedure", {
      from: optional(quantity("thickness.minimum", "mm")),
      to: optional(quantity("thickness.maximum", "mm")),
    }),
  },
  *check({ thicknesses, procedure }, joint) {
    const { from, to } = procedure;
    for (const thickness of new Map(thicknesses.map((one) => [one.text, one])).values()) {
      const low = from === undefined ? "yes" : atLeast(thickness, from);
      const high = to === undefined ? "yes" : atMost(thickness, to);
      if (low !== "yes" || high !== "yes")
        yield {
          at: "thicknesses",
          name: thickness.text,
          message: `joint ${joint.name} is ${thickness.text} thick; ${procedure.$.name} covers ${span(from, to)}`,
          why: "the procedure's own range",
          hint: "name the procedure that covers the joint",
          unsure: low !== "no" && high !== "no",
          related: [{ at: [procedure, "from"], message: "range stated here" }],
        };
    }
  },
  examples: [
    {
      name: "at the upper end",
      given: { thicknesses: ["16.0 mm"], procedure: { from: "3.0 mm", to: "16.0 mm" } },
      objections: [],
    },
    {
      name: "below the lower end",
      given: { thicknesses: ["2.9 mm"], procedure: { $: "WPS-03 revision 2", from: "3.0 mm", to: "16.0 mm" } },
      objections: ["joint X-01 is 2.9 mm thick; WPS-03 revision 2 covers 3.0 mm to 16.0 mm"],
    },
  ],
});

export const partThickness = rule({
  id: "joint-thickness",
  title: "The thickness of a joint is that of a part it joins",
  basis: ownChoice("the thinner or the thicker of the two parts, as the weld detail says; any other figure is a slip"),
  kind: "joint",
  when: [{ path: "type", equals: "butt" }],
  severity: "nonconformity",
  owner: "welding coordination",
  disputes: ["thicknesses"],
  inputs: {
    thicknesses: list(quantity("thicknesses[]", "mm")),
    parts: list(thing("parts[]", { thickness: quantity("nominalThickness", "mm") })),
  },
  *check({ thicknesses, parts }, joint) {
    const strange = thicknesses.filter((thickness) =>
      parts.every((part) => holds(thickness, "=", part.thickness) === "no"),
    );
    if (strange.length > 0)
      yield {
        at: "thicknesses",
        message: `joint ${joint.name} is ${strange.map(({ text: one }) => one).join(" and ")} thick; its parts are ${parts.map((part) => part.thickness.text).join(" and ")}`,
        why: parts.map((part) => `part ${part.$.name}: ${part.thickness.text}`).join(", "),
        hint: "correct the joint or the part against the drawing",
      };
  },
  examples: [
    {
      name: "of one part",
      given: { thicknesses: ["8.0 mm"], parts: [{ thickness: "8.0 mm" }, { thickness: "9.0 mm" }] },
      objections: [],
    },
    {
      name: "of none",
      given: {
        thicknesses: ["6.0 mm"],
        parts: [
          { $: "1", thickness: "8.0 mm" },
          { $: "2", thickness: "8.0 mm" },
        ],
      },
      objections: ["joint X-01 is 6.0 mm thick; its parts are 8.0 mm and 8.0 mm"],
    },
  ],
});
