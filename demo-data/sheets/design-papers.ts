import type { Part } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { fields, heading, paragraph } from "../paper/blocks.ts";
import { newSheet, withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";
import { printed } from "./original.ts";

type Fields = readonly (readonly [string, string])[];

/** What a boiler is asked to do, and the water levels it is to be run between. */
/** What it is designed for in its life, where that is stated. */
const cyclesOf = ({ pressureCycles }: Facts["equipment"]): Fields =>
  pressureCycles === undefined ? [] : [["Full pressure cycles", String(pressureCycles)]];

function dutyOf({ duty, levels, heatingSurface }: Facts["equipment"]): Fields {
  const { steamOutput, workingPressure, feedwaterTemperature, blowdownFraction, heatInput, efficiency } = duty ?? {};
  return [
    ["Steam output, working pressure", `${printed(steamOutput)}, ${printed(workingPressure)}`],
    ["Feedwater, blow-down", `${printed(feedwaterTemperature)}, ${printed(blowdownFraction)}`],
    ["Heat input, efficiency", `${printed(heatInput)}, ${printed(efficiency)}`],
    ["Heating surface", printed(heatingSurface)],
    ["Highest heated surface", printed(levels?.highestHeatedSurface)],
    ["Lowest permissible water level, limiter", `${printed(levels?.lowestPermissible)}, ${printed(levels?.limiter)}`],
    ["Normal, highest water level", `${printed(levels?.normal)}, ${printed(levels?.highest)}`],
    ["Steam take-off", printed(levels?.steamTakeOff)],
  ];
}

/** Design data and limits, with the sizes of the parts that carry pressure; `remark` on what was not considered. */
export function drawDesignData(paper: Paper, facts: Facts, main: readonly Part[], remark: string): Sheet {
  const { equipment } = facts;
  const { limits, directive, designStandard, designRules = [], fluid } = equipment;
  let sheet = newSheet(paper);
  fields(sheet, [
    ["Equipment", `${printed(equipment.name)}, serial ${equipment.serial}, tag ${printed(equipment.tag)}`],
    ["Standard", `${printed(designStandard?.standard)}:${printed(designStandard?.edition)}`],
    ...designRules.map((one): readonly [string, string] => [
      `${printed(one.standard)}:${printed(one.edition)}`,
      `for ${one.for}`,
    ]),
    ["Contents", `${printed(fluid?.name)}, ${printed(fluid?.state)}, group ${printed(fluid?.group)}`],
    ["Maximum allowable pressure PS", printed(limits?.maximumAllowablePressure)],
    [
      "Allowable temperature TS",
      `${printed(limits?.minimumAllowableTemperature)} to ${printed(limits?.maximumAllowableTemperature)}`,
    ],
    ["Volume V", printed(equipment.volume)],
    ["Calculation pressure", printed(equipment.calculationPressure)],
    ["Calculation temperature", printed(equipment.calculationTemperature)],
    ["Test pressure", printed(equipment.testPressure)],
    ["Corrosion allowance", printed(equipment.corrosionAllowance)],
    ["Category, modules", `${printed(directive?.category)}, ${printed(directive?.module)}`],
    ...cyclesOf(equipment),
    ["Flow to be relieved", printed(equipment.requiredFlow)],
    ["Source of that flow", printed(equipment.requiredFlowSource)],
    ["Empty mass", printed(equipment.emptyMass)],
    ...(equipment.duty === undefined ? [] : dutyOf(equipment)),
  ]);
  heading(sheet, "Sizes");
  const dished = main.some(({ crownRadius }) => crownRadius !== undefined);
  sheet = table(
    sheet,
    columns(
      dished
        ? ["Part", "Nominal", "Least", "Inside Ø", "R", "r", "z"]
        : ["Part", "Nominal", "Inside Ø", "Outside Ø", "Length", "Heating", "z"],
      [24],
    ),
    main.map((part) => [
      printed(part.name),
      printed(part.nominalThickness),
      ...(dished
        ? [part.minimumThickness, part.insideDiameter, part.crownRadius, part.knuckleRadius]
        : [part.insideDiameter, part.outsideDiameter, part.length, part.heating]
      ).map(printed),
      printed(part.weldCoefficient),
    ]),
  );
  sheet = withRoom(sheet, 120);
  paragraph(sheet, remark);
  return sheet;
}

/** The material list; `remark` on what is welded on. */
export function drawMaterialList(paper: Paper, facts: Facts, remark: string): Sheet {
  const start = newSheet(paper);
  const last = table(
    start,
    [
      { title: "Part", share: 7 },
      { title: "Name", share: 44 },
      { title: "Qty", share: 6, align: "right" },
      { title: "Standard, grade", share: 34 },
      { title: "Size", share: 20 },
      { title: "Certificate", share: 10 },
    ],
    facts
      .all("part")
      .map((part) => [
        part.id,
        printed(part.name),
        printed(part.quantity),
        `${printed(part.material?.standard)}:${printed(part.material?.edition)} ${printed(part.material?.grade)}`,
        [part.outsideDiameter === undefined ? undefined : `Ø ${part.outsideDiameter}`, part.nominalThickness]
          .filter((one) => one !== undefined)
          .join(" × "),
        printed(part.requiredCertificateType),
      ]),
    8,
  );
  const marks = facts.all("piece-mark");
  const rows = marks.flatMap(({ certificateRow }) => certificateRow ?? []);
  const certificates = new Set(rows.map((row) => row.split("#")[0])).size;
  const pieces = marks.length;
  const sheet = withRoom(last, 120);
  paragraph(sheet, `Ordered with ${String(certificates)} certificates for ${String(pieces)} pieces. ${remark}`);
  return sheet;
}
