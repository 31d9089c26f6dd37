/** A report as examples of testers give it: one tester with his certificate, and who supervised. */
export function tested(
  changes: Readonly<Record<string, string>>,
  certificate: Readonly<Record<string, string>> = {},
  supervisor?: Readonly<Record<string, string>>,
) {
  const sound = {
    $: "NP-04",
    method: "RT",
    level: "2",
    from: "2025-06-01",
    to: "2030-05-31",
    seen: "2025-05-31",
  };
  return {
    method: "RT",
    day: "2026-03-10",
    least: "2",
    vision: "12",
    surface: "2",
    other: "2",
    tester: { $: "P07", certificates: [{ ...sound, ...certificate }] },
    ...(supervisor !== undefined && { supervisor: { $: "P08", certificates: [{ ...sound, ...supervisor }] } }),
    ...changes,
  };
}

/** The certificate of a tester at its bounds, and who works under supervision. */
export const testerExamples = [
  { name: "on the last day", given: tested({ day: "2030-05-31" }), objections: [] },
  { name: "on the first day", given: tested({ day: "2025-06-01" }, { seen: "2025-06-01" }), objections: [] },
  {
    name: "a day before it was issued",
    given: tested({ day: "2025-05-31" }),
    objections: ["tester P07 held no RT certificate of level 2 or higher on 2025-05-31"],
  },
  {
    name: "a day after its end",
    given: tested({ day: "2026-06-01" }, { to: "2026-05-31" }),
    objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-06-01"],
  },
  {
    name: "another method",
    given: tested({ method: "UT" }),
    objections: ["tester P07 held no UT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1",
    given: tested({}, { level: "1" }),
    objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1 under a level 2, where the design standard has it",
    given: tested({ method: "MT", surface: "1" }, { level: "1", method: "MT" }, { method: "MT" }),
    objections: [],
  },
  {
    name: "level 1 under a level 2, of a film, where the design standard has it",
    given: tested({ other: "1" }, { level: "1" }, {}),
    objections: [],
  },
  {
    name: "level 1 under a level 1",
    given: tested({ other: "1" }, { level: "1" }, { level: "1" }),
    objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1 under a level 2, where it has not",
    given: tested({ method: "MT" }, { level: "1", method: "MT" }, { method: "MT" }),
    objections: ["tester P07 held no MT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1 and nobody who supervised",
    given: tested({ method: "MT", surface: "1" }, { level: "1", method: "MT" }),
    objections: ["tester P07 held no MT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1 under a level 2 of another method",
    given: tested({ method: "MT", surface: "1" }, { level: "1", method: "MT" }, { method: "PT" }),
    objections: ["tester P07 held no MT certificate of level 2 or higher on 2026-03-10"],
  },
  {
    name: "level 1 under a level 2, of a film",
    given: tested({ surface: "1" }, { level: "1" }, {}),
    objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-03-10"],
  },
] as const;
