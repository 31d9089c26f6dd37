import { file, type RecordFile } from "../book/records.ts";
import { certificates } from "./facts/certificates.ts";
import { batches } from "./facts/consumables.ts";
import { instruments } from "./facts/instruments.ts";
import { millApprovals } from "./facts/mills.ts";
import { organisations, people } from "./facts/people.ts";
import { procedures } from "./facts/procedures.ts";
import { qualifications } from "./facts/qualifications.ts";
import { ndtPersonnel, welderQualifications } from "./facts/welders.ts";
import { welding } from "./facts/welding-procedures.ts";

/** What the maker keeps for all his jobs, as far as this order's books use it. */
const ofTheShop: readonly RecordFile[] = [
  file("people/organisations.json", "organisation", organisations),
  file("people/people.json", "person", people),
  file("people/welders.json", "welder-qualification", welderQualifications),
  file("people/testers.json", "ndt-personnel", ndtPersonnel),
  file(
    "procedures/procedures.json",
    "procedure",
    procedures.map(({ record }) => record),
  ),
  file("procedures/welding-procedures.json", "welding-procedure", welding),
  file("procedures/qualifications.json", "procedure-qualification", qualifications),
  file("materials/mills.json", "mill-approval", millApprovals),
  file("testing/instruments.json", "instrument", instruments),
];

/** What was bought for the order, for all its vessels. */
const ofTheOrder: readonly RecordFile[] = [
  file("materials/certificates.json", "material-certificate", certificates),
  file("materials/consumables.json", "consumable-batch", batches),
];

/** Record files of the shelves that the books of the order name, by the shelf's name. */
export const shelvedFiles: Readonly<Record<"shop" | "order", readonly RecordFile[]>> = {
  shop: ofTheShop,
  order: ofTheOrder,
};

/** All of them, as a book sees them beside its own. */
export const lentFiles: readonly RecordFile[] = [...ofTheShop, ...ofTheOrder];
