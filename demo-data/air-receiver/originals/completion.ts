import type { Facts } from "../../book/facts.ts";
import { drawHeatTreatment, type FurnaceWords } from "../../sheets/heat-treatment.ts";
import { printed, type OriginalSheet } from "../../sheets/original.ts";
import { bodyCertificate, declaration, nameplate, paperOf, pressureTest, safetyValve } from "../../sheets/papers.ts";

/** What is its own of a vessel among the papers at its end. */
export interface Completion {
  readonly forming: FurnaceWords;
  /** What the nameplate is fixed to. */
  readonly holder: string;
}

const receiver: Completion = {
  holder: "its holder at nozzle N6",
  forming: {
    title: "Forming and normalising of two ends",
    load: [
      ["Ends", "two, P03 and P04, Ø 1200 outside, R 960, r 185, heats 83950 and 83962"],
      ["Forming", "crown pressed, knuckle spun, cold, 2026-04-20; normalised afterwards as follows"],
      ["Knuckles, both surfaces", "magnetic particles after normalising, 2026-04-23: no indication"],
    ],
    cooling: "drawn at 10:12, set apart on bars in still air; below 100 °C at 10:45",
    role: "furnace supervisor",
    measured: "Temperature of the ends, thermocouples on the knuckles",
    curve: [
      [400, 310],
      [578, 898],
      [590, 906],
      [610, 908],
      [612, 905],
      [614, 690],
      [617, 520],
      [622, 330],
      [632, 170],
      [645, 90],
      [660, 55],
    ],
    times: ["06:30", "07:30", "08:30", "09:30", "10:30", "11:30"],
  },
};

export const completionOriginals = (facts: Facts, { forming, holder } = receiver): readonly OriginalSheet[] => [
  ...facts.all("heat-treatment").map((record) => ({
    ...paperOf(
      "heat-treatment",
      record,
      {
        id: "ORG-FORMING",
        path: "materials/forming-record.pdf",
        title: "Forming and normalising of the ends",
        number: printed(record.charge),
        by: "BOWLTHORNE",
        day: "2026-05-11",
      },
      (paper) => drawHeatTreatment(paper, facts, record, forming),
    ),
    compared: "2026-05-12",
  })),
  ...facts.all("pressure-test").map((record) => ({ ...pressureTest(facts, record), compared: "2026-06-24" })),
  ...facts.all("safety-valve").map((record) => ({
    ...safetyValve(facts, record),
    path: "completion/safety-valve.pdf",
    title: "Certificate of the safety valve",
    compared: "2026-06-30",
  })),
  ...facts.all("nameplate").map((record) => ({
    ...nameplate(facts, record, holder),
    compared: "2026-07-15",
  })),
  ...facts.all("body-certificate").map((record) => ({
    ...bodyCertificate(facts, record),
    compared: record.id === "BC-01" ? "2026-05-14" : "2026-07-15",
  })),
  ...facts.all("declaration").map((record) => ({ ...declaration(facts, record), compared: "2026-07-16" })),
];
