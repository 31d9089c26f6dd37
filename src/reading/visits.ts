import type { Definitions } from "../model/definitions.ts";
import type { Graph } from "../model/graph.ts";
import type { Changes } from "./changes.ts";
import { stillHolds } from "./holds.ts";
import { newPage, type Notebook, type Page } from "./notes.ts";
import type { Tables } from "./tables.ts";
import type { ParameterInForce, World } from "./world.ts";

/**
 * What is remembered of a judged book, so that it is judged again faster once some of it has changed. Nothing in it is
 * changed by judging again.
 */
export interface Memory {
  /** All definitions there were, and those in force for this book. */
  readonly all: Definitions;
  readonly definitions: Definitions;
  readonly graph: Graph;
  readonly parameters: ReadonlyMap<string, ParameterInForce>;
  readonly tables: Pick<Tables, "tables" | "own">;
}

/** How a book is judged that may be judged again, or is. */
export interface Notes extends Notebook {
  /** What the book was judged as before, and what has changed since; null where it is judged anew. */
  readonly before: { readonly memory: Memory; readonly changes: Changes } | null;
  /** What is remembered of it now; null where nobody will judge it again. */
  readonly now: Memory | null;
}

interface Visit<Said> {
  readonly said: Said;
  readonly page: Page;
}

/** By definition, then by what tells its subjects apart. */
type Visits<Said> = Map<object, Map<string, Visit<Said>>>;

/**
 * Gives a function that applies a definition to a subject, or gives what was said of it before where all that rested on
 * is as it was. `keepsRecords` tells of what was said whether it holds records of the book, and not only their names.
 */
export function newVisits<Said>(
  keepsRecords: (said: Said) => boolean,
): (world: World, definition: object, subject: string, say: () => Said) => Said {
  const all = new WeakMap<Memory, Visits<Said>>();
  return (world, definition, subject, say) => {
    const { notes } = world;
    if (notes === undefined) return say();
    const { before, now } = notes;
    const known = before === null ? undefined : all.get(before.memory)?.get(definition)?.get(subject);
    if (before !== null && known !== undefined) {
      const holds = stillHolds(known.page, world, before.changes, keepsRecords(known.said));
      if (holds && now !== null) keep(all, now, definition, subject, known);
      if (holds) return known.said;
    }
    if (now === null) return say();
    const page = newPage();
    notes.page = page;
    try {
      const said = say();
      // What noted nothing rests on something all the same, of which nobody would see that it has changed.
      if (!isBlank(page)) keep(all, now, definition, subject, { said, page });
      return said;
    } finally {
      notes.page = null;
    }
  };
}

const isBlank = ({ places, kinds, back, results }: Page): boolean =>
  places.size + kinds.size + back.size + results.size === 0;

function keep<Said>(
  all: WeakMap<Memory, Visits<Said>>,
  memory: Memory,
  definition: object,
  subject: string,
  visit: Visit<Said>,
): void {
  const visits: Visits<Said> = all.get(memory) ?? new Map<object, Map<string, Visit<Said>>>();
  all.set(memory, visits);
  const subjects = visits.get(definition) ?? new Map<string, Visit<Said>>();
  visits.set(definition, subjects);
  subjects.set(subject, visit);
}
