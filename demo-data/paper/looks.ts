import { rgb } from "pdf-lib";
import type { Organisation } from "../generated/records.ts";
import type { Look } from "./paper.ts";

const white = rgb(1, 1, 1);
const cream = rgb(0.995, 0.988, 0.965);

const looks: Readonly<Record<string, Pick<Look, "type" | "ink" | "paper">>> = {
  TARNEQUILL: { type: "sans", ink: rgb(0.12, 0.22, 0.35), paper: white },
  PENQUILLITH: { type: "serif", ink: rgb(0.35, 0.12, 0.3), paper: white },
  GREYVAULT: { type: "mono", ink: rgb(0.2, 0.2, 0.2), paper: cream },
  BOWLTHORNE: { type: "sans", ink: rgb(0.16, 0.34, 0.22), paper: cream },
  NETTLEWEIR: { type: "mono", ink: rgb(0.1, 0.3, 0.4), paper: white },
  HAMMERQUIST: { type: "serif", ink: rgb(0.4, 0.22, 0.1), paper: cream },
  THREADLOW: { type: "mono", ink: rgb(0.25, 0.25, 0.4), paper: white },
  SORRELARC: { type: "sans", ink: rgb(0.45, 0.18, 0.12), paper: white },
  HOLLYVANE: { type: "sans", ink: rgb(0.1, 0.32, 0.32), paper: white },
  LARKMETRIC: { type: "serif", ink: rgb(0.1, 0.2, 0.45), paper: white },
  GLIMMERFIELD: { type: "sans", ink: rgb(0.3, 0.25, 0.05), paper: white },
  UMBERHITHE: { type: "serif", ink: rgb(0.3, 0.2, 0.1), paper: white },
};

/** The look of an organisation's papers. */
export function lookOf({ id, name, address = "" }: Organisation): Look {
  return { name, address, ...(looks[id] ?? { type: "sans", ink: rgb(0.2, 0.2, 0.2), paper: white }) };
}

/** Those who sign for a firm and have no other part in a book. */
const clerks: Readonly<Record<string, string>> = { SORRELARC: "R. Fluxborne" };

export const clerkOf = (organisation: string): string | undefined => clerks[organisation];

/** Second line of the stamps of firms that have no number. */
const stamps: Readonly<Record<string, string>> = { BOWLTHORNE: "ENDS", HOLLYVANE: "BENCH 2" };

/** The two lines of an organisation's stamp: its mark, and its number or that of its accreditation. */
export function stampOf({ id, number, accreditation }: Organisation): string {
  return `${id}\n${number ?? /\d+/.exec(accreditation ?? "")?.[0] ?? stamps[id] ?? "QA"}`;
}
