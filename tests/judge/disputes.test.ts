import { describe, expect, test } from "vitest";
import { optional, quantity as quantityOf, thing } from "../../src/model/input.ts";
import { compare } from "../../src/model/quantity.ts";
import { rule } from "../../src/model/rule.ts";
import { answering, basis, define, finding, judged, open, verdicts } from "../support/small-book.ts";
import { link, quantity } from "../support/small-kinds.ts";

const kinds = {
  drawing: { length: quantity("mm", { due: "now" }) },
  mark: { pipe: link("pipe", { required: true }), length: quantity("mm", { due: "now" }) },
  pipe: {
    drawing: link("drawing", { required: true }),
    length: quantity("mm", { due: "now" }),
    tested: quantity("mm"),
  },
};
const common = { basis, owner: "shop", severity: "nonconformity", kind: "pipe", examples: [] } as const;
/** Listed first on purpose: what is judged first follows from what is disputed. */
const tested = rule({
  ...common,
  id: "tested",
  title: "tested",
  inputs: {
    length: quantityOf("length", "mm"),
    tested: optional(quantityOf("tested", "mm")),
    on: thing("drawing", {}),
  },
  *check({ length, tested: done }, pipe) {
    if (done !== undefined && compare(done, length) === "less")
      yield { at: "length", message: `${pipe.id} is tested over ${done.text} of ${length.text}`, why: "w", hint: "h" };
  },
});
const drawn = rule({
  ...common,
  id: "drawn",
  title: "drawn",
  disputes: ["length"],
  inputs: { length: quantityOf("length", "mm"), on: thing("drawing", { length: quantityOf("length", "mm") }) },
  *check({ length, on }, pipe) {
    if (compare(length, on.length) !== "equal")
      yield { at: "length", message: `${pipe.id} is ${length.text}, drawn ${on.length.text}`, why: "w", hint: "h" };
  },
});
const marked = rule({
  ...common,
  kind: "mark",
  id: "marked",
  title: "marked",
  disputes: ["whole"],
  inputs: { length: quantityOf("length", "mm"), whole: quantityOf("pipe.length", "mm") },
  *check({ length, whole }, mark) {
    if (compare(length, whole) !== "equal")
      yield { at: "length", message: `${mark.id} is ${length.text} of ${whole.text}`, why: "w", hint: "h" };
  },
});
const book = (pipe: object, more = {}, rules = [tested, drawn]) =>
  judged(define({ kinds, rules }), {
    records: {
      drawing: { D1: { length: "500 mm" } },
      pipe: { P1: { drawing: "D1", length: "500 mm", tested: "500 mm", ...pipe } },
      ...more,
    },
  });

describe("a rule that compares a value with where it comes from", () => {
  test("comes first, and names what objects because of the value", () => {
    const wrong = book({ length: "5000 mm" });
    expect(open(wrong)).toEqual(["nonconformity drawn|pipe:P1|"]);
    expect(verdicts(wrong)["tested|pipe:P1"]).toBe("not judged: drawn|pipe:P1|");
    const { related, waiting } = finding(wrong, "drawn|pipe:P1|");
    expect(related.map(({ message }) => message)).toEqual(["waits for this: P1 is tested over 500 mm of 5000 mm"]);
    expect(waiting).toEqual(["tested|pipe:P1"]);
  });
  test("leaves alone what passes", () => {
    const wrong = book({ length: "400 mm" });
    expect(open(wrong)).toEqual(["nonconformity drawn|pipe:P1|"]);
    expect(verdicts(wrong)["tested|pipe:P1"]).toBe("passed");
  });
  test("speaks once for all who meet the value, and names them", () => {
    const mark = { pipe: "P1", length: "500 mm" };
    const wrong = book({ length: "5000 mm", tested: "5000 mm" }, { mark: { M1: mark, M2: mark } }, [marked, drawn]);
    expect(open(wrong)).toEqual(["nonconformity marked|mark:M1|"]);
    const { related, waiting } = finding(wrong, "marked|mark:M1|");
    expect(related.map(({ message }) => message)).toEqual([
      "waits for this: M2 is 500 mm of 5000 mm",
      "waits for this: P1 is 5000 mm, drawn 500 mm",
    ]);
    expect(waiting).toEqual(["drawn|pipe:P1"]);
    const one = book({}, { mark: { M1: mark, M2: { ...mark, length: "400 mm" } } }, [marked, drawn]);
    expect(open(one)).toEqual(["nonconformity marked|mark:M2|"]);
  });
  test("hides nothing that does not rest on it", () => {
    expect(open(book({ tested: "300 mm" }))).toEqual(["nonconformity tested|pipe:P1|"]);
  });
  test("lets what waited be seen once it is answered", () => {
    const answer = answering(book({ length: "5000 mm" }), ["drawn|pipe:P1|"]);
    expect(open(book({ length: "5000 mm" }, { deviation: { DEV: answer } }))).toEqual([
      "nonconformity tested|pipe:P1|",
    ]);
  });
});
