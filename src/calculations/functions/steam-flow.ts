import { derivedFrom, ownChoice, published } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { equilibriumFlux, isentropicExponent, isRefusal, wetExponent } from "../../steam/index.ts";
import { numbers } from "./arguments.ts";
import { megapascal, resultOf, steamAt } from "./steam.ts";

const pressure = { name: "p", unit: "bar(a)" } as const;
const superheat = { name: "superheat", unit: "ΔK" } as const;

/** Named function `volumeOfSuperheated(p, superheat)` in m³/kg: specific volume of steam, dry saturated or superheated. */
export const volumeOfSuperheated: ListFunction = {
  name: "volumeOfSuperheated",
  means: "specific volume of steam at its pressure and superheat",
  basis: published("IAPWS R7-97", "2012", "region 2, equations (15) to (17) and table 12"),
  parameters: [pressure, superheat],
  unit: "m³/kg",
  compute: numbers(([p = Number.NaN, above = Number.NaN]) => resultOf(steamAt(p, above), ({ state }) => state.v)),
};

/** Named function `dryExponent(p, superheat)`: isentropic exponent of steam as a single phase. */
export const dryExponent: ListFunction = {
  name: "dryExponent",
  means: "isentropic exponent of steam that stays dry, w²/(p·v)",
  basis: published("IAPWS R7-97", "2012", "region 2, speed of sound and specific volume of table 12"),
  parameters: [pressure, superheat],
  unit: "1",
  compute: numbers(([p = Number.NaN, above = Number.NaN]) =>
    resultOf(steamAt(p, above), ({ state }) => isentropicExponent(megapascal(p), state)),
  ),
};

/** Named function `wetExponent(p)`: isentropic exponent of dry saturated steam that turns wet as it expands. */
export const exponentTurningWet: ListFunction = {
  name: "wetExponent",
  means: "isentropic exponent of saturated steam whose expansion is wet, liquid and vapour in equilibrium",
  basis: derivedFrom("volume along the isentrope just inside the wet region, with the equations of IAPWS R7-97(2012)"),
  parameters: [pressure],
  unit: "1",
  compute: numbers(([p = Number.NaN]) => resultOf(wetExponent(megapascal(p)), (k) => k)),
};

/** Superheat in K from which steam reaches the throat of a nozzle dry. */
const staysDry = 40;

/** Named function `exponentOfFlow(wet, dry, superheat)`: which of the two exponents the capacity is computed with. */
export const exponentOfFlow: ListFunction = {
  name: "exponentOfFlow",
  means: "exponent of the flow through the valve",
  basis: ownChoice(
    "up to 40 K of superheat steam turns wet before the throat, and the dry exponent would overstate the flow by up to 5 %: the smaller exponent gives the smaller flow",
  ),
  parameters: [{ name: "wet", unit: "1" }, { name: "dry", unit: "1" }, superheat],
  unit: "1",
  compute: numbers(([wet = Number.NaN, dry = Number.NaN, above = Number.NaN]) => {
    if (!(above >= 0)) return { refused: "steam is not colder than saturation" };
    if (above > staysDry) return { value: dry, lines: [`superheated by more than ${staysDry} K: it stays dry`] };
    return { value: Math.min(wet, dry), lines: [`superheated by at most ${staysDry} K: the smaller of both`] };
  }),
};

/** Named function `fluxInEquilibrium(p, superheat, back)` in kg/(s·m²): greatest flux of an ideal nozzle. */
export const fluxInEquilibrium: ListFunction = {
  name: "fluxInEquilibrium",
  means: "greatest mass flux of an ideal nozzle, liquid and vapour in equilibrium",
  basis: derivedFrom(
    "isentropic expansion with the equations of IAPWS R7-97(2012), at the throat pressure that makes the flux greatest",
  ),
  parameters: [pressure, superheat, { name: "back", unit: "bar(a)" }],
  unit: "kg/(s·m²)",
  compute: numbers(([p = Number.NaN, above = Number.NaN, back = Number.NaN]) => {
    const rest = steamAt(p, above);
    if (isRefusal(rest)) return rest;
    const throat = equilibriumFlux(megapascal(p), rest.T, megapascal(back));
    if (isRefusal(throat)) return throat;
    const dryness = throat.quality < 1 ? `${(100 * throat.quality).toFixed(1)} % of it vapour` : "all of it vapour";
    return { value: throat.flux, lines: [`throat at ${(10 * throat.p).toFixed(3)} bar(a), ${dryness}`] };
  }),
};
