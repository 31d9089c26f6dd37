import { fromMemory, ownChoice } from "../model/basis.ts";
import { family } from "./family.ts";

const regulations = (topic: string) => fromMemory("Indian Boiler Regulations 1950", undefined, topic);

/** Boilers under the Indian regulations; what is not remembered of them stays on the cautious side. */
export const indian = family("indian-boiler-regulations", "Indian Boiler Regulations 1950", {
  designStandards: {
    value: "Indian Boiler Regulations",
    basis: ownChoice("the family this profile states the parameters of"),
  },
  safetyFactorTensile: { value: "2.7", basis: regulations("permissible stress: tensile strength over 2.7") },
  testFactorPressure: {
    value: "1.5",
    basis: regulations("hydraulic test at one and a half times the design pressure"),
  },
  volumetricExtentPartial: {
    value: "100 %",
    basis: regulations("longitudinal joints of the highest class are radiographed throughout"),
  },
});
