const months = [
  ...["JANUARY", "FEBRUARY", "MARCH", "APRIL", "MAY", "JUNE"],
  ...["JULY", "AUGUST", "SEPTEMBER", "OCTOBER", "NOVEMBER", "DECEMBER"],
];

interface Day {
  readonly year: string;
  readonly month: string;
  readonly date: string;
}

function partsOf(day: string): Day {
  const [year = "", month = "", date = ""] = day.split("-");
  return { year, month, date };
}

const bare = (digits: string) => String(Number(digits));

/**
 * A day (2026-01-12) in the other forms papers print it in. In which order a paper has day and month is not known here:
 * either will do.
 */
export function dayForms(day: string): readonly string[] {
  const { year, month, date } = partsOf(day);
  const [m, d] = [bare(month), bare(date)];
  const numbers = [".", "/", "-", "\u2013"].flatMap((sign) =>
    [year, year.slice(2)].flatMap((end) =>
      [
        [date, month],
        [d, m],
        [month, date],
        [m, d],
      ].map(([one = "", other = ""]) => [one, other, end].join(sign)),
    ),
  );
  const name = months[Number(month) - 1] ?? "";
  const names = [name, name.slice(0, 3), ...(name === "SEPTEMBER" ? ["SEPT"] : [])].flatMap((one) =>
    [date, d].flatMap((n) => [
      ...[`${n}${one}${year}`, `${n}.${one}${year}`, `${n}${one}.${year}`, `${n}-${one}-${year}`],
      ...[`${one}${n},${year}`, `${one}.${n},${year}`, `${n}-${one}-${year.slice(2)}`],
    ]),
  );
  return [...numbers, ...names, [year, month, date].join("/"), [year, month, date].join("."), `${year}${month}${date}`];
}

/** A day without its year, as tables print it under a heading that names the year. */
export function shortDayForms(day: string): readonly string[] {
  const { month, date } = partsOf(day);
  return [`${month}-${date}`, `${date}.${month}.`, `${date}.${month}`, `${date}/${month}`, `${month}/${date}`];
}
