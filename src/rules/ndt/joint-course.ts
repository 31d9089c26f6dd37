import { ownChoice } from "../../model/basis.ts";
import { list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Parts that are rolled and closed by a seam of their own. */
const rolled = ["shell-course", "furnace", "reversal-chamber", "access-tube", "end", "nozzle-neck"];
/** How far the length of a seam around a shell may lie from its circumference. */
const girth = [0.85, 1.1] as const;

export const jointCourse = rule({
  id: "joint-course",
  title: "A butt joint lies on the equipment as its parts and its length show",
  basis: ownChoice(
    "a seam that closes a part on itself is a longitudinal one; one that goes round it is as long as its circumference",
  ),
  kind: "joint",
  when: [{ path: "type", equals: "butt" }],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    role: text("role"),
    parts: list(thing("parts[]", { role: text("role") })),
    length: quantity("length", "mm"),
    diameter: optional(quantity("outsideDiameter", "mm")),
  },
  *check({ role, parts, length, diameter }, joint) {
    const [part] = parts;
    if (parts.length === 1 && part !== undefined && rolled.includes(part.role)) {
      if (role !== "longitudinal")
        yield {
          at: "role",
          message: `joint ${joint.name} is entered as ${role}; it joins part ${part.$.name} to itself, which a longitudinal joint does`,
          why: "hoop stress pulls at such a seam; testing and coefficient follow from that",
          hint: "correct the role, or name the second part",
        };
      return;
    }
    if (diameter === undefined || !parts.every((one) => rolled.includes(one.role))) return;
    const round = Math.PI * diameter.value;
    const goesRound = length.value >= girth[0] * round && length.value <= girth[1] * round;
    if (role === "circumferential" && !goesRound)
      yield {
        at: "role",
        name: "girth",
        accuses: [],
        message: `joint ${joint.name} is entered as circumferential and ${length.text} long; round a diameter of ${diameter.text} are ${Math.round(round)} mm`,
        why: `it joins ${parts.map((one) => one.$.name).join(" and ")}`,
        hint: "correct the length, the diameter or the role",
        unsure: true,
      };
    if (role === "longitudinal" && goesRound)
      yield {
        at: "role",
        name: "girth",
        accuses: [],
        message: `joint ${joint.name} is entered as longitudinal and ${length.text} long; round a diameter of ${diameter.text} are ${Math.round(round)} mm`,
        why: `it joins ${parts.map((one) => one.$.name).join(" and ")}`,
        hint: "correct the role, or answer this query if the part is that long",
        unsure: true,
      };
  },
  examples: [
    { name: "a course closed on itself", given: course("longitudinal", ["shell-course"], "1200 mm"), objections: [] },
    {
      name: "entered as circumferential",
      given: course("circumferential", ["shell-course"], "1200 mm"),
      objections: [
        "joint X-01 is entered as circumferential; it joins part P01 to itself, which a longitudinal joint does",
      ],
    },
    {
      name: "two courses",
      given: course("circumferential", ["shell-course", "shell-course"], "3745 mm"),
      objections: [],
    },
    {
      name: "two halves of a course",
      given: course("longitudinal", ["shell-course", "shell-course"], "2000 mm"),
      objections: [],
    },
    {
      name: "two halves, entered as circumferential",
      given: course("circumferential", ["shell-course", "shell-course"], "2000 mm"),
      objections: [
        "joint X-01 is entered as circumferential and 2000 mm long; round a diameter of 1200 mm are 3770 mm",
      ],
    },
    {
      name: "two courses, entered as longitudinal",
      given: course("longitudinal", ["shell-course", "shell-course"], "3745 mm"),
      objections: ["joint X-01 is entered as longitudinal and 3745 mm long; round a diameter of 1200 mm are 3770 mm"],
    },
    { name: "plates of a tank", given: course("longitudinal", ["tube-plate", "tube-plate"], "900 mm"), objections: [] },
  ],
});

function course(role: string, parts: readonly string[], length: string) {
  return { role, parts: parts.map((one, index) => ({ $: `P0${index + 1}`, role: one })), length, diameter: "1200 mm" };
}
