import type { MillApproval, PieceMark } from "../../generated/records.ts";
import { millApprovals as shopApprovals } from "../../order/facts/mills.ts";
import { rowOfHeat } from "./certificates.ts";
import { nozzles } from "./nozzles.ts";
import { parts } from "./parts.ts";

/** Mills that the shop knew before, and the two it approved for this order. */
export const millApprovals: readonly MillApproval[] = [
  ...shopApprovals.filter(({ mill }) => ["GREYVAULT", "NETTLEWEIR", "HAMMERQUIST"].includes(mill)),
  {
    id: "MA-06",
    mill: "FATHOMREACH",
    body: "PENQUILLITH",
    certificate: "PQ-QS-1238",
    scope: "seamless pipe for pressure purposes, 219.1 mm to 508 mm",
    forms: ["tube", "pipe"],
    bodyInUnion: true,
    validFrom: "2024-10-14",
    validTo: "2027-10-13",
  },
  {
    id: "MA-07",
    mill: "KESTLEBAR",
    body: "PENQUILLITH",
    certificate: "PQ-QS-1244",
    scope: "hot rolled bars for pressure purposes up to 120 mm",
    forms: ["bar"],
    bodyInUnion: true,
    validFrom: "2025-03-03",
    validTo: "2028-03-02",
  },
];

/** A piece, or several alike from one heat: the heat, how many, and what the mill had marked them with. */
interface Source {
  readonly heat: string;
  readonly unit: string;
  readonly pieces?: number;
  readonly used?: Pick<PieceMark, "area" | "length">;
}

const platePiece = (heat: string, unit: string, area: string): Source[] => [
  { heat, unit: `${heat}-${unit}`, used: { area } },
];
const batch = (heat: string, pieces: number): Source => ({ heat, unit: `${heat}/1`, pieces });

const bySize: Readonly<Record<string, readonly [neck: string, flange: string]>> = {
  "DN 15 PN 40": ["70152", "51508"],
  "DN 25 PN 40": ["70157", "51513"],
  "DN 40 PN 40": ["70161", "51524"],
  "DN 65 PN 40": ["70166", "51530"],
};

/** DN 100 came from two heats: those of the front course from one, those of the rear from the other. */
const largest = (course: "P01" | "P02"): readonly [neck: string, flange: string] =>
  course === "P01" ? ["70170", "51547"] : ["70174", "51542"];

const ofNozzles = nozzles.flatMap(({ part, flange, size, shell, length }): (readonly [string, Source[]])[] => {
  const [neck, forged] = bySize[size] ?? largest(shell);
  return [
    [part, [{ heat: neck, unit: `${neck}/1`, used: { length } }]],
    [flange, [batch(forged, 1)]],
  ];
});

const sources: ReadonlyMap<string, readonly Source[]> = new Map<string, readonly Source[]>([
  ["P01", platePiece("84108", "0871", "11.86 m²")],
  ["P02", platePiece("84111", "0872", "11.86 m²")],
  ["P03", platePiece("84152", "0880", "2.84 m²")],
  ["P04", platePiece("84160", "0881", "2.84 m²")],
  ["P05", platePiece("84126", "0874", "3.80 m²")],
  ["P06", platePiece("84133", "0875", "3.80 m²")],
  ["P07", platePiece("84126", "0874", "1.05 m²")],
  ["P08", platePiece("84147", "0877", "2.42 m²")],
  ["P09", platePiece("84175", "0883", "1.26 m²")],
  ["P10", platePiece("84175", "0883", "1.26 m²")],
  ["P11", [{ ...batch("33914", 1), used: { length: "230 mm" } }]],
  ["P12", [batch("70112", 50)]],
  ["P13", [batch("70131", 16)]],
  ["P14", [batch("70118", 60), batch("70125", 28)]],
  ["P15", [batch("70136", 24)]],
  ["P16", [batch("29417", 3), batch("29423", 3)]],
  ["P17", [batch("29440", 8)]],
  ...ofNozzles,
  ["P44", platePiece("84181", "0886", "0.11 m²")],
  ["P45", [batch("83877", 2)]],
  ["P46", [batch("83902", 2)]],
  ["P47", [batch("83915", 1)]],
]);

type Method = NonNullable<NonNullable<PieceMark["transfers"]>[number]["method"]>;

/** How and when pieces of a form were marked and cut: plates first; flanges kept the mark of their maker. */
const work: Readonly<Record<string, readonly [method: Method, cut: string]>> = {
  plate: ["hard stamp", "2026-02-24"],
  tube: ["vibrating pen", "2026-02-25"],
  bar: ["hard stamp", "2026-02-26"],
  forging: ["as delivered", "2026-02-24"],
};

const marked = (part: string, { heat, unit, pieces = 1, used }: Source, index: number): Omit<PieceMark, "id"> => {
  const [method, cut] = work[parts.find(({ id }) => id === part)?.material?.form ?? ""] ?? ["tag", "2026-02-24"];
  const own = `417/${part.slice(1).replace(/^0/, "")}-${String.fromCharCode(65 + index)}`;
  return {
    part,
    mark: own,
    certificateRow: rowOfHeat(heat),
    pieceNumber: unit,
    cut,
    ...used,
    pieces,
    transfers: [{ from: unit, to: own, method, by: "S1", date: cut, witness: "D2" }],
  };
};

export const pieceMarks: readonly PieceMark[] = parts
  .flatMap(({ id }) => (sources.get(id) ?? []).map((source, index) => marked(id, source, index)))
  .map((mark, index) => ({ id: `PM-${String(index + 1).padStart(2, "0")}`, ...mark }));
