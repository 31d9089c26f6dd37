import {
  dict,
  either,
  listOf,
  listSource,
  plain,
  plainList,
  stream,
  type Copier,
  type Keys,
  type Shape,
} from "./copier.ts";
import type { Source } from "../copied.ts";
import { isList, isName, isStream, nameOf, type PdfValue } from "./values.ts";

/** Functions, colour spaces and shadings: ISO 32000-1, 7.10, 8.6 and 8.7.4. */

const functionKeys: Keys = {
  FunctionType: plain,
  Domain: plainList,
  Range: plainList,
  Size: plainList,
  BitsPerSample: plain,
  Order: plain,
  Encode: plainList,
  Decode: plainList,
  C0: plainList,
  C1: plainList,
  N: plain,
  Bounds: plainList,
  get Functions() {
    return listOf(functionShape);
  },
};

export const functionShape: Shape = either("function", (value) =>
  isStream(value) ? stream("function", functionKeys) : dict("function", functionKeys),
);

const functions: Shape = either("functions", (value) => (isList(value) ? listOf(functionShape) : functionShape));

const profile = stream("colour profile", {
  N: plain,
  Range: plainList,
  get Alternate() {
    return colourSpace;
  },
});

const calibrated = dict("calibrated colours", {
  WhitePoint: plainList,
  BlackPoint: plainList,
  Gamma: either("gamma", (value) => (isList(value) ? plainList : plain)),
  Matrix: plainList,
  Range: plainList,
});

const lookUp: Shape = either("colour table", (value) => (isStream(value) ? stream("colour table", {}) : plain));

/** A colour space: a name, or a list that begins with its family. */
export const colourSpace: Shape = {
  name: "colour space",
  make(value, copier) {
    if (isName(value)) return plain.make(value, copier);
    if (!isList(value)) return undefined;
    return familySource(value, copier);
  },
};

function familySource(value: readonly PdfValue[], copier: Copier): Source | undefined {
  const some = (count: number, ...shapes: readonly Shape[]) =>
    value.length < count ? undefined : listSource(value.slice(0, count), copier, plain, ...shapes);
  switch (nameOf(copier.file.resolve(value[0]))) {
    case "ICCBased":
      return some(2, profile);
    case "Indexed":
    case "I":
      return some(4, colourSpace, plain, lookUp);
    case "CalRGB":
    case "CalGray":
    case "Lab":
      return some(2, calibrated);
    case "Separation":
      return some(4, plain, colourSpace, functionShape);
    case "DeviceN":
      // What hangs on it further only serves presses.
      return some(4, plainList, colourSpace, functionShape);
    case "Pattern":
      return value.length < 2 ? some(1) : some(2, colourSpace);
    default:
      return some(1);
  }
}

const shadingKeys: Keys = {
  ShadingType: plain,
  ColorSpace: colourSpace,
  Background: plainList,
  BBox: plainList,
  AntiAlias: plain,
  Domain: plainList,
  Coords: plainList,
  Matrix: plainList,
  Function: functions,
  Extend: plainList,
  BitsPerCoordinate: plain,
  BitsPerComponent: plain,
  BitsPerFlag: plain,
  Decode: plainList,
  VerticesPerRow: plain,
};

export const shading: Shape = either("shading", (value) =>
  isStream(value) ? stream("shading", shadingKeys) : dict("shading", shadingKeys),
);
