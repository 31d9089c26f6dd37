import { ownChoice } from "../../model/basis.ts";
import { list, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Parts that are rolled and closed by a seam of their own. */
const rolled = ["shell-course", "furnace", "reversal-chamber", "access-tube", "end", "nozzle-neck"];
/** How far the length of a seam around a shell may lie from its circumference. */
const girth = [0.85, 1.1] as const;

const butt = { path: "type", equals: "butt" } as const;

export const jointClosesPart = rule({
  id: "joint-closes-part",
  title: "A seam that closes a part on itself is entered as a longitudinal one",
  basis: ownChoice("hoop stress pulls at such a seam; its testing and its coefficient follow from that"),
  kind: "joint",
  when: [butt],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    role: text("role"),
    parts: list(thing("parts[]", { role: text("role") })),
  },
  *check({ role, parts }, joint) {
    const [part, second] = parts;
    if (part === undefined || second !== undefined || !rolled.includes(part.role) || role === "longitudinal") return;
    yield {
      at: "role",
      message: `joint ${joint.name} is entered as ${role}; it joins part ${part.$.name} to itself, which a longitudinal joint does`,
      why: "hoop stress pulls at such a seam; testing and coefficient follow from that",
      hint: "correct the role, or name the second part",
    };
  },
  examples: [
    { name: "a course closed on itself", given: joined("longitudinal", ["shell-course"]), objections: [] },
    {
      name: "entered as circumferential",
      given: joined("circumferential", ["shell-course"]),
      objections: [
        "joint X-01 is entered as circumferential; it joins part P01 to itself, which a longitudinal joint does",
      ],
    },
    { name: "two courses", given: joined("circumferential", ["shell-course", "shell-course"]), objections: [] },
    { name: "a plate welded of two", given: joined("circumferential", ["tube-plate"]), objections: [] },
  ],
});

export const jointGoesRound = rule({
  id: "joint-goes-round",
  title: "A seam round a shell is as long as its circumference, and one along it is not",
  basis: ownChoice("a seam whose length is a circumference goes round; what is much shorter does not"),
  kind: "joint",
  when: [butt, { path: "outsideDiameter", exists: true }],
  severity: "query",
  owner: "design",
  inputs: {
    role: text("role"),
    parts: list(thing("parts[]", { role: text("role") })),
    length: quantity("length", "mm"),
    diameter: quantity("outsideDiameter", "mm"),
  },
  *check({ role, parts, length, diameter }, joint) {
    const round = Math.PI * diameter.value;
    const goesRound = length.value >= girth[0] * round && length.value <= girth[1] * round;
    const alongItself = parts.length === 1 || !parts.every((one) => rolled.includes(one.role));
    if (
      alongItself ||
      goesRound === (role === "circumferential") ||
      !["circumferential", "longitudinal"].includes(role)
    )
      return;
    yield {
      at: "role",
      accuses: [],
      message: `joint ${joint.name} is entered as ${role} and ${length.text} long; round a diameter of ${diameter.text} are ${Math.round(round)} mm`,
      why: `it joins ${parts.map((one) => one.$.name).join(" and ")}`,
      hint: goesRound
        ? "correct the role, or answer this query if the part is that long"
        : "correct the length, the diameter or the role",
    };
  },
  examples: [
    { name: "two courses", given: course("circumferential", ["shell-course", "shell-course"], 3745), objections: [] },
    { name: "two halves of a course", given: course("longitudinal", ["shell-course", "shell-course"]), objections: [] },
    {
      name: "two halves, entered as circumferential",
      given: course("circumferential", ["shell-course", "shell-course"]),
      objections: [
        "joint X-01 is entered as circumferential and 2000 mm long; round a diameter of 1200 mm are 3770 mm",
      ],
    },
    {
      name: "two courses, entered as longitudinal",
      given: course("longitudinal", ["shell-course", "shell-course"], 3745),
      objections: ["joint X-01 is entered as longitudinal and 3745 mm long; round a diameter of 1200 mm are 3770 mm"],
    },
    { name: "plates of a tank", given: course("longitudinal", ["tube-plate", "tube-plate"], 900), objections: [] },
  ],
});

function joined(role: string, parts: readonly string[]) {
  return { role, parts: parts.map((one, index) => ({ $: `P0${index + 1}`, role: one })) };
}

function course(role: string, parts: readonly string[], length = 2000) {
  return { ...joined(role, parts), length: `${length} mm`, diameter: "1200 mm" };
}
