import { accessTubeExamples } from "./access-tube-examples.ts";
import { externalPressure } from "./shared/external-pressure.ts";
import { excerptSeen } from "../model/basis.ts";

export const accessTube = externalPressure({
  id: "access-tube",
  title: "Access tube under external pressure",
  covers:
    "Required thickness of the tube through the water space that gives access to a reversal chamber, between the plates it is welded to. The load it takes off those plates as a support is not covered.",
  role: "access-tube",
  plasticFactor: "unfiredFactorPlastic",
  inputs: {
    heat: {
      path: "heating",
      unit: "1",
      means: "how hot gas heats it",
      options: ["none", "convection", "radiation"],
      display: "heating",
    },
  },
  owes: ["heat"],
  limits: [
    {
      left: "heat",
      relation: "<=",
      right: "1",
      means: "no flame reaches the tube, as its safety factor takes for granted",
      wrong: "the flame reaches the tube, which its safety factor does not cover",
      basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 592: plates not exposed to flame"),
    },
  ],
  examples: accessTubeExamples,
});
