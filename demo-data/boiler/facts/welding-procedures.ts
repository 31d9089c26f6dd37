import type { WeldingProcedure } from "../../generated/records.ts";
import { arcFlux, arcWire, argon, mixedGas, rod, wire } from "./fillers.ts";
import { windowsOf, type Range, type Window } from "./weld-techniques.ts";

type Revision = NonNullable<WeldingProcedure["revisions"]>[number];
type Own = Omit<Revision, "revision" | "date" | "approved">;

const range = ([minimum, maximum]: Range, unit: string) => ({
  minimum: `${minimum} ${unit}`,
  maximum: `${maximum} ${unit}`,
});
const thickness = (minimum: string, maximum: string) => ({ minimum: `${minimum} mm`, maximum: `${maximum} mm` });
const heat = (minimum: string, maximum: string) => ({ minimum: `${minimum} kJ/mm`, maximum: `${maximum} kJ/mm` });

const run = ({ layer, process, transferMode, filler, current, voltage, speed }: Window) => ({
  run: `${layer === "full" ? "single run" : layer}, ${process}`,
  process,
  ...(transferMode !== undefined && { transferMode }),
  fillerDiameter: filler,
  current: range(current, "A"),
  voltage: range(voltage, "V"),
  travelSpeed: range(speed, "mm/min"),
});

const people = { preparedBy: "M1", checkedBy: "D2", approvedBy: "R1", sheets: 1 } as const;
const issued = { status: "for-construction", reason: "first issue, order OD-2604", ...people } as const;
const steel = { materialGroups: ["1.1"], preheat: "10 °C", postWeldHeatTreatment: false };

const arc: Own = {
  ...issued,
  ...steel,
  qualifications: ["WPQR-11"],
  processes: ["121"],
  mechanisation: "fully mechanised",
  jointTypes: ["butt"],
  thickness: thickness("12.0", "16.0"),
  outsideDiameter: { minimum: "800 mm" },
  positions: ["PA"],
  details: ["bs"],
  gap: thickness("0", "1"),
  fillers: [arcWire, arcFlux],
  current: "DC+",
  heatInput: heat("1.60", "2.60"),
  interpass: "250 °C",
};
const active = {
  ...issued,
  ...steel,
  processes: ["135"],
  mechanisation: "partly mechanised",
  fillers: [wire],
  shieldingGas: mixedGas,
  current: "DC+",
  interpass: "220 °C",
} satisfies Own;
const tungsten = {
  ...issued,
  ...steel,
  qualifications: ["WPQR-14", "WPQR-15"],
  processes: ["141"],
  mechanisation: "manual",
  positions: ["PA"],
  details: ["ss nb"],
  fillers: [rod],
  shieldingGas: argon,
  current: "DC-",
  interpass: "200 °C",
} satisfies Own;

/** Each transfer mode that its runs have. */
const modesOf = (id: string): Pick<Own, "transferModes"> => {
  const modes = windowsOf(id).flatMap(({ transferMode }) => transferMode ?? []);
  return modes.length === 0 ? {} : { transferModes: [...new Set(modes)] };
};

/** A procedure with one revision, written for this order. */
const procedure = (id: string, title: string, own: Own): WeldingProcedure => ({
  id,
  title,
  revisions: [
    { revision: "1", date: "2026-01-26", ...modesOf(id), runs: windowsOf(id).map(run), ...own, approved: "2026-02-02" },
  ],
});

/** The procedures the joints are planned to. */
export const weldingProcedures: readonly WeldingProcedure[] = [
  {
    id: "WPS-11",
    title: "Seams of shell, furnace and chamber, submerged arc, both sides",
    revisions: [
      {
        revision: "1",
        date: "2024-06-10",
        ...arc,
        status: "superseded",
        reason: "first issue",
        thickness: thickness("12.0", "14.0"),
        approved: "2024-06-17",
        runs: windowsOf("WPS-11").map(run),
      },
      {
        revision: "2",
        date: "2026-01-19",
        ...arc,
        reason: "up to 16 mm, for the furnace of order OD-2604",
        approved: "2026-01-26",
        runs: windowsOf("WPS-11").map(run),
      },
    ],
  },
  procedure("WPS-12", "Corner joints of plates and cylinders, MAG, both sides", {
    ...active,
    qualifications: ["WPQR-12"],
    jointTypes: ["corner"],
    thickness: thickness("12.0", "20.0"),
    positions: ["PA"],
    details: ["bs"],
    gap: thickness("1.5", "3"),
    heatInput: heat("0.80", "1.30"),
  }),
  procedure("WPS-13", "Repairs of shell seams and branch welds, MAG or TIG", {
    ...active,
    qualifications: ["WPQR-13", "WPQR-14"],
    processes: ["135", "141"],
    jointTypes: ["butt", "branch"],
    thickness: thickness("7.0", "12.0"),
    positions: ["PA"],
    details: ["ss nb", "bs"],
    fillers: [wire, rod],
    shieldingGas: `${mixedGas} (135), ${argon} (141)`,
    heatInput: heat("0.60", "1.30"),
    interpass: "200 °C",
    runs: windowsOf("WPS-13").map((one) => ({ ...run(one), polarity: one.process === "141" ? "DC-" : "DC+" })),
  }),
  procedure("WPS-14", "Branch welds from DN 65 and manhole frame, MAG", {
    ...active,
    qualifications: ["WPQR-13"],
    jointTypes: ["branch"],
    thickness: thickness("8.0", "25.0"),
    outsideDiameter: { minimum: "75 mm" },
    positions: ["PA"],
    details: ["ss nb"],
    gap: thickness("1.5", "3"),
    heatInput: heat("0.80", "1.30"),
  }),
  procedure("WPS-15", "Branch welds up to DN 40, TIG", {
    ...tungsten,
    jointTypes: ["branch"],
    gap: thickness("1.5", "3"),
    thickness: thickness("5.0", "12.0"),
    outsideDiameter: { minimum: "20 mm", maximum: "60 mm" },
    heatInput: heat("0.60", "1.25"),
  }),
  procedure("WPS-16", "Butt welds of necks and flanges, TIG", {
    ...tungsten,
    jointTypes: ["butt"],
    gap: thickness("1.5", "3"),
    thickness: thickness("5.0", "11.0"),
    outsideDiameter: { minimum: "20 mm" },
    heatInput: heat("0.45", "1.10"),
  }),
  procedure("WPS-17", "Fillet welds of bar stays, MAG", {
    ...active,
    preheat: "50 °C",
    qualifications: ["WPQR-16"],
    jointTypes: ["fillet"],
    thickness: thickness("15.0", "45.0"),
    throat: thickness("8", "12"),
    positions: ["PB"],
    details: ["ml"],
    gap: thickness("0", "1"),
    heatInput: heat("0.65", "1.20"),
  }),
  procedure("WPS-18", "Fillet welds of attachments, MAG", {
    ...active,
    qualifications: ["WPQR-16", "WPQR-17"],
    jointTypes: ["attachment"],
    thickness: thickness("4.0", "25.0"),
    throat: thickness("3", "10"),
    positions: ["PB"],
    details: ["sl", "ml"],
    gap: thickness("0", "1"),
    heatInput: heat("0.35", "1.20"),
  }),
  procedure("WPS-19", "Stay tubes in tube plates, expanded lightly and welded, TIG", {
    ...tungsten,
    qualifications: ["WPQR-18"],
    jointTypes: ["tube-to-tube-plate"],
    thickness: thickness("6.3", "6.3"),
    outsideDiameter: thickness("51", "51"),
    positions: ["PH"],
    details: ["ml"],
    heatInput: heat("0.40", "1.00"),
  }),
];
