import { lookOf } from "../../paper/looks.ts";
import { finish, newPaper, type Paper } from "../../paper/paper.ts";
import { organisationOf } from "../facts/people.ts";
import type { Kind } from "../records.ts";

/** A record and the page of the original it was read from. */
export type Shown = readonly [kind: Kind, id: string, page?: number];

/** An original of the book: which records it is the evidence for, and how it is drawn. */
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

/** The bytes of an original. */
export async function bytesOf({ by, title, number, day, draw }: OriginalSheet): Promise<Uint8Array> {
  const paper = await newPaper(lookOf(organisationOf(by)), title, number, day);
  draw(paper);
  return finish(paper);
}

/** Day some days later. */
export function daysLater(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

/** A value as a paper prints it; a dash where it has none. */
export const printed = (value: string | number | undefined): string => (value === undefined ? "–" : String(value));
