import type { Facts } from "../book/facts.ts";
import type { Kind } from "../book/records.ts";
import { lookOf } from "../paper/looks.ts";
import { finish, newPaper, type Paper } from "../paper/paper.ts";
import type { Signed } from "../paper/marks.ts";

/** A record that is read from an original. */
export type Shown = readonly [kind: Kind, id: string];

/** An original of a book: which records it is the evidence for, and how it is drawn. */
export interface OriginalSheet {
  readonly id: string;
  /** Path below `files/`. */
  readonly path: string;
  readonly title: string;
  readonly number: string;
  /** Organisation whose paper it is. */
  readonly by: string;
  /** Day on the paper; a book whose evidence ends earlier has not got it. */
  readonly day: string;
  /** Day its data were compared with it. */
  readonly compared: string;
  readonly shows: readonly Shown[];
  /** Records it lays out beforehand: their source until a paper shows what was done. */
  readonly foresees?: readonly Shown[];
  readonly draw: (paper: Paper) => void;
}

/** An original as drawn: its bytes, how many pages it has, and on which of them the data of a record begin. */
export interface Drawn {
  readonly bytes: Uint8Array;
  readonly pages: number;
  readonly found: ReadonlyMap<string, number>;
  /** On which they end, where that was noted while drawing. */
  readonly ends: ReadonlyMap<string, number>;
}

/** Draws an original; throws when it is the paper of an organisation the facts do not name. */
export async function drawn({ by, title, number, day, draw }: OriginalSheet, facts: Facts): Promise<Drawn> {
  const paper = await newPaper(lookOf(facts.organisation(by)), title, number, day);
  draw(paper);
  return { bytes: await finish(paper), pages: paper.pages.length, found: paper.found, ends: paper.ends };
}

/** Day some days later. */
export function daysLater(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

/** Day some days later, or the Monday after it where nobody works on that day. */
export function weekdayLater(day: string, days: number): string {
  const found = daysLater(day, days);
  const toMonday = { 0: 1, 6: 2 }[new Date(`${found}T00:00:00Z`).getUTCDay()] ?? 0;
  return daysLater(found, toMonday);
}

/** A value as a paper prints it; a dash where it has none. */
export const printed = (value: string | number | undefined): string => (value === undefined ? "–" : String(value));

/** Values one after the other. */
export const listed = (values: readonly string[] | undefined): string => (values ?? []).join(", ");

/** A document and its revision, as papers cite them. */
export const cited = (link: string | undefined): string => printed(link).replace("@", " revision ");

/** The day of a moment. */
export const dayIn = (moment: string | undefined): string => printed(moment).slice(0, 10);

/** The time of day of a moment. */
export const clock = (moment: string | undefined): string => printed(moment).slice(11, 16);

/** The number in a quantity; nought where there is none. */
export const figure = (quantity: string | undefined): number => Number((quantity ?? "0").split(" ")[0]);

interface SignatureRow {
  readonly role: string;
  readonly person?: string;
  readonly date?: string;
}

/** The signatures of a record, as its paper bears them: inspection bodies and laboratories stamp. */
export function signed(facts: Facts, rows: readonly SignatureRow[] | undefined): readonly Signed[] {
  return (rows ?? []).map(({ role, person, date }) => {
    const employer = facts.all("person").find(({ id }) => id === person)?.employer;
    const stamps = role === "inspection body" || role === "laboratory";
    return {
      role,
      name: facts.name(person),
      date: printed(date),
      ...(stamps && employer !== undefined && { stamp: facts.stamp(employer) }),
    };
  });
}

/** The stamped signature of the inspection body's inspector. */
export const inspected = (facts: Facts, date: string): Signed => ({
  role: "inspection body",
  name: facts.first("inspection body"),
  date,
  stamp: facts.stamp(facts.body),
});
