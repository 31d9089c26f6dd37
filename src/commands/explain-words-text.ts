import { describeBasis } from "../model/basis.ts";
import type { Profile } from "../model/profile.ts";
import type { Register } from "../model/requirement.ts";
import { printInterval, type Interval, type Table } from "../model/table.ts";
import { milestones } from "../model/vocabulary.ts";
import type { Ink } from "../report/text.ts";
import type { ExplainedMilestone, ExplainedOwner, ExplainedParameter, ExplainedUnits } from "./explained-words.ts";

const sides = {
  high: "the greater, the more cautious",
  low: "the smaller, the more cautious",
  none: "a choice without a cautious side",
} as const;

export function profileText({ id, title, parameters }: Profile, ink: Ink): string {
  return [
    ink.bold(`profile ${id}`),
    `${title}: ${Object.keys(parameters).length} parameters. A book names it in "profile", and may replace single ones in "overrides".`,
    ...Object.entries(parameters).flatMap(([name, { value, means, cautious, basis }]) => [
      "",
      `${ink.bold(name)} = ${value}`,
      `  ${means}; ${sides[cautious]}`,
      `  ${describeBasis(basis)}`,
    ]),
  ].join("\n");
}

export function parameterText({ id, title, cautious, values }: ExplainedParameter, ink: Ink): string {
  return [
    ink.bold(`parameter ${id}`),
    title,
    sides[cautious],
    "",
    ...values.map(({ profile, value, basis }) => `${ink.dim(profile)} ${value}: ${describeBasis(basis)}`),
  ].join("\n");
}

export function registerText({ id, title, requirements }: Register, ink: Ink): string {
  const dues = ["now", ...milestones].filter((due) => requirements.some((row) => row.due === due));
  return [
    ink.bold(`register ${id}`),
    `${title}: ${requirements.length} rows. A book names it in "register".`,
    ...dues.flatMap((due) => [
      "",
      ink.bold(due === "now" ? "due at once" : `due at ${due}`),
      ...requirements
        .filter((row) => row.due === due)
        .map((row) => `  ${row.id}: ${row.title}, for each ${row.each.kind}; ${row.owner}`),
    ]),
  ].join("\n");
}

/** What a table knows: for each set of keys that must be equal, the bands it has rows for. */
export function tableText({ id, title, standard, edition, keys, columns, rows }: Table, ink: Ink): string {
  const equal = keys.filter(({ match }) => match === "equal").map(({ name }) => name);
  const bands = keys.filter(({ match }) => match === "interval");
  const groups = new Map<string, string[]>();
  for (const row of rows) {
    const key = equal.map((name) => keyText(row.keys[name])).join(" · ");
    const band = bands.map(({ name, unit }) => `${name} ${keyText(row.keys[name], unit)}`).join(", ");
    groups.set(key, [...(groups.get(key) ?? []), ...(band === "" ? [] : [band])]);
  }
  const bases = [...new Set(rows.map(({ basis }) => describeBasis(basis)))];
  return [
    ink.bold(`table ${id}`),
    `${title}, ${standard}${edition === undefined ? "" : `:${edition}`}; what it has no row for is not judged`,
    "",
    ink.bold("columns"),
    ...Object.entries(columns).map(
      ([name, { unit, means }]) => `  ${name}${unit === undefined ? "" : ` in ${unit}`}: ${means}`,
    ),
    "",
    ink.bold(`known, by ${equal.join(" · ")}`),
    ...[...groups].map(([key, own]) => `  ${key}${own.length === 0 ? "" : `: ${own.join("; ")}`}`),
    "",
    ink.bold("basis"),
    ...bases.map((basis) => `  ${basis}`),
  ].join("\n");
}

function keyText(key: string | Interval | undefined, unit?: string): string {
  if (key === undefined) return "any";
  if (typeof key === "string") return key;
  const text = printInterval(key);
  return text === "" ? "any" : `${text}${unit === undefined ? "" : ` ${unit}`}`;
}

export function milestoneText({ id, requirements, owes, fields }: ExplainedMilestone, ink: Ink): string {
  return [
    ink.bold(`milestone ${id}`),
    `issue.json lists it as {"name": "${id}", "reached": "<day>"}, at its place in the order of manufacture; what is due at it is asked for from that day on`,
    ...part("rows of the registers that are due at it", requirements, ink),
    ...part("what definitions read and is due at it", owes, ink),
    ...part("fields that are due at it, where the record is there", fields, ink),
  ].join("\n");
}

export function ownerText({ id, requirements, owes, rules }: ExplainedOwner, ink: Ink): string {
  return [
    ink.bold(`owner ${id}`),
    "who must act on a finding; check and owed group by it",
    ...part("rows of the registers that it answers", requirements, ink),
    ...part("what definitions read and it owes", owes, ink),
    ...part("rules whose objections it answers", rules, ink),
  ].join("\n");
}

export function unitsText({ id, units, example }: ExplainedUnits, ink: Ink): string {
  return [
    ink.bold(`units of ${id}`),
    units.join(", "),
    `a record writes it as "${example}": the digits and the unit of the paper, decimal point, no grouping; any unit of the list is accepted and shown as written`,
  ].join("\n");
}

const part = (title: string, lines: readonly string[], ink: Ink): readonly string[] =>
  lines.length === 0 ? [] : ["", ink.bold(`${title} (${lines.length})`), ...lines.map((line) => `  ${line}`)];
