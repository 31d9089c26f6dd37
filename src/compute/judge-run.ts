import type { Calculation, Comparison } from "../model/calculation.ts";
import type { Finding } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { unitLabel } from "../model/units.ts";
import { keyOf, locate } from "../judge/court.ts";
import type { Hit } from "../judge/follow.ts";
import { digestOfReads, type Trail } from "../judge/trail.ts";
import type { World } from "../judge/world.ts";
import type { Run } from "./run.ts";

/** A calculation on one subject. */
export interface Applied {
  readonly calculation: Calculation;
  readonly record: BookRecord;
  readonly pointer: string;
  readonly trail: Trail;
}

/** Limits of validity (outside: not judged), acceptance, and agreement with the second method. */
export function judgeRun(
  world: World,
  applied: Applied,
  hits: ReadonlyMap<string, Hit>,
  done: Run,
): readonly Finding[] {
  const { calculation } = applied;
  if (done.refused !== undefined)
    return [
      open(
        world,
        applied,
        "refused",
        `${calculation.title}: ${done.refused}`,
        "without a result nothing can be compared",
      ),
    ];
  const outside = done.limits
    .filter(({ holds }) => !holds)
    .map(({ of, left, right }) => {
      const why = `${of.left} is ${short(left)}; it must be ${of.relation} ${of.right} (${short(right)})`;
      return {
        ...open(
          world,
          applied,
          `limit ${textOf(of)}`,
          `${calculation.title} does not cover this case: ${of.means}`,
          why,
        ),
        ...(of.basis !== undefined && { basis: of.basis }),
      };
    });
  // Outside its limits the result says nothing, so nothing is accepted or refused by it.
  if (outside.length > 0) return outside;
  const cross = done.crossCheck?.agrees === false ? done.crossCheck.value : undefined;
  return [
    ...done.accept.filter(({ holds }) => !holds).map((one) => notAccepted(world, applied, hits, one)),
    ...(cross === undefined
      ? []
      : [
          open(
            world,
            applied,
            "second method",
            `${calculation.title}: the second method gives ${short(cross)}`,
            calculation.crossCheck?.means ?? "",
          ),
        ]),
  ];
}

function notAccepted(
  world: World,
  applied: Applied,
  hits: ReadonlyMap<string, Hit>,
  { of, left, right }: Run["accept"][number],
): Finding {
  const { calculation, record, pointer } = applied;
  const hit = hits.get(of.accuses);
  const accused = hit?.record == null ? null : { record: hit.record, pointer: hit.pointer };
  const at = accused ?? { record, pointer };
  const { place, where } = locate(world, at.record, at.pointer);
  const name = `accept ${textOf(of)}`;
  const unit = unitIn(calculation, of.left) ?? unitIn(calculation, of.right) ?? "1";
  const names = namesIn(calculation, of.left) ?? namesIn(calculation, of.right);
  return {
    ...open(
      world,
      applied,
      name,
      `${of.means}: ${said(left, unit, names)} is not ${of.relation} ${said(right, unit, names)}`,
      `${of.left} = ${said(left, unit, names)}, ${of.right} = ${said(right, unit, names)}`,
    ),
    // A value that several subjects are judged by is named by itself: one wrong value is one finding.
    ...(isOutside(applied, at) && { key: keyOf(calculation.id, at.record, `${where} ${name}`) }),
    severity: "nonconformity",
    verdict: "failed",
    place,
    hint: "design to decide: correct the record if it was copied wrongly, else raise a nonconformity report",
    ...(of.basis !== undefined && { basis: of.basis }),
    owner: of.owner ?? calculation.owner ?? "design",
    accuses: accused === null ? [] : [addressOf(accused.record, accused.pointer)],
  };
}

/** Whether a place lies outside the record or row that is judged. */
const isOutside = ({ record, pointer }: Applied, at: Pick<Applied, "record" | "pointer">) =>
  at.record !== record || (at.pointer !== pointer && !at.pointer.startsWith(`${pointer}/`));

const short = (value: number) => String(Number(value.toPrecision(6)));

/** A comparison as a stable name: its formulas, not its wording. */
const textOf = ({ left, relation, right }: Comparison) => `${left} ${relation} ${right}`;

function open(
  world: World,
  { calculation, record, pointer, trail }: Applied,
  name: string,
  message: string,
  why: string,
): Finding {
  const { subject, place, where } = locate(world, record, pointer);
  return {
    key: keyOf(calculation.id, record, [where, name].filter((part) => part !== "").join(" ")),
    rule: calculation.id,
    severity: "query",
    verdict: "not judged",
    subject,
    place,
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
    accuses: [],
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
