import { extentFigures } from "./extent.ts";
import type { Chain } from "../model/chain.ts";

/** From a joint to its parts, its welders and its tests. */
export const joint: Chain = {
  kind: "joint",
  links: [
    {
      what: "Drawing and weld map",
      paths: ["drawing"],
      judgedBy: ["drawing-in-force", "drawing-checked-by-another"],
    },
    {
      what: "Parts and heats",
      paths: ["parts[]", "parts[].<piece-mark:part>.certificateRow"],
      judgedBy: [
        "part-mark",
        "mark-material",
        "certificate-thickness",
        "chemistry-limits",
        "tensile-limits",
        "joint-thickness",
      ],
    },
    {
      what: "Welding procedure",
      paths: ["weldingProcedure"],
      judgedBy: ["joint-in-procedure", "weld-log-procedure", "welding-procedure-in-force"],
    },
    {
      what: "Procedure qualification",
      paths: ["weldingProcedure.qualifications[]", "weldingProcedure.record"],
      judgedBy: ["procedure-qualified", "procedure-qualification-tests-accepted", "qualification-approved"],
    },
    {
      what: "Weld log",
      paths: ["<weld-log:joint>"],
      judgedBy: [
        "joint-log",
        "weld-log-complete",
        "weld-log-fit-up-accepted",
        "heat-input",
        "weld-after-fit-up",
        "fit-up-after-cut",
      ],
    },
    {
      what: "Welder, on that day",
      paths: [
        "<weld-log:joint>.runs[].welders[]",
        "<weld-log:joint>.runs[].welders[].<welder-qualification:person>",
        "<weld-log:joint>",
      ],
      says: { "welder-qualification": ["designation", "validTo"], "weld-log": [] },
      judgedBy: ["welder-qualified", "welder-role"],
    },
    {
      what: "Filler and gas",
      paths: ["<weld-log:joint>.runs[].batches[]", "<weld-log:joint>"],
      says: { "consumable-batch": ["designation", "batch", "received"], "weld-log": [] },
      judgedBy: ["filler-certified", "batch-usable"],
    },
    {
      what: "Tests required and done",
      paths: ["<ndt-report:rows[].joint>"],
      says: { "ndt-report": ["method", "date"] },
      judgedBy: [
        "joint-visual",
        "visual-extent",
        "magnetic-extent",
        "penetrant-extent",
        "radiographic-extent",
        "ultrasonic-extent",
        "test-after-welding",
        "test-delay",
        "test-level",
        "radiographic-class",
        "ndt-report-rows-accepted",
        "ndt-report-rows-indications-accepted",
      ],
      figures: extentFigures,
    },
    {
      what: "Tester, on that day",
      paths: [
        "<ndt-report:rows[].joint>.record.operator",
        "<ndt-report:rows[].joint>.record.operator.<ndt-personnel:person>",
        "<ndt-report:rows[].joint>",
      ],
      says: { "ndt-personnel": ["method", "level", "validTo"], "ndt-report": ["method"] },
      judgedBy: [
        "tester-certified",
        "visual-tester-certified",
        "tester-approved",
        "tester-certificate-period",
        "tester-role",
      ],
    },
    {
      what: "Repairs and their re-tests",
      paths: [
        "<repair:joint>",
        "<repair:joint>.rejected",
        "<repair:joint>.nonconformity",
        '<ndt-report:rows[].joint>[result="rejected"]',
        "<repair:joint>.<ndt-report:rows[].repair>",
      ],
      says: {
        repair: ["cause", "date"],
        "nonconformity-report": ["title", "closed"],
        "ndt-report": ["method", "date"],
      },
      judgedBy: [
        "ndt-report-rows-accepted",
        "repair-cycle",
        "repair-welder-qualified",
        "nonconformity-state",
        "nonconformity-closed-by-another",
        "nonconformity-concession",
      ],
    },
    {
      what: "Heat treatment",
      paths: ["<heat-treatment:joints[]>"],
      judgedBy: ["heat-treatment-planned", "treated-as-planned", "heat-treatment-after-welding"],
    },
    {
      what: "Hardness and leak tests",
      paths: ["<hardness-report:rows[].joint>", "<leak-test:joints[]>"],
      judgedBy: [
        "hardness-report-accepted",
        "joint-hardness",
        "hardness-at-stage",
        "leak-test-accepted",
        "leaks-left",
        "leak-test-soak",
      ],
    },
    {
      what: "Measuring equipment, on that day",
      paths: ["<ndt-report:rows[].joint>.record.instruments[]"],
      judgedBy: ["calibrated"],
    },
    {
      what: "Pressure test",
      paths: ["book.pressure-test", "book.pressure-test.gauges[].instrument"],
      says: { "pressure-test": ["date"], instrument: [] },
      judgedBy: [
        "pressure-test-after-work",
        "pressure-test-accepted",
        "pressure-test-visual-examination-accepted",
        "pressure-hold",
        "calibrated",
      ],
    },
  ],
};
