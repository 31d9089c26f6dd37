import { fromMemory, ownChoice, type Basis } from "../model/basis.ts";
import type { Fact } from "../model/fact.ts";

const marking = fromMemory(
  "Directive 2014/68/EU",
  undefined,
  "Annex I, marking: the plate states what the documents state",
);
const once = ownChoice("one fact has one value, wherever it is written");

/** Records that restate figures of the equipment, and the field each has for one of them. */
const restating = ["nameplate", "declaration", "body-certificate"] as const;

/** A figure that the equipment, its plate, its legal papers and its drawings all state. */
function figure(
  id: string,
  title: string,
  own: string,
  field: string,
  reading: Fact["reading"],
  more: readonly string[] = [],
  basis: Basis = marking,
): Fact {
  return {
    id,
    title,
    basis,
    reading,
    owner: "document control",
    statements: [
      `book.equipment.${own}`,
      ...restating.map((kind) => `book.${kind}.${field}`),
      `book.drawing.designData.${field}`,
      ...more,
    ],
  };
}

const bar = { type: "quantity", unit: "bar" } as const;
const celsius = { type: "quantity", unit: "°C" } as const;

/** Figures and names that the equipment, its plate and its papers restate. */
export const restated: readonly Fact[] = [
  figure("serial-agrees", "the serial number", "serial", "serial", { type: "text" }, ["book.pressure-test.serial"]),
  figure("year-agrees", "the year of manufacture", "year", "year", { type: "count" }),
  figure(
    "maximum-pressure-agrees",
    "the maximum allowable pressure",
    "limits.maximumAllowablePressure",
    "maximumAllowablePressure",
    bar,
  ),
  figure(
    "maximum-temperature-agrees",
    "the maximum allowable temperature",
    "limits.maximumAllowableTemperature",
    "maximumAllowableTemperature",
    celsius,
  ),
  figure(
    "minimum-temperature-agrees",
    "the minimum allowable temperature",
    "limits.minimumAllowableTemperature",
    "minimumAllowableTemperature",
    celsius,
  ),
  figure("volume-agrees", "the volume", "volume", "volume", { type: "quantity", unit: "l" }),
  figure("steam-output-agrees", "the steam output", "duty.steamOutput", "steamOutput", {
    type: "quantity",
    unit: "kg/h",
  }),
  figure("heating-surface-agrees", "the heating surface", "heatingSurface", "heatingSurface", {
    type: "quantity",
    unit: "m²",
  }),
  figure("test-pressure-agrees", "the test pressure", "testPressure", "testPressure", bar, [
    'book.pressure-test[result="accepted"].testPressure',
  ]),
  figure("fluid-group-agrees", "the fluid group", "fluid.group", "fluidGroup", { type: "text" }),
  figure("category-agrees", "the category", "directive.category", "category", { type: "text" }),
  figure("module-agrees", "the conformity assessment module", "directive.module", "module", { type: "text" }),
  {
    id: "test-date-agrees",
    title: "the date of the pressure test",
    basis: marking,
    reading: { type: "date" },
    owner: "document control",
    statements: [
      'book.pressure-test[result="accepted"].date',
      ...restating.map((kind) => `book.${kind}.testDate`),
      "book.drawing.designData.testDate",
    ],
  },
  {
    id: "body-number-agrees",
    title: "the number of the inspection body",
    basis: once,
    reading: { type: "text" },
    owner: "document control",
    statements: [
      "book.book.inspectionBody.number",
      ...restating.map((kind) => `book.${kind}.bodyNumber`),
      "book.drawing.designData.bodyNumber",
    ],
  },
  {
    id: "maker-agrees",
    title: "the name of the maker",
    basis: once,
    reading: { type: "text" },
    owner: "document control",
    statements: ["book.book.maker.name", "book.nameplate.makerName", "book.declaration.makerName"],
  },
  {
    id: "maker-address-agrees",
    title: "the address of the maker",
    basis: once,
    reading: { type: "text" },
    owner: "document control",
    statements: ["book.book.maker.address", "book.nameplate.makerAddress", "book.declaration.makerAddress"],
  },
];
