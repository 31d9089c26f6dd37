import type { NdtPersonnel } from "../generated/records.ts";

type Method = NdtPersonnel["method"];

interface Certificates {
  readonly person: string;
  readonly level: "2" | "3";
  readonly issued: string;
  readonly validTo: string;
  readonly visionTest: string;
  readonly methods: readonly (readonly [method: Method, number: string])[];
}

const rosters: readonly Certificates[] = [
  {
    person: "N1",
    level: "2",
    issued: "2023-03-20",
    validTo: "2028-03-19",
    visionTest: "2026-01-12",
    methods: [
      ["VT", "0551"],
      ["MT", "0552"],
      ["PT", "0553"],
    ],
  },
  {
    person: "N2",
    level: "2",
    issued: "2023-11-06",
    validTo: "2028-11-05",
    visionTest: "2026-01-12",
    methods: [
      ["RT", "0554"],
      ["UT", "0555"],
    ],
  },
  {
    person: "N3",
    level: "3",
    issued: "2022-02-14",
    validTo: "2027-02-13",
    visionTest: "2026-02-02",
    methods: [
      ["RT", "0417"],
      ["MT", "0418"],
      ["PT", "0419"],
      ["VT", "0420"],
      ["UT", "0421"],
    ],
  },
];

const certificates: readonly NdtPersonnel[] = rosters.flatMap(
  ({ person, level, issued, validTo, visionTest, methods }) =>
    methods.map(([method, number]): NdtPersonnel => ({
      id: `NC-${person}-${method}`,
      person,
      method,
      level,
      sector: "welds, pressure equipment",
      certificate: `PQ-9712-${number}`,
      // The edition that was in force when it was issued.
      standard: { standard: "EN ISO 9712", edition: issued < "2022-09" ? "2012" : "2022" },
      body: "PENQUILLITH",
      issued,
      validTo,
      visionTest,
      employerAuthorisation: "2026-01-15",
      thirdPartyApproval: true,
    })),
);

/** Certificates of the three testers for some methods: who tests holds level 2, who reviews the method too. */
export const testersOf = (...methods: readonly Method[]): readonly NdtPersonnel[] =>
  certificates.filter(({ method }) => methods.includes(method));
