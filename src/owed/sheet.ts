import type { ColumnToWrite, SheetToWrite } from "../sheets/cells.ts";
import { announcedWords, type ToHold } from "./announced.ts";
import type { OwedItem } from "./items.ts";
import type { OwedList } from "./list.ts";
import { grouped } from "../model/grouped.ts";
import { adoptWords, milestoneWords } from "./words.ts";

const columns: readonly (ColumnToWrite & { readonly of: (item: OwedItem) => string })[] = [
  { heading: "Who must act", of: ({ owner }) => owner },
  {
    heading: "Firm or person",
    note: "As records name them for this role; empty where none does.",
    of: ({ parties }) => parties.map(({ name }) => name).join("; "),
  },
  { heading: "What", of: ({ what }) => what },
  { heading: "For which thing", of: ({ thing }) => thing },
  { heading: "Title", of: ({ title }) => title },
  { heading: "Milestone", of: ({ milestone }) => (milestone === null ? "at once" : milestoneWords(milestone.name)) },
  {
    heading: "Day",
    note: "Of the milestone; empty where nobody has planned one.",
    of: ({ milestone }) => milestone?.day ?? "",
  },
  {
    heading: "Reached or planned",
    of: ({ milestone }) => (milestone?.day === undefined ? "" : milestone.reached ? "reached" : "planned"),
  },
  {
    heading: "State",
    note: "due, not due, open (a finding says why it is absent), accepted (by an exception)",
    of: ({ standing }) => standing,
  },
  { heading: "Day the record plans", of: ({ planned }) => planned ?? "" },
  { heading: "Original", of: ({ original }) => original?.id ?? "" },
  { heading: "Page", of: ({ original }) => (original?.page == null ? "" : String(original.page)) },
  { heading: "File", of: ({ original }) => original?.path ?? "" },
  { heading: "Paper of", of: ({ paperOf }) => paperOf.map(({ name }) => name).join("; ") },
  {
    heading: "Or adopt",
    note: "Recomputed figures that the designer may adopt in its place, by a signature for their digest.",
    of: ({ adoptable }) => adoptable.map(adoptWords).join("; "),
  },
  { heading: "Why", of: ({ because }) => because.join("; ") },
];

const heldAgainst: ColumnToWrite = {
  heading: "Will be held against",
  note: "Limits computed for this thing before it is measured, where they are known.",
};

/** The list as one sheet, a row for each thing, in the order of the text; what is measured with its limits. */
export function owedSheet({ groups, accepted }: OwedList, announced: readonly ToHold[] = []): SheetToWrite {
  const items = [...groups.flatMap((group) => group.items), ...accepted];
  const limits = grouped(
    announced.flatMap((one) => one.announced.awaits.map((key) => [key, one] as const)),
    ([key]) => key,
  );
  const limitsOf = (item: OwedItem) =>
    (limits.get(item.key) ?? []).map(([, one]) => {
      const said = announcedWords(one.announced);
      return one.thing === item.thing ? said : `${one.thing}: ${said}`;
    });
  return {
    name: "Owed",
    columns: [...columns.map(({ of: _, ...column }) => column), heldAgainst],
    rows: items.map((item) => [...columns.map(({ of }) => of(item)), limitsOf(item).join("; ")]),
  };
}
