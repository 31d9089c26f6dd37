import type { Definitions } from "../model/definitions.ts";
import type { InForce } from "../model/in-force.ts";
import { scopeOf, type Scope } from "../model/scope.ts";
import { scopeOfCalculation, scopeOfRow, usedBy } from "./uses.ts";

const known = new WeakMap<Definitions, Map<string, InForce>>();

/** Definitions of these scopes. A scope that another needs is to be among them. */
export function inForceFor(definitions: Definitions, scopes: ReadonlySet<string>): InForce {
  const before = known.get(definitions) ?? new Map<string, InForce>();
  known.set(definitions, before);
  const name = [...scopes].sort().join(" ");
  const found = before.get(name) ?? narrowed(definitions, scopes);
  before.set(name, found);
  return found;
}

function narrowed(whole: Definitions, scopes: ReadonlySet<string>): InForce {
  const { kinds, scopes: all = [], rules, calculations, facts, registers, tables } = whole;
  const out = all.filter(({ id }) => !scopes.has(id));
  if (out.length === 0) return { definitions: whole, scopes, out, outParameters: new Map(), outTables: new Map() };
  const used = usedBy(whole);
  const outOf = (users: ReadonlyMap<string, ReadonlySet<string>>) =>
    new Map(
      [...users].flatMap(([name, by]): [string, readonly Scope[]][] =>
        [...by].some((scope) => scopes.has(scope)) ? [] : [[name, out.filter(({ id }) => by.has(id))]],
      ),
    );
  const outTables = outOf(used.tables);
  return {
    definitions: {
      ...whole,
      rules: rules.filter((rule) => scopes.has(scopeOf(kinds, rule))),
      calculations: calculations.filter((one) => scopes.has(scopeOfCalculation(kinds, one))),
      facts: facts.filter((fact) => scopes.has(scopeOf(kinds, fact.scope === undefined ? {} : { scope: fact.scope }))),
      registers: registers.map((one) => ({
        ...one,
        requirements: one.requirements.filter((row) => scopes.has(scopeOfRow(kinds, row))),
      })),
      tables: tables.filter(({ id }) => !outTables.has(id)),
      whole,
    },
    scopes,
    out,
    outParameters: outOf(used.parameters),
    outTables,
  };
}
