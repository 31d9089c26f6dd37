import type { WeldLog } from "../../../src/generated/records.ts";
import { paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import { joints } from "../facts/vessel.ts";
import { printed } from "./original.ts";

const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

/** A sheet of the weld log. */
export function drawLogs(paper: Paper, logs: readonly WeldLog[]): void {
  const sheet = newSheet(paper, "Weld log");
  table(
    sheet,
    [
      { title: "Joint", share: 7 },
      { title: "Procedure", share: 10 },
      { title: "Fit-up: gap, offset", share: 11 },
      { title: "Layer", share: 7 },
      { title: "Welder", share: 8 },
      { title: "Month, day, time", share: 15 },
      { title: "Batches", share: 15 },
      { title: "°C", share: 7, align: "right" },
      { title: "A", share: 6, align: "right" },
      { title: "V", share: 6, align: "right" },
      { title: "mm/min", share: 8, align: "right" },
      { title: "kJ/mm", share: 8, align: "right" },
    ],
    logs.flatMap((log) =>
      (log.runs ?? []).map((run, index) => [
        index === 0 ? log.joint : "",
        index === 0 ? printed(log.weldingProcedure).replace("@", " r. ") : "",
        index === 0 ? `${printed(log.fitUp?.gap)}, ${printed(log.fitUp?.offset)}` : "",
        run.layer,
        listed(run.welders),
        `${printed(run.date).slice(5, 16).replace("T", " ")}${run.finished === undefined ? "" : ` to ${run.finished.slice(11, 16)}`}`,
        listed(run.batches),
        (run.interpass ?? run.preheat ?? "").replace(" °C", ""),
        (run.current ?? "").replace(" A", ""),
        (run.voltage ?? "").replace(" V", ""),
        (run.travelSpeed ?? "").replace(" mm/min", ""),
        (run.heatInput ?? "").replace(" kJ/mm", ""),
      ]),
    ),
    7.2,
  );
  paragraph(
    sheet,
    "°C: preheat of the root, highest interpass temperature of fill and cap. Position PA, rotated. Measured with WM-02. Dates are of 2026; the joint was finished at the second time.",
  );
  const days = logs.map((log) => printed(log.runs?.[0]?.date).slice(0, 10)).sort();
  const welders = [...new Set(logs.flatMap((log) => (log.runs ?? []).flatMap((run) => run.welders ?? [])))];
  signatures(sheet, [
    ...welders.map((id) => ({ role: `welder ${id}`, name: nameOf(id), date: printed(days.at(-1)) })),
    { role: "welding coordinator", name: nameOf("M1"), date: printed(days.at(-1)) },
  ]);
  const lengths = logs.map(({ joint }) => `${joint} ${printed(joints.find(({ id }) => id === joint)?.length)}`);
  paragraph(sheet, `Length of the joints: ${lengths.join(", ")}.`, 8);
}
