import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRef, PDFStream, type PDFObject } from "pdf-lib";

/** Keys that act, carry foreign files, or say more of a file than how its pages look. */
const keys: ReadonlySet<string> = new Set([
  ..."JS JavaScript AA OpenAction AcroForm XFA EmbeddedFiles EF AF FFilter Ref OPI Alternates PieceInfo".split(" "),
  ..."StructParents StructParent RichMediaContent Movie Sound 3DD OCProperties OC Properties LastModified".split(" "),
  ..."Measure Thumb PresSteps VP DSS Perms Collection".split(" "),
]);

/** Values of /S, /Type and /Subtype that act, or belong to what does. */
const names: ReadonlySet<string> = new Set([
  ..."JavaScript Launch GoToR GoToE SubmitForm ResetForm ImportData Rendition Movie Sound Hide Named".split(" "),
  ..."SetOCGState GoTo3DView RichMedia RichMediaExecute Screen Widget FileAttachment Filespec".split(" "),
  ..."EmbeddedFile OCG OCMD".split(" "),
]);

/** Everything forbidden that can be reached in a finished file, from its trailer through every object. */
export async function forbiddenIn(bytes: Uint8Array): Promise<readonly string[]> {
  const { context } = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: true });
  const found = new Set<string>();
  const seen = new Set<PDFObject>();
  const waiting: (PDFObject | undefined)[] = [context.trailerInfo.Root, context.trailerInfo.Info];
  while (waiting.length > 0) {
    const next = waiting.pop();
    const object = next instanceof PDFRef ? context.lookup(next) : next;
    if (object === undefined || seen.has(object)) continue;
    seen.add(object);
    if (object instanceof PDFArray) waiting.push(...object.asArray());
    const dict = object instanceof PDFStream ? object.dict : object;
    if (!(dict instanceof PDFDict)) continue;
    for (const [key, value] of dict.entries()) {
      const name = key.decodeText();
      if (keys.has(name)) found.add(`/${name}`);
      if (["S", "Type", "Subtype"].includes(name) && value instanceof PDFName && names.has(value.decodeText()))
        found.add(`/${name} ${value.decodeText()}`);
      waiting.push(value);
    }
  }
  return [...found].sort();
}
