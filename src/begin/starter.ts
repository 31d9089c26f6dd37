import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import type { Register } from "../model/requirement.ts";
import type { Milestone } from "../model/vocabulary.ts";
import { oneRecord } from "./record-text.ts";

/** What is known of a book before it has any evidence. */
export interface Beginning {
  readonly number: string;
  readonly title: string;
  readonly register: Register;
  /** Those it will pass, in their usual order. */
  readonly milestones: readonly Milestone[];
  /** Name of the profile. */
  readonly profile: string;
  /** Day up to which evidence counts for now (ISO). */
  readonly cutOff: string;
  /** Day of the order, if it is known: the first milestone is reached on it. */
  readonly ordered?: string;
  /** Number of what is made, as its maker gives it: the record that is identified by it is begun. */
  readonly serial?: string;
  /** Way from the folder of the book to the schemas for editors. */
  readonly schemas: string;
}

/**
 * The smallest book, by path: what it is, how far it has got, a guide, and of what it is about no more than is known. Nothing
 * that is not known is written: what is missing then is for `check` to say. `more` are further values of the book record.
 */
export function starterFiles(
  beginning: Beginning,
  kinds: ReadonlyMap<string, Kind>,
  guide: string,
  more: JsonObject = {},
): ReadonlyMap<string, string> {
  const { number, title, register, profile, cutOff, ordered, schemas } = beginning;
  const [first, ...later] = beginning.milestones;
  const milestones: readonly JsonObject[] = [
    ...(first === undefined ? [] : [{ name: first, ...(ordered !== undefined && { reached: ordered }) }]),
    ...later.map((name) => ({ name })),
  ];
  const day = ordered !== undefined && ordered > cutOff ? ordered : cutOff;
  const known: JsonObject = {
    id: "BOOK",
    format: 1,
    number,
    title,
    profile,
    register: register.id,
    ...(ordered !== undefined && { orderDate: ordered }),
  };
  return new Map([
    ["README.md", guide.replaceAll("{{schemas}}", schemas)],
    [
      "book.json",
      oneRecord("book", schemas, {
        ...known,
        // What was asked for now stands over what the last book says.
        ...Object.fromEntries(Object.entries(more).filter(([name]) => !Object.hasOwn(known, name))),
      }),
    ],
    [
      "issue.json",
      oneRecord("issue", schemas, {
        id: "ISSUE",
        revision: "P1",
        state: "interim",
        issueDate: day,
        dataCutOff: day,
        milestones,
      }),
    ],
    ...begun(beginning, kinds),
  ]);
}

/** Records that the number of what is made identifies. */
function begun(
  { serial, schemas }: Beginning,
  kinds: ReadonlyMap<string, Kind>,
): readonly (readonly [string, string])[] {
  if (serial === undefined) return [];
  return [...kinds.values()].flatMap((kind) => {
    const field = numberField(kind);
    if (field === undefined || kind.carry === "anew") return [];
    const value = { id: idOf(serial), [field]: serial };
    return [[`${kind.name}.json`, oneRecord(kind.name, schemas, value)] as const];
  });
}

/** The field by which a kind is identified anew in each job, beside its id. */
export function numberField(kind: Kind): string | undefined {
  return [...kind.fields.values()].find(({ carry, required }) => required && carry === "anew")?.name;
}

/** The id that a number as stamped gives: what an id cannot hold becomes a hyphen. */
export function idOf(number: string): string {
  const id = number
    .toUpperCase()
    .replaceAll(/[^A-Z0-9.-]+/g, "-")
    .replaceAll(/^[^A-Z0-9]+|[^A-Z0-9]+$/g, "")
    .slice(0, 40);
  return id === "" ? "1" : id;
}
