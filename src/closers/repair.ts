import { closer } from "../model/closer.ts";
import { canPrecede, type DateValue } from "../model/dates.ts";
import { anyOf, date, optional, quantity, text, thing, things, type Thing } from "../model/input.ts";
import type { Measure } from "../model/quantity.ts";
import { isClosed, sayLength, spansOf, union, type SeamLength } from "../model/seam-lengths.ts";
import { recordId } from "../model/subject.ts";

const place = { from: optional(quantity("from", "mm")), to: optional(quantity("to", "mm")) };
const retest = {
  ...place,
  length: quantity("length", "mm"),
  method: text("record.method"),
  day: date("record.date"),
  joint: text("joint"),
  result: text("result"),
};
const repair = {
  ...place,
  joint: text("joint"),
  day: date("date"),
  retests: anyOf(things("<ndt-report:rows[].repair>", retest)),
};

type Repair = Thing<typeof repair>;
type Retest = Thing<typeof retest>;

interface Rejected extends SeamLength {
  readonly method: string;
  readonly day: DateValue;
  readonly joint: { readonly $: { readonly id: string }; readonly length: Measure; readonly role: string };
}

export const repaired = closer({
  id: "repair",
  title: "a repair, and a test that passes it over its whole length",
  kinds: ["ndt-report#rows"],
  owner: "welding coordination",
  inputs: {
    ...place,
    length: quantity("length", "mm"),
    method: text("record.method"),
    day: date("record.date"),
    joint: thing("joint", { length: quantity("length", "mm"), role: text("role") }),
    repairs: anyOf(things("<repair:rejected>", repair)),
  },
  close({ repairs, ...rejected }) {
    if (repairs.length === 0)
      return {
        closes: false,
        begun: false,
        lacks: "no repair is recorded",
        hint: `enter the repair, and the ${rejected.method} that passed it`,
      };
    const tested = repairs.map((one) => ({ one, state: stateOf(one, rejected) }));
    for (const { one, state } of tested) if ("lacks" in state) return { ...state, closes: false, begun: true, at: one };
    const passing = tested.flatMap(({ state }) => ("by" in state ? state.by : []));
    const names = [...repairs.map(({ $ }) => $.name), ...passing.map(({ $ }) => recordId($.id))];
    return {
      closes: true,
      said: `repaired and re-tested: ${[...new Set(names)].join(", ")}`,
      rests: passing.filter(({ result }) => result === "rejected"),
    };
  },
  examples: [
    { name: "no repair", given: given(), expect: "no repair is recorded" },
    {
      name: "the same method, the same day, the same length",
      given: given([{ retests: [{}] }]),
      expect: "repaired and re-tested: R-01, RT-02",
    },
    {
      name: "the test rejects again",
      given: given([{ retests: [{ result: "rejected" }] }]),
      expect: "repaired and re-tested: R-01, RT-02",
      rests: ["RT-02#C2"],
    },
    {
      name: "rejected again, then passed under the same repair",
      given: given([{ retests: [{ result: "rejected" }, { $: "RT-03#C2", day: "2026-06-12" }] }]),
      expect: "repaired and re-tested: R-01, RT-03",
    },
    {
      name: "a longer stretch",
      given: given([{ retests: [{ from: "380 mm", to: "480 mm", length: "100 mm" }] }]),
      expect: "repaired and re-tested: R-01, RT-02",
    },
    { name: "not tested again", given: given([{}]), expect: "its repair R-01 is not tested again" },
    {
      name: "two repairs, one of them not tested",
      given: given([{ retests: [{}] }, { $: "R-02" }]),
      expect: "its repair R-02 is not tested again",
    },
    {
      name: "repaired on the day",
      given: given([{ day: "2026-06-08", retests: [{}] }]),
      expect: "repaired and re-tested: R-01, RT-02",
    },
    {
      name: "repaired before the rejection",
      given: given([{ day: "2026-06-07", retests: [{}] }]),
      expect: "its repair R-01 was made on 2026-06-07, before the rejection of 2026-06-08",
    },
    {
      name: "the repair of another joint",
      given: given([{ joint: "C1", retests: [{}] }]),
      expect: "its repair R-01 is of joint C1",
    },
    {
      name: "a repair elsewhere",
      given: given([{ from: "900 mm", to: "960 mm", retests: [{ from: "900 mm", to: "960 mm" }] }]),
      expect: "its repair R-01 (900 mm to 960 mm) lies outside the rejected length (300 mm to 700 mm)",
    },
    {
      name: "another method",
      given: given([{ retests: [{ method: "MT" }] }]),
      expect: "its repair R-01 is tested again only by MT, not by RT",
    },
    {
      name: "the day before",
      given: given([{ retests: [{ day: "2026-06-09" }] }]),
      expect: "its repair R-01 is tested again by RT only before it was made on 2026-06-10: RT-02 on 2026-06-09",
    },
    {
      name: "another joint",
      given: given([{ retests: [{ joint: "C1" }] }]),
      expect: "its repair R-01 is tested again only at joint C1",
    },
    {
      name: "not the whole of it",
      given: given([{ retests: [{ from: "400 mm", to: "455 mm", length: "55 mm" }] }]),
      expect: "its repair R-01 (400 mm to 460 mm) is tested again only over 55 mm of 60 mm",
    },
    {
      name: "too short, its place not stated",
      given: given([{ retests: [{ from: undefined, to: undefined, length: "59 mm" }] }]),
      expect: "its repair R-01 (400 mm to 460 mm) is tested again only over 59 mm of 60 mm",
    },
    {
      name: "long enough, its place not stated",
      given: given([{ retests: [{ from: undefined, to: undefined }] }]),
      expect: "repaired and re-tested: R-01, RT-02",
    },
    {
      name: "a repair without its place: the whole rejected length is tested again",
      given: given([{ from: undefined, to: undefined, retests: [{}] }]),
      expect: "its repair R-01 is tested again only over 60 mm of 400 mm",
    },
  ],
});

type State =
  { readonly by: readonly Retest[] } | { readonly lacks: string; readonly hint: string; readonly owner?: string };

/** Whether one repair is of that place, made after its rejection, and tested again over its whole length. */
function stateOf(one: Repair, { method, day, joint, ...row }: Rejected): State {
  const name = `its repair ${one.$.name}`;
  if (one.joint !== joint.$.id)
    return { lacks: `${name} is of joint ${one.joint}`, hint: "correct the joint, or name the row that rejected it" };
  if (canPrecede(day, one.day) === "no")
    return {
      lacks: `${name} was made on ${one.day.text}, before the rejection of ${day.text}`,
      hint: "correct the wrong date against the report and the repair sheet",
    };
  const closed = isClosed(joint.role);
  const spans = (length: SeamLength) => spansOf(length, joint.length, closed);
  const whole = spans(row);
  const own = one.from === undefined || one.to === undefined ? undefined : spans({ ...one, length: joint.length });
  const said = own === undefined ? "" : ` (${one.from?.text ?? ""} to ${one.to?.text ?? ""})`;
  if (own !== undefined && whole !== undefined && union([...own, ...whole]) >= union(own) + union(whole) - 1e-9)
    return {
      lacks: `${name}${said} lies outside the rejected length (${sayLength(row)})`,
      hint: "compare both lengths with the report and the repair sheet, and correct the wrong one",
    };
  const retested = testedAgain(one, method, joint.$.id);
  if ("lacks" in retested) return { ...retested, lacks: `${name} is ${retested.lacks}` };
  const needed = own ?? whole;
  const needs = needed === undefined ? row.length.value : union(needed);
  const covers = (by: readonly Retest[]) => {
    const placed = by.flatMap((test) => spans(test) ?? []);
    // Where a row does not say its place, its length has to do.
    const loose = by.filter((test) => spans(test) === undefined).map(({ length }) => length.value);
    const covered = needed === undefined ? union(placed) : union(placed) + needs - union([...placed, ...needed]);
    return Math.max(covered, ...loose);
  };
  const accepted = retested.by.filter(({ result }) => result !== "rejected");
  for (const by of [accepted, retested.by]) if (covers(by) >= needs - 1e-9) return { by };
  const size = (value: number) => String(Number(value.toFixed(3)));
  return {
    lacks: `${name}${said} is tested again only over ${size(covers(retested.by))} mm of ${size(needs)} mm`,
    hint: `have the rest tested by ${method}, and enter that report`,
  };
}

/** Tests of a repair by the method that rejected, at its joint and not before it was made; else why there is none. */
function testedAgain({ retests, day }: Repair, method: string, joint: string): State {
  const hint = `have the repair tested by ${method} and enter that report, or correct the row that names the repair`;
  if (retests.length === 0) return { lacks: "not tested again", hint };
  const here = retests.filter((test) => test.joint === joint);
  if (here.length === 0) return { lacks: `tested again only at joint ${retests[0]?.joint ?? ""}`, hint };
  const alike = here.filter((test) => test.method === method);
  const others = [...new Set(here.map((test) => test.method))].join(" and ");
  if (alike.length === 0) return { lacks: `tested again only by ${others}, not by ${method}`, hint };
  const by = alike.filter((test) => canPrecede(day, test.day) === "yes");
  const early = alike.map(({ $, day: tested }) => `${recordId($.id)} on ${tested.text}`).join(" and ");
  return by.length === 0
    ? { lacks: `tested again by ${method} only before it was made on ${day.text}: ${early}`, hint }
    : { by };
}

type Row = Readonly<Record<string, string | undefined>>;

function given(repairs: readonly (Row | { readonly retests: readonly Row[] })[] = []) {
  const stated = (row: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined));
  const again: Row = { $: "RT-02#C2", method: "RT", day: "2026-06-10", joint: "C2", result: "accepted" };
  const span: Row = { from: "400 mm", to: "460 mm" };
  return {
    from: "300 mm",
    to: "700 mm",
    length: "400 mm",
    method: "RT",
    day: "2026-06-08",
    joint: { $: "C2", length: "3744 mm", role: "circumferential" },
    repairs: repairs.map((one) => {
      const { retests = [], ...own } = one as { readonly retests?: readonly Row[] };
      return stated({
        $: "R-01",
        ...span,
        joint: "C2",
        day: "2026-06-10",
        ...own,
        retests: retests.map((test) => stated({ ...again, ...span, length: "60 mm", ...test })),
      });
    }),
  };
}
