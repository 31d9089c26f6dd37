import { after } from "../../air-receiver/facts/plan.ts";
import { stepsBeforeWelding } from "../../air-receiver/facts/plan-before-welding.ts";
import { stepsFromWelding } from "../../air-receiver/facts/plan-from-welding.ts";
import { of, planOf, type Step } from "../../shop/plan.ts";
import { serial } from "./vessel.ts";

const receivers = [...stepsBeforeWelding, ...stepsFromWelding];

/** A step as in the receiver's plan, with this vessel's records, and whatever else is its own. */
function as(step: number, records: readonly string[], own: Partial<Step> = {}): Step {
  const found = receivers.find((one) => one.step === step);
  if (found === undefined) throw new Error(`the receiver's plan has no step ${String(step)}`);
  return { ...found, records, ...own };
}

/** Steps of the receiver's plan for what the vessels share: the same records, on the same day. */
const shared = (step: number): Step => as(step, receivers.find((one) => one.step === step)?.records ?? []);

const before = (sheets: string): readonly Step[] => [
  as(10, [...of("equipment", serial), ...of("document", "DOC-03")]),
  as(20, [
    ...of("document", "DOC-01 DOC-09"),
    ...of("drawing", "DRG-01 DRG-02 DRG-03"),
    ...of("calculation-sheet", sheets),
  ]),
  as(30, [...of("document", "DOC-02 DOC-08"), ...of("body-certificate", "BC-01")]),
  as(40, of("procedure", "PRC-VT PRC-RT PRC-PT PRC-MARK PRC-FORM PRC-DIM PRC-HYD PRC-SV PRC-FIN PRC-RTD PRC-VTR"), {
    activity: "Test, forming and other procedures approved",
  }),
  as(50, [...of("welding-procedure", "WPS-05 WPS-10"), ...of("procedure-qualification", "WPQR-03 WPQR-05")]),
  as(60, of("welder-qualification", "WQ-03-1 WQ-03-2 WQ-03-3")),
  as(70, of("ndt-personnel", "NC-N1-VT NC-N1-PT NC-N2-RT NC-N3-RT NC-N3-PT NC-N3-VT")),
  as(80, of("instrument", "PG-03 PG-04 TH-02 TH-05 TH-06 DM-01 LM-01 WG-01 WM-02 UT-03 TAPE-03 CA-05 EN-01")),
  as(90, [
    ...of("document", "DOC-04"),
    ...of("material-certificate", "CRT-003 CRT-005 CRT-009"),
    ...of("mill-approval", "MA-01 MA-02 MA-03"),
  ]),
  shared(100),
  shared(110),
  as(120, of("piece-mark", "PM-01 PM-02 PM-03 PM-04 PM-05 PM-06 PM-07")),
];

const from: readonly Step[] = [
  as(130, [...of("weld-log", "WL-L1"), ...of("ndt-report", "VT-01")], {
    activity: "Longitudinal seam welded, visual test of both sides",
    done: "2026-06-01",
    procedure: "welding-procedure:WPS-10@1",
  }),
  as(140, of("dimension-check", "DIM-02"), {
    activity: "Thickness, roundness and peaking of the course",
    criterion: "at least 7.7 mm; 1.0 % of the diameter; 2.0 mm",
  }),
  as(150, of("ndt-report", "RT-01"), {
    activity: "Radiography of the longitudinal seam, single wall",
    criterion: "whole seam; level 2",
    done: "2026-06-02",
  }),
  as(160, [...of("weld-log", "WL-C1"), ...of("ndt-report", "VT-02 RT-02")], {
    activity: "Seam C1 welded, both sides and radiography before C2 is closed",
    criterion: "quality level C; 10 %, crossing included; level 2",
    procedure: "welding-procedure:WPS-10@1",
    step: 155,
    done: "2026-06-04",
  }),
  as(160, of("weld-log", "WL-C2"), {
    activity: "Closing seam C2 welded",
    procedure: "welding-procedure:WPS-10@1",
    done: "2026-06-05",
  }),
  as(170, of("weld-log", "WL-N01 WL-N02 WL-N03 WL-N04"), {
    activity: "Nozzles welded",
    procedure: "welding-procedure:WPS-05@1",
    done: "2026-06-08",
  }),
  as(180, of("ndt-report", "VT-03 RT-03"), {
    activity: "Visual test outside, radiography of C2, double wall",
    criterion: "VT 100 %; RT 10 %, crossing included; level 2",
    procedure: "procedure:PRC-RTD@1",
  }),
  as(200, of("ndt-report", "PT-01"), { criterion: "25 % by PT; level 2X", procedure: "procedure:PRC-PT@2" }),
  as(210, of("production-test", "TP-01"), { activity: "Production test plate of L1" }),
  as(220, [...of("dimension-check", "DIM-03"), ...of("ndt-report", "VT-04")], {
    activity: "Completed vessel: offset, length, nozzles; inside looked at by endoscope",
  }),
  as(230, []),
  as(250, []),
  as(270, of("document", "DOC-05 DOC-07")),
  as(280, of("body-certificate", "BC-02"), { criterion: "agrees with drawing DRG-03" }),
  as(285, of("nameplate", "NP-01"), { criterion: "drawing DRG-03 revision A", procedure: "drawing:DRG-03@A" }),
  shared(290),
];

/** Steps as in the receiver's plan, but that C1 is tested before C2 closes the vessel. */
const order: typeof after = {
  ...after,
  155: [70, 140, 150],
  160: [155],
  170: [160],
  180: [160],
  270: [250],
};

/** Sheets of the maker that stand under each step, by the subject and calculation they are of. */
export interface StepSheets {
  readonly design: readonly string[];
  readonly test: readonly string[];
  readonly valve: readonly string[];
}

/** The plan; the sheets it names are numbered when all are there. */
export function inspectionSteps({ design, test, valve }: StepSheets) {
  const sheets = (ids: readonly string[]) => ids.map((id) => `calculation-sheet:${id}`);
  const steps = [...before(design.join(" ")), ...from].map((step) => {
    if (step.step === 230) return { ...step, records: [...of("pressure-test", "HYD-01"), ...sheets(test)] };
    if (step.step !== 250) return step;
    return {
      ...step,
      criterion: "set at 11 bar; at least 300 kg/h",
      records: [...of("safety-valve", "SV-01"), ...sheets(valve), ...of("instrument", "PG-07")],
    };
  });
  const there = new Set(steps.map(({ step }) => step));
  const own = Object.entries(order).map(([step, ones]) => [step, ones.flatMap((one) => standing(one, there))] as const);
  return planOf(steps, Object.fromEntries(own), "P1");
}

/** A step, or where this plan has none of the number those that stand before it in the receiver's. */
const standing = (step: number, there: ReadonlySet<number>): readonly number[] =>
  there.has(step) ? [step] : [...new Set((order[step] ?? []).flatMap((one) => standing(one, there)))];
