import { ownChoice } from "../../model/basis.ts";
import { optional, text, thing } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { kindName } from "../shared/words.ts";

interface Use {
  readonly id: string;
  readonly kind: string;
  readonly path: string;
  /** Types of procedure that serve; the first is the usual one. */
  readonly types: readonly string[];
  /** Nobody owes it. */
  readonly open?: true;
  /** Field whose method the procedure must be for. */
  readonly method?: string;
}

const uses: readonly Use[] = [
  { id: "testing-procedure", kind: "ndt-report", path: "procedure", types: ["ndt"], method: "method" },
  { id: "heat-treatment-procedure", kind: "heat-treatment", path: "procedure", types: ["heat-treatment", "forming"] },
  { id: "pressure-test-procedure", kind: "pressure-test", path: "procedure", types: ["pressure-test"] },
  { id: "tube-end-procedure-type", kind: "tube-end-group", path: "procedure", types: ["expanding"] },
  { id: "coating-procedure", kind: "coating-report", path: "procedure", types: ["coating"] },
  { id: "hardness-procedure", kind: "hardness-report", path: "procedure", types: ["hardness-test"] },
  { id: "leak-test-procedure", kind: "leak-test", path: "procedure", types: ["leak-test"] },
  { id: "alloy-procedure", kind: "alloy-report", path: "procedure", types: ["alloy-analysis"] },
  { id: "bench-procedure", kind: "safety-valve", path: "bench.procedure", types: ["set-pressure"], open: true },
];

const procedureOf = { type: text("type"), method: optional(text("method")) } as const;

const words = (type: string) => (type === "ndt" ? "non-destructive tests" : kindName(type));

/** What was done was done by a procedure for it. */
export const procedureUses: readonly Rule[] = uses.map(({ id, kind, path, types, method, open }) =>
  rule({
    id,
    title: `The procedure of a ${kindName(kind)} is one for it`,
    basis: ownChoice("a procedure for something else says nothing about this"),
    kind,
    when: [{ path, exists: true }],
    severity: "nonconformity",
    owner: "quality",
    inputs: {
      named: open === true ? optional(text(path)) : text(path),
      procedure: open === true ? optional(thing(`${path}.record`, procedureOf)) : thing(`${path}.record`, procedureOf),
      ...(method !== undefined && { method: text(method) }),
    },
    *check(values, subject) {
      const { procedure } = values;
      if (procedure === undefined) return;
      const asked = "method" in values ? (values as { readonly method?: string }).method : undefined;
      if (!types.includes(procedure.type))
        yield {
          at: "named",
          message: `${subject.name} was done by procedure ${procedure.$.name}, which is for ${words(procedure.type)}`,
          why: `it should be for ${types.map(words).join(" or ")}`,
          hint: "name the procedure it was done by, or correct the procedure's type",
          related: [{ at: [procedure, "type"], message: "its type stands here" }],
        };
      else if (asked !== undefined && procedure.method !== asked)
        yield {
          at: "named",
          message: `${subject.name} was done by procedure ${procedure.$.name}, which is for ${procedure.method ?? "no stated method"}; it is a test by ${asked}`,
          why: "a procedure for another method says nothing about this one",
          hint: "name the procedure it was done by, or correct its method",
          related: [{ at: procedure, message: "stated here" }],
        };
    },
    examples: [
      {
        name: "one for it",
        given: { procedure: { type: types[0] ?? "", method: "RT" }, ...(method !== undefined && { method: "RT" }) },
        objections: [],
      },
      {
        name: "one for something else",
        given: { procedure: { $: "PRC-1", type: "marking" }, ...(method !== undefined && { method: "RT" }) },
        objections: ["X-01 was done by procedure PRC-1, which is for marking"],
      },
      ...(method === undefined
        ? []
        : [
            {
              name: "one for another method",
              given: { procedure: { $: "PRC-1", type: types[0] ?? "", method: "UT" }, method: "RT" },
              objections: ["X-01 was done by procedure PRC-1, which is for UT; it is a test by RT"],
            },
          ]),
    ],
  }),
);
