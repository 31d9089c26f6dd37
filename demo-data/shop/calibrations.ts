import type { Instrument } from "../generated/records.ts";

type Calibration = NonNullable<Instrument["calibrations"]>[number];

/** A calibration by the laboratory of the shop; found and left within its limits. */
export const calibration = (number: string, date: string, validTo: string, uncertainty: string): Calibration => ({
  certificate: `LK-CAL-${number}`,
  date,
  validTo,
  laboratory: "LARKMETRIC",
  asFound: "within limits",
  asLeft: "within limits",
  uncertainty,
});

/** An instrument with the signature of the laboratory under each of its certificates. */
export const signedByLaboratory = (instrument: Instrument): Instrument => ({
  ...instrument,
  signatures: (instrument.calibrations ?? []).map(({ certificate, date }) => ({
    row: certificate,
    role: "laboratory",
    person: "L1",
    ...(date !== undefined && { date }),
  })),
});
