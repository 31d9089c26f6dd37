import { fromMemory } from "../../model/basis.ts";
import { anyOf, exists, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shared = {
  basis: fromMemory(
    "EN 13445-4",
    undefined,
    "tolerances of the shell: peaking of longitudinal welds, offset of circumferential welds, roundness of courses are measured",
  ),
  severity: "gap",
  owner: "quality",
} as const;
/** Of the standard that asks for it. */
const asked = { path: "profile.designStandards", equals: "EN 13445" } as const;
/** Before the test nothing is late. */
const tested = exists("book.pressure-test");
const measured = { shape: optional(text("shape")) };
const hint = "add the row of the dimensional report, or say in its row what of the shape it is; else have it measured";

/** What of the shape is measured at a seam. */
const wantedOf = (role: string) => (role === "longitudinal" ? "peaking" : "offset of edges");

export const seamMeasured = rule({
  ...shared,
  id: "seam-shape-measured",
  title:
    "The peaking of each longitudinal seam of a vessel, and the offset of each round one, is measured before its test",
  kind: "joint",
  when: [{ path: "role", equals: ["longitudinal", "circumferential"] }, { path: "type", equals: "butt" }, asked],
  inputs: { tested, role: text("role"), rows: anyOf(things("<dimension-check:rows[].joint>", measured)) },
  *check({ tested: late, role, rows }, joint) {
    const wanted = wantedOf(role);
    // Only a longitudinal seam peaks: of one that is entered as another its role is found.
    const settled = rows.some(({ shape }) => shape === wanted || shape === "peaking");
    if (!late || rows.length === 0 || settled) return;
    yield {
      at: "subject",
      accuses: [],
      message: `no dimensional report measures the ${wanted} of joint ${joint.name}`,
      why: `rows that name it: ${rows.map(({ $ }) => $.name).join(", ")}`,
      hint,
    };
  },
  *lacks({ role, rows }) {
    if (rows.length === 0)
      yield { at: "subject", path: "<dimension-check:rows[].joint>", why: `its ${wantedOf(role)} is measured` };
  },
  lacksDue: "pressure-test",
  examples: [
    { name: "measured", given: { tested: true, role: "longitudinal", rows: [{ shape: "peaking" }] }, objections: [] },
    {
      name: "something else measured",
      given: { tested: true, role: "longitudinal", rows: [{ $: "DIM-02, length", shape: "offset of edges" }] },
      objections: ["no dimensional report measures the peaking of joint X-01"],
    },
    {
      name: "nothing measured",
      given: { tested: true, role: "circumferential" },
      objections: [],
      lacks: ["<dimension-check:rows[].joint>"],
    },
  ],
});

export const courseMeasured = rule({
  ...shared,
  id: "course-roundness-measured",
  title: "The roundness of each shell course of a vessel is measured before its test",
  kind: "part",
  when: [{ path: "role", equals: "shell-course" }, asked],
  inputs: { tested, rows: anyOf(things("<dimension-check:rows[].part>", measured)) },
  *check({ tested: late, rows }, part) {
    if (!late || rows.length === 0 || rows.some(({ shape }) => shape === "diameters of one section")) return;
    yield {
      at: "subject",
      accuses: [],
      message: `no dimensional report measures the diameters of one section of part ${part.name}`,
      why: `rows that name it: ${rows.map(({ $ }) => $.name).join(", ")}`,
      hint,
    };
  },
  *lacks({ rows }) {
    if (rows.length === 0)
      yield { at: "subject", path: "<dimension-check:rows[].part>", why: "the diameters of one section are measured" };
  },
  lacksDue: "pressure-test",
  examples: [
    { name: "measured", given: { tested: true, rows: [{ shape: "diameters of one section" }] }, objections: [] },
    {
      name: "not measured",
      given: { tested: true, rows: [{ $: "DIM-02, length" }] },
      objections: ["no dimensional report measures the diameters of one section of part X-01"],
    },
  ],
});
