import type { Book, Equipment, Joint, Part } from "../../generated/records.ts";
import { book as receiverBook, equipment as receiver } from "../../air-receiver/facts/vessel.ts";
import { branch, course, end, measuredOn, pipeNozzle, seam } from "../../order/making/parts.ts";

/**
 * The second vessel of the order: a small horizontal vessel for control air. Its course is the strip of 255 mm that was
 * left of the receiver's first plate, so it is 245 mm long, and the strip's 1250 mm give a pipe's diameter of 355.6 mm.
 */

export const serial = "TQ423-02";

export const book: Book = {
  ...receiverBook,
  id: "TQ423-02-MDB",
  number: "TQ423-MDB-02",
  title: "Control-air vessel, 37 l",
};

export const equipment: Equipment = {
  ...receiver,
  id: serial,
  serial,
  tag: "V-311",
  name: "control-air vessel",
  directive: { inScope: true, category: "II", module: "B+F" },
  volume: "37 l",
  requiredFlow: "300 kg/h",
  requiredFlowSource: "regulator R-312 fully open, as on its plate, from receiver V-310 at 11 bar",
  emptyMass: "38 kg",
};

const details = "DRG-01@B";
const diameters = { insideDiameter: "339.6 mm", outsideDiameter: "355.6 mm" };
const endSizes = { ...diameters, length: "122 mm", crownRadius: "284.5 mm", knuckleRadius: "54.8 mm" };

export const parts: readonly Part[] = [
  measuredOn(
    "DIM-02",
    course("P01", "shell course", { ...diameters, length: "245 mm" }, ["8.1 mm", "8.1 mm", "8.0 mm", "8.2 mm"]),
  ),
  measuredOn(
    "DIM-01",
    end("P02", "end 1, left", endSizes, ["7.9 mm", "7.6 mm", "7.5 mm", "7.7 mm", "7.6 mm", "8.0 mm"]),
  ),
  measuredOn(
    "DIM-01",
    end("P03", "end 2, right", endSizes, ["8.0 mm", "7.5 mm", "7.6 mm", "7.4 mm", "7.6 mm", "7.9 mm"]),
  ),
  pipeNozzle("P04", "nozzle N1, inlet, threaded R 1", details, "80 mm"),
  pipeNozzle("P05", "nozzle N2, outlet, threaded R 1", details, "80 mm"),
  pipeNozzle("P06", "nozzle N3, safety valve, threaded R 1", details, "80 mm"),
  pipeNozzle("P07", "nozzle N4, drain, threaded R 1", details, "80 mm"),
];

/** What the marks on the vessel begin with. */
export const stamp = "423-2";
const welded = { stamp, outsideDiameter: "355.6 mm", procedure: "WPS-10@1" };

export const joints: readonly Joint[] = [
  seam(welded, "L1", "longitudinal", ["P01"], "245 mm"),
  seam(welded, "C1", "circumferential", ["P02", "P01"], "1092 mm", [["L1", "410 mm"]]),
  seam(welded, "C2", "circumferential", ["P01", "P03"], "1092 mm", [["L1", "410 mm"]]),
  branch(stamp, "N01", "P01", "P04", "4.5 mm", "33.7 mm", "106 mm"),
  branch(stamp, "N02", "P01", "P05", "4.5 mm", "33.7 mm", "106 mm"),
  branch(stamp, "N03", "P01", "P06", "4.5 mm", "33.7 mm", "106 mm"),
  branch(stamp, "N04", "P01", "P07", "4.5 mm", "33.7 mm", "106 mm"),
];
