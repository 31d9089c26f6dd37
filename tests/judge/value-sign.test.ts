import { describe, expect, test } from "vitest";
import { quantity as quantityOf } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { basis, define, finding, judged, open, verdicts } from "../support/small-book.ts";
import { list, quantity } from "../support/small-kinds.ts";

const kinds = {
  part: {
    thickness: quantity("mm", { sign: "positive", due: "now", plausible: ["0.5 mm", "300 mm"] }),
    allowance: quantity("mm", { sign: "not-negative" }),
    share: quantity("1", { sign: "positive" }),
    measured: list(quantity("mm", { sign: "positive" })),
    elevation: quantity("mm"),
  },
};
const thick = rule({
  id: "thick",
  title: "thick",
  kind: "part",
  severity: "nonconformity",
  owner: "design",
  basis,
  examples: [],
  inputs: { thickness: quantityOf("thickness", "mm") },
  *check({ thickness }) {
    if (thickness.value < 5) yield { at: "thickness", message: "thin", why: "w", hint: "h" };
  },
});
const run = (part: Readonly<Record<string, string | string[]>>) =>
  judged(define({ kinds, rules: [thick] }), { records: { part: { P1: { thickness: "8 mm", ...part } } } });
const said = (part: Parameters<typeof run>[0]) =>
  run(part).findings.flatMap(({ rule: id, message }) => (id === "value-sign" ? [message] : []));

describe("a quantity that has no such value by its nature", () => {
  test.each([
    [
      "nothing where it is above nothing",
      { thickness: "0 mm" },
      "thickness of part P1 is 0 mm; expected more than 0 mm",
    ],
    ["nothing with decimals", { thickness: "0.00 mm" }, "thickness of part P1 is 0.00 mm; expected more than 0 mm"],
    [
      "below nothing, in the unit of the paper",
      { thickness: "-0.8 cm" },
      "thickness of part P1 is -0.8 cm; expected more than 0 cm",
    ],
    [
      "below nothing where it is not negative",
      { allowance: "-1 mm" },
      "allowance of part P1 is -1 mm; expected 0 mm or more",
    ],
    ["a pure number", { share: "0" }, "share of part P1 is 0; expected more than 0"],
    ["one of a list", { measured: ["8.1 mm", "-8.0 mm"] }, "-8.0 mm; expected more than 0 mm"],
  ] as const)("%s", (_, part, message) => {
    const [first, ...more] = said({ ...part, measured: "measured" in part ? [...part.measured] : [] });
    expect(first).toContain(message);
    expect(more).toEqual([]);
  });
  test.each([
    ["nothing where it is not negative", { allowance: "0 mm" }],
    ["less than a limit of detection", { share: "<0.003" }],
    ["a field without a sign", { elevation: "-3000 mm" }],
  ])("no fault: %s", (_, part) => expect(said(part)).toEqual([]));
  test("nothing is judged by it, and it is said once: no suspicion of a slip beside it", () => {
    const book = run({ thickness: "0 mm" });
    expect(open(book)).toEqual(["nonconformity value-sign|part:P1|thickness"]);
    expect(verdicts(book)["thick|part:P1"]).toBe("not judged: value-sign|part:P1|thickness");
    expect(finding(book, "value-sign|part:P1|thickness").hint).toBe(
      "compare with the original and correct the value; leave it out if none is stated",
    );
  });
});
