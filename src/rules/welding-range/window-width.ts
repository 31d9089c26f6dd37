import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { anyOf, list, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { fields, permitted, titles, window } from "./windows.ts";

/** The upper end of a window is at most so many times the lower. */
const widest = 3;

export const windowWidth = rule({
  id: "procedure-window-width",
  title: "A procedure permits no run values that lie far apart",
  basis: commonPractice("a window is what one welder sets for one layer: its ends lie within a factor of two or so"),
  kind: "welding-procedure#revisions",
  when: [{ path: "runs", exists: true }],
  severity: "query",
  owner: "welding coordination",
  inputs: { runs: anyOf(things("runs[]", window)) },
  *check({ runs }, revision) {
    for (const run of runs)
      for (const field of fields) {
        const [from, to] = permitted(run, field);
        if (from === undefined || to === undefined || to.value <= widest * from.value) continue;
        yield {
          at: run,
          accuses: [],
          name: `${run.name} ${field}`,
          message: `${revision.name} permits a ${titles[field]} from ${from.text} to ${to.text} in run "${run.name}"`,
          why: `the upper end is more than ${widest} times the lower`,
          hint: "compare both ends with the procedure; if it says so, ask the welding coordinator for the window",
        };
      }
  },
  examples: [
    { name: "a window", given: permits("140 A"), objections: [] },
    {
      name: "a digit too many",
      given: permits("1400 A"),
      objections: ['X-01 permits a welding current from 110 A to 1400 A in run "root"'],
    },
  ],
});

function permits(currentTo: string) {
  return { runs: [{ name: "root", currentFrom: "110 A", currentTo }] };
}

export const windowProcess = rule({
  id: "procedure-run-process",
  title: "Each run of a procedure is welded by one of its processes",
  basis: derivedFrom("what a procedure permits is what its runs say"),
  kind: "welding-procedure#revisions",
  when: [
    { path: "runs[].process", exists: true },
    { path: "processes", exists: true },
  ],
  severity: "nonconformity",
  owner: "welding coordination",
  inputs: {
    processes: list(text("processes[]")),
    runs: anyOf(things("runs[]", { name: window.name, process: window.process })),
  },
  *check({ processes, runs }, revision) {
    for (const run of runs)
      if (run.process !== undefined && !processes.includes(run.process))
        yield {
          at: run,
          accuses: [],
          name: run.name,
          message: `${revision.name} has run "${run.name}" by process ${run.process}; it is for ${processes.join(", ")}`,
          why: "both stand in one revision",
          hint: "compare with the procedure and correct the wrong one",
        };
  },
  examples: [
    {
      name: "one of two",
      given: { processes: ["141", "135"], runs: [{ name: "root", process: "141" }] },
      objections: [],
    },
    {
      name: "another",
      given: { processes: ["141"], runs: [{ name: "root", process: "142" }] },
      objections: ['X-01 has run "root" by process 142; it is for 141'],
    },
  ],
});
