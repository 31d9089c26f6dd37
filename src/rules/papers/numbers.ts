import { ownChoice } from "../../model/basis.ts";
import { anyOf, optional, text, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { AKind, kindName } from "../shared/words.ts";

interface Numbered {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
  readonly what: string;
  /** Who gives the number: two who give may give one alike. */
  readonly giver: string;
  readonly sort: string;
  /** Whether one number is borne by all of a batch, which are of one sort; else things of other sorts may share it. */
  readonly batch: boolean;
}

const numbered: readonly Numbered[] = [
  {
    id: "instrument-serial",
    kind: "instrument",
    path: "serial",
    what: "serial number",
    giver: "manufacturer",
    sort: "type",
    batch: false,
  },
  {
    id: "fitting-serial",
    kind: "fitting",
    path: "serial",
    what: "serial number or batch",
    giver: "manufacturer",
    sort: "model",
    batch: true,
  },
  {
    id: "valve-serial",
    kind: "safety-valve",
    path: "serial",
    what: "serial number",
    giver: "manufacturer",
    sort: "manufacturer",
    batch: false,
  },
  {
    id: "valve-seal",
    kind: "safety-valve",
    path: "bench.sealNumber",
    what: "seal",
    giver: "manufacturer",
    sort: "manufacturer",
    batch: false,
  },
];

/** A number that tells one thing from others is borne by one. */
export const numbersTell: readonly Rule[] = numbered.map(({ id, kind, path, what, giver, sort, batch }) => {
  const own = { number: optional(text(path)), giver: optional(text(giver)), sort: optional(text(sort)) };
  return rule({
    id,
    title: `${AKind(kind)} bears a ${what} that no other${batch ? " product" : ""} bears`,
    basis: ownChoice("what tells one thing from another is borne by one"),
    kind,
    when: [{ path, exists: true }],
    severity: "query",
    owner: "quality",
    inputs: { ...own, all: anyOf(things(`book.${kind}`, own)) },
    *check({ number, all, ...mine }, subject) {
      if (number === undefined) return;
      const other = all.find(
        (one) =>
          one.$.id < subject.id &&
          one.number === number &&
          (one.giver === undefined || mine.giver === undefined || one.giver === mine.giver) &&
          (one.sort === mine.sort) !== batch,
      );
      if (other === undefined) return;
      yield {
        at: "number",
        accuses: ["number", [other, "number"]],
        message: `${kindName(kind)} ${subject.name} bears the ${what} ${number}, and so does ${other.$.name}`,
        why: batch ? "one batch is of one product" : "each has its own",
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
        given: { number: "88214", giver: "M1", all: [{ $: "A-01", number: "88214", giver: "M2", sort: "b" }] },
        objections: [],
      },
      {
        name: "the same",
        given: { number: "88214", all: [{ $: "A-01", number: "88214", ...(batch ? { sort: "b" } : {}) }] },
        objections: [`${kindName(kind)} X-01 bears the ${what} 88214, and so does A-01`],
      },
    ],
  });
});
