import { closer } from "../model/closer.ts";
import { anyOf, optional, quantity, text, thing, things } from "../model/input.ts";
import { isClosed, spansOf, union } from "../model/seam-lengths.ts";

const place = { from: optional(quantity("from", "mm")), to: optional(quantity("to", "mm")) };

/** What a surface test finds in the bottom of an excavation is ground deeper and tested again, before anything is welded. */
export const groundDeeper = closer({
  id: "excavation",
  title: "a later row of the same test of an excavation that accepts the whole length",
  kinds: ["ndt-report#rows"],
  owner: "welding coordination",
  inputs: {
    ...place,
    length: quantity("length", "mm"),
    joint: thing("joint", { role: text("role"), length: quantity("length", "mm") }),
    report: thing("record", {
      excavations: anyOf(things("<repair:excavationTest>", {})),
      rows: anyOf(things("rows[]", { ...place, joint: text("joint"), result: text("result") })),
    }),
  },
  close({ from, to, length, joint, report }, row) {
    const lacks = "no later row of the excavation's test accepts it";
    const hint = "have the excavation ground further and tested again, and enter that row";
    const spans = (one: { readonly from: typeof from; readonly to: typeof from }) =>
      spansOf({ ...one, length }, joint.length, isClosed(joint.role));
    const own = spans({ from, to });
    const at = report.rows.findIndex(({ $ }) => $.id === row.id);
    const later = report.rows.slice(at + 1).filter((one) => one.joint === joint.$.id && one.result === "accepted");
    const covering = later.filter((one) => {
      const covered = spans(one);
      return own !== undefined && covered !== undefined && union([...own, ...covered]) <= union(covered) + 1e-9;
    });
    const [first] = covering;
    return report.excavations.length > 0 && at >= 0 && first !== undefined
      ? { closes: true, said: `ground deeper and tested again: ${first.$.name}` }
      : { closes: false, begun: false, lacks, hint };
  },
  examples: [
    {
      name: "accepted in the end",
      given: excavated("accepted"),
      expect: "ground deeper and tested again: PT-01, row 2",
    },
    {
      name: "rejected again",
      given: excavated("rejected"),
      expect: "no later row of the excavation's test accepts it",
    },
    {
      name: "only a part of it",
      given: excavated("accepted", "330 mm"),
      expect: "no later row of the excavation's test accepts it",
    },
    {
      name: "no excavation",
      given: { ...excavated("accepted"), report: { ...excavated("accepted").report, excavations: [] } },
      expect: "no later row of the excavation's test accepts it",
    },
  ],
});

function excavated(result: string, from = "300 mm") {
  return {
    from: "300 mm",
    to: "380 mm",
    length: "80 mm",
    joint: { $: "C2", role: "circumferential", length: "3744 mm" },
    report: {
      excavations: [{ $: "C2R1" }],
      rows: [
        { $: "X-01", from: "300 mm", to: "380 mm", joint: "C2", result: "rejected" },
        { $: "PT-01, row 2", from, to: "380 mm", joint: "C2", result },
      ],
    },
  };
}
