import type { MaterialCertificate } from "../../generated/records.ts";
import type { Row } from "../../order/facts/certificate-rows.ts";
import { attachmentRows } from "./certificates-attachments.ts";
import { forgedRows } from "./certificates-forgings.ts";
import { plateRows } from "./certificates-plates.ts";
import { barRows, tubeRows } from "./certificates-tubes.ts";

/** One certificate, one heat: number, who made it, when it was issued, and its row. */
export interface Delivery {
  readonly number: string;
  readonly mill: string;
  readonly item: number;
  readonly issued: string;
  readonly received: string;
  readonly row: Row;
  readonly type?: "2.2";
  readonly supplier?: string;
}

/** Who validates for a mill, by name. */
const validators: Readonly<Record<string, string>> = {
  GREYVAULT: "L. Farrowmint",
  NETTLEWEIR: "S. Reedlocke",
  FATHOMREACH: "D. Pellowby",
  KESTLEBAR: "R. Ingotside",
  HAMMERQUIST: "B. Cinderway",
};

const deliveries: readonly Delivery[] = [...plateRows, ...tubeRows, ...barRows, ...forgedRows, ...attachmentRows];

export const certificates: readonly MaterialCertificate[] = deliveries.map(
  ({ number, mill, item, issued, received, row, type, supplier }, index) => ({
    id: `CRT-${String(index + 1).padStart(3, "0")}`,
    number,
    type: type ?? "3.1",
    documentStandard: { standard: "EN 10204", edition: "2004" },
    mill,
    ...(supplier !== undefined && { supplier }),
    order: `TQ-PO-2204 item ${item}`,
    issued,
    received,
    pages: 1,
    validatedBy: {
      name: validators[mill] ?? mill,
      function: type === "2.2" ? "works laboratory" : "inspection representative, independent of manufacture",
    },
    statesCompliance: true,
    rows: [row],
  }),
);

/** Link to the certificate row of a heat; throws when no certificate covers it. */
export function rowOfHeat(heat: string): string {
  const found = certificates.find(({ rows = [] }) => rows.some((row) => row.heat === heat));
  if (found === undefined) throw new Error(`no certificate covers heat ${heat}`);
  return `${found.id}#${heat}`;
}
