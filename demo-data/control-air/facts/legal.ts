import type { BodyCertificate, Declaration, Issue, Nameplate } from "../../generated/records.ts";
import {
  bodyCertificates as receiverCertificates,
  declaration as receiverDeclaration,
  issueOf,
  nameplate as receiverPlate,
} from "../../air-receiver/facts/legal.ts";
import { book, equipment, serial } from "./vessel.ts";

const own = { equipment: serial, volume: "37 l", category: "II" } as const;

export const bodyCertificates: readonly BodyCertificate[] = receiverCertificates.map((certificate) =>
  certificate.id === "BC-01"
    ? { ...certificate, ...own, number: "PQ-B-26-0042", drawings: ["DRG-01@B"] }
    : {
        ...certificate,
        ...own,
        number: "PQ-F-26-0094",
        serial,
        drawings: ["DRG-01@B", "DRG-02@B", "DRG-03@A"],
      },
);

export const nameplate: Nameplate = { ...receiverPlate, ...own, type: "CA 37-11", serial };

export const declaration: Declaration = {
  ...receiverDeclaration,
  ...own,
  number: "TQ423-EU-02",
  description: `Control-air vessel, horizontal, ${String(equipment.volume)}, type CA 37-11, serial ${serial}, made in 2026`,
  serial,
};

/** The final issue, on the day of the receiver's: nothing of the vessel was coated. */
export function issue(cutOff: string): Issue {
  const receivers = issueOf("0", cutOff);
  return {
    ...receivers,
    milestones: (receivers.milestones ?? []).filter(({ name }) => name !== "coating"),
    history: [{ revision: "0", state: "final", date: receivers.issueDate, reason: `release of ${book.number}` }],
  };
}
