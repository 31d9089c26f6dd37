import { apart } from "../model/apart.ts";
import type { Calculation, Claim, Comparison } from "../model/calculation.ts";
import type { Finding } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { placeWords } from "../model/words.ts";
import { locate } from "../court/court.ts";
import { digestOfReads, type Trail } from "../reading/trail.ts";
import type { World } from "../reading/world.ts";
import { accusedBy, groundsOf, inCommon, type Place } from "./blame.ts";
import { nameOfClaim } from "../model/claim.ts";
import type { BoundCalculation } from "./inputs.ts";
import { refusalOf } from "./refusal.ts";
import type { Run } from "./run.ts";
import { keyOf, type FindingKey } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

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
  readonly against: ReadonlyMap<Comparison | "second method", FindingKey>;
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
    const why = `${calculation.title}: without a result nothing can be compared`;
    return [
      { finding: open(world, applied, "refused", `${nameOf(world, applied)}: ${done.refused}`, why, grounds), to: [] },
    ];
  }
  const outside = done.limits.filter(({ holds }) => !holds);
  // Outside its limits the result says nothing, so nothing is accepted or refused by it.
  if (outside.length > 0)
    return inCommon(calculation, bound, outside).map((group) => ({
      finding: notCovered(world, applied, bound, done, group),
      to: group.map(({ of }) => of),
    }));
  const cross = done.crossCheck?.agrees === false ? done.crossCheck.value : undefined;
  return [
    ...notAccepted(world, applied, bound, done),
    ...(cross === undefined
      ? []
      : [
          {
            finding: secondMethod(world, applied, done, cross),
            to: ["second method" as const],
          },
        ]),
  ];
}

function secondMethod(world: World, applied: Applied, { values }: Run, second: number): Finding {
  const { crossCheck, title, steps } = applied.calculation;
  const step = steps.find(({ symbol }) => symbol === crossCheck?.symbol);
  const unit = crossCheck?.unit ?? "1";
  const [ours, theirs] = apart(
    { value: values.get(crossCheck?.symbol ?? "") ?? Number.NaN, unit },
    { value: second, unit },
  );
  const message = `${nameOf(world, applied)}: the ${step?.means ?? "result"} is ${ours}, by a second method ${theirs}`;
  return open(
    world,
    applied,
    "second method",
    message,
    `${title}, compared with ${crossCheck?.means ?? "another method"}`,
  );
}

function notCovered(
  world: World,
  applied: Applied,
  bound: BoundCalculation,
  done: Run,
  failed: Run["limits"],
): Finding {
  const { calculation, record } = applied;
  const basis = failed[0]?.of.basis;
  const spoken = { calculation, inputs: bound.inputs, values: done.values };
  return {
    ...open(
      world,
      applied,
      failed.map(({ of }) => `limit ${nameOfClaim(of)}`).join(" and "),
      `${calculation.title} does not cover ${nameOf(world, applied)}: ${failed.map((one) => refusalOf(spoken, one)).join("; ")}`,
      `it is valid only where ${claims(failed)}`,
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

/** What is judged, as people name it. */
const nameOf = (world: World, { record, pointer }: Applied) => placeWords(world.kinds, record, pointer).of;

/** What is claimed where nothing is wrong. */
const claims = (failed: readonly { readonly of: Claim }[]) => failed.map(({ of }) => of.means).join(", and ");

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
    finding: refuse(world, applied, bound, done, accused(group), group),
    to: group.map(({ of }) => of),
  }));
}

function refuse(
  world: World,
  applied: Applied,
  bound: BoundCalculation,
  done: Run,
  accused: readonly Place[],
  failed: readonly Refusal[],
): Finding {
  const { calculation, record, pointer } = applied;
  const [at = { record, pointer }] = accused;
  const { place, name: where } = locate(world, at.record, at.pointer);
  const name = failed.map(({ of }) => nameOfClaim(of)).join(" and ");
  const [first] = failed;
  const spoken = { calculation, inputs: bound.inputs, values: done.values };
  const owner = first?.of.owner ?? calculation.owner ?? "design";
  return {
    ...open(
      world,
      applied,
      name,
      `${nameOf(world, applied)}: ${failed.map((one) => refusalOf(spoken, one)).join("; ")}`,
      `${calculation.title}: accepted where ${claims(failed)}`,
    ),
    // A value that several subjects are judged by is named by itself: one wrong value is one finding.
    ...(isOutside(applied, at) && { key: keyOf(calculation.id, at.record, `${where} ${name}`) }),
    severity: "nonconformity",
    verdict: "failed",
    place,
    hint: `${owner} to decide: correct the record if it was copied wrongly, else raise a nonconformity report`,
    ...(first?.of.basis !== undefined && { basis: first.of.basis }),
    owner,
    accuses: [...new Set(accused.map((one) => addressOf(one.record, one.pointer)))],
  };
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
  const shown = single === undefined ? place : locate(world, single.record, single.pointer).place;
  return newFinding(
    calculation,
    { subject, place: shown },
    {
      key: keyOf(calculation.id, on, [foreign?.name ?? where, name].filter((part) => part !== "").join(" ")),
      severity: "query",
      verdict: "not judged",
      message,
      why,
      hint: `${calculation.owner ?? "design"} to decide: correct the value if it was copied wrongly, else answer this query`,
      owner: calculation.owner ?? "design",
      digest: digestOfReads(world, trail),
      accuses: grounds.map((one) => addressOf(one.record, one.pointer)),
    },
  );
}
