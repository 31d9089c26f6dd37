import { attachment } from "./certificate-rows.ts";
import type { Delivery } from "./certificates.ts";

/** Steel for what is welded on from outside and bears no pressure. */
const rows = [
  attachment(
    "P45",
    "83877",
    "25.0 mm",
    118,
    "0.14 0.19 0.88 0.018 0.012 0.0070 0.031 0.06 0.14 0.01 0.06",
    "274 428 29",
  ),
  attachment(
    "P46",
    "83902",
    "15.0 mm",
    283,
    "0.13 0.18 0.84 0.016 0.011 0.0068 0.033 0.05 0.12 0.01 0.05",
    "288 431 30",
  ),
  attachment("P47", "83915", "4.0 mm", 63, "0.12 0.17 0.79 0.015 0.010 0.0072 0.030 0.06 0.13 0.01 0.05", "296 436 31"),
];

export const attachmentRows: readonly Delivery[] = rows.map((row, index) => ({
  number: `GV-26-22-0${48 + index}`,
  mill: "GREYVAULT",
  item: 31 + index,
  issued: "2026-01-30",
  received: "2026-02-19",
  type: "2.2",
  supplier: "UMBERHITHE",
  row,
}));
