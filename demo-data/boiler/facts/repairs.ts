import type { Repair } from "../../generated/records.ts";
import { at } from "./calendar.ts";

const signed = (welder: string, date: string): NonNullable<Repair["signatures"]> => [
  { role: "welder", person: welder, date },
  { role: "welding coordinator", person: "M1", date },
];

export const causes = {
  C1R1: "seam tracking of the tractor lost for a hand's breadth at the stop for the new coil",
  N05R1: "end of the cap broken off too quickly and not ground",
} as const;

/** Both rejected places were brought back by one repair each. */
export const repairs: readonly Repair[] = [
  {
    id: "C1R1",
    joint: "C1",
    rejected: "RT-02#C1-2",
    cycle: 1,
    cause: causes.C1R1,
    from: "3095 mm",
    to: "3170 mm",
    depth: "6.5 mm",
    weldingProcedure: "WPS-13@1",
    process: "135",
    welders: ["W03"],
    batches: ["B-2133", "B-2135"],
    date: at("2026-03-10", "13:40"),
    excavationTest: "PT-01",
    nonconformity: "NCR-01",
    signatures: signed("W03", "2026-03-10"),
  },
  {
    id: "N05R1",
    joint: "N05",
    rejected: "MT-02#N05",
    cycle: 1,
    cause: causes.N05R1,
    from: "15 mm",
    to: "36 mm",
    depth: "3.5 mm",
    weldingProcedure: "WPS-13@1",
    process: "141",
    welders: ["W07"],
    batches: ["B-2134", "B-2136"],
    date: at("2026-03-25", "10:30"),
    excavationTest: "PT-02",
    nonconformity: "NCR-02",
    signatures: signed("W07", "2026-03-25"),
  },
];
