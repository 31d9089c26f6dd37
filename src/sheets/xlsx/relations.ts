import type { SheetBudget } from "../limits.ts";
import { damaged } from "../unreadable.ts";
import { readPart } from "./xml.ts";
import type { Archive } from "./zip.ts";

export interface Relation {
  /** The last word of its type: `worksheet`. */
  readonly type: string;
  /** The part it leads to; none outside the file. */
  readonly part?: string;
}

/** What a part leads to, by id; an empty part name stands for the file as a whole. None where it has no relations. */
export async function relationsOf(
  archive: Archive,
  part: string,
  budget: SheetBudget,
): Promise<ReadonlyMap<string, Relation>> {
  const slash = part.lastIndexOf("/") + 1;
  const rels = `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
  const relations = new Map<string, Relation>();
  if (!archive.has(rels)) return relations;
  await readPart(archive, rels, budget, {
    open(name, { Id, Type, Target, TargetMode }) {
      if (name !== "Relationship" || Id === undefined || Type === undefined) return;
      const type = Type.slice(Type.lastIndexOf("/") + 1);
      const inside = TargetMode !== "External" && Target !== undefined;
      relations.set(Id, { type, ...(inside && { part: resolved(Target, part) }) });
    },
  });
  return relations;
}

/** A target is a reference like that of a web page: from the folder of its part, or from the root. It never leaves the archive. */
function resolved(target: string, from: string): string {
  try {
    return decodeURIComponent(new URL(target, `zip:///${from}`).pathname.slice(1));
  } catch {
    throw damaged(`a relation leads to ${target.slice(0, 100)}, which is no name of a part`);
  }
}
