import { completionOriginals, type Completion } from "../../air-receiver/originals/completion.ts";
import { documentOriginals, type DocumentWords } from "../../air-receiver/originals/documents.ts";
import { drawingOriginals, plateDrawing } from "../../air-receiver/originals/drawings.ts";
import { materialOriginals } from "../../air-receiver/originals/materials.ts";
import { drawOpenings, type Openings } from "../../air-receiver/originals/openings.ts";
import { testingOriginals } from "../../air-receiver/originals/testing.ts";
import { weldingOriginals } from "../../air-receiver/originals/welding.ts";
import type { Facts } from "../../book/facts.ts";
import { calculations, calibrations, procedures as procedureBinder } from "../../sheets/binders.ts";
import { drawDesignData, drawMaterialList } from "../../sheets/design-papers.ts";
import { drawPlan } from "../../sheets/inspection-plan.ts";
import { weekdayLater, type OriginalSheet } from "../../sheets/original.ts";
import { procedures } from "../facts/procedures.ts";
import { instruments } from "../facts/testing.ts";
import { drawArrangement } from "./arrangement.ts";
import { documentTextsOf } from "./document-texts.ts";
import { wordsWithKnuckle } from "./end-formulas.ts";
import { inside } from "./geometry.ts";
import { drawWeldMap } from "./weld-map.ts";

const openings: Openings = {
  shellRadius: inside / 2 + 1,
  nozzles: [["N1 to N4", 33.7, 4.5, 0.6, 163.6]],
  remark:
    "Necks of pipe P265GH: their own permissible stress, 163.6 MPa, as on their sheets. The nozzles sit 90° apart, 273 mm along the shell: more than the sum of the lengths that count.",
};

const wordsOf = (facts: Facts): DocumentWords => ({
  texts: documentTextsOf(facts),
  draws: {
    "DOC-01": (paper, facts) =>
      drawDesignData(
        paper,
        facts,
        facts.all("part").filter(({ insideDiameter }) => insideDiameter !== undefined),
        "Wind, earthquake, external loads and fatigue need not be considered: the vessel lies indoors in a cradle, fewer than 1000 full pressure cycles are expected in its life.",
      ),
    "DOC-03": (paper, facts) => drawPlan(paper, facts),
    "DOC-04": (paper, facts) =>
      drawMaterialList(paper, facts, "Non-pressure parts: none are welded on; the cradle is the client's."),
    "DOC-09": (paper) => drawOpenings(paper, openings),
  },
});

const completion: Completion = {
  holder: "a strap round the shell",
  forming: {
    title: "Forming and normalising of two ends",
    load: [
      ["Ends", "two, P02 and P03, Ø 355.6 outside, R 284.5, r 54.8, heat 83978"],
      ["Forming", "pressed in one stroke, cold, 2026-04-21; normalised afterwards as follows"],
      ["Knuckles, both surfaces", "magnetic particles after normalising, 2026-04-24: no indication"],
    ],
    cooling: "drawn at 10:17, set apart on bars in still air; below 100 °C at 10:48",
    role: "furnace supervisor",
    measured: "Temperature of the ends, thermocouples on the knuckles",
    curve: [
      [410, 305],
      [585, 901],
      [598, 907],
      [615, 908],
      [617, 904],
      [619, 680],
      [622, 510],
      [627, 320],
      [637, 160],
      [648, 90],
      [663, 50],
    ],
    times: ["06:30", "07:30", "08:30", "09:30", "10:30", "11:30"],
  },
};

function calculationOriginals(facts: Facts): readonly OriginalSheet[] {
  const sheets = facts.all("calculation-sheet");
  return [...new Set(sheets.map(({ calculation }) => calculation))].map((id) => {
    const chosen = sheets.filter(({ calculation }) => calculation === id);
    const original = calculations(facts, chosen, id, wordsWithKnuckle(id)?.title ?? id, wordsWithKnuckle);
    return { ...original, compared: weekdayLater(original.day, 2) };
  });
}

const endoscopeCalibration = (facts: Facts): OriginalSheet => ({
  ...calibrations(facts, instruments, {
    id: "ORG-CALIBRATION-ENDOSCOPE",
    path: "instruments/calibration-endoscope.pdf",
    title: "Calibration of the endoscope",
    day: "2026-04-20",
  }),
  compared: "2026-05-21",
});

/** Procedures the testers wrote for this vessel alone. */
const ownProcedures = (facts: Facts): OriginalSheet =>
  procedureBinder(
    facts,
    procedures.map(({ record }) => record),
    { name: "CLOSED", title: "Procedures of the testers for the closed vessel", by: "GLIMMERFIELD" },
    ({ id }) => procedures.find(({ record }) => record.id === id)?.paragraphs ?? [],
  );

/** Every original of the book itself: the receiver's sorts of paper, with this vessel's words and drawings. */
export const originalsOf = (facts: Facts): readonly OriginalSheet[] => [
  ...drawingOriginals(facts, [
    drawArrangement,
    drawWeldMap,
    plateDrawing("Fixed with four rivets to a strap round the shell."),
  ]),
  ...documentOriginals(facts, wordsOf(facts)),
  ...calculationOriginals(facts),
  ...materialOriginals(
    facts,
    " Shell course: from the strip of 255 mm × 1250 mm that was left of plate 84713-1041 beside course 423/1-A of vessel TQ423-01. Pipe for N1 to N4: each piece stamped on the bar.",
  ),
  ...weldingOriginals(facts, [["2026-06-08", /./]]),
  ownProcedures(facts),
  endoscopeCalibration(facts),
  ...testingOriginals(facts),
  ...completionOriginals(facts, completion),
];
