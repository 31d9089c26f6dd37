import { commonPractice, derivedFrom, excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import type { Parameter, Parameters } from "../model/profile.ts";

const regulations = "Indian Boiler Regulations 1950";
const above = ownChoice("at or above every coefficient of a code that is remembered, 0.30 to 0.49");

const coefficient = (value: string, support: string, basis: Parameter["basis"] = above): Parameter => ({
  value,
  means: `coefficient C of a stayed flat plate: ${support}`,
  cautious: "high",
  basis,
});

/** Flat plates, stays, fields of tubes, and openings in shells. */
export const plates = {
  plateFlangedEdge: coefficient("0.35", "flanged edge"),
  plateWeldedEdge: coefficient("0.38", "edge welded with full penetration"),
  plateGusset: coefficient("0.40", "gusset stay"),
  plateStay: coefficient("0.45", "welded bar stay, stay tube or access tube"),
  plateSmokeTube: coefficient("0.45", "plain smoke tube inside its nest"),
  plateDoubtful: coefficient("0.49", "support that is doubtful"),
  plateEdgesOnly: coefficient(
    "0.41",
    "least where the circle touches nothing but edges",
    derivedFrom("clamped circular plate, elastic: √(3/16)·√0.85 = 0.40"),
  ),
  plateStressShare: {
    value: "0.85",
    means: "share of the design stress that a stayed flat plate uses",
    cautious: "low",
    basis: excerptSeen(regulations, "regulation 574, as repeated in a worked sheet"),
  },
  plateLeast: {
    value: "8 mm",
    means: "least thickness of a stayed flat plate",
    cautious: "high",
    basis: excerptSeen(regulations, "regulation 574, as repeated in a worked sheet"),
  },
  stayStress: {
    value: "62 MPa",
    means: "permitted stress of a bar stay",
    cautious: "low",
    basis: excerptSeen(
      regulations,
      "regulations 202 and 581, stays: 7100 lbf/in² on d², which is 62.3 MPa on the section",
    ),
  },
  stayTubeStress: {
    value: "51 MPa",
    means: "permitted stress of a stay tube",
    cautious: "low",
    basis: excerptSeen(
      regulations,
      "regulations 202 and 581, stay tubes: 5900 lbf/in² on d², which is 51.8 MPa on the section",
    ),
  },
  stayDiameterLeast: {
    value: "25 mm",
    means: "least diameter of a bar stay",
    cautious: "high",
    basis: fromMemory("EN 12953-3", undefined, "bar stays"),
  },
  stayTubeWallLeast: {
    value: "5 mm",
    means: "least wall of a stay tube",
    cautious: "high",
    basis: fromMemory("EN 12953-3", undefined, "stay tubes at the boundary of a nest; 4 mm inside it"),
  },
  ligamentShare: {
    value: "0.125",
    means: "share of the hole diameter that the ligament between two tubes has at least",
    cautious: "high",
    basis: excerptSeen(regulations, "regulation 580"),
  },
  ligamentLeast: {
    value: "12.7 mm",
    means: "what the ligament between two tubes has beside its share of the hole diameter",
    cautious: "high",
    basis: excerptSeen(regulations, "regulation 580"),
  },
  tubePlateHoleSmall: {
    value: "50.8 mm",
    means: "greatest diameter of a small tube hole",
    cautious: "low",
    basis: excerptSeen(regulations, "regulation 580"),
  },
  tubePlateLeastSmall: {
    value: "12.7 mm",
    means: "least thickness of a tube plate with small holes and expanded tubes",
    cautious: "high",
    basis: excerptSeen(regulations, "regulation 580"),
  },
  tubePlateLeastLarge: {
    value: "14.3 mm",
    means: "least thickness of a tube plate with greater holes and expanded tubes",
    cautious: "high",
    basis: excerptSeen(regulations, "regulation 580"),
  },
  holeClearanceLeast: {
    value: "0.3 mm",
    means: "least difference of the diameters of hole and tube",
    cautious: "none",
    basis: commonPractice("0.3 mm to 0.8 mm between tube and hole before expanding"),
  },
  holeClearanceMost: {
    value: "0.8 mm",
    means: "greatest difference of the diameters of hole and tube",
    cautious: "low",
    basis: commonPractice("0.3 mm to 0.8 mm between tube and hole before expanding"),
  },
  branchBoreSmall: {
    value: "50 mm",
    means: "greatest bore of a small branch",
    cautious: "low",
    basis: fromMemory("EN 12953-3", undefined, "ratio of the walls of branch and shell"),
  },
  branchWallSmall: {
    value: "2",
    means: "greatest wall of a small branch that counts as reinforcement, as a multiple of the shell's",
    cautious: "low",
    basis: fromMemory("EN 12953-3", undefined, "ratio of the walls of branch and shell"),
  },
  branchWallLarge: {
    value: "1",
    means: "greatest wall of a larger branch that counts as reinforcement, as a multiple of the shell's",
    cautious: "low",
    basis: fromMemory("EN 12953-3", undefined, "ratio of the walls of branch and shell"),
  },
  frameWall: {
    value: "2",
    means: "greatest wall of the frame of an access opening that counts, as a multiple of the shell's",
    cautious: "low",
    basis: commonPractice("the frame of a manhole is thicker than the shell it stiffens, and carries no pipe"),
  },
  branchDiameterShare: {
    value: "0.8",
    means: "greatest bore of a branch as a share of the inside diameter of the shell",
    cautious: "low",
    basis: fromMemory("EN 12953-3", undefined, "branches in cylindrical shells"),
  },
  replacedAreaShare: {
    value: "1",
    means:
      "share of the required metal an opening takes out that must be replaced near it; 0 where the code judges openings by pressure area alone",
    cautious: "high",
    basis: fromMemory(
      "ASME BPVC Section VIII, Division 1",
      undefined,
      "reinforcement of openings: the whole area is replaced; EN 12953-3 has no such rule",
    ),
  },
} satisfies Parameters;
