import { tooMuch, type SheetBudget } from "../limits.ts";
import { damaged, refuse } from "../unreadable.ts";
import { relationsOf, type Relation } from "./relations.ts";
import { attribute, isOn, readPart } from "./xml.ts";
import type { Archive } from "./zip.ts";

/** A tab of the workbook. */
export interface Tab {
  readonly name: string;
  readonly hidden: boolean;
  readonly part: string;
}

/** What the first part of a workbook says. */
export interface WorkbookPart {
  readonly tabs: readonly Tab[];
  readonly epoch1904: boolean;
  readonly recalculated: boolean;
  readonly strings?: string;
  readonly styles?: string;
  /** Tabs that hold no cells. */
  readonly charts: boolean;
}

/** Reads which sheets there are and where; by their relations, never by the names of parts. */
export async function readWorkbookPart(archive: Archive, budget: SheetBudget): Promise<WorkbookPart> {
  const root = [...(await relationsOf(archive, "", budget)).values()].find(({ type }) => type === "officeDocument");
  if (root?.part === undefined) throw noWorkbook("it is an archive without an Office document");
  const part = root.part;
  const relations = await relationsOf(archive, part, budget);
  const tabs: Tab[] = [];
  let [epoch1904, recalculated, charts] = [false, false, false];
  let first = true;
  await readPart(archive, part, budget, {
    open(name, attributes) {
      if (first && name !== "workbook") throw noWorkbook("it is an Office document of another sort");
      first = false;
      if (name === "workbookPr") epoch1904 = isOn(attributes["date1904"]);
      else if (name === "calcPr") recalculated = isOn(attributes["fullCalcOnLoad"]);
      else if (name === "sheet") {
        budget.spend("sheets");
        const title = attributes["name"] ?? "";
        if (title.length > 255) throw tooMuch("has a sheet with a name longer than any program writes", "rename it");
        const relation = relations.get(attribute(attributes, "id") ?? "");
        if (relation?.part === undefined) throw damaged("the list of sheets leads to none", `sheet ${title}`);
        if (relation.type !== "worksheet") charts = true;
        else tabs.push({ name: title, hidden: (attributes["state"] ?? "visible") !== "visible", part: relation.part });
      }
    },
  });
  if (tabs.length === 0)
    throw refuse("the workbook has no sheet with cells", "it has none, or charts alone", "save it anew");
  const [strings, styles] = ["sharedStrings", "styles"].map((type) => partOf(relations, type));
  return {
    tabs,
    epoch1904,
    recalculated,
    charts,
    ...(strings !== undefined && { strings }),
    ...(styles !== undefined && { styles }),
  };
}

const partOf = (relations: ReadonlyMap<string, Relation>, wanted: string) =>
  [...relations.values()].find(({ type }) => type === wanted)?.part;

export const noWorkbook = (why: string) =>
  refuse("the file is no workbook", why, "save the sheet as an Excel workbook (.xlsx) or as CSV, and import that");
