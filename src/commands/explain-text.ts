import { describeBasis, type Basis } from "../model/basis.ts";
import type { Calculation, Comparison } from "../model/calculation.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Fact } from "../model/fact.ts";
import type { Condition, Input } from "../model/input.ts";
import type { Owes } from "../model/owes.ts";
import type { Requirement } from "../model/requirement.ts";
import type { Rule } from "../model/rule.ts";
import type { Ink } from "../report/text.ts";
import { scopeText } from "./explain-scopes.ts";
import type { Explained, ExplainedKind } from "./explained.ts";
import {
  milestoneText,
  ownerText,
  parameterText,
  profileText,
  registerText,
  tableText,
  unitsText,
} from "./explain-words-text.ts";
import { fieldLines } from "./field-text.ts";

/** The list of everything that can be explained, one line each. */
export function listText(all: Explained, ink: Ink): string {
  const list = (title: string, rows: readonly (readonly [string, string])[]) => {
    if (rows.length === 0) return "";
    const width = Math.max(0, ...rows.map(([name]) => name.length));
    return [
      ink.bold(`${title} (${rows.length})`),
      ...rows.map(([name, text]) => `  ${name.padEnd(width)}  ${ink.dim(text)}`),
    ].join("\n");
  };
  const titles = (rows: readonly { readonly id: string; readonly title: string }[]) =>
    rows.map(({ id, title }) => [id, title] as const);
  const parts = [
    list(
      "kinds",
      all.kinds.map(({ name, title }) => [name, title] as const),
    ),
    list("calculations", titles(all.calculations)),
    list("rules", titles(all.rules)),
    list("rules built in", titles(all.builtIns)),
    list("facts that several records state", titles(all.facts)),
    list("requirements", titles(all.requirements)),
    list("registers", titles(all.registers)),
    list("scopes", titles(all.scopes)),
    list("profiles", titles(all.profiles)),
    list("parameters of the profiles", titles(all.parameters)),
    list("tables", titles(all.tables)),
    list("milestones", titles(all.milestones)),
    list("owners", titles(all.owners)),
    list("units", titles(all.units)),
  ].filter((text) => text !== "");
  return `${[...parts, "explain one with: databook explain <name>"].join("\n\n")}\n`;
}

/** Everything that bears the name, in full. */
export function explainText(found: Explained, ink: Ink): string {
  const texts = [
    ...found.kinds.map((kind) => kindText(kind, ink)),
    ...found.calculations.map((calculation) => calculationText(calculation, ink)),
    ...found.rules.map((rule) => ruleText(rule, ink)),
    ...found.builtIns.map((rule) => head(`rule ${rule.id} (built in)`, rule.title, rule.basis, builtInRows(rule), ink)),
    ...found.facts.map((fact) => factText(fact, ink)),
    ...found.requirements.map((row) => requirementText(row, ink)),
    ...found.registers.map((one) => registerText(one, ink)),
    ...found.scopes.map((one) => scopeText(one, ink)),
    ...found.profiles.map((one) => profileText(one, ink)),
    ...found.parameters.map((one) => parameterText(one, ink)),
    ...found.tables.map((one) => tableText(one, ink)),
    ...found.milestones.map((one) => milestoneText(one, ink)),
    ...found.owners.map((one) => ownerText(one, ink)),
    ...found.units.map((one) => unitsText(one, ink)),
  ];
  return `${texts.join("\n\n")}\n`;
}

type Rows = readonly (readonly [string, string])[];

function head(name: string, title: string, basis: Basis, rows: Rows, ink: Ink): string {
  const all: Rows = [["basis", describeBasis(basis)], ...rows];
  return [ink.bold(name), title, "", ...all.map(([label, text]) => `${ink.dim(label.padEnd(10))} ${text}`)].join("\n");
}

function section(title: string, lines: readonly string[], ink: Ink): readonly string[] {
  return lines.length === 0 ? [] : ["", ink.bold(title), ...lines.map((line) => `  ${line}`)];
}

function kindText(kind: ExplainedKind, ink: Ink): string {
  return [
    ink.bold(`kind ${kind.name}`),
    `${kind.title}: ${kind.description}`,
    ...(kind.derived ? ["made from other records, never written"] : []),
    ...section("fields", fieldLines(kind.fields), ink),
    ...(kind.leftOut === undefined
      ? []
      : [
          "",
          `left out, as such equipment has none or nothing that can apply to this book reads it: ${kind.leftOut.join(", ")}`,
          "to have them explained too, leave out --book",
        ]),
  ].join("\n");
}

function calculationText(calculation: Calculation, ink: Ink): string {
  const {
    id,
    title,
    basis,
    covers,
    appliesTo,
    inputs,
    functions,
    steps,
    limits,
    accept,
    crossCheck,
    caution,
    examples,
  } = calculation;
  const applies = `${appliesTo.kind}${conditions(appliesTo.when)}`;
  const step = ({ symbol, unit, formula, means, basis: own }: Calculation["steps"][number]) =>
    `${symbol} = ${formula}${inUnit(unit)}: ${means}${own === undefined ? "" : `; ${describeBasis(own)}`}`;
  return [
    head(
      `calculation ${id}`,
      title,
      basis,
      [["applies to", applies], ["covers", covers], ...(caution === undefined ? [] : [["caution", caution] as const])],
      ink,
    ),
    ...section(
      "inputs",
      Object.entries(inputs).map(
        ([symbol, { unit, means, path, need }]) =>
          `${symbol}${inUnit(unit)}: ${means}; from ${path}${need === "optional" ? ", optional" : need === "any" ? ", may be none" : ""}`,
      ),
      ink,
    ),
    ...section("owed", owesLines(calculation.owes), ink),
    ...section(
      "named functions",
      (functions ?? []).map(({ name, means, basis: own }) => `${name}: ${means}; ${describeBasis(own)}`),
      ink,
    ),
    ...section("formulas", steps.map(step), ink),
    ...section(
      "limits of validity",
      limits.map((limit) => `${comparison(limit)}: ${limit.means}`),
      ink,
    ),
    ...section(
      "acceptance",
      accept.map((one) => `${comparison(one)}: ${one.means}`),
      ink,
    ),
    ...(crossCheck === undefined
      ? []
      : section(
          "cross-check",
          [`${crossCheck.symbol} = ${crossCheck.formula}: ${crossCheck.means}; ${describeBasis(crossCheck.basis)}`],
          ink,
        )),
    ...section(
      "examples",
      examples.map(
        (example) =>
          `${example.source} (${example.class}): ${pairs(example.given)} gives ${pairs(example.expect)}, within ${example.within}`,
      ),
      ink,
    ),
  ].join("\n");
}

/** "Di, z: design, due at design-approved": who owes what no schema does. */
const owesLines = (owes: readonly Owes[] = []): readonly string[] =>
  owes.map(
    ({ inputs, owner, due }) => `${inputs.join(", ")}: ${owner}, due ${due === "now" ? "at once" : `at ${due}`}`,
  );

/** " in mm"; a pure number and rows of records have no unit to name. */
const inUnit = (unit: string) => (unit === "1" || unit === "rows" ? "" : ` in ${unit}`);

function ruleText(rule: Rule, ink: Ink): string {
  const rows: Rows = [
    ["severity", rule.severity],
    ["applies to", `${rule.kind}${conditions(rule.when)}`],
    ["to act", rule.owner],
  ];
  return [
    head(`rule ${rule.id}`, rule.title, rule.basis, rows, ink),
    ...section("inputs", inputLines(rule.inputs), ink),
    ...section("owed", owesLines(rule.owes), ink),
    ...section(
      "examples",
      rule.examples.flatMap(({ name, objections, source }) => [
        `${name}${source === undefined ? "" : ` (${source})`}: ${objections.length === 0 ? "passed" : objections.join("; ")}`,
      ]),
      ink,
    ),
  ].join("\n");
}

const builtInRows = ({ severity }: BuiltIn): Rows => [["severity", severity]];

function factText({ id, title, basis, statements, owner }: Fact, ink: Ink): string {
  return [head(`fact ${id}`, title, basis, [["for each", owner]], ink), ...section("stated by", statements, ink)].join(
    "\n",
  );
}

function requirementText({ id, title, basis, each, needs, atLeast, due, owner }: Requirement, ink: Ink): string {
  const need = atLeast === undefined ? needs : `${needs}, at least ${atLeast}`;
  const rows: Rows = [
    ["for each", `${each.kind}${conditions(each.when)}`],
    ["needs", need],
    ["due", due],
    ["to act", owner],
  ];
  return head(`requirement ${id}`, title, basis, rows, ink);
}

function inputLines(inputs: Readonly<Record<string, Input<unknown>>>): readonly string[] {
  return Object.entries(inputs).flatMap(([name, { path, need, many, reading }]) => [
    `${name}: ${path}${reading.type === "quantity" ? inUnit(reading.unit) : ""}${many ? ", all" : ""}${need === "required" ? "" : `, ${need === "any" ? "may be none" : "optional"}`}`,
    ...(reading.type === "thing" ? inputLines(reading.inputs).map((line) => `  ${line}`) : []),
  ]);
}

function conditions(when: readonly Condition[] | undefined): string {
  if (when === undefined || when.length === 0) return "";
  const texts = when.map(({ path, equals, exists }) =>
    equals === undefined
      ? `${path} is ${exists === false ? "absent" : "present"}`
      : `${path} is ${JSON.stringify(equals)}`,
  );
  return `, when ${texts.join(" and ")}`;
}

const comparison = ({ left, relation, right }: Comparison) => `${left} ${relation} ${right}`;

function pairs(values: Readonly<Record<string, unknown>>): string {
  return Object.entries(values)
    .map(([name, value]) => `${name} ${Array.isArray(value) ? `${value.length} rows` : String(value)}`)
    .join(", ");
}
