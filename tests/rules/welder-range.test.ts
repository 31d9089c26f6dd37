import { describe, expect, it } from "vitest";
import { measure, parseQuantity, type Measure } from "../../src/model/quantity.ts";
import {
  positionRange,
  uncovered,
  welderRanges,
  type WeldMade,
  type WelderRanges,
  type WelderTest,
} from "../../src/rules/welding/welder-range.ts";
import { shippedTables } from "../../src/definitions.ts";
import { bindGiven } from "../../src/plan/example.ts";

function mm(text: string): Measure {
  const parsed = parseQuantity(`${text} mm`, { unit: "mm" });
  if (!parsed.ok) throw new Error(text);
  return measure(parsed.quantity, "mm");
}

// What the shipped tables answer: an input that asks a table gives a function that does.
const ranges: WelderRanges = bindGiven(welderRanges, {}, shippedTables());

const plate: WelderTest = {
  standard: "EN ISO 9606-1",
  process: "135",
  product: "plate",
  weldType: "butt",
  fillerGroup: "FM1",
  thickness: mm("8"),
  outsideDiameter: undefined,
  positions: ["PA", "PC", "PF"],
  detail: "ss nb",
  supplementaryFillet: undefined,
  printedPositions: [],
  printedFrom: undefined,
  printedTo: undefined,
};
const pipe = (diameter: string): WelderTest => ({ ...plate, product: "pipe", outsideDiameter: mm(diameter) });
const weld: WeldMade = {
  process: "135",
  weldType: "butt",
  diameter: undefined,
  thicknesses: [mm("8")],
  position: "PA",
  detail: "bs",
  fillerGroups: ["FM1"],
};
const covers = (test: WelderTest, made: Partial<WeldMade>) =>
  uncovered(test, { ...weld, ...made }, ranges).length === 0;

describe("what a welder's test covers", () => {
  it.each([
    ["plate: pipe of 500 mm in a fixed position", plate, { diameter: mm("500"), position: "PF" }, true],
    ["plate: smaller pipe in a fixed position", plate, { diameter: mm("499"), position: "PF" }, false],
    ["plate: rotating pipe of 75 mm", plate, { diameter: mm("75"), position: "PC" }, true],
    ["plate: smaller rotating pipe", plate, { diameter: mm("74"), position: "PC" }, false],
    ["pipe of 25 mm: twice its diameter", pipe("25"), { diameter: mm("50") }, true],
    ["pipe of 25 mm: more", pipe("25"), { diameter: mm("51") }, false],
    ["pipe of 25 mm: no plate", pipe("25"), {}, false],
    ["pipe of 25.1 mm: plate", pipe("25.1"), {}, true],
    ["pipe of 60.3 mm: half its diameter", pipe("60.3"), { diameter: mm("30.15") }, true],
    ["pipe of 60.3 mm: less", pipe("60.3"), { diameter: mm("30.1") }, false],
    ["pipe of 30 mm: down to 25 mm", pipe("30"), { diameter: mm("25") }, true],
    ["pipe of 30 mm: less", pipe("30"), { diameter: mm("24.9") }, false],
    ["2 mm: up to 4 mm", { ...plate, thickness: mm("2") }, { thicknesses: [mm("4")] }, true],
    ["2 mm: more", { ...plate, thickness: mm("2") }, { thicknesses: [mm("4.1")] }, false],
    ["2 mm: from 2 mm", { ...plate, thickness: mm("2") }, { thicknesses: [mm("1.9")] }, false],
    ["1 mm: up to 3 mm", { ...plate, thickness: mm("1") }, { thicknesses: [mm("3")] }, true],
    ["11.9 mm: up to 23.8 mm", { ...plate, thickness: mm("11.9") }, { thicknesses: [mm("23.9")] }, false],
    ["12 mm: any from 3 mm", { ...plate, thickness: mm("12") }, { thicknesses: [mm("90")] }, true],
    ["12 mm: not under 3 mm", { ...plate, thickness: mm("12") }, { thicknesses: [mm("2.9")] }, false],
    [
      "gas welding: one and a half times",
      { ...plate, process: "311" },
      { process: "311", thicknesses: [mm("12")] },
      true,
    ],
    ["gas welding: more", { ...plate, process: "311" }, { process: "311", thicknesses: [mm("12.1")] }, false],
    [
      "the narrower range printed on the certificate",
      { ...plate, printedTo: mm("10") },
      { thicknesses: [mm("10.1")] },
      false,
    ],
    ["only the positions printed on the certificate", { ...plate, printedPositions: ["PC"] }, {}, false],
    ["from both sides: not one side without backing", { ...plate, detail: "bs" }, { detail: "ss nb" }, false],
    ["from both sides: one side with backing", { ...plate, detail: "bs" }, { detail: "ss mb" }, true],
    ["from both sides: runs on other runs", { ...plate, detail: "bs" }, { detail: undefined }, true],
    ["fillers of the sister group", plate, { fillerGroups: ["FM2"] }, true],
    ["fillers of another group", plate, { fillerGroups: ["FM5"] }, false],
    ["tested without filler", { ...plate, fillerGroup: "none" }, {}, false],
    ["tested without filler, welded without", { ...plate, fillerGroup: "none" }, { fillerGroups: [] }, true],
    ["a butt weld test: no fillet weld", plate, { weldType: "fillet", detail: "sl" }, false],
  ] as const)("%s", (_name, test, made, expected) => {
    expect(covers(test, made)).toBe(expected);
  });

  it("covers single runs in easy positions when a fillet was welded beside the butt weld", () => {
    const test = { ...plate, supplementaryFillet: true };
    const fillet = { weldType: "fillet", detail: "sl", position: "PB", thicknesses: [mm("8"), mm("20")] } as const;
    expect(covers(test, fillet)).toBe(true);
    expect(covers(test, { ...fillet, detail: "ml" })).toBe(false);
    expect(covers(test, { ...fillet, position: "PF" })).toBe(false);
    expect(covers(test, { ...fillet, thicknesses: [mm("2.9")] })).toBe(false);
  });

  it("joins two pipe positions to the inclined one", () => {
    expect(positionRange({ ...pipe("60.3"), positions: ["PC", "PH"] }, ranges)).toContain("H-L045");
    expect(positionRange({ ...pipe("60.3"), positions: ["PC", "PJ"] }, ranges)).toContain("J-L045");
    expect(positionRange({ ...plate, positions: ["PC", "PH"] }, ranges)).not.toContain("H-L045");
    expect(positionRange({ ...pipe("60.3"), positions: ["PH"] }, ranges)).not.toContain("H-L045");
  });

  it("asks an operator of mechanised welding for the process alone", () => {
    const operator = { ...plate, standard: "EN ISO 14732", process: "121" };
    expect(covers(operator, { process: "121", thicknesses: [mm("40")], position: "PC" })).toBe(true);
    expect(covers(operator, { process: "135" })).toBe(false);
  });
});
