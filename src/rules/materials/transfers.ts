import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Marks are compared by their letters and figures: "84713-1041" holds "84713". */
const signs = (mark: string) => mark.toUpperCase().replaceAll(/[^\p{L}\p{N}]/gu, "");

export const transferFrom = rule({
  id: "transfer-from",
  title: "The first mark of a piece is carried over from one that names its heat, each further one from the one before",
  basis: ownChoice("a chain of marks is closed when each begins where the one before it ended"),
  kind: "piece-mark",
  when: [{ path: "transfers[].from", exists: true }],
  severity: "query",
  owner: "shop",
  inputs: {
    row: thing("certificateRow", {
      heat: text("heat"),
      standard: text("standard"),
      grade: text("grade"),
      form: text("form"),
    }),
    part: thing("part", {
      standard: text("material.standard"),
      grade: text("material.grade"),
      form: text("material.form"),
    }),
    transfers: anyOf(things("transfers[]", { from: optional(text("from")), to: text("to") })),
  },
  *check({ row, part, transfers }, mark) {
    // A certificate of another material is found by that.
    if ((["standard", "grade", "form"] as const).some((name) => row[name] !== part[name])) return;
    const { heat } = row;
    for (const [index, transfer] of transfers.entries()) {
      const { from, to } = transfer;
      if (from === undefined) continue;
      const before = transfers[index - 1];
      const fits =
        signs(from).includes(signs(heat)) || transfers.slice(0, index).some((one) => signs(one.to) === signs(from));
      if (fits) continue;
      yield {
        at: [transfer, "from"],
        name: to,
        message:
          before === undefined
            ? `mark ${to} of piece ${mark.name} was carried over from ${from}, which does not name its heat, ${heat}`
            : `mark ${to} of piece ${mark.name} was carried over from ${from}; the mark before it is ${before.to}`,
        why: `the piece names a certificate row of heat ${heat}`,
        hint: "compare with the transfer sheet: correct the mark or the row; where the mill marks otherwise, answer this query with how",
      };
    }
  },
  examples: [
    { name: "heat and plate", given: carried(["84713-1041", "423/1-A"]), objections: [] },
    { name: "twice", given: carried(["84713-1041", "423/1-A"], ["423/1-A", "423/1-A1"]), objections: [] },
    {
      name: "of another heat",
      given: carried(["84731-1041", "423/1-A"]),
      objections: ["mark 423/1-A of piece X-01 was carried over from 84731-1041, which does not name its heat, 84713"],
    },
    {
      name: "from a mark that nobody put on",
      given: carried(["84713-1041", "423/1-A"], ["423/7-A", "423/1-A1"]),
      objections: ["mark 423/1-A1 of piece X-01 was carried over from 423/7-A; the mark before it is 423/1-A"],
    },
  ],
});

function carried(...rows: readonly (readonly [from: string, to: string])[]) {
  const material = { standard: "EN 10028-2", grade: "P265GH", form: "plate" };
  return {
    row: { heat: "84713", ...material },
    part: material,
    transfers: rows.map(([from, to]) => ({ from, to })),
  };
}

/** What no furnace leaves on the steel. */
const burnt = ["paint", "tag"];

export const markInFurnace = rule({
  id: "mark-in-furnace",
  title: "A piece goes into a furnace with a mark that stays",
  basis: commonPractice("paint burns and tags fall off: what is heat treated is stamped or engraved before"),
  kind: "piece-mark",
  when: [{ path: "part.<heat-treatment:parts[]>.started", exists: true }],
  severity: "query",
  owner: "shop",
  inputs: {
    transfers: anyOf(things("transfers[]", { to: text("to"), method: text("method"), day: date("date") })),
    charges: anyOf(things("part.<heat-treatment:parts[]>", { day: date("started") })),
  },
  *check({ transfers, charges }, mark) {
    for (const charge of charges) {
      const last = transfers.findLast(({ day }) => canPrecede(day, charge.day) === "yes");
      if (last === undefined || !burnt.includes(last.method)) continue;
      yield {
        at: [last, "method"],
        accuses: [],
        name: charge.$.id,
        message: `piece ${mark.name} went into ${charge.$.name} on ${charge.day.text} with mark ${last.to} by ${last.method}`,
        why: "such a mark does not outlast a furnace",
        hint: "compare with the transfer sheet; enter the mark that was put on, or answer this query with how the piece was told apart afterwards",
        related: [{ at: [charge, "day"], message: charge.day.text }],
      };
    }
  },
  examples: [
    { name: "stamped", given: heated("hard stamp"), objections: [] },
    { name: "painted afterwards", given: heated("paint", "2026-05-03"), objections: [] },
    {
      name: "painted",
      given: heated("paint"),
      objections: ["piece X-01 went into HT-01 on 2026-05-02 with mark A by paint"],
    },
  ],
});

function heated(method: string, day = "2026-05-01") {
  return { transfers: [{ to: "A", method, day }], charges: [{ $: "HT-01", day: "2026-05-02" }] };
}
