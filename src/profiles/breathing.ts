import { excerptSeen, ownChoice } from "../model/basis.ts";
import type { Parameters } from "../model/profile.ts";

const regulation590 = (what: string) => excerptSeen("Indian Boiler Regulations 1950", `regulation 590: ${what}`);

/** Breathing spaces of flat end plates. */
export const breathing = {
  breathingShare: {
    value: "0.05",
    means: "breathing space between a furnace and the shell or tubes, as a share of the inside diameter of the shell",
    cautious: "high",
    basis: regulation590("5 % of the diameter"),
  },
  breathingShareOther: {
    value: "0.03",
    means: "breathing space elsewhere, as a share of the inside diameter of the shell",
    cautious: "high",
    basis: regulation590("all others, 3 % of the diameter"),
  },
  breathingLeast: {
    value: "50 mm",
    means: "least breathing space where it follows from the diameter",
    cautious: "high",
    basis: regulation590("at least 50 mm"),
  },
  breathingMost: {
    value: "100 mm",
    means: "breathing space that is enough whatever the diameter",
    cautious: "high",
    basis: regulation590("at most 100 mm are required"),
  },
  breathingTubesShell: {
    value: "40 mm",
    means: "least breathing space between tubes and shell",
    cautious: "high",
    basis: regulation590("tubes and shell"),
  },
  breathingGussetTubes: {
    value: "100 mm",
    means: "least breathing space between gusset or link stays and tube ends",
    cautious: "high",
    basis: regulation590("gusset or link stays and tube ends"),
  },
  breathingGussetFurnace: {
    value: "250 mm",
    means: "least breathing space between gusset or link stays and a furnace",
    cautious: "high",
    basis: ownChoice(
      "the greatest of the three that regulation 590 of the Indian Boiler Regulations 1950 has: 250 mm above 1800 mm of shell and 6 m of furnace, usually 200 mm, 150 mm below 1400 mm and 3 m",
    ),
  },
} satisfies Parameters;
