import { drawings } from "./drawings.ts";
import { usualSteps } from "../../shop/plan.ts";
import { shopInstruments, allProcedures, cutOn, of, receivedOn, type Step } from "./plan-steps.ts";

const drawn = drawings.map(({ id }) => id).join(" ");

const welders =
  "WQ-03-3 WQ-03-4 WQ-07-3 WQ-07-4 WQ-07-5 WQ-12-1 WQ-12-2 WQ-15-1 WQ-19-1 WQ-19-2 WQ-19-3 WQ-19-4 WQ-19-5";
const testers = "NC-N1-VT NC-N1-MT NC-N1-PT NC-N2-RT NC-N2-UT NC-N3-RT NC-N3-MT NC-N3-PT NC-N3-VT NC-N3-UT";
/** A later delivery of wire, B-2142, was received like these when it came. */
const consumables = "B-2131 B-2132 B-2133 B-2134 B-2135 B-2136";

/** From the order to the last cut. */
export const stepsBeforeWelding: readonly Step[] = [
  {
    step: 10,
    ...usualSteps.orderReviewed,
    done: "2026-01-26",
    records: [...of("equipment", "TQ417-01"), ...of("document", "DOC-03 DOC-09")],
  },
  {
    step: 20,
    ...usualSteps.designExamined,
    done: "2026-02-06",
    records: [...of("document", "DOC-01 DOC-04"), ...of("drawing", drawn)],
  },
  {
    step: 30,
    phase: "Contract and design",
    activity: "Risk analysis and essential requirements examined",
    criterion: "complete, every hazard answered",
    body: "approve",
    by: "R1",
    done: "2026-02-06",
    records: of("document", "DOC-02 DOC-08"),
  },
  {
    step: 40,
    phase: "Before manufacture",
    activity: "Procedures of rolling, expansion, test, coating and valves approved",
    criterion: "revision in force",
    body: "review",
    by: "D2",
    done: "2026-02-10",
    records: allProcedures,
  },
  {
    step: 50,
    ...usualSteps.weldingCovered,
    procedure: "drawing:DRG-02@C",
    done: "2026-02-24",
    records: [
      ...of("welding-procedure", "WPS-11 WPS-12 WPS-13 WPS-14 WPS-15 WPS-16 WPS-17 WPS-18 WPS-19"),
      ...of("procedure-qualification", "WPQR-11 WPQR-12 WPQR-13 WPQR-14 WPQR-15 WPQR-16 WPQR-17 WPQR-18"),
    ],
  },
  {
    step: 55,
    phase: "Before manufacture",
    activity: "Welders and operator qualified for the joints planned",
    criterion: "in range and confirmed",
    body: "review",
    by: "M1",
    done: "2026-02-26",
    records: of("welder-qualification", welders),
  },
  {
    step: 60,
    phase: "Before manufacture",
    activity: "Testers certified, testing procedures approved",
    criterion: "method, level and vision test in force",
    body: "review",
    by: "D2",
    done: "2026-02-26",
    records: [...of("ndt-personnel", testers), ...of("procedure", "PRC-VT PRC-RT PRC-MT PRC-PT PRC-UT")],
  },
  {
    step: 80,
    ...usualSteps.instrumentsCalibrated,
    done: "2026-02-26",
    records: shopInstruments,
  },
  {
    step: 90,
    phase: "Materials",
    activity: "Plates received and compared with their certificates",
    criterion: "material list; certificate 3.1",
    procedure: "document:DOC-04@0",
    body: "review",
    client: "review",
    by: "D2",
    done: "2026-02-16",
    records: receivedOn("2026-02-16"),
  },
  {
    step: 100,
    phase: "Materials",
    activity: "Tubes, pipes, bars, flanges and attachments received and compared with their certificates",
    criterion: "material list; certificate 3.1, of attachments 2.2",
    procedure: "document:DOC-04@0",
    body: "review",
    client: "review",
    by: "D2",
    done: "2026-02-20",
    records: receivedOn("2026-02-19", "2026-02-20"),
  },
  {
    step: 110,
    ...usualSteps.consumablesReceived,
    done: "2026-02-27",
    records: of("consumable-batch", consumables),
  },
  {
    step: 120,
    phase: "Cutting",
    activity: "Plates: marks transferred, pieces cut; marks of flanges compared",
    criterion: "every piece can be told",
    procedure: "procedure:PRC-MARK@6",
    body: "witness",
    by: "S1",
    done: "2026-02-24",
    notice: "2026-02-13",
    records: cutOn("2026-02-24"),
  },
  {
    step: 130,
    phase: "Cutting",
    activity: "Tubes, pipes and bars: marks transferred, cut to length",
    criterion: "every piece can be told",
    procedure: "procedure:PRC-MARK@6",
    by: "S1",
    done: "2026-02-26",
    records: cutOn("2026-02-25", "2026-02-26"),
  },
];
