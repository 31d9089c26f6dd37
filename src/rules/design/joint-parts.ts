import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { flag, list, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** What shells are made of: a joint between two of these is a seam. */
const shells = ["shell-course", "end", "furnace", "furnace-hoop", "reversal-chamber", "access-tube"];

export const jointRoleOfParts = rule({
  id: "joint-role-of-parts",
  title: "A butt joint between parts of shells alone is a seam, and not that of a nozzle or attachment",
  basis: derivedFrom("a joint of a nozzle has a nozzle on one of its sides"),
  kind: "joint",
  when: [{ path: "type", equals: "butt" }],
  severity: "nonconformity",
  owner: "design",
  inputs: { role: text("role"), parts: list(thing("parts[]", { role: text("role") })) },
  *check({ role, parts }, joint) {
    if (!["nozzle", "attachment"].includes(role) || parts.length < 2) return;
    if (parts.every((part) => shells.includes(part.role)))
      yield {
        at: "role",
        accuses: [],
        message: `joint ${joint.name} is entered as ${role}; it joins ${parts.map((part) => `${part.role.replaceAll("-", " ")} ${part.$.name}`).join(" and ")}`,
        why: "testing and coefficient follow from where a joint lies",
        hint: "correct the role, or the parts",
      };
  },
  examples: [
    { name: "two courses", given: joined("circumferential", "shell-course"), objections: [] },
    { name: "a neck", given: joined("nozzle", "nozzle-neck"), objections: [] },
    {
      name: "two courses, as of a nozzle",
      given: joined("nozzle", "shell-course"),
      objections: ["joint X-01 is entered as nozzle; it joins shell course P01 and shell course P02"],
    },
  ],
});

function joined(role: string, second: string) {
  return {
    role,
    parts: [
      { $: "P01", role: "shell-course" },
      { $: "P02", role: second },
    ],
  };
}

export const jointBearsPressure = rule({
  id: "joint-bears-pressure",
  title: "A butt joint of parts that all contain pressure contains pressure",
  basis: derivedFrom("what is between two walls under pressure is part of the wall"),
  kind: "joint",
  when: [
    { path: "type", equals: "butt" },
    { path: "role", equals: ["longitudinal", "circumferential", "nozzle"] },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    bears: flag("pressureBearing"),
    parts: list(thing("parts[]", { bears: flag("pressureBearing") })),
  },
  *check({ bears, parts }, joint) {
    if (!bears && parts.length > 0 && parts.every((part) => part.bears))
      yield {
        at: "bears",
        accuses: [],
        message: `joint ${joint.name} is said not to contain pressure; ${parts.map(({ $ }) => `part ${$.name}`).join(" and ")}, which it joins, ${parts.length > 1 ? "do" : "does"}`,
        why: "tests, welders and procedures are asked for by whether a weld contains pressure",
        hint: "correct the joint, or the part",
      };
  },
  examples: [
    { name: "it does", given: { bears: true, parts: [{ bears: true }] }, objections: [] },
    { name: "a seam of a skirt", given: { bears: false, parts: [{ bears: true }, { bears: false }] }, objections: [] },
    {
      name: "a seam of the shell",
      given: { bears: false, parts: [{ $: "P01", bears: true }] },
      objections: ["joint X-01 is said not to contain pressure; part P01, which it joins, does"],
    },
  ],
});

/** What a part of a role is not made of. */
const never: Readonly<Record<string, readonly string[]>> = {
  flange: ["tube", "pipe", "formed-end"],
  "blind-flange": ["tube", "pipe", "formed-end"],
  "nozzle-neck": ["formed-end", "section", "bolting"],
  "shell-course": ["formed-end", "section", "bolting", "bar"],
  end: ["tube", "pipe", "section", "bolting", "bar"],
  bolting: ["plate", "tube", "pipe", "formed-end"],
};

export const partForm = rule({
  id: "part-form",
  title: "A part can be made of the product form it is ordered in",
  basis: commonPractice("a flange is forged or cut from plate, a neck is a tube, a forging or rolled plate"),
  kind: "part",
  when: [{ path: "role", equals: Object.keys(never) }],
  severity: "query",
  owner: "design",
  inputs: { role: text("role"), form: text("material.form") },
  *check({ role, form }, part) {
    if (never[role]?.includes(form) === true)
      yield {
        at: "role",
        accuses: [],
        message: `part ${part.name} is a ${role.replaceAll("-", " ")}, and is ordered as ${form.replaceAll("-", " ")}`,
        why: `such a part is not made of: ${never[role].map((one) => one.replaceAll("-", " ")).join(", ")}`,
        hint: "correct what the part is, or its product form; if it is made so, answer this query",
      };
  },
  examples: [
    { name: "a neck of tube", given: { role: "nozzle-neck", form: "tube" }, objections: [] },
    {
      name: "a flange of tube",
      given: { role: "flange", form: "tube" },
      objections: ["part X-01 is a flange, and is ordered as tube"],
    },
  ],
});
