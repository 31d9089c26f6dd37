import { atLeast, atMost, type Measure } from "../../model/quantity.ts";

/** What one of the neighbours says of a variable: names, or a span of values whose missing end is open. */
export type Range = NamesRange | SpanRange;
export interface NamesRange {
  readonly sort: "names";
  readonly names: readonly string[];
}
export interface SpanRange {
  readonly sort: "span";
  readonly from?: Measure | undefined;
  readonly to?: Measure | undefined;
}

/** Whether one of the names that are covered stands for a name that is asked. */
export type Match = (held: string, asked: string) => boolean;

export const namesOf = (names: readonly string[]): NamesRange | undefined =>
  names.length === 0 ? undefined : { sort: "names", names };
export const oneName = (name: string | undefined): NamesRange | undefined =>
  name === undefined ? undefined : { sort: "names", names: [name] };
export const spanOf = (from: Measure | undefined, to: Measure | undefined): SpanRange | undefined =>
  from === undefined && to === undefined ? undefined : { sort: "span", from, to };
/** From the least to the greatest of some values. */
export function spread(values: readonly Measure[]): SpanRange | undefined {
  const [least] = [...values].sort((a, b) => a.low - b.low);
  const [most] = [...values].sort((a, b) => b.high - a.high);
  return least === undefined ? undefined : { sort: "span", from: least, to: most };
}

/** Without any limit. */
export const open: SpanRange = { sort: "span" };

/** "PA, PB", "3.0 mm to 16.0 mm", "at least 10 °C"; an open span is "any". */
export function saidRange(range: Range | undefined): string {
  if (range === undefined) return "not stated";
  if (range.sort === "names") return range.names.join(", ");
  const { from, to } = range;
  if (from === undefined) return to === undefined ? "any" : `up to ${to.text}`;
  if (to === undefined) return `from ${from.text}`;
  return from.text === to.text ? from.text : `${from.text} to ${to.text}`;
}

/** All that several ranges say, each once. */
export const saidRanges = (ranges: readonly Range[]): string => [...new Set(ranges.map(saidRange))].join(" and ");

/** How far an end may lie outside for the digits it is printed with; of what was measured, not at all. */
const slack = (end: Measure, rounded: boolean) => (rounded ? end.halfUnit * (1 + 1e-9) : 0);

/** Which end of a span no range reaches: several ranges may cover it one after the other. */
export function endBeyond(
  held: readonly SpanRange[],
  { from, to }: SpanRange,
  rounded = false,
): "from" | "to" | undefined {
  const reachesDown = (one: SpanRange) =>
    one.from === undefined ||
    (from !== undefined && (atLeast(from, one.from) === "yes" || from.value + slack(from, rounded) >= one.from.value));
  const reachesUp = (one: SpanRange) =>
    one.to === undefined ||
    (to !== undefined && (atMost(to, one.to) === "yes" || to.value - slack(to, rounded) <= one.to.value));
  let reached = held.filter(reachesDown);
  let rest = held.filter((one) => !reachesDown(one));
  if (reached.length === 0) return "from";
  while (!reached.some(reachesUp)) {
    const tops = reached.flatMap(({ to: top }) => top ?? []);
    reached = rest.filter(({ from: low }) => low !== undefined && tops.some((top) => atMost(low, top) === "yes"));
    rest = rest.filter((one) => !reached.includes(one));
    if (reached.length === 0) return "to";
  }
  return undefined;
}

/** Names that are asked and that no range covers. */
export const namesBeyond = (held: readonly NamesRange[], asked: NamesRange, match: Match): readonly string[] =>
  asked.names.filter((name) => !held.some(({ names }) => names.some((one) => match(one, name))));

/** What of a range several others together do not cover; undefined: all is covered. */
export function beyond(
  held: readonly Range[],
  asked: Range,
  match: Match,
  rounded = false,
): { readonly names: readonly string[]; readonly end: "from" | "to" | undefined } | undefined {
  if (asked.sort === "names") {
    const names = namesBeyond(
      held.filter((one) => one.sort === "names"),
      asked,
      match,
    );
    return names.length === 0 ? undefined : { names, end: undefined };
  }
  const end = endBeyond(
    held.filter((one) => one.sort === "span"),
    asked,
    rounded,
  );
  return end === undefined ? undefined : { names: [], end };
}
