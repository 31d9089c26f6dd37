import { commonPractice } from "../../model/basis.ts";
import { artefact, familiesOf } from "../../model/imperfections.ts";
import { anyOf, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { isClosed, spansOf, union } from "../../model/seam-lengths.ts";

const stretch = {
  from: optional(quantity("from", "mm")),
  to: optional(quantity("to", "mm")),
  length: quantity("length", "mm"),
};

export const filmArtefact = rule({
  id: "film-artefact",
  title: "Where a film bears a mark of its own, the length is exposed again",
  basis: commonPractice("a mark of film or processing is no imperfection of the weld, and hides what lies under it"),
  kind: "ndt-report#rows",
  when: [
    { path: "record.method", equals: "RT" },
    { path: "indications[].type", exists: true },
  ],
  severity: "query",
  owner: "testing",
  inputs: {
    indications: anyOf(things("indications[]", { type: optional(text("type")) })),
    ...stretch,
    joint: thing("joint", {
      role: text("role"),
      length: quantity("length", "mm"),
      rows: anyOf(
        things("<ndt-report:rows[].joint>", {
          ...stretch,
          method: text("record.method"),
          indications: anyOf(things("indications[]", { type: optional(text("type")) })),
        }),
      ),
    }),
  },
  *check({ indications, joint, ...own }, row) {
    const marked = (all: typeof indications) =>
      all.find(({ type }) => type !== undefined && familiesOf(type).includes(artefact));
    const mark = marked(indications);
    if (mark === undefined) return;
    const spans = (one: typeof own) => spansOf(one, joint.length, isClosed(joint.role)) ?? [];
    const clean = joint.rows
      .filter((one) => one.method === "RT" && one.$.address !== row.address && marked(one.indications) === undefined)
      .flatMap(spans);
    // What the clean films cover of it is what it adds nothing to.
    if (union([...clean, ...spans(own)]) - union(clean) <= 1e-9 && spans(own).length > 0) return;
    yield {
      at: [mark, "type"],
      accuses: [],
      message: `${row.name} bears a mark of the film, and no other film shows that length of joint ${joint.$.name}`,
      why: mark.type ?? "",
      hint: "add the row of the film that was exposed again, or have it exposed again",
    };
  },
  examples: [
    { name: "exposed again", given: marked("film artefact, scratch", true), objections: [] },
    { name: "an imperfection of the weld", given: marked("2011 gas pore", false), objections: [] },
    {
      name: "left as it is",
      given: marked("film artefact, scratch", false),
      objections: ["X-01 bears a mark of the film, and no other film shows that length of joint C3"],
    },
  ],
});

function marked(type: string, again: boolean) {
  const length = { from: "0 mm", to: "480 mm", length: "480 mm" };
  const first = { $: "X-01", ...length, method: "RT", indications: [{ type }] };
  return {
    ...length,
    indications: [{ type }],
    joint: {
      $: "C3",
      role: "circumferential",
      length: "3745 mm",
      rows: [first, ...(again ? [{ $: "R-02", ...length, method: "RT", indications: [] }] : [])],
    },
  };
}
