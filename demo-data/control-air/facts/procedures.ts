import { procedure, type Approval, type ProcedureText } from "../../order/facts/procedure.ts";

const forThisVessel: Approval = {
  prepared: "N1",
  checked: "N3",
  approved: "N3",
  date: "2026-05-04",
  on: "2026-05-08",
  reason: "vessel TQ423-02, closed without an opening",
};

/** What the testers' usual procedures leave out: the closing seam of a vessel into which no hand and no source goes. */
export const procedures: readonly ProcedureText[] = [
  {
    record: procedure(
      "PRC-RTD",
      "ndt",
      "GT-P-02-D",
      "Radiographic testing of closing seams, double wall, X-ray and film",
      "1",
      { ...forThisVessel, prepared: "N2" },
      "RT",
    ),
    paragraphs: [
      [
        "Scope",
        "Circumferential butt welds of closed vessels, 300 mm to 400 mm outside diameter, wall 6 mm to 10 mm, ferritic steel. Whatever GT-P-02 covers is tested by it.",
      ],
      [
        "Technique",
        "EN ISO 17636-1 class B, double wall, single image: source outside, film on the far side, only the wall next to the film is judged. The source stands beside the plane of the weld just so far that the weld it shines through does not lie on the image. Film class C4 or better, lead screens 0.02 mm. Density 2.3 to 4.0 in the weld.",
      ],
      [
        "Length of a film",
        "At most 125 mm of the seam at 700 mm from source to film: there the rays pass no more than a tenth farther through the wall than in the middle.",
      ],
      [
        "Wire",
        "Indicator on the film side, marked F. Comparison exposure 26-V-03 of 2026-05-04, on an open ring of 355.6 mm × 8 mm with an indicator on either side of the wall next to the film: where W14 is just seen on the source side, W15 is seen on the film side. W15 is asked for on every film.",
      ],
      [
        "Assessment",
        "As in GT-P-02: quality level C, acceptance level 2; places from the zero mark; every crossing of seams lies on a film.",
      ],
    ],
  },
  {
    record: procedure(
      "PRC-VTR",
      "ndt",
      "GT-P-01-R",
      "Visual testing of closed vessels by endoscope",
      "1",
      forThisVessel,
      "VT",
    ),
    paragraphs: [
      ["Scope", "Inside of welds of ferritic vessels that the eye cannot reach, after cleaning."],
      [
        "Conditions",
        "Video endoscope led in through two nozzles, so that every weld is seen from two directions; end of the probe not farther than 60 mm from the weld. Before and after, the line 0.1 mm wide of the test card is to be seen at that distance.",
      ],
      [
        "Assessment",
        "Root, penetration, undercut, spatter and cleanness, to the quality level stated on the weld map; the report names each joint with its length.",
      ],
      ["Personnel", "Certified for method VT at level 2, near vision tested within twelve months."],
    ],
  },
];
