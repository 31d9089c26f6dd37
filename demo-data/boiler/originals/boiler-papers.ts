import type { Fitting, TubeEndGroup } from "../../generated/records.ts";
import { orderOf, type Facts } from "../../book/facts.ts";
import { listed, cited, printed, type OriginalSheet } from "../../sheets/original.ts";
import { paperOf } from "../../sheets/papers.ts";
import { drawText, type TextPart } from "../../sheets/text-document.ts";

/** Report of one group of tube ends: what was joined how, and the ends that were measured. */
function tubeEnds(facts: Facts, group: TubeEndGroup): readonly TextPart[] {
  const rows = (group.measured ?? []).map((one) => [
    one.position,
    printed(one.holeDiameter),
    printed(one.tubeOutside),
    printed(one.insideBefore),
    printed(one.insideAfter),
    printed(one.wallReduction),
  ]);
  return [
    {
      title: `${String(group.count)} ends, field ${group.field.split("#")[1] ?? ""} of ${group.field.split("#")[0] ?? ""}`,
      table: {
        columns: ["Item", "Recorded"],
        shares: [40, 60],
        rows: [
          ["Day", printed(group.date)],
          ["Tubes", group.tube],
          ["End", printed(group.end).replace("-", " ")],
          ["Joined by", group.joining.replaceAll("-", " ")],
          ["Procedure", cited(group.procedure)],
          ["Welding procedure", cited(group.weldingProcedure)],
          ["Position", printed(group.position)],
          ["Expander", printed(group.expander)],
          ["Made by", (group.operators ?? []).map((one) => facts.name(one)).join(", ")],
          ["Welded by", (group.welders ?? []).map((one) => facts.name(one)).join(", ") || "–"],
          ["Measured with", listed(group.instruments)],
          [
            "Reduction asked for",
            `${printed(group.reductionAsked?.minimum)} to ${printed(group.reductionAsked?.maximum)}`,
          ],
          ["Greatest projection", printed(group.projection)],
          ["Result", printed(group.result)],
        ],
      },
    },
    {
      title: "Ends measured",
      table: {
        columns: ["Place", "Hole", "Tube outside", "Bore before", "Bore after", "Wall reduced"],
        shares: [25, 15, 15, 15, 15, 15],
        rows,
      },
    },
  ];
}

const words = (sort: string) => sort.replaceAll("-", " ");

/** Data sheet of a mounting, as the shop keeps one for each. */
function mounting(facts: Facts, fitting: Fitting): readonly TextPart[] {
  const given: readonly (readonly [string, string | undefined])[] = [
    ["Sort", words(fitting.sort)],
    ["Tag", fitting.tag],
    ["Maker", fitting.manufacturer === undefined ? undefined : facts.organisation(fitting.manufacturer).name],
    ["Type", fitting.model],
    ["Serial", fitting.serial],
    ["Mounted on", fitting.branch],
    ["Nominal size", fitting.nominalSize],
    ["Rating", fitting.pressureRating],
    ["May be used up to", fitting.allowablePressure],
    ["at", fitting.allowableTemperature],
    ["Certificate", fitting.certificate?.number],
    ["of", fitting.certificate?.date],
    ["Type of inspection document", fitting.certificate?.type],
    ["Type examination", fitting.typeExamination],
    ["Declaration", fitting.declaration],
    ["Turns the firing on at", fitting.cutIn],
    ["Turns the firing off at", fitting.cutOut],
    ["Set to", fitting.settingPressure],
    ["Switches at", fitting.switchLevel],
    ["Locks out", fitting.lockOut === undefined ? undefined : fitting.lockOut ? "yes" : "no"],
    ["Watches itself", fitting.selfMonitoring === undefined ? undefined : fitting.selfMonitoring ? "yes" : "no"],
    ["Circuit", fitting.circuit],
    ["Sensing element", fitting.sensor],
    ["Switching unit", fitting.switchingUnit],
    ["A failure cuts the heat", fitting.failSafe === undefined ? undefined : fitting.failSafe ? "yes" : "no"],
    ["Shows from", fitting.visibleMinimum],
    ["Shows to", fitting.visibleMaximum],
    ["Scale from", fitting.gaugeRange?.minimum],
    ["Scale to", fitting.gaugeRange?.maximum],
    ["Class", fitting.accuracyClass],
    ["Red mark", fitting.redMark],
    ["Fuel", fitting.fuel],
    ["Least heat input", fitting.heatInputLeast],
    ["Greatest heat input", fitting.heatInputMost],
  ];
  const rows = given.flatMap(([item, value]) => (value === undefined ? [] : [[item, value]]));
  const points = (fitting.pumpPoints ?? []).map((one) => [one.point, printed(one.flow), printed(one.pressure)]);
  const trials = (fitting.functionTests ?? []).map((one) => [
    one.function,
    printed(one.date),
    [facts.name(one.by), one.instrument].filter((said) => said !== undefined).join(", with "),
    printed(one.level ?? one.pressure),
    printed(one.result),
  ]);
  return [
    { title: "Data", table: { columns: ["Item", "Value"], shares: [40, 60], rows } },
    ...(points.length === 0
      ? []
      : [{ title: "Curve", table: { columns: ["Point", "Flow", "Pressure at the boiler"], rows: points } }]),
    ...(trials.length === 0
      ? []
      : [
          {
            title: "Trials",
            table: { columns: ["Function", "Day", "By", "At", "Result"], shares: [46, 14, 16, 12, 12], rows: trials },
          },
        ]),
  ];
}

const latest = (fitting: Fitting): string =>
  [fitting.certificate?.date, ...(fitting.functionTests ?? []).map(({ date }) => date)].reduce<string>(
    (last, day) => (day !== undefined && day > last ? day : last),
    "2026-05-06",
  );

/** Papers of what only a boiler has: a report for each group of tube ends, and a data sheet for each mounting. */
export const boilerOriginals = (facts: Facts): readonly OriginalSheet[] => [
  ...facts.all("tube-end-group").map((record) =>
    paperOf(
      "tube-end-group",
      record,
      {
        path: `welding/${record.id.toLowerCase()}.pdf`,
        title: `Tube ends ${record.id}`,
        number: `${orderOf(facts)}-09-${record.id}`,
        by: facts.maker,
        day: printed(record.date),
      },
      (paper) => {
        drawText(paper, tubeEnds(facts, record));
      },
    ),
  ),
  ...facts.all("fitting").map((record) =>
    paperOf(
      "fitting",
      record,
      {
        path: `completion/${record.id.toLowerCase()}.pdf`,
        title: `Data sheet of ${words(record.sort)} ${printed(record.tag)}`,
        number: `${orderOf(facts)}-15-${record.id}`,
        by: facts.maker,
        day: latest(record),
      },
      (paper) => {
        drawText(paper, mounting(facts, record));
      },
    ),
  ),
];
