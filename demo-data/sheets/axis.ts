/** Marks of an axis from nought to above the greatest value, at most five steps of a round size. */
export function marksUpTo(most: number): readonly number[] {
  const step = [1, 2, 4, 5, 8, 10, 20, 40, 50, 100, 200, 500].find((one) => one * 5 >= most) ?? 1000;
  return Array.from({ length: Math.ceil(most / step) + 1 }, (_, index) => index * step);
}

/** Marks of an axis close round its values: whole numbers, halves where they lie within two. */
export function marksAround(values: readonly number[]): readonly number[] {
  const from = Math.floor(Math.min(...values));
  const to = Math.max(from + 1, Math.ceil(Math.max(...values)));
  const step = to - from <= 2 ? 0.5 : Math.ceil((to - from) / 5);
  return Array.from({ length: Math.ceil((to - from) / step) + 1 }, (_, index) => from + index * step);
}

/** Minutes since midnight of a time of day. */
export const minutes = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

const text = (at: number) => `${String(Math.floor(at / 60)).padStart(2, "0")}:${String(at % 60).padStart(2, "0")}`;

/** Marks of a time axis that holds both times of day: quarters of an hour, or whole hours over a long day. */
export function marksOfTime(from: string, to: string): readonly { readonly at: number; readonly label: string }[] {
  const step = minutes(to) - minutes(from) > 180 ? 60 : 15;
  const start = Math.floor(minutes(from) / step) * step;
  const count = Math.floor((minutes(to) - start) / step) + 1;
  const marks = Array.from({ length: count }, (_, index) => start + index * step);
  const end = Math.ceil(minutes(to) / 5) * 5;
  return [
    ...marks.map((at) => ({ at, label: text(at) })),
    ...(end > (marks.at(-1) ?? end) ? [{ at: end, label: "" }] : []),
  ];
}
