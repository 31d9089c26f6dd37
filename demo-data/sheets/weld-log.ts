import type { WeldLog } from "../generated/records.ts";
import type { Facts } from "../book/facts.ts";
import { paragraph } from "../paper/blocks.ts";
import { signatures } from "../paper/marks.ts";
import { newSheet, note, noteEnd, withRoom, type Paper } from "../paper/paper.ts";
import { table } from "../paper/tables.ts";
import { dayIn, listed, printed } from "./original.ts";

type Run = NonNullable<WeldLog["runs"]>[number];

const distinct = (values: readonly (string | undefined)[]) => [
  ...new Set(values.filter((value) => value !== undefined)),
];

function rowOf(log: WeldLog, run: Run, first: boolean): string[] {
  return [
    first ? log.joint : "",
    first ? printed(log.weldingProcedure).replace("@", " r. ") : "",
    first ? `${printed(log.fitUp?.gap)}, ${printed(log.fitUp?.offset)}` : "",
    run.depositedThickness === undefined ? run.layer : `${run.layer}, ${run.depositedThickness}`,
    listed(run.welders),
    `${printed(run.date).slice(5, 16).replace("T", " ")}${run.finished === undefined ? "" : ` to ${run.finished.slice(11, 16)}`}`,
    listed(run.batches),
    (run.interpass ?? run.preheat ?? "").replace(" °C", ""),
    (run.current ?? "").replace(" A", ""),
    (run.voltage ?? "").replace(" V", ""),
    (run.travelSpeed ?? "").replace(" mm/min", ""),
    (run.heatInput ?? "").replace(" kJ/mm", ""),
  ];
}

/** A weld log: one row for each layer, the welders' signatures, and the lengths of the joints. */
export function drawLogs(paper: Paper, facts: Facts, logs: readonly WeldLog[]): void {
  const all = logs.flatMap((log) => (log.runs ?? []).map((run, index) => ({ log, run, first: index === 0 })));
  let sheet = newSheet(paper, "Weld log");
  sheet = table(
    sheet,
    [
      { title: "Joint", share: 7 },
      { title: "Procedure", share: 10 },
      { title: "Fit-up: gap, offset", share: 11 },
      { title: "Layer, deposited", share: 9 },
      { title: "Welder", share: 8 },
      { title: "Month, day, time", share: 14 },
      { title: "Batches", share: 14 },
      { title: "°C", share: 7, align: "right" },
      { title: "A", share: 6, align: "right" },
      { title: "V", share: 6, align: "right" },
      { title: "mm/min", share: 8, align: "right" },
      { title: "kJ/mm", share: 8, align: "right" },
    ],
    all.map(({ log, run, first }) => rowOf(log, run, first)),
    7.2,
    (index) => note(paper, "weld-log", all[index]?.log.id ?? ""),
  );
  const runs = all.map(({ run }) => run);
  const positions = distinct(runs.map(({ position }) => position)).map((one) => (one === "PA" ? "PA, rotated" : one));
  const meters = distinct(runs.flatMap(({ instruments }) => instruments ?? []));
  const processes = distinct(runs.map(({ process }) => process));
  sheet = withRoom(sheet, 120);
  paragraph(
    sheet,
    `°C: preheat of the root, highest interpass temperature of fill and cap. Process ${listed(processes)}, position ${listed(positions)}. Measured with ${listed(meters)}. Dates are of ${String(facts.equipment.year)}; the joint was finished at the second time.`,
  );
  const last = printed(
    logs
      .map((log) => dayIn(log.runs?.[0]?.date))
      .sort()
      .at(-1),
  );
  signatures(sheet, [
    ...distinct(runs.flatMap(({ welders }) => welders ?? [])).map((id) => ({
      role: `welder ${id}`,
      name: facts.name(id),
      date: last,
    })),
    { role: "welding coordinator", name: facts.first("welding coordinator"), date: last },
  ]);
  const lengths = logs.map(
    ({ joint }) => `${joint} ${printed(facts.all("joint").find(({ id }) => id === joint)?.length)}`,
  );
  paragraph(sheet, `Length of the joints: ${lengths.join(", ")}.`, 8);
  // What stands below the table speaks of every log in it.
  for (const { id } of logs) noteEnd(paper, "weld-log", id);
}
