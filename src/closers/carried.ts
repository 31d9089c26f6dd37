import { closer } from "../model/closer.ts";
import { anyOf, text, things } from "../model/input.ts";

/** An indication rejects the row it lies in: what closes the row closes it. */
export const byItsRow = closer({
  id: "row",
  title: "what closes the row it lies in",
  kinds: ["ndt-report#rows"],
  owner: "testing",
  inputs: { result: text("result") },
  close({ result }, row) {
    if (result === "rejected") return { closes: true, said: "", rests: [{ $: row }] };
    return {
      closes: false,
      begun: false,
      lacks: `the row is ${result} all the same`,
      hint: "compare with the report; correct the row or the indication",
    };
  },
  examples: [
    { name: "the row is rejected too", given: { result: "rejected" }, expect: "", rests: ["X-01"] },
    {
      name: "accepted against its indication",
      given: { result: "accepted" },
      expect: "the row is accepted all the same",
    },
  ],
});

/** A check as a whole is rejected because of its rows: what closes them closes it. */
export const byItsRows = closer({
  id: "rows",
  title: "what closes its rejected rows",
  kinds: ["dimension-check"],
  owner: "quality",
  inputs: { rows: anyOf(things("rows[]", { result: text("result") })) },
  close({ rows }) {
    const rests = rows.filter(({ result }) => result === "rejected");
    if (rests.length > 0) return { closes: true, said: "", rests };
    return {
      closes: false,
      begun: false,
      lacks: "none of its rows is",
      hint: "compare with the sheet; correct the result, or the row that was rejected",
    };
  },
  examples: [
    {
      name: "a row is rejected",
      given: {
        rows: [
          { $: "X-01#1", result: "accepted" },
          { $: "X-01#2", result: "rejected" },
        ],
      },
      expect: "",
      rests: ["X-01#2"],
    },
    { name: "all rows are accepted", given: { rows: [{ result: "accepted" }] }, expect: "none of its rows is" },
  ],
});
