import { commonPractice } from "../../model/basis.ts";
import { anyOf, list, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

const shows = ["arrangement", "detail"];

export const partDrawn = rule({
  id: "part-drawn",
  title: "A part names a drawing of parts that shows it, in the last revision",
  basis: commonPractice("a part is made, measured and accepted to the drawing that shows it, as it was last revised"),
  kind: "part",
  when: [{ path: "drawing", exists: true }],
  severity: "query",
  owner: "design",
  inputs: {
    named: text("drawing"),
    drawing: thing("drawing", {
      revision: text("revision"),
      type: text("record.type"),
      parts: anyOf(list(text("record.parts[]"))),
      revisions: anyOf(things("record.revisions[]", { name: text("revision") })),
    }),
  },
  *check({ named, drawing }, part) {
    const { revision } = drawing;
    const last = drawing.revisions.at(-1);
    const fault = !shows.includes(drawing.type)
      ? `names drawing ${named}, which is a ${drawing.type}`
      : drawing.parts.length > 0 && !drawing.parts.includes(part.id)
        ? `names drawing ${named}, which lists other parts`
        : last !== undefined && last.name !== revision
          ? `names drawing ${named}, which revision ${last.name} replaced`
          : undefined;
    if (fault === undefined) return;
    yield {
      at: "named",
      accuses: ["named"],
      message: `part ${part.name} ${fault}`,
      why:
        drawing.parts.length > 0
          ? `${drawing.type}, revision ${last?.name ?? "none"}; parts ${drawing.parts.join(", ")}`
          : `${drawing.type}, revision ${last?.name ?? "none"}; it lists no parts`,
      hint: "compare with the title block and the parts list: name the drawing and the revision that show it as made, or add it there",
      related: [{ at: drawing, message: "this revision" }],
    };
  },
  examples: [
    { name: "listed, in the last revision", given: drawn("arrangement", "B", ["X-01"]), objections: [] },
    { name: "of a drawing without a list", given: drawn("detail", "B", []), objections: [] },
    {
      name: "on a weld map",
      given: drawn("weld-map", "B", ["X-01"]),
      objections: ["part X-01 names drawing DRG-01@B, which is a weld-map"],
    },
    {
      name: "not on the list",
      given: drawn("detail", "B", ["P02"]),
      objections: ["part X-01 names drawing DRG-01@B, which lists other parts"],
    },
    {
      name: "in a revision before",
      given: drawn("detail", "A", ["X-01"]),
      objections: ["part X-01 names drawing DRG-01@A, which revision B replaced"],
    },
  ],
});

function drawn(type: string, revision: string, parts: readonly string[]) {
  return {
    named: `DRG-01@${revision}`,
    drawing: { $: `DRG-01@${revision}`, revision, type, parts, revisions: [{ name: "A" }, { name: "B" }] },
  };
}
