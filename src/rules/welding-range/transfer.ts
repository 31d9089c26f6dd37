import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { anyOf, list, optional, table, text, things, type Inputs, type Thing } from "../../model/input.ts";
import { holds } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { window, windowsFor } from "./windows.ts";

/** Processes whose transfer is told apart. */
export const gasMetalArc: readonly string[] = ["131", "135", "136", "138"];
/** Of solid wires, whose transfer shows in current and voltage. */
const solidWire: readonly string[] = ["131", "135"];

export const transferOfRun = {
  name: window.name,
  process: window.process,
  mode: optional(text("transferMode")),
} satisfies Inputs;
type TransferOfRun = Thing<typeof transferOfRun>;

/** Transfer modes that a procedure names for a layer, or for all runs of a process; else those of the procedure. */
export function modesOf(made: {
  readonly process: string;
  readonly layer?: string;
  readonly windows: readonly TransferOfRun[];
  readonly transferModes: readonly string[];
}): readonly string[] {
  const runs = windowsFor(made.windows, made.process, made.layer);
  const said = runs.flatMap(({ mode }) => mode ?? []);
  return runs.length > 0 && said.length === runs.length ? [...new Set(said)] : made.transferModes;
}

/** Whether a run of a procedure may be of a process: its own, else any of the procedure's. */
const isOf = (run: Pick<TransferOfRun, "process">, all: readonly string[], some: readonly string[]) =>
  run.process === undefined ? all.every((one) => some.includes(one)) : some.includes(run.process);

const ofRevision = {
  kind: "welding-procedure#revisions",
  owner: "welding coordination",
} as const;
const modes = list(text("transferModes[]"));
const processes = list(text("processes[]"));
const stated = [
  { path: "transferModes", exists: true },
  { path: "runs", exists: true },
  { path: "processes", exists: true },
] as const;

export const runTransfer = rule({
  ...ofRevision,
  id: "procedure-run-transfer",
  title: "The transfer mode of a run of a procedure is one of the procedure's",
  basis: derivedFrom("what a procedure permits is what its runs say"),
  when: [
    { path: "transferModes", exists: true },
    { path: "runs[].transferMode", exists: true },
  ],
  severity: "nonconformity",
  inputs: { modes, runs: anyOf(things("runs[]", transferOfRun)) },
  *check({ modes: all, runs }, revision) {
    for (const run of runs) {
      const { mode } = run;
      if (mode === undefined || all.includes(mode)) continue;
      yield {
        at: run,
        accuses: [],
        name: run.name,
        message: `${revision.name} has run "${run.name}" with transfer mode ${mode}; it is for ${all.join(", ")}`,
        why: "both stand in one revision",
        hint: "compare with the procedure and correct the wrong one",
      };
    }
  },
  examples: [
    { name: "one of two", given: { modes: ["dip", "spray"], runs: [{ name: "root", mode: "dip" }] }, objections: [] },
    {
      name: "another",
      given: { modes: ["spray"], runs: [{ name: "root", mode: "dip" }] },
      objections: ['X-01 has run "root" with transfer mode dip; it is for spray'],
    },
  ],
});

export const runTransferSaid = rule({
  ...ofRevision,
  id: "procedure-run-transfer-said",
  title: "Where a procedure has several transfer modes, each gas metal arc run says which",
  basis: derivedFrom("who welds a run must know how, and be tested for it"),
  when: stated,
  severity: "query",
  inputs: { modes, processes, runs: anyOf(things("runs[]", transferOfRun)) },
  *check({ modes: all, processes: of, runs }, revision) {
    for (const run of runs)
      if (all.length > 1 && run.mode === undefined && isOf(run, of, gasMetalArc))
        yield {
          at: run,
          accuses: [],
          name: run.name,
          message: `${revision.name} has the transfer modes ${all.join(", ")}; run "${run.name}" does not say which`,
          why: "a welder tested with one is not tested for all",
          hint: "enter what the procedure says of the run; if it says nothing, have it revised",
        };
  },
  examples: [
    {
      name: "each says, and TIG has none",
      given: {
        modes: ["dip", "spray"],
        processes: ["135", "141"],
        runs: [
          { name: "root", process: "135", mode: "dip" },
          { name: "cap", process: "135", mode: "spray" },
          { name: "root, pipes", process: "141" },
        ],
      },
      objections: [],
    },
    {
      name: "one mode for all",
      given: { modes: ["spray"], processes: ["135"], runs: [{ name: "fill" }] },
      objections: [],
    },
    {
      name: "one of two, unsaid",
      given: { modes: ["dip", "spray"], processes: ["135"], runs: [{ name: "root" }] },
      objections: ['X-01 has the transfer modes dip, spray; run "root" does not say which'],
    },
  ],
});

/** Groups of steel, by the first number of ISO/TR 15608. */
const isSteel = (group: string) => Number.parseInt(group, 10) <= 11;

export const transferFigures = rule({
  ...ofRevision,
  id: "transfer-as-figures",
  title:
    "A run on steel that is said to be a spray arc may reach the current at which spray begins, one that is said to be a short arc its voltage",
  basis: commonPractice("drops go over as a spray above a current only, and by short circuits below a voltage only"),
  when: [...stated, { path: "runs[].fillerDiameter", exists: true }, { path: "materialGroups", exists: true }],
  severity: "query",
  inputs: {
    modes,
    processes,
    groups: list(text("materialGroups[]")),
    runs: anyOf(things("runs[]", { ...transferOfRun, ...window })),
    limits: table("arc-transfer"),
  },
  *check({ modes: all, processes: of, groups, runs, limits }, revision) {
    if (!groups.every(isSteel)) return;
    for (const run of runs) {
      const mode = run.mode ?? (all.length === 1 ? all[0] : undefined);
      const { diameter, currentFrom, currentTo, voltageFrom, voltageTo } = run;
      if (diameter === undefined || !isOf(run, of, solidWire)) continue;
      const row = limits(diameter);
      const spray = row.quantity("sprayFrom");
      const short = row.quantity("dipTo");
      if (mode === "spray" && currentTo !== undefined && spray !== undefined && holds(currentTo, ">=", spray) === "no")
        yield {
          at: run,
          accuses: [],
          name: run.name,
          message: `${revision.name} says spray of run "${run.name}", for which it permits ${currentFrom?.text ?? "any current"} to ${currentTo.text} with a wire of ${diameter.text}`,
          why: `spray begins at some ${spray.text} under argon with 2 % oxygen, later under mixtures with carbon dioxide`,
          hint: "compare with the record of the test piece; if the run is a short arc, the procedure says so, and its qualification and welders must cover it",
        };
      if (
        mode === "dip" &&
        voltageFrom !== undefined &&
        short !== undefined &&
        holds(voltageFrom, "<=", short) === "no"
      )
        yield {
          at: run,
          accuses: [],
          name: run.name,
          message: `${revision.name} says dip of run "${run.name}", for which it permits ${voltageFrom.text} to ${voltageTo?.text ?? "any voltage"}`,
          why: `an arc of more than some ${short.text} is too long for drops to go over by short circuits`,
          hint: "compare with the record of the test piece and correct mode or voltage",
        };
    }
  },
  examples: [
    { name: "a short arc", given: arc("dip", ["140 A", "170 A"], ["19 V", "21 V"]), objections: [] },
    { name: "a spray arc", given: arc("spray", ["215 A", "255 A"], ["25 V", "29 V"]), objections: [] },
    {
      name: "figures of a short arc called spray",
      given: arc("spray", ["140 A", "170 A"], ["19 V", "21 V"]),
      objections: ['X-01 says spray of run "root", for which it permits 140 A to 170 A with a wire of 1.2 mm'],
    },
    {
      name: "figures of a spray arc called a short arc",
      given: arc("dip", ["215 A", "255 A"], ["25 V", "29 V"]),
      objections: ['X-01 says dip of run "root", for which it permits 25 V to 29 V'],
    },
    {
      name: "pulses, whose mean current is lower",
      given: arc("pulsed", ["120 A", "160 A"], ["24 V", "27 V"]),
      objections: [],
    },
    {
      name: "aluminium, which sprays earlier",
      given: { ...arc("spray", ["140 A", "170 A"], ["22 V", "25 V"]), groups: ["22.1"] },
      objections: [],
    },
  ],
});

function arc(mode: string, [currentFrom, currentTo]: readonly string[], [voltageFrom, voltageTo]: readonly string[]) {
  const figures = { currentFrom, currentTo, voltageFrom, voltageTo };
  return {
    modes: [mode],
    processes: ["135"],
    groups: ["1.1"],
    runs: [{ name: "root", process: "135", diameter: "1.2 mm", ...figures }],
  };
}
