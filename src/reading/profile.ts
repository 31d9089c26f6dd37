import { ownChoice, type Basis } from "../model/basis.ts";
import { nearestIds } from "../link/alike.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Parameter, Profile } from "../model/profile.ts";
import { measure, parseQuantity } from "../model/quantity.ts";
import type { BookRecord } from "../model/record.ts";
import { addressOf } from "../model/record.ts";
import type { ParameterInForce } from "./world.ts";
import { keyOf } from "../model/finding-key.ts";
import { finderOf, newFinding, spotIn } from "../model/new-finding.ts";

const basis = ownChoice(
  "the parameters in which design codes differ are named, cautious by default, and changed only by signed name",
);

export const profileRules = [
  {
    id: "profile-known",
    title: "The book names a profile there is, and overrides parameters it has",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: ["book"], paths: ["profile", "overrides[].parameter", "overrides[].value"] }],
  },
  {
    id: "profile-cautious",
    title: "A parameter less cautious than the profile's is decided on record",
    severity: "query",
    basis,
  },
] as const satisfies readonly BuiltIn[];

/** Parameters in force: the profile the book names (or the first one), with the book's own overrides. */
export function parametersOf(book: BookRecord, profiles: readonly Profile[]): InForce {
  const named = book.value["profile"];
  const profile = profiles.find(({ id }) => id === named) ?? profiles[0];
  const findings: Finding[] = [];
  if (typeof named === "string" && profile?.id !== named)
    findings.push(
      about(book, "/profile", "profile-known", named, [], {
        message: `there is no profile "${named}"`,
        why: `the profiles are ${profiles.map(({ id }) => `"${id}"`).join(", ")}`,
      }),
    );
  const parameters = new Map<string, ParameterInForce>(
    Object.entries(profile?.parameters ?? {}).map(([name, { value, basis: from }]) => [
      name,
      { value, basis: from, overridden: false, places: [addressOf(book, "/profile")] },
    ]),
  );
  const overrides = book.value["overrides"];
  for (const [index, override] of (isList(overrides) ? overrides : []).entries()) {
    if (!isObject(override)) continue;
    const name = text(override["parameter"]);
    const value = text(override["value"]);
    const pointer = `/overrides/${index}`;
    const parameter =
      profile !== undefined && Object.hasOwn(profile.parameters, name) ? profile.parameters[name] : undefined;
    const places = [addressOf(book, "/profile"), addressOf(book, `${pointer}/value`)];
    if (parameter === undefined) {
      const near = nearestIds(name, parameters.keys()).map((one) => `"${one}"`);
      findings.push(
        about(book, pointer, "profile-known", name, [value], {
          message: `the profile has no parameter "${name}"`,
          why: `${near.length === 0 ? "" : `nearest: ${near.join(", ")}; `}the page "Judged with" lists all ${parameters.size}`,
        }),
      );
      continue;
    }
    const sort = unlike(parameter, value);
    const shipped = parameters.get(name);
    if (sort !== undefined) {
      if (shipped !== undefined) parameters.set(name, { ...shipped, places });
      // A value that is not stated is owed by its own field.
      if (value !== "")
        findings.push(
          about(book, `${pointer}/value`, "profile-known", name, [value], {
            message: `"${name}" is "${value}"; expected ${sort}`,
            why: `${parameter.means}; the profile has ${parameter.value}`,
          }),
        );
      continue;
    }
    parameters.set(name, { value, basis: basisOf(override), overridden: true, places });
    if (lessCautious(parameter, value))
      findings.push(
        about(book, pointer, "profile-cautious", name, [value, parameter.value], {
          message: `"${name}" is ${value}, ${isNumber(parameter) ? "less cautious than" : "and not"} ${parameter.value} of the profile`,
          why: `${parameter.means}; overridden by ${text(override["by"])} under ${text(override["authority"])}`,
        }),
      );
  }
  return { profile, parameters, findings };
}

interface InForce {
  readonly profile: Profile | undefined;
  readonly parameters: ReadonlyMap<string, ParameterInForce>;
  readonly findings: readonly Finding[];
}

const text = (value: Json | undefined) => (typeof value === "string" ? value : "");

/** What a value of the book should look like to stand for a parameter, if it does not. */
function unlike(parameter: Parameter, value: string): string | undefined {
  const ours = parseQuantity(parameter.value, { unit: "any" });
  if (!ours.ok) return value === "" ? "a word" : undefined;
  const theirs = parseQuantity(value, { unit: ours.quantity.unit });
  return theirs.ok ? undefined : theirs.problem.expected;
}

/** Where a value of the book's own comes from: the contract that allows it, else nothing but the book. */
function basisOf(override: JsonObject): Basis {
  const said = ["basis", "authority", "by", "date"].map((field) => text(override[field])).filter((one) => one !== "");
  const reference = [...new Set(said)].join(", ");
  return text(override["authority"]) === ""
    ? ownChoice(`stated by this book${reference === "" ? "" : `, ${reference}`}`)
    : { class: "contract", reference };
}

/** Whether every word of a list is one of another; "none" is no word. */
function within(list: string, other: string): boolean {
  const words = (text: string) => text.split(", ").filter((word) => word !== "none");
  return words(list).every((word) => words(other).includes(word));
}

/** Of words nobody can say which are more cautious, unless they are a list and one list holds the other. */
const isNumber = ({ value }: Parameter) => parseQuantity(value, { unit: "any" }).ok;

function lessCautious(parameter: Parameter, value: string): boolean {
  if (parameter.cautious === "none") return false;
  const ours = parseQuantity(parameter.value, { unit: "any" });
  if (!ours.ok)
    return !(parameter.cautious === "low" ? within(value, parameter.value) : within(parameter.value, value));
  const { unit } = ours.quantity;
  const theirs = parseQuantity(value, { unit });
  if (!theirs.ok) return true;
  const [shipped, own] = [measure(ours.quantity, unit).value, measure(theirs.quantity, unit).value];
  return parameter.cautious === "high" ? own < shipped : own > shipped;
}

function about(
  book: BookRecord,
  pointer: string,
  rule: (typeof profileRules)[number]["id"],
  name: string,
  values: readonly string[],
  words: { readonly message: string; readonly why: string },
): Finding {
  return newFinding(finderOf(profileRules, rule), spotIn(book, pointer), {
    key: keyOf(rule, book, name),
    ...words,
    about: JSON.stringify([name, ...values]),
    hint:
      rule === "profile-known"
        ? "correct the name or the value"
        : "answer this query with the ground, or take the override out",
    owner: "design",
    accuses: rule === "profile-known" ? [addressOf(book, pointer)] : [],
  });
}
