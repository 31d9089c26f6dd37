import type { Instrument, NdtReport } from "../../generated/records.ts";
import { filmsOf, report, whole } from "../../order/making/reports.ts";
import { calibration, signedByLaboratory } from "../../shop/calibrations.ts";
import { joints, stamp } from "./vessel.ts";

const film = filmsOf(stamp);
const lengthOf = (id: string) => joints.find((joint) => joint.id === id)?.length ?? "";
const all = (...ids: readonly string[]) => ids.map((id) => whole(id, lengthOf(id)));

/** What looks inside once the vessel is closed: its probe passes the bore of N1 and N2, 24.7 mm. */
export const instruments: readonly Instrument[] = [
  signedByLaboratory({
    id: "EN-01",
    name: "video endoscope, probe 6 mm, 1.5 m, with own light",
    type: "other",
    manufacturer: "Quernlight",
    serial: "GS-4412",
    calibrations: [calibration("2277", "2026-04-20", "2027-04-19", "0.05 mm")],
  }),
];

/** In the open shell the source stands on the axis, half the inside diameter from the weld. */
const onAxis: NonNullable<NdtReport["radiography"]> = {
  techniqueClass: "B",
  source: "X-ray 180 kV, 4 mA, rod anode",
  sourceSize: "2.3 mm",
  distance: "170 mm",
  sourcePlace: "at the centre",
  filmClass: "C4",
};

/** Through an endoscope, which has a light of its own. */
const { illuminance: _direct, ...remote } = report(
  "VT-04",
  "VT",
  "2026-06-17T09:00",
  all("C2", "N01", "N02", "N03", "N04"),
);

/**
 * L1 and C1 are tested from both sides while the shell is open; the inside of C2 is seen through the nozzles, and its film
 * takes the rays through both walls. A flat film of L1 takes half of the seam: beyond, the rays are too oblique for class B.
 */
export const ndtReports: readonly NdtReport[] = [
  { ...report("VT-01", "VT", "2026-06-01T14:00", all("L1")), technique: "direct, outside and inside" },
  {
    ...report("VT-02", "VT", "2026-06-04T13:30", all("C1")),
    technique: "direct, outside and inside, before C2 was closed",
  },
  {
    ...report("VT-03", "VT", "2026-06-10T13:00", all("C2", "N01", "N02", "N03", "N04")),
    technique: "direct, outside",
  },
  {
    ...remote,
    procedure: "PRC-VTR@1",
    technique: "remote, inside, by endoscope through N1 and N2",
    instruments: ["EN-01"],
  },
  {
    ...report("RT-01", "RT", "2026-06-02T13:30", [
      film("L1", 1, 0, 125, ["2.6", "3.1"]),
      film("L1", 2, 120, 245, ["2.6", "3.0"]),
    ]),
    technique: "EN ISO 17636-1 class B, single wall, source on the axis, film outside",
    radiography: onAxis,
  },
  {
    ...report("RT-02", "RT", "2026-06-04T15:30", [film("C1", 1, 290, 530, ["2.5", "3.0"])]),
    technique: "EN ISO 17636-1 class B, single wall, source on the axis, film outside",
    radiography: onAxis,
  },
  {
    ...report("RT-03", "RT", "2026-06-11T10:30", [film("C2", 1, 350, 470, ["2.5", "3.1"], { wire: "W15" })]),
    procedure: "PRC-RTD@1",
    technique: "EN ISO 17636-1 class B, double wall, single image, wire on the film side",
    radiography: {
      techniqueClass: "B",
      arrangement: "double wall, single image, indicator on film side",
      source: "X-ray 220 kV, 4 mA",
      sourceSize: "2.3 mm",
      distance: "692 mm",
      filmClass: "C4",
    },
  },
  report("PT-01", "PT", "2026-06-10T15:00", all("N01", "N02", "N03", "N04")),
];
