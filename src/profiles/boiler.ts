import { fromMemory, ownChoice } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const boilerTemperature = (topic: string) => fromMemory("EN 12953-3", undefined, `calculation temperature: ${topic}`);

/** Steam boilers: metal temperatures and duty. */
export const boiler = {
  convectionRisePerThickness: {
    value: "2 K/mm",
    means: "rise of the metal temperature per thickness of a plate swept by hot gas",
    cautious: "high",
    basis: boilerTemperature("plates heated by convection"),
  },
  radiationRisePerThickness: {
    value: "4 K/mm",
    means: "rise of the metal temperature per thickness of a plate that the flame radiates on",
    cautious: "high",
    basis: boilerTemperature("plates heated by radiation"),
  },
  heatedSurfaceRise: {
    value: "15 K",
    means: "rise of the metal temperature at a heated surface",
    cautious: "high",
    basis: boilerTemperature("heated plates"),
  },
  radiationLeastTemperature: {
    value: "250 °C",
    means: "least calculation temperature of a plate that the flame radiates on",
    cautious: "high",
    basis: boilerTemperature("furnaces and reversal chambers"),
  },
  tubeConvectionRise: {
    value: "25 K",
    means: "rise of the metal temperature of a tube that hot gas heats by convection",
    cautious: "high",
    basis: boilerTemperature("tubes heated by convection"),
  },
  tubeRadiationRise: {
    value: "50 K",
    means: "rise of the metal temperature of a tube that hot gas heats mainly by radiation",
    cautious: "high",
    basis: boilerTemperature("tubes heated mainly by radiation"),
  },
  burnerExcess: {
    value: "10 %",
    means: "how far the heat of the burner may exceed that of the declared output",
    cautious: "low",
    basis: ownChoice("room for turndown and for rounding of the efficiency"),
  },
  fromAndAtTolerance: {
    value: "1 %",
    means: "how far a stated output from and at 100 °C may lie from the recomputed one",
    cautious: "low",
    basis: ownChoice(
      "rounding of the stated figure, and 0.1 % between conventions of latent heat and feedwater enthalpy",
    ),
  },
} satisfies Parameters;
