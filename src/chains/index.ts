import type { Chain } from "../model/chain.ts";

/** The walks an inspector takes, kind by kind. A kind without one gets a chain of what it names and what it owes. */
export const chains: readonly Chain[] = [
  {
    kind: "joint",
    links: [
      { what: "Drawing and weld map", paths: ["drawing"], judgedBy: ["drawing-in-force", "book-drawings"] },
      { what: "Parts and heats", paths: ["parts[]", "parts[].<piece-mark:part>.certificateRow"], judgedBy: ["part-mark", "mark-material", "certificate-type", "certificate-thickness", "chemistry-limits", "tensile-limits", "joint-thickness"] },
      { what: "Welding procedure", paths: ["weldingProcedure"], judgedBy: ["joint-in-procedure", "weld-log-procedure", "welding-procedure-in-force"] },
      { what: "Procedure qualification", paths: ["weldingProcedure.qualifications[]"], judgedBy: ["procedure-qualified"] },
      { what: "Weld log", paths: ["<weld-log:joint>"], judgedBy: ["joint-log", "weld-log-complete", "heat-input"] },
      { what: "Welder, on that day", paths: ["<weld-log:joint>.runs[].welders[]", "<weld-log:joint>"], judgedBy: ["welder-qualified", "welder-qualification"] },
      { what: "Filler and gas", paths: ["<weld-log:joint>.runs[].batches[]", "<weld-log:joint>"], judgedBy: ["filler-certified"] },
      { what: "Tests required and done", paths: ["<ndt-report:rows[].joint>.^"], judgedBy: ["joint-visual", "ndt-extent", "ndt-after-weld", "ndt-level"] },
      { what: "Tester, on that day", paths: ["<ndt-report:rows[].joint>.^.operator", "<ndt-report:rows[].joint>.^"], judgedBy: ["ndt-operator", "ndt-third-party", "tester-certificate"] },
      { what: "Repairs", paths: ["<repair:joint>"], judgedBy: ["rejection-repaired", "repair-retested", "repair-cycle", "repair-welder-qualified"] },
      { what: "Measuring equipment, on that day", paths: ["<ndt-report:rows[].joint>.^.instruments[]", "<ndt-report:rows[].joint>.^"], judgedBy: ["ndt-instruments-calibrated"] },
      { what: "Pressure test", paths: ["book.pressure-test"], judgedBy: ["pressure-test-after-work"] },
    ],
  },
  {
    kind: "part",
    links: [
      { what: "Drawing", paths: ["drawing"], judgedBy: ["drawing-in-force"] },
      { what: "Mark and its transfer", paths: ["<piece-mark:part>"], judgedBy: ["part-mark", "mark-transferred"] },
      { what: "Heat and certificate", paths: ["<piece-mark:part>.certificateRow"], judgedBy: ["mark-material", "certificate-thickness"] },
      { what: "Type of certificate", paths: ["<piece-mark:part>.certificateRow.^", "<piece-mark:part>"], judgedBy: ["certificate-type", "mill-approved"] },
      { what: "Chemistry and strength", paths: ["<piece-mark:part>.certificateRow"], judgedBy: ["chemistry-limits", "tensile-limits", "carbon-equivalent"] },
      { what: "Design stress and thickness", paths: ["<calculation-sheet:subject>"], judgedBy: ["design-stress", "cylindrical-shell", "torispherical-end", "part-stress", "shell-calculation", "end-calculation"] },
      { what: "Joints it is welded with", paths: ["<joint:parts[]>"], judgedBy: ["joint-thickness"] },
      { what: "Measured dimensions", paths: ["<dimension-check:rows[].part>.^"], judgedBy: ["dimension-accepted"] },
    ],
  },
];
