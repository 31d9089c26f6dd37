import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, quantity, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

export const filmNumbers = rule({
  id: "film-numbers",
  title: "A film shows one length of one joint",
  basis: ownChoice("films are told apart by their numbers: one that stands for two lengths proves neither"),
  kind: "book",
  when: [{ path: 'book.ndt-report[method="RT"]', exists: true }],
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    reports: anyOf(
      things('book.ndt-report[method="RT"]', {
        rows: anyOf(
          things("rows[]", {
            film: optional(text("film")),
            joint: optional(text("joint")),
            from: optional(quantity("from", "mm")),
            to: optional(quantity("to", "mm")),
          }),
        ),
      }),
    ),
  },
  *check({ reports }) {
    const shown = reports.flatMap(({ rows }) =>
      rows.flatMap((row) => (row.film === undefined ? [] : [{ row, film: row.film }])),
    );
    const first = new Map<string, (typeof shown)[number]["row"]>();
    const place = ({ joint = "", from, to }: (typeof shown)[number]["row"]) =>
      `joint ${joint}${from === undefined || to === undefined ? "" : `, ${from.text} to ${to.text}`}`;
    for (const { row, film } of shown) {
      const other = first.get(film);
      if (other === undefined) first.set(film, row);
      else if (place(other) !== place(row))
        yield {
          at: [row, "film"],
          on: row,
          name: film,
          accuses: [[row, "film"]],
          message: `film ${film} is named for ${place(other)}, and for ${place(row)}`,
          why: `by ${other.$.name} and by ${row.$.name}`,
          hint: "compare with the films and correct the number; if one film stands for both, the other length is still to be tested",
          related: [{ at: [other, "film"], message: "named here too" }],
        };
    }
  },
  examples: [
    {
      name: "two films",
      given: films(["F-1", "C1", "0 mm", "300 mm"], ["F-2", "C1", "300 mm", "600 mm"]),
      objections: [],
    },
    {
      name: "one film read twice",
      given: films(["F-1", "C1", "0 mm", "300 mm"], ["F-1", "C1", "0 mm", "300 mm"]),
      objections: [],
    },
    {
      name: "one film for two joints",
      given: films(["F-1", "C1", "0 mm", "300 mm"], ["F-1", "C2", "0 mm", "300 mm"]),
      objections: ["film F-1 is named for joint C1, 0 mm to 300 mm, and for joint C2, 0 mm to 300 mm"],
    },
    {
      name: "one film for two lengths",
      given: films(["F-1", "C1", "0 mm", "300 mm"], ["F-1", "C1", "300 mm", "600 mm"]),
      objections: ["film F-1 is named for joint C1, 0 mm to 300 mm, and for joint C1, 300 mm to 600 mm"],
    },
  ],
});

function films(...rows: readonly (readonly [film: string, joint: string, from: string, to: string])[]) {
  return {
    reports: [
      { rows: rows.map(([film, joint, from, to], index) => ({ $: `row ${index + 1}`, film, joint, from, to })) },
    ],
  };
}
