import { dict, either, listOf, named, oneOf, plain, plainList, stream, type Keys, type Shape } from "./copier.ts";
import { entriesOf, isDict, isStream, nameOf } from "./values.ts";

/** Fonts: ISO 32000-1, 9.5 to 9.9. */

const program = stream("font program", { Length1: plain, Length2: plain, Length3: plain, Subtype: plain });

const descriptor = dict("font descriptor", {
  Type: oneOf("FontDescriptor"),
  FontName: plain,
  FontFamily: plain,
  FontStretch: plain,
  FontWeight: plain,
  Flags: plain,
  FontBBox: plainList,
  ItalicAngle: plain,
  Ascent: plain,
  Descent: plain,
  Leading: plain,
  CapHeight: plain,
  XHeight: plain,
  StemV: plain,
  StemH: plain,
  AvgWidth: plain,
  MaxWidth: plain,
  MissingWidth: plain,
  FontFile: program,
  FontFile2: program,
  FontFile3: program,
  CharSet: plain,
  CIDSet: stream("set of signs", {}),
});

const systemInfo = dict("character collection", { Registry: plain, Ordering: plain, Supplement: plain });

const map: Shape = either("character map", (value) =>
  isStream(value)
    ? stream("character map", {
        Type: oneOf("CMap"),
        CMapName: plain,
        CIDSystemInfo: systemInfo,
        WMode: plain,
        get UseCMap() {
          return map;
        },
      })
    : plain,
);

const encoding: Shape = either("encoding", (value) =>
  isDict(value) ? dict("encoding", { Type: oneOf("Encoding"), BaseEncoding: plain, Differences: plainList }) : map,
);

const common: Keys = {
  Type: oneOf("Font"),
  Subtype: plain,
  Name: plain,
  BaseFont: plain,
  Encoding: encoding,
  ToUnicode: map,
};

const simple: Keys = {
  ...common,
  FirstChar: plain,
  LastChar: plain,
  Widths: plainList,
  FontDescriptor: descriptor,
};

const descendant = dict("descendant font", {
  Type: oneOf("Font"),
  Subtype: oneOf("CIDFontType0", "CIDFontType2"),
  BaseFont: plain,
  CIDSystemInfo: systemInfo,
  FontDescriptor: descriptor,
  DW: plain,
  W: plainList,
  DW2: plainList,
  W2: plainList,
  CIDToGIDMap: either("glyph map", (value) => (isStream(value) ? stream("glyph map", {}) : plain)),
});

/** Any font. A drawn one has resources of its own, which have fonts: they are asked for when one is met. */
export function fontWith(resources: () => Shape): Shape {
  const drawn: Keys = {
    ...simple,
    FontBBox: plainList,
    FontMatrix: plainList,
    CharProcs: named("drawn signs", stream("drawn sign", {})),
    get Resources() {
      return resources();
    },
  };
  const shapes: ReadonlyMap<string, Shape> = new Map([
    ["Type0", dict("composite font", { ...common, DescendantFonts: listOf(descendant) })],
    ["Type1", dict("font", simple)],
    ["MMType1", dict("font", simple)],
    ["TrueType", dict("font", simple)],
    ["Type3", dict("drawn font", drawn)],
  ]);
  return either("any font", (value) => shapes.get(nameOf(entriesOf(value)?.get("Subtype")) ?? ""));
}
