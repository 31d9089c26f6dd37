import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import { heading, paragraph } from "../../paper/blocks.ts";
import { balloon, dimension, label, polyline, type Frame } from "../../paper/figures.ts";
import { left, newSheet, type Paper } from "../../paper/paper.ts";
import { table } from "../../paper/tables.ts";
import { printed } from "../../sheets/original.ts";
import { titleBlock } from "../../sheets/title-block.ts";
import { c1, c2, dish, endLine, inside, middle, outside, tangent } from "./geometry.ts";

const wall = (outside - inside) / 2;
/** Half the outside diameter, half the bore, and how far the pipe stands out of the shell. */
const pipe = { half: 16.85, bore: 12.35, out: 72 } as const;

function box(frame: Frame, [x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number], line = 0.8): void {
  polyline(
    frame,
    [
      [x1, y1],
      [x2, y1],
      [x2, y2],
      [x1, y2],
      [x1, y1],
    ],
    line,
  );
}

/** A pipe from the shell outwards; `up` is -1 above the axis and 1 below. */
function pipeEnd(frame: Frame, name: string, x: number, up: -1 | 1): void {
  const foot = up === -1 ? 0 : outside;
  const end = foot + up * pipe.out;
  box(frame, [x - pipe.half, foot], [x + pipe.half, end]);
  for (const bore of [-pipe.bore, pipe.bore])
    polyline(
      frame,
      [
        [x + bore, foot],
        [x + bore, end],
      ],
      0.3,
    );
  balloon(frame, name, [x + 70, end + up * 14], [x + pipe.half, end - up * 20]);
}

function fromTheSide(frame: Frame): void {
  for (const [from, line] of [
    [0, 1.1],
    [wall, 0.4],
  ] as const)
    for (const y of [from, outside - from])
      polyline(
        frame,
        [
          [0, y],
          [tangent, y],
        ],
        line,
      );
  for (const [edge, side] of [
    [0, -1],
    [tangent, 1],
  ] as const) {
    polyline(frame, endLine(edge, side, wall), 1.1);
    polyline(frame, endLine(edge, side, 0), 0.4);
  }
  for (const x of [c1, c2]) box(frame, [x, 0], [x, outside], 0.7);
  for (let x = -dish - 20; x < tangent + dish; x += 36)
    polyline(
      frame,
      [
        [x, outside / 2],
        [x + 24, outside / 2],
      ],
      0.3,
    );
  pipeEnd(frame, "N3", middle, -1);
  pipeEnd(frame, "N4", middle, 1);
  balloon(frame, "1", [c1 + 40, -60], [c1 + 46, 0]);
  balloon(frame, "2", [-dish - 30, 30], [-60, 50]);
  balloon(frame, "3", [tangent + dish + 30, 30], [tangent + 60, 50]);
  balloon(frame, "C1", [c1 - 30, outside + 70], [c1, outside]);
  balloon(frame, "C2", [c2 + 30, outside + 70], [c2, outside]);
  dimension(frame, "488 over ends", -dish, tangent + dish, outside + 190);
  dimension(frame, "245", c1, c2, outside + 130);
  dimension(frame, "150", 0, middle, -120);
  label(frame, "1:5", [tangent + dish, outside + 140], 7);
  label(frame, "Ø 355.6 outside, 8 nominal", [middle, outside - 40], 7);
}

/** Seen from end 1: N1 to the left, N2 to the right, N3 up, N4 down. */
function fromTheEnd(frame: Frame): void {
  const radius = outside / 2;
  const ring = (size: number) =>
    Array.from({ length: 73 }, (_, index): readonly [number, number] => {
      const angle = (index * Math.PI) / 36;
      return [radius + size * Math.cos(angle), radius + size * Math.sin(angle)];
    });
  polyline(frame, ring(radius), 1.1);
  polyline(frame, ring(inside / 2), 0.4);
  pipeEnd(frame, "N3", radius, -1);
  pipeEnd(frame, "N4", radius, 1);
  box(frame, [-pipe.out, radius - pipe.half], [0, radius + pipe.half]);
  box(frame, [outside, radius - pipe.half], [outside + pipe.out, radius + pipe.half]);
  balloon(frame, "N1", [-pipe.out + 20, radius - 60], [-pipe.out + 40, radius - pipe.half]);
  balloon(frame, "N2", [outside + pipe.out - 20, radius - 60], [outside + pipe.out - 40, radius - pipe.half]);
  const seam = (135 * Math.PI) / 180;
  const [x, y] = [radius + radius * Math.sin(seam), radius - radius * Math.cos(seam)];
  balloon(frame, "L1", [x + 60, y + 60], [x, y]);
  label(frame, "seen from end 1, 1:10", [radius, outside + 190], 7);
}

/** The general arrangement: the vessel from the side and from the end, with its data and parts. */
export function drawArrangement(paper: Paper, facts: Facts, drawing: Drawing): void {
  const sheet = newSheet(paper);
  // Points for each millimetre of the vessel, at scale 1:1 on paper.
  const full = 72 / 25.4;
  fromTheSide({ sheet, x: left + 76, y: sheet.y + 78, scale: full / 5 });
  fromTheEnd({ sheet, x: left + 372, y: sheet.y + 136, scale: full / 10 });
  sheet.y += 405;
  const data = drawing.designData;
  const temperatures = `${printed(data?.minimumAllowableTemperature)} to ${printed(data?.maximumAllowableTemperature)}`;
  paragraph(
    sheet,
    `PS ${printed(data?.maximumAllowablePressure)}, TS ${temperatures}, V ${printed(data?.volume)}, test pressure ${printed(data?.testPressure)}; air, gas of fluid group 2, category ${printed(data?.category)}. Corrosion allowance 1.0 mm; weld joint coefficient of the shell 0.85, of the ends 1.00. Empty mass ${printed(facts.equipment.emptyMass)}.`,
    8,
  );
  heading(sheet, "Parts list");
  table(
    sheet,
    [
      { title: "Part", share: 7 },
      { title: "Name", share: 38 },
      { title: "Material", share: 34 },
      { title: "Ø, wall, length", share: 36 },
      { title: "Cert.", share: 8 },
    ],
    facts
      .all("part")
      .map((part) => [
        part.id,
        printed(part.name),
        `${printed(part.material?.grade)}, ${printed(part.material?.standard)}`,
        [part.outsideDiameter, part.nominalThickness, part.length].map(printed).join(" × "),
        printed(part.requiredCertificateType),
      ]),
    6.8,
  );
  paragraph(
    sheet,
    "Ends: R 284.5, r 54.8, at least 7.0. Nozzles: pipe with outside thread R 1, set in on the middle of the course, 90° apart, welded through to WPS-05. The vessel lies in the client's cradle; nothing but nozzles is welded on.",
    7.6,
  );
  titleBlock(sheet, facts, drawing);
}
