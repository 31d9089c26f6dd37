import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { atLeast, atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { pressureBearing } from "../../requirements/conditions.ts";

export const weldCoefficientExtent = rule({
  id: "weld-coefficient-extent",
  title: "Longitudinal joints are planned to be tested as the weld joint coefficient of the part demands",
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, joint coefficients: full, random, or visual testing"),
  kind: "part",
  // Of a part without such a joint, or without a coefficient, nothing is judged.
  when: [
    pressureBearing,
    { path: "weldCoefficient", exists: true },
    { path: '<joint:parts[]>[role="longitudinal"]', exists: true },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    coefficient: optional(quantity("weldCoefficient", "1")),
    full: quantity("profile.volumetricExtentFull", "%"),
    partial: quantity("profile.volumetricExtentPartial", "%"),
    visual: quantity("profile.volumetricExtentVisual", "%"),
    joints: anyOf(
      things("<joint:parts[]>", {
        role: text("role"),
        tests: list(thing("requiredTests[]", { method: text("method"), extent: quantity("extent", "%") })),
      }),
    ),
  },
  *check({ coefficient, full, partial, visual, joints }, part) {
    if (coefficient === undefined) return;
    const owed = atMost(coefficient, 0.7) === "yes" ? visual : atMost(coefficient, 0.85) === "yes" ? partial : full;
    for (const joint of joints.filter(({ role }) => role === "longitudinal")) {
      const volumetric = joint.tests.filter(({ method }) => method === "RT" || method === "UT");
      if (owed.high <= 0 || volumetric.some(({ extent }) => atLeast(extent, owed) === "yes")) continue;
      const planned =
        volumetric.map(({ method, extent }) => `${method} ${extent.text}`).join(", ") || "neither RT nor UT";
      yield {
        at: [joint, "tests"],
        name: joint.$.id,
        message: `joint ${joint.$.name} is planned with ${planned}; the coefficient ${coefficient.text} of part ${part.name} demands ${owed.text}`,
        why: "radiographic or ultrasonic testing of the longitudinal joint is what the coefficient rests on",
        hint: "raise the extent of testing, or calculate with the lower coefficient",
        related: [{ at: "coefficient", message: `coefficient ${coefficient.text} stated here` }],
      };
    }
  },
  examples: [
    { name: "1.0 with full testing", given: planned("1.0", "longitudinal", "100 %"), objections: [] },
    {
      name: "1.0 with a tenth",
      given: planned("1.0", "longitudinal", "10 %"),
      objections: ["joint L1 is planned with RT 10 %; the coefficient 1.0 of part X-01 demands 100 %"],
    },
    { name: "0.85 with a tenth", given: planned("0.85", "longitudinal", "10 %"), objections: [] },
    {
      name: "0.85 with less",
      given: planned("0.85", "longitudinal", "9 %"),
      objections: ["joint L1 is planned with RT 9 %; the coefficient 0.85 of part X-01 demands 10 %"],
    },
    {
      name: "just above 0.85",
      given: planned("0.86", "longitudinal", "10 %"),
      objections: ["joint L1 is planned with RT 10 %; the coefficient 0.86 of part X-01 demands 100 %"],
    },
    { name: "0.7 with a visual test only", given: planned("0.7", "longitudinal"), objections: [] },
    {
      name: "just above 0.7 with a visual test only",
      given: planned("0.71", "longitudinal"),
      objections: ["joint L1 is planned with neither RT nor UT; the coefficient 0.71 of part X-01 demands 10 %"],
    },
    { name: "a circumferential joint", given: planned("1.0", "circumferential", "10 %"), objections: [] },
  ],
});

function planned(coefficient: string, role: string, extent?: string) {
  const visual = { method: "VT", extent: "100 %" };
  return {
    coefficient,
    full: "100 %",
    partial: "10 %",
    visual: "0 %",
    joints: [{ $: "L1", role, tests: extent === undefined ? [visual] : [visual, { method: "RT", extent }] }],
  };
}
