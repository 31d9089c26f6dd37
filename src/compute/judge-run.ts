import type { Calculation, Comparison } from "../model/calculation.ts";
import type { Finding } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { unitLabel } from "../model/units.ts";
import { keyOf, locate } from "../judge/court.ts";
import { digestOfReads, type Trail } from "../judge/trail.ts";
import type { World } from "../judge/world.ts";
import { accusedBy, groundsOf, inCommon, type Place } from "./blame.ts";
import { nameOfClaim } from "./claim.ts";
import type { BoundCalculation } from "./inputs.ts";
import type { Run } from "./run.ts";
import { short } from "../model/print-number.ts";

/** A calculation on one subject. */
export interface Applied {
  readonly calculation: Calculation;
  readonly record: BookRecord;
  readonly pointer: string;
  readonly trail: Trail;
}

/** What stands against a result, and against which of its comparisons: limits, acceptances, the second method. */
export interface Judgement {
  readonly findings: readonly Finding[];
  readonly against: ReadonlyMap<Comparison | "second method", string>;
}

export const nothingAgainst: Judgement = { findings: [], against: new Map() };

interface Objection {
  readonly finding: Finding;
  readonly to: readonly (Comparison | "second method")[];
}

/** Limits of validity (outside: not judged), acceptance, and agreement with the second method. */
export function judgeRun(world: World, applied: Applied, bound: BoundCalculation, done: Run): Judgement {
  const objections = objectionsTo(world, applied, bound, done);
  if (objections.length === 0) return nothingAgainst;
  return {
    findings: objections.map(({ finding }) => finding),
    against: new Map(objections.flatMap(({ finding, to }) => to.map((one) => [one, finding.key] as const))),
  };
}

function objectionsTo(world: World, applied: Applied, bound: BoundCalculation, done: Run): readonly Objection[] {
  const { calculation } = applied;
  if (done.refused !== undefined) {
    const grounds = groundsOf(
      calculation,
      bound,
      applied.record,
      done.refusedStep === undefined ? [] : [done.refusedStep.formula],
    );
    const why = "without a result nothing can be compared";
    return [
      { finding: open(world, applied, "refused", `${calculation.title}: ${done.refused}`, why, grounds), to: [] },
    ];
  }
  const outside = done.limits.filter(({ holds }) => !holds);
  // Outside its limits the result says nothing, so nothing is accepted or refused by it.
  if (outside.length > 0)
    return inCommon(calculation, bound, outside).map((group) => ({
      finding: notCovered(world, applied, bound, group),
      to: group.map(({ of }) => of),
    }));
  const cross = done.crossCheck?.agrees === false ? done.crossCheck.value : undefined;
  return [
    ...notAccepted(world, applied, bound, done),
    ...(cross === undefined
      ? []
      : [
          {
            finding: open(
              world,
              applied,
              "second method",
              `${calculation.title}: the second method gives ${short(cross)}`,
              calculation.crossCheck?.means ?? "",
            ),
            to: ["second method" as const],
          },
        ]),
  ];
}

function notCovered(world: World, applied: Applied, bound: BoundCalculation, failed: Run["limits"]): Finding {
  const { calculation, record } = applied;
  const basis = failed[0]?.of.basis;
  return {
    ...open(
      world,
      applied,
      failed.map(({ of }) => `limit ${nameOfClaim(of)}`).join(" and "),
      `${calculation.title} does not cover this case: ${failed.map(({ of }) => of.means).join("; ")}`,
      failed
        .map(
          ({ of, left, right }) =>
            `${of.left} is ${short(left)}; it must be ${of.relation} ${of.right} (${short(right)})`,
        )
        .join("; "),
      groundsOf(
        calculation,
        bound,
        record,
        failed.flatMap(({ of }) => [of.left, of.right]),
      ),
    ),
    ...(basis !== undefined && { basis }),
  };
}

type Refusal = Run["accept"][number];

/**
 * Acceptances that fail, one finding for those that rest on a common value: a wall too thin as ordered and as measured
 * is one wall, or one diameter entered wrongly. It accuses what each of them accuses.
 */
function notAccepted(world: World, applied: Applied, bound: BoundCalculation, done: Run): readonly Objection[] {
  const { calculation } = applied;
  const failed = done.accept.filter(({ holds }) => !holds);
  const accused = (group: readonly Refusal[]) => group.flatMap((one) => accusedBy(bound, done, one.of) ?? []);
  return inCommon(calculation, bound, failed).map((group) => ({
    finding: refuse(world, applied, accused(group), group, done),
    to: group.map(({ of }) => of),
  }));
}

function refuse(
  world: World,
  applied: Applied,
  accused: readonly Place[],
  failed: readonly Refusal[],
  done: Run,
): Finding {
  const { calculation, record, pointer } = applied;
  const [at = { record, pointer }] = accused;
  const { place, name: where } = locate(world, at.record, at.pointer);
  const name = failed.map(({ of }) => nameOfClaim(of)).join(" and ");
  const [first] = failed;
  const sides = failed.map(({ of, left, right }) => {
    const unit = unitIn(calculation, of.left) ?? unitIn(calculation, of.right) ?? "1";
    const names = namesIn(calculation, of.left) ?? namesIn(calculation, of.right);
    return { of, left: said(left, unit, names), right: said(right, unit, names) };
  });
  return {
    ...open(
      world,
      applied,
      name,
      sides.map(({ of, left, right }) => `${of.means}: ${left} is not ${of.relation} ${right}`).join("; "),
      [
        ...sides.map(({ of, left, right }) => `${of.left} = ${left}, ${of.right} = ${right}`),
        ...shownBeside(calculation, done, failed),
      ].join("; "),
    ),
    // A value that several subjects are judged by is named by itself: one wrong value is one finding.
    ...(isOutside(applied, at) && { key: keyOf(calculation.id, at.record, `${where} ${name}`) }),
    severity: "nonconformity",
    verdict: "failed",
    place,
    hint: "design to decide: correct the record if it was copied wrongly, else raise a nonconformity report",
    ...(first?.of.basis !== undefined && { basis: first.of.basis }),
    owner: first?.of.owner ?? calculation.owner ?? "design",
    accuses: [...new Set(accused.map((one) => addressOf(one.record, one.pointer)))],
  };
}

/** What the sides of the failed comparisons were made of: "certified discharge capacity, recomputed: 2434.8 kg/h". */
function shownBeside(calculation: Calculation, { values }: Run, failed: readonly Refusal[]): readonly string[] {
  const symbols = new Set(failed.flatMap(({ of }) => of.shows ?? []));
  return [...symbols].flatMap((symbol) => {
    const own = calculation.inputs[symbol] ?? calculation.steps.find((step) => step.symbol === symbol);
    const value = values.get(symbol);
    return own === undefined || value === undefined ? [] : [`${own.means}: ${said(value, own.unit, own.options)}`];
  });
}

/** Whether a place lies outside the record or row that is judged. */
const isOutside = ({ record, pointer }: Applied, at: Pick<Applied, "record" | "pointer">) =>
  at.record !== record || (at.pointer !== pointer && !at.pointer.startsWith(`${pointer}/`));

/**
 * A reason for no verdict. It accuses the values it rests on, and is shown at the only one; several subjects that meet
 * one value of another record share one finding about that record.
 */
function open(
  world: World,
  { calculation, record, pointer, trail }: Applied,
  name: string,
  message: string,
  why: string,
  grounds: readonly Place[] = [],
): Finding {
  const { subject, place, name: where } = locate(world, record, pointer);
  const [only, ...more] = grounds;
  const single = only === undefined || more.length > 0 ? undefined : only;
  const foreign =
    single === undefined || single.record === record ? undefined : locate(world, single.record, single.pointer);
  const on = foreign === undefined ? record : (single?.record ?? record);
  return {
    key: keyOf(calculation.id, on, [foreign?.name ?? where, name].filter((part) => part !== "").join(" ")),
    rule: calculation.id,
    severity: "query",
    verdict: "not judged",
    subject,
    place: single === undefined ? place : locate(world, single.record, single.pointer).place,
    message,
    why,
    hint: "correct the input if it was copied wrongly; else have the case decided by design, and record the answer",
    basis: calculation.basis,
    owner: calculation.owner ?? "design",
    due: null,
    digest: digestOfReads(world, trail),
    related: [],
    waiting: [],
    exception: null,
    accuses: grounds.map((one) => addressOf(one.record, one.pointer)),
  };
}

/** Unit of a symbol; undefined for an expression, and for a class that has names instead of numbers. */
function unitIn({ inputs, steps }: Calculation, symbol: string): string | undefined {
  const own = inputs[symbol] ?? steps.find((step) => step.symbol === symbol);
  return own === undefined || own.options !== undefined || own.unit === "rows" ? undefined : own.unit;
}

/** Names of the values 0, 1, 2 … of a symbol that is a class. */
const namesIn = ({ inputs, steps }: Calculation, symbol: string): readonly string[] | undefined =>
  (inputs[symbol] ?? steps.find((step) => step.symbol === symbol))?.options;

const said = (value: number, unit: string, names: readonly string[] | undefined): string =>
  names?.[value] ?? `${short(value)} ${unitLabel(unit)}`.trimEnd();
