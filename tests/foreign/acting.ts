import type { Buffer } from "node:buffer";
import { rawPdf, stream, words } from "./raw-pdf.ts";

/** What is hung on every object: actions, foreign files, private data, layers. */
const extras =
  "/AA<</O 20 0 R>>/AF[22 0 R]/PieceInfo<</Tool<</LastModified(D:2026)/Private 20 0 R>>>>/StructParents 7/OC 23 0 R" +
  "/Measure<</Type/Measure/X 20 0 R>>/Ref<</F 22 0 R/Page 0>>/OPI<</F 22 0 R>>/Alternates[<</Image 22 0 R>>]";

const link = (action: string) => `<</Type/Annot/Subtype/Link/Rect[10 10 60 60]/A<<${action}/Next 20 0 R>>>>`;

const annotations = [
  link("/S/URI/URI(https://example.org)"),
  link("/S/Launch/F 22 0 R"),
  link("/S/GoToR/F 22 0 R"),
  link("/S/SubmitForm/F 22 0 R"),
  link("/S/GoTo/D[6 0 R/Fit]"),
  "<</Type/Annot/Subtype/Widget/FT/Btn/T(b)/Rect[10 10 60 60]/AP<</N 12 0 R>>/A 20 0 R/AA<</D 20 0 R>>>>",
  "<</Type/Annot/Subtype/FileAttachment/FS 22 0 R/Rect[10 10 60 60]/AP<</N 12 0 R>>>>",
  "<</Type/Annot/Subtype/RichMedia/RichMediaContent<</Assets 22 0 R>>/Rect[10 10 60 60]/AP<</N 12 0 R>>>>",
  `<</Type/Annot/Subtype/Stamp/Rect[70 70 90 90]/AP<</N 12 0 R>>${extras}>>`,
].join("");

const resources =
  `<</Font<</F1 5 0 R>>/XObject<</F 12 0 R/I 13 0 R/E 14 0 R>>/ExtGState<</G 15 0 R>>/Pattern<</P 16 0 R>>` +
  `/Properties<</L 23 0 R>>/ColorSpace<</C[/ICCBased 17 0 R]>>${extras}>>`;

/** A PDF of two pages with everything that acts or carries other files, hung on every sort of object a page needs. */
export const actingPdf = (): Buffer =>
  rawPdf({
    objects: {
      1:
        "<</Type/Catalog/Pages 2 0 R/OpenAction 20 0 R/AA<</WC 20 0 R>>/AF[22 0 R]/Collection<</Type/Collection>>" +
        "/AcroForm<</Fields[<</FT/Tx/T(t)>>]/XFA 21 0 R>>/Names<</JavaScript<</Names[(s)20 0 R]>>" +
        "/EmbeddedFiles<</Names[(f)22 0 R]>>>>/OCProperties<</OCGs[23 0 R]/D<</OFF[23 0 R]/AS[<</Event/View>>]>>>>>>",
      2: "<</Type/Pages/Count 2/Kids[3 0 R 6 0 R]>>",
      3:
        `<</Type/Page/Parent 2 0 R/MediaBox[0 0 300 300]/Contents 4 0 R/Resources${resources}` +
        `/Annots[${annotations}]/Thumb 13 0 R${extras}>>`,
      4: stream(words("hostile"), extras),
      5: `<</Type/Font/Subtype/Type1/BaseFont/Helvetica${extras}>>`,
      6: "<</Type/Page/Parent 2 0 R/MediaBox[0 0 300 300]/Contents 7 0 R/Resources<</Font<</F1 5 0 R>>>>>>",
      7: stream(words("second")),
      12: stream("0 0 5 5 re f", `/Type/XObject/Subtype/Form/BBox[0 0 9 9]${extras}`),
      13: stream(
        "abcd",
        `/Type/XObject/Subtype/Image/Width 2/Height 2/BitsPerComponent 8/ColorSpace/DeviceGray${extras}`,
      ),
      14: stream("", "/Type/XObject/Subtype/Image/Width 1/Height 1/F 22 0 R/FFilter/FlateDecode"),
      15: `<</Type/ExtGState/CA 1${extras}>>`,
      16: stream(
        "0 0 1 1 re f",
        `/PatternType 1/PaintType 1/TilingType 1/BBox[0 0 1 1]/XStep 1/YStep 1/Resources<<${extras}>>${extras}`,
      ),
      17: stream("x", `/N 1/Alternate/DeviceGray${extras}`),
      20: "<</S/JavaScript/JS(app.alert\\(1\\))>>",
      21: stream("MZ", "/Type/EmbeddedFile"),
      22: "<</Type/Filespec/F(a.exe)/EF<</F 21 0 R>>>>",
      23: "<</Type/OCG/Name(hidden)>>",
    },
  });
