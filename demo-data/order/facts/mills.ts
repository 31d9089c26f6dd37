import type { MillApproval } from "../../generated/records.ts";

const approval = (
  id: string,
  mill: string,
  certificate: string,
  scope: string,
  forms: NonNullable<MillApproval["forms"]>,
): MillApproval => ({
  id,
  mill,
  body: "PENQUILLITH",
  certificate,
  scope,
  forms,
  bodyInUnion: true,
  validFrom: "2024-06-01",
  validTo: "2027-05-31",
});

export const millApprovals: readonly MillApproval[] = [
  approval("MA-01", "GREYVAULT", "PQ-QS-1180", "hot rolled plate for pressure purposes, 5 mm to 60 mm", ["plate"]),
  approval(
    "MA-02",
    "BOWLTHORNE",
    "PQ-QS-1194",
    "dished ends of ferritic plate up to 20 mm, cold formed and heat treated",
    ["formed-end"],
  ),
  approval("MA-03", "NETTLEWEIR", "PQ-QS-1203", "seamless tubes for pressure purposes up to 219.1 mm", [
    "tube",
    "pipe",
  ]),
  approval("MA-04", "HAMMERQUIST", "PQ-QS-1211", "forged flanges and welding necks of ferritic steel", ["forging"]),
  approval("MA-05", "THREADLOW", "PQ-QS-1226", "bolts and nuts for pressure purposes", ["bolting"]),
];
