import { colourSpace, functionShape, shading } from "./colours.ts";
import {
  dict,
  either,
  listOf,
  listSource,
  named,
  oneOf,
  plain,
  plainList,
  stream,
  type Keys,
  type Shape,
} from "./copier.ts";
import { fontWith } from "./fonts.ts";
import { entriesOf, isDict, isList, isStream, nameOf } from "./values.ts";

/** What of a page's drawing may be copied: ISO 32000-1, table 33 (resources) and what hangs on it. */

const group = dict("group", {
  Type: oneOf("Group"),
  S: oneOf("Transparency"),
  CS: colourSpace,
  I: plain,
  K: plain,
});

const font = fontWith(() => resources);

/** Resources of a page, form, pattern or font. */
export const resources: Shape = dict("resources", {
  // Looked up when it is needed: forms have resources, and resources have forms.
  get ExtGState() {
    return named("states", state);
  },
  ColorSpace: named("colour spaces", colourSpace),
  get Pattern() {
    return named("patterns", pattern);
  },
  Shading: named("shadings", shading),
  get XObject() {
    return named("drawn objects", drawnObject);
  },
  get Font() {
    return named("fonts", font);
  },
  ProcSet: plainList,
});

const formKeys: Keys = {
  FormType: plain,
  BBox: plainList,
  Matrix: plainList,
  Resources: resources,
  Group: group,
};

/** A form: a drawing within a drawing. */
export const form: Shape = stream("form", formKeys, "/Type/XObject/Subtype/Form");

const softMask: Shape = stream(
  "mask",
  {
    Width: plain,
    Height: plain,
    ColorSpace: colourSpace,
    BitsPerComponent: plain,
    ImageMask: plain,
    Decode: plainList,
    Interpolate: plain,
    Matte: plainList,
  },
  "/Type/XObject/Subtype/Image",
);

const image: Shape = stream(
  "image",
  {
    Width: plain,
    Height: plain,
    ColorSpace: colourSpace,
    BitsPerComponent: plain,
    Intent: plain,
    ImageMask: plain,
    Mask: either("image mask", (value) => (isStream(value) ? softMask : plainList)),
    Decode: plainList,
    Interpolate: plain,
    SMask: softMask,
    SMaskInData: plain,
  },
  "/Type/XObject/Subtype/Image",
);

const drawnObject: Shape = either("drawn object", (value) => {
  const subtype = nameOf(entriesOf(value)?.get("Subtype"));
  return subtype === "Image" ? image : subtype === "Form" ? form : undefined;
});

const fontOfState: Shape = {
  name: "font of a state",
  make: (value, copier) => (isList(value) && value.length === 2 ? listSource(value, copier, font, plain) : undefined),
};

const transfer: Shape = either("transfer", (value) => (isList(value) ? listOf(functionOrName) : functionOrName));

const functionOrName: Shape = either("function or name", (value) =>
  isDict(value) || isStream(value) ? functionShape : plain,
);

const mask: Shape = either("soft mask", (value) =>
  isDict(value)
    ? dict("soft mask", { Type: oneOf("Mask"), S: plain, G: form, BC: plainList, TR: functionOrName })
    : plain,
);

const plainOrList: Shape = either("plain or list", (value) => (isList(value) ? plainList : plain));

const state: Shape = dict("state", {
  Type: oneOf("ExtGState"),
  LW: plain,
  LC: plain,
  LJ: plain,
  ML: plain,
  D: plainList,
  RI: plain,
  OP: plain,
  op: plain,
  OPM: plain,
  Font: fontOfState,
  BG: functionOrName,
  BG2: functionOrName,
  UCR: functionOrName,
  UCR2: functionOrName,
  TR: transfer,
  TR2: transfer,
  FL: plain,
  SM: plain,
  SA: plain,
  BM: plainOrList,
  SMask: mask,
  CA: plain,
  ca: plain,
  AIS: plain,
  TK: plain,
});

const pattern: Shape = either("pattern", (value) =>
  isStream(value)
    ? stream("tiling pattern", {
        Type: oneOf("Pattern"),
        PatternType: plain,
        PaintType: plain,
        TilingType: plain,
        BBox: plainList,
        XStep: plain,
        YStep: plain,
        Resources: resources,
        Matrix: plainList,
      })
    : dict("shading pattern", {
        Type: oneOf("Pattern"),
        PatternType: plain,
        Shading: shading,
        Matrix: plainList,
        ExtGState: state,
      }),
);

/** The transparency group of a page. */
export const pageGroup: Shape = group;
