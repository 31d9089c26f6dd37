import { fromMemory } from "../../model/basis.ts";
import { anyOf, exists, optional, text, things, type Condition } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { kindName } from "../shared/words.ts";

interface Shape {
  readonly id: string;
  readonly title: string;
  readonly kind: "joint" | "part";
  readonly when: readonly Condition[];
  /** As rows of a dimensional report say it. */
  readonly shape: string;
}

const seam = (role: string): readonly Condition[] => [
  { path: "role", equals: role },
  { path: "type", equals: "butt" },
];

const shapes: readonly Shape[] = [
  {
    id: "peaking-measured",
    title: "The peaking of each longitudinal seam of a vessel is measured",
    kind: "joint",
    when: seam("longitudinal"),
    shape: "peaking",
  },
  {
    id: "seam-offset-measured",
    title: "The offset of each round seam of a vessel is measured",
    kind: "joint",
    when: seam("circumferential"),
    shape: "offset of edges",
  },
  {
    id: "roundness-measured",
    title: "The roundness of each shell course of a vessel is measured",
    kind: "part",
    when: [{ path: "role", equals: "shell-course" }],
    shape: "diameters of one section",
  },
];

/** What the shape of a vessel is known by, before its test. */
export const shapeMeasured: readonly Rule[] = shapes.map(({ id, title, kind, when, shape }) => {
  const rows = `<dimension-check:rows[].${kind}>`;
  return rule({
    id,
    title,
    basis: fromMemory(
      "EN 13445-4",
      undefined,
      "tolerances of the shell: peaking of longitudinal welds, offset of circumferential welds, roundness of courses",
    ),
    kind,
    when: [...when, { path: "profile.designStandards", equals: "EN 13445" }],
    severity: "gap",
    fault: "shape-measured",
    owner: "quality",
    inputs: { rows: anyOf(things(rows, { shape: optional(text("shape")) })), tested: exists("book.pressure-test") },
    *check({ rows: named, tested }, subject) {
      // What no row names at all, or is still to be measured, lacks.
      if (!tested || named.length === 0 || isMeasured(named, shape)) return;
      yield {
        at: "subject",
        accuses: [],
        message: `no dimensional report measures ${shape} of ${kindName(kind)} ${subject.name}`,
        why: `rows that name it: ${named.map(({ $ }) => $.name).join(", ")}`,
        hint: "add the row of the report, or say in its row what of the shape it is; else have it measured",
      };
    },
    *lacks({ rows: named, tested }) {
      const why = `${shape}: measured before the pressure test`;
      if (named.length === 0) yield { at: "subject", path: rows, why };
      else if (!tested && !isMeasured(named, shape)) yield { at: "subject", path: `${rows}[shape="${shape}"]`, why };
    },
    lacksDue: "pressure-test",
    examples: [
      { name: "measured", given: { rows: [{ shape }], tested: true }, objections: [] },
      { name: "named by no row", given: { tested: true }, objections: [], lacks: [rows] },
      {
        name: "something else measured, before the test",
        given: { rows: [{ $: "DIM-02, length" }] },
        objections: [],
        lacks: [`${rows}[shape="${shape}"]`],
      },
      {
        name: "something else measured",
        given: { rows: [{ $: "DIM-02, length" }], tested: true },
        objections: [`no dimensional report measures ${shape} of ${kindName(kind)} X-01`],
      },
    ],
  });
});

const isMeasured = (rows: readonly { readonly shape: string | undefined }[], shape: string) =>
  // Only a longitudinal seam peaks: of one that is entered as another its role is found.
  rows.some((row) => row.shape === shape || row.shape === "peaking");
