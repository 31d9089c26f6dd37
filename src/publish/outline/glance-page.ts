import { isAdopted } from "../../model/adopted.ts";
import type { Computed, Done, JudgedAcceptance, Waiting } from "../../model/book.ts";
import { byCodePoint } from "../../model/order.ts";
import { countSentence } from "../../model/mark.ts";
import { symbolDisplay } from "../../model/formula/typeset.ts";
import type { Cell, Column, Row } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { formsOf } from "./calculation-symbols.ts";
import { labelOf, linkTo, markOf, markOfJudged, pageOfComputed, rowOf, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import { reasonsOf } from "./finding-blocks.ts";
import { figure, unitOfSymbol, withUnit } from "./numbers.ts";
import { provedSentence } from "./proved-blocks.ts";
import { numbering } from "./record-blocks.ts";
import { counted } from "./titles.ts";

/** The kind whose calculations are summed up: what bears the pressure. */
const subjects = "part";

const signs = { "<=": "≤", "<": "<", ">=": "≥", ">": ">", "=": "=" } as const;

const columns: readonly Column[] = [
  { head: "Part", align: "left", width: 2 },
  { head: "Calculation", align: "left", width: 3 },
  { head: "Adopted", align: "left", width: 1.2 },
  { head: "Judged", align: "left", width: 0.8 },
  { head: "Is", align: "left", width: 1.4 },
  { head: "Must be", align: "left", width: 1.5 },
  { head: "Margin", unit: "%", align: "number", width: 0.9 },
  { head: "Measured", align: "left", width: 1.2 },
  { head: "At least", align: "left", width: 1.2 },
  { head: "Verdict", align: "left", width: 1.3 },
];

/** All calculations of pressure parts in one table: what was adopted, required and measured, and the margin. None: no page. */
export function glancePages(context: Context, next: () => string, section: number): Page[] {
  const about = context.judged.computed.filter(
    (one) => one.subject.kind === subjects && (one.state === "done" ? one : one.calculation).accept.length > 0,
  );
  if (about.length === 0) return [];
  const parts = grouped(
    [...about].sort((a, b) => byCodePoint(a.subject.id, b.subject.id)),
    ({ subject }) => subject,
  );
  const number = next();
  return [
    {
      url: "calculations.html",
      number,
      title: "Pressure parts at a glance",
      under: [
        `What was adopted, what is required, what was measured of ${counted(parts.size, "pressure part")}. ${countSentence(
          about.map(({ outcome }) => markOf(outcome)),
          (count) => counted(count, "calculation"),
        )}.`,
        ...[provedSentence(context, about)].flatMap((proved) => (proved === undefined ? [] : [` ${proved}`])),
      ],
      section,
      get blocks() {
        return [
          {
            type: "table" as const,
            number: numbering(number)(),
            title: "Required, adopted, measured",
            columns,
            groups: [...parts.values()].map((all) =>
              all.flatMap((computed, index) => rowsOfComputed(context, computed, index === 0)),
            ),
            wide: true,
            remark: [
              "A row for each acceptance, and for each calculation without a result; the margin is in percent of what must be. A measured value stands beside the least it must be.",
              ...(about.some(isAdopted)
                ? [" Where the maker adopts the recomputation, nothing independent stands beside it."]
                : []),
            ],
          },
        ];
      },
    },
  ];
}

function rowsOfComputed(context: Context, computed: Computed, opens: boolean): Row[] {
  return computed.state === "done" ? rowsOfDone(context, computed, opens) : [rowOfWaiting(context, computed, opens)];
}

const partText = (context: Context, { subject }: Computed): string =>
  [subject.id, labelOf(context, subject)].filter(Boolean).join(", ");

function partCell(context: Context, computed: Computed, opens: boolean): Cell {
  if (!opens) return { type: "ditto", full: partText(context, computed) };
  return {
    type: "text",
    text: [linkTo(context, computed.subject), partText(context, computed).slice(computed.subject.id.length)],
  };
}

function nameOfComputed(context: Context, computed: Computed): string {
  const { calculation, subject, pointer } = computed;
  const row = rowOf(context, subject, pointer);
  return `${calculation.title}${row === undefined ? "" : `, ${row}`}${isAdopted(computed) ? " (recomputation adopted)" : ""}`;
}

/** A calculation without a result has its row too: no value, and why. */
function rowOfWaiting(context: Context, computed: Waiting, opens: boolean): Row {
  const because = reasonsOf(context, [computed.outcome]);
  const link = {
    type: "link",
    to: { page: pageOfComputed(context, computed) },
    text: nameOfComputed(context, computed),
  } as const;
  return {
    cells: [
      partCell(context, computed, opens),
      { type: "text", text: [link] },
      ...columns.slice(3).map((): Cell => ({ type: "empty" })),
      { type: "mark", mark: markOf(computed.outcome), ...(because.length > 0 && { because }) },
    ],
  };
}

/** A row for each acceptance; one of measured values stands beside the first of the others. */
function rowsOfDone(context: Context, computed: Done, opens: boolean): Row[] {
  const { calculation, accept } = computed;
  const isMeasured = ({ acceptance }: Accepted) => calculation.inputs[acceptance.accuses]?.rows !== undefined;
  const own = accept.filter((one) => !isMeasured(one));
  const listed = own.length === 0 ? accept : own;
  const measured =
    own.length === 0 ? undefined : accept.find((one) => isMeasured(one) && unitIn(computed, one) !== "%");
  const name = nameOfComputed(context, computed);
  const adopted = calculation.adopted === undefined ? undefined : computed.inputs.get(calculation.adopted)?.written;
  const forms = formsOf(computed);
  return listed.map((one, index) => {
    const first = index === 0;
    const { acceptance, left, right } = one;
    return {
      cells: [
        partCell(context, computed, opens && first),
        first
          ? { type: "text", text: [{ type: "link", to: { page: pageOfComputed(context, computed) }, text: name }] }
          : { type: "ditto", full: name },
        words(first ? adopted : undefined),
        symbolCell(acceptance.left, forms),
        words(valueIn(computed, one, left)),
        words(`${signs[acceptance.relation]} ${valueIn(computed, one, right)}`),
        marginCell(one),
        words(first && measured !== undefined ? valueIn(computed, measured, measured.left) : undefined),
        words(first && measured !== undefined ? valueIn(computed, measured, measured.right) : undefined),
        { type: "mark", mark: markOfJudged(context, one) },
      ],
    };
  });
}

type Accepted = JudgedAcceptance;

/** Unit of both sides: that of the side which has one of its own. */
function unitIn(computed: Computed, { acceptance }: Accepted): string {
  const own = unitOfSymbol(computed, acceptance.left);
  return own === "1" ? unitOfSymbol(computed, acceptance.right) : own;
}

const valueIn = (computed: Computed, accepted: Accepted, value: number) =>
  withUnit(figure(value, 5), unitIn(computed, accepted));

const words = (value: string | undefined): Cell =>
  value === undefined ? { type: "empty" } : { type: "text", text: [{ type: "whole", text: value }] };

/** A symbol as it is set; an expression is said on the page of the calculation. */
const symbolCell = (expression: string, forms: ReadonlyMap<string, string>): Cell =>
  /^[\p{L}\p{N}]+$/u.test(expression)
    ? { type: "text", text: [{ type: "symbol", display: symbolDisplay(expression, forms.get(expression)) }] }
    : { type: "empty" };

/** How far the value lies on the good side of its limit; without a limit other than nothing there is no share. */
function marginCell(accepted: Accepted): Cell {
  if (accepted.right === 0) return { type: "empty" };
  return { type: "number", text: ((100 * accepted.margin) / Math.abs(accepted.right)).toFixed(1) };
}
