import type { PdfFile } from "./file.ts";
import { sortOfAction, sortOfAnnotation, sortOfKey, sorts } from "./left-out.ts";
import type { PdfPage } from "./page-tree.ts";
import { entriesOf, isList, nameOf, type Entries, type PdfValue } from "./values.ts";

/** Notes what the document as a whole holds besides its pages. */
export function surveyDocument(file: PdfFile, leftOut: Set<string>): void {
  const { root } = file;
  surveyActions(file, root.get("OpenAction"), leftOut);
  surveyTriggers(file, root.get("AA"), leftOut);
  if (root.has("AF")) leftOut.add(sorts.embedded);
  for (const key of file.dict(root.get("Names"))?.keys() ?? []) {
    const sort = sortOfKey(key);
    if (sort !== undefined) leftOut.add(sort);
  }
  if (root.has("Collection")) leftOut.add(sorts.embedded);
  const fields = file.dict(root.get("AcroForm"));
  const listed = file.resolve(fields?.get("Fields"));
  if (fields?.has("XFA") === true || (isList(listed) && listed.length > 0)) leftOut.add(sorts.forms);
  const layers = file.dict(file.dict(root.get("OCProperties"))?.get("D"));
  const off = file.resolve(layers?.get("OFF"));
  const base = nameOf(file.resolve(layers?.get("BaseState")));
  if ((isList(off) && off.length > 0) || base === "OFF") leftOut.add(sorts.layers);
}

/** Whether somebody signed: a field for a signature holds one. Whose it is, and whether it is sound, is not looked at. */
export function isSigned(file: PdfFile): boolean {
  const listed = file.resolve(file.dict(file.root.get("AcroForm"))?.get("Fields"));
  const waiting: (PdfValue | undefined)[] = isList(listed) ? [...listed] : [];
  const seen = new Set<Entries>();
  while (waiting.length > 0) {
    const field = file.dict(waiting.pop());
    if (field === undefined || seen.has(field)) continue;
    seen.add(field);
    const value = file.dict(field.get("V"));
    if (value?.has("ByteRange") === true) return true;
    const kids = file.resolve(field.get("Kids"));
    if (isList(kids)) waiting.push(...kids);
  }
  return false;
}

/** Notes what a page holds besides its drawing and plain links. */
export function surveyPage(file: PdfFile, { entries }: PdfPage, leftOut: Set<string>): void {
  surveyTriggers(file, entries.get("AA"), leftOut);
  if (entries.has("AF")) leftOut.add(sorts.embedded);
  const annotations = file.resolve(entries.get("Annots"));
  for (const annotation of isList(annotations) ? annotations : []) {
    const own = file.dict(annotation);
    if (own === undefined) continue;
    const sort = sortOfAnnotation(nameOf(file.resolve(own.get("Subtype"))));
    if (sort !== undefined) leftOut.add(sort);
    surveyTriggers(file, own.get("AA"), leftOut);
    const action = file.dict(own.get("A"));
    if (action !== undefined) surveyActions(file, own.get("A") ?? null, leftOut);
  }
}

/** Actions that run by themselves: when a page opens, a field changes, a document closes. */
function surveyTriggers(file: PdfFile, value: PdfValue | undefined, leftOut: Set<string>): void {
  const triggers = file.dict(value);
  if (triggers === undefined) return;
  leftOut.add(sorts.actions);
  for (const action of triggers.values()) surveyActions(file, action, leftOut);
}

/** An action and those that follow it; a plain link within the file is kept and needs no word. */
function surveyActions(file: PdfFile, value: PdfValue | undefined, leftOut: Set<string>): void {
  const seen = new Set<Entries>();
  const waiting: (PdfValue | undefined)[] = [value];
  while (waiting.length > 0) {
    const found = file.resolve(waiting.pop());
    // A list is a place to go to, unless it holds actions.
    if (isList(found))
      waiting.push(...found.filter((item) => entriesOf(file.resolve(item))?.has("S") === true).slice(0, 1000));
    const action = entriesOf(found);
    if (action === undefined || seen.has(action)) continue;
    seen.add(action);
    const name = nameOf(file.resolve(action.get("S")));
    if (name !== "GoTo") leftOut.add(sortOfAction(name));
    if (action.has("JS")) leftOut.add(sorts.scripts);
    waiting.push(action.get("Next"));
  }
}
