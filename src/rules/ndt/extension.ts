import { commonPractice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { isClosed, spansOf, union } from "../../model/seam-lengths.ts";
import { rule } from "../../model/rule.ts";

const other = {
  report: thing("record", { day: date("date"), method: text("method") }),
  from: optional(quantity("from", "mm")),
  to: optional(quantity("to", "mm")),
  length: quantity("length", "mm"),
  result: optional(text("result")),
  retest: exists("repair"),
};

const welders = anyOf(list(text("<weld-log:joint>.runs[].welders[]")));

export const rejectionExtended = rule({
  id: "rejection-extended",
  title: "Where a weld tested in part is rejected, two further lengths are tested",
  basis: commonPractice(
    "two further lengths as long as the rejected one; if one of them is rejected too, all that it stands for",
  ),
  kind: "ndt-report#rows",
  when: [{ path: "result", equals: "rejected" }],
  severity: "gap",
  owner: "testing",
  inputs: {
    method: text("record.method"),
    day: date("record.date"),
    length: quantity("length", "mm"),
    retest: exists("repair"),
    joint: thing("joint", {
      role: text("role"),
      length: quantity("length", "mm"),
      welders,
      rows: list(thing("<ndt-report:rows[].joint>", other)),
    }),
    elsewhere: anyOf(things("<ndt-report:rows[].furtherTo>", { ...other, joint: thing("joint", { welders }) })),
  },
  *check({ method, day, length, retest, joint, elsewhere }, row) {
    if (retest) return;
    const same = joint.rows.filter(({ report }) => report.method === method);
    const all = union(same.flatMap((one) => spansOf(one, joint.length, isClosed(joint.role)) ?? []));
    if (all >= joint.length.value * (1 - 1e-9)) return;
    const others = same.filter((one) => !one.retest && one.$.address !== row.address);
    const earlier = others.find(
      (one) =>
        one.result === "rejected" && one.report.day.text !== day.text && canPrecede(day, one.report.day) === "no",
    );
    if (earlier !== undefined) {
      yield {
        at: "length",
        accuses: [],
        message: `${row.name} is rejected after ${earlier.$.name} was; ${Number(all.toFixed(3))} mm of ${joint.length.text} of joint ${joint.$.name} are tested by ${method}`,
        why: "a further length that is rejected as well stands for the whole joint",
        hint: "add the report of the whole joint, or record a waiver with what was agreed",
        related: [{ at: earlier, message: "rejected before" }],
      };
      return;
    }
    // Report and row alike may state no time: what may be later counts as later, but for the rejected row itself.
    const isFurther = (one: Pick<(typeof others)[number], "report">) =>
      canPrecede(day, one.report.day) === "yes" && (one.report.day.from > day.from || one.report.day.text !== day.text);
    const lengths = (rows: typeof others) =>
      union(rows.flatMap((one) => spansOf(one, joint.length, isClosed(joint.role)) ?? []));
    const placed = (one: (typeof others)[number]) => one.from !== undefined && one.to !== undefined;
    const own = same.filter((one) => one.$.address === row.address);
    const before = [...own, ...others.filter((one) => !isFurther(one))];
    const later = others.filter(isFurther);
    // What was tested before is no further length, and a length tested twice is one.
    const oneOfThem = (other: { readonly welders: readonly string[] }) =>
      other.welders.some((welder) => joint.welders.includes(welder));
    const onOthers = elsewhere.filter(
      (one) =>
        one.joint.$.id !== joint.$.id &&
        one.report.method === method &&
        !one.retest &&
        isFurther(one) &&
        oneOfThem(one.joint),
    );
    const further =
      onOthers.reduce((sum, one) => sum + one.length.value, 0) +
      lengths([...before, ...later].filter(placed)) -
      lengths(before.filter(placed)) +
      later.filter((one) => !placed(one)).reduce((sum, one) => sum + one.length.value, 0);
    if (further >= 2 * length.value * (1 - 1e-9)) return;
    yield {
      at: "length",
      accuses: [],
      message: `${row.name} is rejected over ${length.text}; ${Number(further.toFixed(3))} mm more of joint ${joint.$.name}${onOthers.length === 0 ? "" : " and others"} were tested by ${method} since`,
      why: `two further lengths are ${2 * length.value} mm; the joint is ${joint.length.text} long`,
      hint: "add the report of the further lengths; on another joint of the same welder a row says to which rejected one it is further",
    };
  },
  examples: [
    { name: "two further lengths", given: rejected(["480 mm", "480 mm"]), objections: [] },
    {
      name: "one further length",
      given: rejected(["480 mm"]),
      objections: ["X-01 is rejected over 400 mm; 480 mm more of joint C2 were tested by RT since"],
    },
    {
      name: "one of them on another joint of the same welder",
      given: { ...rejected(["480 mm"]), elsewhere: [elsewhere("W03")] },
      objections: [],
    },
    {
      name: "one of them on a joint of another welder",
      given: { ...rejected(["480 mm"]), elsewhere: [elsewhere("W07")] },
      objections: ["X-01 is rejected over 400 mm; 480 mm more of joint C2 were tested by RT since"],
    },
    {
      name: "nothing but the repair",
      given: rejected([], true),
      objections: ["X-01 is rejected over 400 mm; 0 mm more of joint C2 were tested by RT since"],
    },
    {
      name: "a further length where it was tested before",
      given: rejected([
        ["480 mm", "0 mm", "480 mm"],
        ["480 mm", "100 mm", "580 mm"],
      ]),
      objections: ["X-01 is rejected over 400 mm; 180 mm more of joint C2 were tested by RT since"],
    },
    {
      name: "rejected again",
      given: { ...rejected(["480 mm"]), day: "2026-06-13" },
      objections: ["X-01 is rejected after X-00 was; 400 mm of 3745 mm of joint C2 are tested by RT"],
    },
    {
      name: "tested all along",
      given: {
        method: "RT",
        day: "2026-06-11",
        length: "400 mm",
        retest: false,
        joint: {
          $: "C2",
          role: "longitudinal",
          length: "1000 mm",
          rows: [
            {
              report: { day: "2026-06-11", method: "RT" },
              from: "0 mm",
              to: "1000 mm",
              length: "1000 mm",
              retest: false,
            },
          ],
        },
      },
      objections: [],
    },
  ],
});

type Further = string | readonly [length: string, from: string, to: string];

/** A row of 0 mm to 400 mm that was rejected, with others of its joint after it; X-00 was rejected before what is later. */
function rejected(further: readonly Further[], repaired = false) {
  const report = { day: "2026-06-12", method: "RT" };
  const rows = [
    {
      $: "X-01",
      report: { day: "2026-06-11", method: "RT" },
      from: "0 mm",
      to: "400 mm",
      length: "400 mm",
      retest: false,
    },
    { $: "X-00", report: { day: "2026-06-12", method: "RT" }, length: "0 mm", result: "rejected", retest: false },
    ...further.map((one) =>
      typeof one === "string"
        ? { $: "R-02", report, length: one, retest: false }
        : { $: "R-02", report, length: one[0], from: one[1], to: one[2], retest: false },
    ),
    ...(repaired ? [{ $: "R-03", report: { day: "2026-06-16", method: "RT" }, length: "800 mm", retest: true }] : []),
  ];
  return {
    method: "RT",
    day: "2026-06-11",
    length: "400 mm",
    retest: false,
    joint: { $: "C2", role: "circumferential", length: "3745 mm", welders: ["W03"], rows },
  };
}

/** A length of joint C3, tested for the rejected row. */
function elsewhere(welder: string) {
  const report = { day: "2026-06-12", method: "RT" };
  return { report, length: "480 mm", retest: false, joint: { $: "C3", welders: [welder] } };
}
