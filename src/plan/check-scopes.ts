import { fieldPath, fieldSteps } from "../model/field-steps.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { fieldAt, type Field } from "../model/kind.ts";
import { generalScope, scopeOf, type Scope, type Sign } from "../model/scope.ts";
import { kindText, rowsOfKind } from "../model/kind-text.ts";

/**
 * What is wrong with scopes and with what names them: a scope, a field or a value there is none of, and a definition that
 * could apply where nothing shows that its scope is needed. It would be out of force there, and nobody would know.
 */
export function checkScopes(definitions: Definitions): readonly string[] {
  const { kinds, scopes, registers, rules, calculations, facts } = definitions;
  if (scopes === undefined) return [];
  const rows = [...new Set(registers.flatMap(({ requirements }) => requirements))];
  const byId = new Map(scopes.map((scope) => [scope.id, scope]));
  const unknown = (what: string, names: readonly (string | undefined)[]) =>
    names.flatMap((name) =>
      name === undefined || byId.has(name)
        ? []
        : [`${what}: there is no scope "${name}"; there are ${[...byId.keys()].join(", ")}`],
    );
  return [
    ...(byId.has(generalScope) ? [] : [`definitions: there is no scope "${generalScope}", which every book needs`]),
    ...[...kinds.values()].flatMap(({ name, scope }) => unknown(`kind ${name}`, [scope])),
    ...[...rules, ...facts, ...rows].flatMap(({ id, scope }) => unknown(id, [scope])),
    ...calculations.flatMap(({ id, scope }) => unknown(`calculation ${id}`, [scope])),
    ...registers.flatMap(({ id, scopes: own = [] }) => unknown(`register ${id}`, own)),
    ...scopes.flatMap(({ id, needs }) => unknown(`scope ${id}`, needs)),
    ...scopes.flatMap((scope) => scope.signs.flatMap((sign) => signProblems(definitions, scope, sign))),
    ...rules.flatMap((one) => hidden(definitions, byId, one)),
    ...calculations.flatMap(({ id, scope, appliesTo }) =>
      hidden(definitions, byId, { id, ...appliesTo, ...(scope !== undefined && { scope }) }),
    ),
    ...rows.flatMap(({ id, scope, each }) =>
      hidden(definitions, byId, { id, ...each, ...(scope !== undefined && { scope }) }),
    ),
    ...facts.flatMap(({ id, scope, statements }) =>
      statements.flatMap((path) => {
        const [, kind = "", ...rest] = fieldSteps(path);
        return scope === undefined
          ? []
          : hidden(definitions, byId, { id, scope, kind, when: [{ path: fieldPath(rest), exists: true }] });
      }),
    ),
  ];
}

/** A sign is a field there is, and values it may have. */
function signProblems({ kinds }: Definitions, { id }: Scope, { kind, path, values = [] }: Sign): readonly string[] {
  const field = fieldAt(kinds.get(kind) ?? { fields: new Map<string, Field>() }, path);
  if (field === undefined) return [`scope ${id}: ${kind} has no field "${path}" to show it`];
  const wrong = values.filter((value) => field.options?.includes(value) !== true);
  return wrong.length === 0 ? [] : [`scope ${id}: "${path}" of ${kind} never says ${wrong.join(", ")}`];
}

interface Applied {
  readonly id: string;
  readonly kind: string;
  readonly when?: readonly Condition[];
  readonly scope?: string;
}

function hidden(
  { kinds }: Definitions,
  scopes: ReadonlyMap<string, Scope>,
  { id, kind, when = [], scope }: Applied,
): readonly string[] {
  const own = scope === undefined ? undefined : scopes.get(scope);
  // Records of a kind show its scope, and with it what that needs.
  if (own === undefined || own.id === scopeOf(kinds, { kind })) return [];
  const shown = own.signs.some((sign) => showsIn(kind, sign) || when.some((one) => showsBy(kind, one, sign)));
  return shown
    ? []
    : [
        `${id} is of the scope "${own.id}", and no condition of it is a sign of that scope: it would go unapplied, unseen`,
      ];
}

/** Every row of a list that is a sign is one too. */
const showsIn = (kind: string, sign: Sign) => sign.values === undefined && kind === rowsOfKind(sign.kind, sign.path);

/** Whether the condition can only hold where the sign stands. */
function showsBy(kind: string, { path, exists, equals }: Condition, sign: Sign): boolean {
  const { kind: name, list } = kindText(kind);
  const from = path.startsWith("record.") && list !== "" ? path.slice("record.".length) : path;
  const own = name === sign.kind && from === sign.path && (list === "" || from !== path);
  // The book is about one equipment, and a record links to it: both ways lead to the same.
  const away = [`book.${sign.kind}.${sign.path}`, `${sign.kind}.${sign.path}`].includes(path);
  if ((!own && !away) || exists === false) return false;
  if (sign.values === undefined) return true;
  const values = equals === undefined ? [] : (Array.isArray(equals) ? equals : [equals]).map(String);
  return values.length > 0 && values.every((value) => sign.values?.includes(value) === true);
}
