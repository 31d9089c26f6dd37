import type { Facts } from "../../book/facts.ts";
import { calibrations, specimens, testers, welder } from "../../sheets/binders.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { procedureQualification, weldingProcedure } from "../../sheets/papers.ts";

const issued = "2026-05-19";

const welders = [
  ["W03", "2026-05-20"],
  ["W07", "2026-04-22"],
] as const;

const instruments = [
  ["GAUGES", "the gauges and thermometer of the pressure test", "2026-05-04", "PG-03 PG-04 TH-02"],
  ["SHOP", "measuring equipment of the shop", "2026-04-13", "WM-02 TH-06 UT-03 TAPE-03 CA-05 CT-01 WG-01"],
  ["TESTERS", "measuring equipment of the testers", "2026-03-30", "DM-01 LM-01 MY-01 FM-01 TH-05"],
  ["SUPPLIERS", "measuring equipment of suppliers", "2026-03-16", "PG-07 TR-11"],
] as const;

function calibrationOriginals(facts: Facts): readonly OriginalSheet[] {
  return instruments.map(([name, what, day, ids]) => {
    const chosen = facts.all("instrument").filter(({ id }) => ids.split(" ").includes(id));
    const cover = {
      id: `ORG-CALIBRATION-${name}`,
      path: `instruments/calibration-${name.toLowerCase()}.pdf`,
      title: `Calibration of ${what}`,
      day,
    };
    return { ...calibrations(facts, chosen, cover), compared: "2026-05-21" };
  });
}

/** People, what they are qualified for, and what they measure with. */
export const peopleOriginals = (facts: Facts): readonly OriginalSheet[] => [
  // A paper of the shop, whatever it is working on.
  specimens(facts, "TB-SIG-2026-2", "2026-02-10"),
  ...facts
    .all("welding-procedure")
    .map((record) => ({ ...weldingProcedure(facts, record), day: issued, compared: "2026-05-21" })),
  ...facts
    .all("procedure-qualification")
    .map((record) => ({ ...procedureQualification(facts, record), compared: "2026-05-20" })),
  ...welders.map(([person, day]) => ({ ...welder(facts, person, day), compared: "2026-05-22" })),
  { ...testers(facts, facts.all("ndt-personnel"), "2026-02-02"), compared: "2026-05-21" },
  ...calibrationOriginals(facts),
];
