import type { ConsumableBatch } from "../../generated/records.ts";
import { arcFlux, arcWire, argon, mixedGas, rod, wire } from "./fillers.ts";

type Own = Omit<ConsumableBatch, "id" | "batch" | "received" | "certificate" | "manufacturer">;
type Certificate = readonly [number: string, type: "2.2" | "3.1", issued: string];

/** A batch with the certificate of its own number. */
const batch = (id: string, lot: string, received: string, paper: Certificate, own: Own): ConsumableBatch => ({
  id,
  ...own,
  manufacturer: "SORRELARC",
  batch: lot,
  received,
  certificate: { number: paper[0], type: paper[1], issued: paper[2], batch: lot },
});

const arc = { processes: ["121"] } satisfies Partial<Own>;
const metalActive = {
  type: "wire",
  designation: wire,
  tradeName: "Sorrelarc S3",
  processes: ["135"],
  fillerGroup: "FM1",
  diameter: "1.2 mm",
} satisfies Own;

/** The wire of the second delivery, and the first day it was drawn from. */
export const laterWire = { batch: "B-2142", from: "2026-03-24" } as const;

/** Everything that was melted or blown into the welds of the boiler. */
export const batches: readonly ConsumableBatch[] = [
  batch("B-2131", "S2-25-0412", "2026-02-16", ["SA-74410", "3.1", "2026-01-21"], {
    ...arc,
    type: "wire",
    designation: arcWire,
    tradeName: "Sorrelarc U2",
    fillerGroup: "FM1",
    diameter: "4.0 mm",
    quantity: "150 kg",
  }),
  batch("B-2132", "FX-26-0018", "2026-02-16", ["SA-74411", "3.1", "2026-01-21"], {
    ...arc,
    type: "flux",
    designation: arcFlux,
    tradeName: "Sorrelarc Flux 67",
    quantity: "250 kg",
    usableUntil: "2027-01-31",
    dryings: [{ date: "2026-02-27", temperature: "350 °C", time: "2 h" }],
  }),
  batch("B-2133", "S3-26-0052", "2026-02-16", ["SA-74426", "3.1", "2026-01-28"], {
    ...metalActive,
    quantity: "180 kg",
  }),
  batch("B-2134", "T3-26-0020", "2026-02-18", ["SA-74433", "3.1", "2026-01-29"], {
    type: "rod",
    designation: rod,
    tradeName: "Sorrelarc T3",
    processes: ["141"],
    fillerGroup: "FM1",
    diameter: "2.4 mm",
    quantity: "50 kg",
  }),
  batch("B-2135", "MX-26-0614", "2026-02-19", ["SG-39120", "2.2", "2026-02-12"], {
    type: "shielding gas",
    designation: mixedGas,
    tradeName: "Sorrelarc Mix 18",
    processes: ["135"],
  }),
  batch("B-2136", "AR-26-0287", "2026-02-19", ["SG-39121", "2.2", "2026-02-12"], {
    type: "shielding gas",
    designation: argon,
    tradeName: "Sorrelarc Argon",
    processes: ["141"],
  }),
  batch(laterWire.batch, "S3-26-0097", "2026-03-20", ["SA-75902", "3.1", "2026-03-11"], {
    ...metalActive,
    quantity: "90 kg",
  }),
];
