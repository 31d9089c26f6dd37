import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, text, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { AKind, kindName } from "../shared/words.ts";

interface Numbered {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
  readonly what: string;
  /** What things of one number must share to be told apart no more: of instruments the type, since another may have it too. */
  readonly alike?: string;
  /** What things of one batch share: they may bear its number, and nothing else may. */
  readonly batch?: string;
}

const numbered: readonly Numbered[] = [
  { id: "instrument-serial", kind: "instrument", path: "serial", what: "serial number", alike: "type" },
  { id: "fitting-serial", kind: "fitting", path: "serial", what: "serial number or batch", batch: "model" },
  { id: "valve-serial", kind: "safety-valve", path: "serial", what: "serial number" },
  { id: "valve-seal", kind: "safety-valve", path: "bench.sealNumber", what: "seal" },
];

/** A number that tells one thing from others is borne by one; two makers may give one alike. */
export const numbersTell: readonly Rule[] = numbered.map(({ id, kind, path, what, alike, batch }) => {
  const sort = alike ?? batch;
  const own = {
    number: optional(text(path)),
    maker: optional(text("manufacturer")),
    sort: optional(text(sort ?? "manufacturer")),
  };
  return rule({
    id,
    title: `${AKind(kind)} bears a ${what} that no other${batch === undefined ? "" : " product"} bears`,
    basis: ownChoice("what tells one thing from another is borne by one"),
    kind,
    when: [{ path, exists: true }],
    severity: "query",
    owner: "quality",
    inputs: { ...own, all: anyOf(things(`book.${kind}`, own)) },
    *check({ number, all, ...mine }, subject) {
      if (number === undefined) return;
      const other = all.find((one) => {
        // Of two that clash the later one says it.
        if (one.$.id >= subject.id || one.number !== number) return false;
        if (one.maker !== undefined && mine.maker !== undefined && one.maker !== mine.maker) return false;
        return sort === undefined || (one.sort === mine.sort) === (batch === undefined);
      });
      if (other === undefined) return;
      yield {
        at: "number",
        accuses: ["number", [other, "number"]],
        message: `${kindName(kind)} ${subject.name} bears the ${what} ${number}, and so does ${other.$.name}`,
        why: batch !== undefined ? "one batch is of one product" : "each has its own",
        hint: "compare both with what is stamped on them, and correct the wrong one",
        related: [{ at: [other, "number"], message: `${number} here too` }],
      };
    },
    examples: [
      {
        name: "another number",
        given: { number: "88214", all: [{ $: "A-01", number: "88215" }] },
        objections: [],
      },
      {
        name: "of another maker",
        given: { number: "88214", maker: "M1", all: [{ $: "A-01", number: "88214", maker: "M2", sort: "b" }] },
        objections: [],
      },
      {
        name: "the same",
        given: {
          number: "88214",
          all: [{ $: "A-01", number: "88214", ...(batch === undefined ? {} : { sort: "b" }) }],
        },
        objections: [`${kindName(kind)} X-01 bears the ${what} 88214, and so does A-01`],
      },
    ],
  });
});
