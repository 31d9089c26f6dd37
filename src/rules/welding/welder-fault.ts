import type { DateValue } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, thing, type Thing } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import type { Objection } from "../../model/rule.ts";
import { gasMetalArc } from "../welding-range/transfer.ts";
import { testPiece, uncovered, type WelderRanges, type WeldMade } from "./welder-range.ts";
import { notInForce, type Periods } from "./welder-validity.ts";

const qualification = {
  standard: text("standard.standard"),
  ...testPiece,
  fillerType: optional(text("fillerType")),
  transferModes: anyOf(list(text("transferModes[]"))),
  printedProducts: anyOf(list(text("range.products[]"))),
  printedGroups: anyOf(list(text("range.fillerGroups[]"))),
  printedDetails: anyOf(list(text("range.details[]"))),
  printedPositions: anyOf(list(text("range.positions[]"))),
  printedFrom: optional(quantity("range.thickness.minimum", "mm")),
  printedTo: optional(quantity("range.thickness.maximum", "mm")),
  testDate: date("testDate"),
  validTo: optional(date("validTo")),
  route: text("route"),
  confirmations: anyOf(list(date("confirmations[].date"))),
};
export const welder = { qualifications: list(thing("<welder-qualification:person>", qualification)) };
export const joint = {
  detail: text("detail"),
  positions: list(text("positions[]")),
  thicknesses: list(quantity("thicknesses[]", "mm")),
  deposited: optional(quantity("depositedThickness", "mm")),
  diameter: optional(quantity("outsideDiameter", "mm")),
};
export const months = {
  confirmationMonths: quantity("profile.welderConfirmationMonths", "1"),
  revalidationMonths: quantity("profile.welderRevalidationMonths", "1"),
  retestMonths: quantity("profile.welderRetestMonths", "1"),
};

type Welder = Thing<typeof welder>;
type Joint = Thing<typeof joint>;
type Weld = Omit<WeldMade, "position">;

/** Batches of a weld, of which a filler has a kind, and the transfer modes that its procedure names for it. */
export const fillerBatch = { type: text("type"), designation: text("designation") };
export interface FillersUsed {
  readonly batches?: readonly Thing<typeof fillerBatch>[];
  readonly transferModes?: readonly string[];
}

/** Symbol of a filler: solid, or as the designation says of its covering or core; undefined of flux and gas. */
function kindOfFiller({ type, designation }: Thing<typeof fillerBatch>): string | undefined {
  const symbols = designation.split(/\s+/u);
  switch (type) {
    case "wire":
    case "rod":
      return "S";
    case "covered electrode":
      return symbols.find((one) => /^(A|C|R|RR|RC|RA|RB|B)$/u.test(one)) ?? "unknown covering";
    case "flux-cored wire":
      return symbols.slice(1).find((one) => /^[BMPRVWYZ]$/u.test(one)) ?? "unknown core";
    default:
      return undefined;
  }
}

/**
 * What a welder had to be able to do at a joint, but for the position. A fillet weld is known by its layers. Where nobody
 * recorded what he deposited, he deposited no more than the joint takes.
 */
export function weldAt(
  at: Joint,
  process: string,
  deposited: Measure | undefined,
  over: boolean,
  fillers: readonly string[],
  used: FillersUsed = {},
): Weld {
  const fillet = ["sl", "ml"].includes(at.detail);
  const own = deposited ?? at.deposited;
  const thinnest = [...at.thicknesses].sort((a, b) => a.low - b.low).slice(0, 1);
  return {
    process,
    weldType: fillet ? "fillet" : "butt",
    diameter: at.diameter,
    thicknesses: fillet ? at.thicknesses : own === undefined ? thinnest : [own],
    asStated: !fillet && deposited === undefined,
    // Runs laid on other runs have metal behind them, which every test covers.
    detail: over && !fillet ? undefined : at.detail,
    fillerGroups: fillers,
    fillerTypes: (used.batches ?? []).flatMap((one) => kindOfFiller(one) ?? []),
    // Only processes whose transfer is told apart have one; a procedure may be for others too.
    transferModes: gasMetalArc.includes(process) ? (used.transferModes ?? []) : [],
  };
}

const sized = ({ thicknesses, asStated }: Weld) =>
  `${thicknesses.map((one) => one.text).join(" and ")}${asStated === true ? " as stated" : ""}`;

interface Fault {
  readonly name: string;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
}

/** What is wrong with a welder's qualifications for a weld on a day. */
function faultOf(
  who: Welder,
  weld: Weld,
  positions: readonly string[],
  day: DateValue,
  periods: Periods,
  ranges: WelderRanges,
): Fault | undefined {
  const { qualifications } = who;
  for (const position of positions) {
    const covering = qualifications.filter((one) => uncovered(one, { ...weld, position }, ranges).length === 0);
    if (covering.length === 0) {
      const pipe = weld.diameter === undefined ? "" : `, diameter ${weld.diameter.text}`;
      const asked = `process ${weld.process}, ${weld.weldType} weld, ${sized(weld)}${pipe}, position ${position}`;
      return {
        name: `range ${asked}`,
        message: `welder ${who.$.name} holds no qualification for ${asked}`,
        why: qualifications
          .map((one) => `${one.$.name} covers only ${uncovered(one, { ...weld, position }, ranges).join("; ")}`)
          .join(" · "),
        hint: "add the certificate that covers this weld, or correct welder, position or thickness; else raise a nonconformity report",
      };
    }
    const reasons = covering.map((one) => notInForce(one, day.day, periods));
    if (reasons.every((reason) => reason !== undefined))
      return {
        name: `validity ${weld.process}`,
        message: `welder ${who.$.name} was not qualified for process ${weld.process} on ${day.day}`,
        why: covering.map((one, index) => `${one.$.name}: ${reasons[index] ?? ""}`).join(" · "),
        hint: "add the missing confirmation or prolongation if it was made in time, or correct the date; else raise a nonconformity report and have the welds judged",
      };
  }
  return undefined;
}

type WelderObjection = Pick<Objection<typeof months>, "name" | "message" | "why" | "hint" | "on">;

export function* objectionsTo(
  welders: readonly Welder[],
  weldOf: (who: Welder) => Weld,
  positions: readonly string[],
  day: DateValue,
  periods: Periods,
  ranges: WelderRanges,
): Generator<WelderObjection> {
  for (const who of welders) {
    const fault = faultOf(who, weldOf(who), positions, day, periods, ranges);
    if (fault !== undefined) yield { ...fault, on: who };
  }
}
