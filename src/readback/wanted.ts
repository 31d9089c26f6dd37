import { parseDate } from "../model/dates.ts";
import { dayForms, shortDayForms } from "./day-forms.ts";
import { folded } from "./sheet.ts";

/** One thing to look for. All forms are as `Sheet.text` is: folded, without blanks; most papers have the first. */
export interface Part {
  readonly first: string;
  readonly others: () => readonly string[];
  /** Forms that count where another text stands on the paper too: days of the year that its heading names. */
  readonly within?: { readonly forms: () => readonly string[]; readonly also: string };
  /** Of a number with a unit: the unit as written in the record. */
  readonly unit?: string;
  /** It looks for names that its text does not tell: those of what a link leads to. */
  readonly linked?: true;
}

const squeezed = (text: string) => folded(text).replaceAll(" ", "");

/** A number in the forms papers print it in: decimal point or comma, digits grouped or not, signs of several kinds. */
function numberForms(plain: string): readonly string[] {
  const forms = [plain.replace(".", ",")];
  const [, head = "", whole = "", rest = ""] = /^([<>]?-?)(\d+)(.*)$/.exec(plain) ?? [];
  if (whole.length > 3)
    for (const [sign, point] of [
      [",", "."],
      [".", ","],
      ["'", "."],
    ] as const)
      forms.push(`${head}${whole.replaceAll(/\B(?=(\d{3})+$)/g, sign)}${rest.replace(".", point)}`);
  const all = [plain, ...forms];
  if (plain.startsWith("-")) forms.push(...all.map((form) => `\u2013${form.slice(1)}`));
  if (/^[<>]/.test(plain))
    forms.push(...all.map((form) => (form.startsWith("<") ? "\u2264" : "\u2265") + form.slice(1)));
  return forms;
}

const numberPart = (number: string): Part => {
  const first = folded(number);
  return { first, others: () => numberForms(first) };
};

/** What to look for of a quantity: its number; the unit may stand in the heading. */
export function ofQuantity(text: string): readonly Part[] {
  const blank = text.indexOf(" ");
  if (blank < 0) return [numberPart(text)];
  return [{ unit: text.slice(blank + 1), ...numberPart(text.slice(0, blank)) }];
}

export const ofNumber = (value: number): readonly Part[] => [numberPart(String(value))];

/** What to look for of a date: its day, and its time where it has one. The zone is ours: papers are dated where they are written. */
export function ofDate(text: string): readonly Part[] {
  if (!parseDate(text).ok) return [];
  const [day = "", time] = text.split("T");
  const dated: Part = {
    first: day,
    others: () => dayForms(day),
    within: { forms: () => shortDayForms(day), also: day.slice(0, 4) },
  };
  if (time === undefined) return [dated];
  const [hours = "", minutes = ""] = time.slice(0, 5).split(":");
  const clocks = [`${hours}.${minutes}`, `${Number(hours)}:${minutes}`, `${hours}H${minutes}`, `${hours}${minutes}`];
  return [dated, { first: `${hours}:${minutes}`, others: () => clocks }];
}

const idPart = (text: string, more: () => readonly string[] = () => []): Part => {
  const first = squeezed(text);
  return { first, others: () => [...plainer(first), ...more()] };
};

/** An id may stand with blanks or other dashes in the place of its hyphens. */
const plainer = (id: string) =>
  /[-\u2013]/.test(id)
    ? [id.replaceAll("\u2013", "-"), id.replaceAll("-", "\u2013"), id.replaceAll(/[-\u2013]/g, "")]
    : [];

/** Words of a sentence: what a paper says in other words is no fault. */
const sentence = /(?:^|[^\p{L}\p{N}])\p{Ll}{3,}[^\p{L}\p{N}]+(?:.*[^\p{L}\p{N}])?\p{Ll}{3,}/u;
/** Longer texts are no names. */
export const longestName = 60;

/** What to look for of a text that is a name, a number or a grade; nothing of one that is a sentence. */
export function ofText(text: string): readonly Part[] {
  return text.length > longestName || sentence.test(text) ? [] : [idPart(text)];
}

/** What to look for of a link: the thing by any of its names, and the row it names. */
export function ofLink(text: string, names: () => readonly string[]): readonly Part[] {
  const [, id = "", row] = /^(?:[a-z-]+:)?([^#@]*)(?:#(.*))?/.exec(text) ?? [];
  const more = () =>
    names().flatMap((name) => {
      const first = squeezed(name);
      return [first, ...plainer(first)];
    });
  const thing: Part = { linked: true, ...idPart(id, more) };
  return row === undefined ? [thing] : [thing, idPart(row)];
}
