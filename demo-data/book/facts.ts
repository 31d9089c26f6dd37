import type { Book, Equipment, Organisation, Person, RecordTypes } from "../generated/records.ts";
import { clerkOf, stampOf } from "../paper/looks.ts";
import { recordsOf, type Kind, type RecordFile } from "./records.ts";

type Role = NonNullable<Person["roles"]>[number]["role"];

/** What a paper has to know beside the record it shows: who is who, what is made, and the other records of the book. */
export interface Facts {
  readonly all: <K extends Kind>(kind: K) => readonly RecordTypes[K][];
  readonly book: Book;
  readonly equipment: Equipment;
  /** Name behind a person's mark, a dash when nobody is named; throws when the records know no such person. */
  readonly name: (person: string | undefined) => string;
  /** An organisation; throws when the records name one that is not there. */
  readonly organisation: (id: string) => Organisation;
  /** Name of the first of those who hold a role; throws when nobody does. */
  readonly first: (role: Role) => string;
  /** Name of the last of those who hold a role: of an inspection body, who signs its certificates. */
  readonly last: (role: Role) => string;
  /** Who signs for a firm; throws when the book knows nobody there. */
  readonly signerOf: (organisation: string) => string;
  /** The two lines of an organisation's stamp. */
  readonly stamp: (organisation: string) => string;
  /** The inspection body of the book. */
  readonly body: string;
  readonly maker: string;
}

/** The facts of a book by its record files; throws when it has no book or equipment. */
export function factsOf(files: readonly RecordFile[]): Facts {
  const all = <K extends Kind>(kind: K) => recordsOf(files, kind);
  const [book] = all("book");
  const [equipment] = all("equipment");
  if (book === undefined || equipment === undefined) throw new Error("the records have no book or no equipment");
  const people = all("person");
  const known = (name: string | undefined, who: string) => {
    if (name === undefined) throw new Error(`the records name nobody ${who}`);
    return name;
  };
  const holders = (role: Role) => people.filter(({ roles = [] }) => roles.some((one) => one.role === role));
  const organisation = (id: string) => {
    const found = all("organisation").find((one) => one.id === id);
    if (found === undefined) throw new Error(`the records name no organisation ${id}`);
    return found;
  };
  return {
    all,
    book,
    equipment,
    name: (id) => (id === undefined ? "–" : known(people.find((person) => person.id === id)?.name, `marked ${id}`)),
    organisation,
    first: (role) => known(holders(role)[0]?.name, `who is ${role}`),
    last: (role) => known(holders(role).at(-1)?.name, `who is ${role}`),
    signerOf: (id) => known(people.find(({ employer }) => employer === id)?.name ?? clerkOf(id), `who signs for ${id}`),
    stamp: (id) => stampOf(organisation(id)),
    body: book.inspectionBody ?? "–",
    maker: book.maker ?? "–",
  };
}

/** What the numbers of all papers of a job begin with: the order's number, for its further vessels with theirs. */
export const orderOf = ({ equipment }: Facts): string => equipment.serial.replace(/-01$/, "");

/** What is made, in a word: as reports name it. */
export const objectOf = ({ equipment }: Facts): string => (equipment.type ?? "equipment").replace("-", " ");

/** Its size, in the figure it is sold by. */
export const sizeOf = ({ equipment }: Facts): string => equipment.duty?.steamOutput ?? equipment.volume ?? "";
