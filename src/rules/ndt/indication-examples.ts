const magnetic = { standard: "EN ISO 23278", level: "2X" };
const ultrasonic = { standard: "EN ISO 11666", level: "3" };

/** Indications as they are accepted, and as they are not. */
export const indicationExamples = [
  { name: "nothing found", given: tested([]), objections: [] },
  {
    name: "a pore as large as permitted",
    given: tested([{ type: "2011 gas pore", size: "2.4 mm" }]),
    objections: [],
  },
  {
    name: "a larger pore",
    given: tested([{ type: "2011 gas pore", size: "2.5 mm" }]),
    objections: [
      "indication (2011 gas pore) of joint C2 is accepted and has a size of 2.5 mm; 2.4 mm is the most permitted",
    ],
  },
  {
    name: "a crack",
    given: tested([{ type: "101 longitudinal crack", length: "50 mm" }]),
    objections: ["indication (101 longitudinal crack) of joint C2 is accepted and is a crack; none is permitted"],
  },
  {
    name: "a crack by its words only",
    given: tested([{ type: "2011 crack", length: "50 mm" }]),
    objections: ["indication (2011 crack) of joint C2 is accepted and is a crack; none is permitted"],
  },
  {
    name: "a crack, by a standard nobody knows here",
    given: tested([{ type: "crack" }], { standard: "ASME VIII" }),
    objections: ["indication (crack) of joint C2 is accepted and is a crack; none is permitted"],
  },
  {
    name: "lack of fusion",
    given: tested([{ type: "401 lack of fusion", length: "5 mm" }]),
    objections: ["indication (401 lack of fusion) of joint C2 is accepted and is a lack of fusion; none is permitted"],
  },
  {
    name: "lack of fusion, rejected",
    given: { ...tested([{ type: "401", verdict: "rejected" }]), result: "rejected" },
    objections: [],
  },
  {
    name: "slag longer than permitted",
    given: tested([{ type: "301 slag", length: "9 mm", size: "1 mm" }]),
    objections: ["indication (301 slag) of joint C2 is accepted and has a length of 9 mm; 8 mm is the most permitted"],
  },
  {
    name: "a pore without size",
    given: tested([{ type: "2011 gas pore" }]),
    objections: ["indication (2011 gas pore) of joint C2 is accepted and states no size; 2.4 mm is the most permitted"],
  },
  {
    name: "something no table knows",
    given: tested([{ type: "burn-through" }]),
    objections: ["indication (burn-through) of joint C2 is accepted and names no imperfection of ISO 6520-1"],
  },
  {
    name: "a round indication of a surface test",
    given: tested([{ type: "rounded, at the toe", size: "3 mm" }], magnetic),
    objections: [],
  },
  {
    name: "a linear one",
    given: tested([{ type: "linear", length: "2 mm" }], magnetic),
    objections: ["indication (linear) of joint C2 is accepted and has a length of 2 mm; 1.5 mm is the most permitted"],
  },
  {
    name: "a round one that is long",
    given: tested([{ type: "rounded", length: "2 mm", size: "0.5 mm" }], magnetic),
    objections: [
      "indication (rounded) of joint C2 is accepted and has a length of 2 mm; 1.5 mm is the most permitted: it is longer than three times its width, and so linear",
    ],
  },
  {
    name: "an echo at its limit",
    given: tested([{ type: "volumetric", length: "8 mm", echo: "0 dB" }], ultrasonic),
    objections: [],
  },
  {
    name: "an echo above it",
    given: tested([{ type: "volumetric", length: "9 mm", echo: "-5 dB" }], ultrasonic),
    objections: [
      "indication (volumetric) of joint C2 is accepted and of 9 mm gives -5 dB; -6 dB is the most permitted",
    ],
    source: "EN ISO 11666, level 3, from 8 mm below 15 mm",
  },
  {
    name: "a planar one above it",
    given: tested([{ type: "planar", length: "9 mm", echo: "-5 dB" }], ultrasonic),
    objections: ["indication (planar) of joint C2 is accepted and of 9 mm gives -5 dB; -6 dB is the most permitted"],
  },
  {
    name: "above it, at a place whose name is that of a flaw",
    given: tested([{ type: "reflector at the fusion face", length: "9 mm", echo: "-5 dB" }], ultrasonic),
    objections: [
      "indication (reflector at the fusion face) of joint C2 is accepted and of 9 mm gives -5 dB; -6 dB is the most permitted",
    ],
  },
  {
    name: "a planar one within it",
    given: tested([{ type: "planar", length: "9 mm", echo: "-6 dB" }], ultrasonic),
    objections: [
      "indication (planar) of joint C2 is accepted and is planar; its echo lies within the level, and the report does not say that such ones are accepted",
    ],
  },
  {
    name: "one that is not planar",
    given: tested([{ type: "non-planar", length: "9 mm", echo: "-6 dB" }], ultrasonic),
    objections: [],
  },
  {
    name: "lack of fusion by its echo",
    given: tested([{ type: "401 lack of fusion", length: "9 mm", echo: "-12 dB" }], ultrasonic),
    objections: ["indication (401 lack of fusion) of joint C2 is accepted and is a lack of fusion; none is permitted"],
  },
  {
    name: "no echo",
    given: tested([{ type: "volumetric", length: "9 mm" }], ultrasonic),
    objections: ["indication (volumetric) of joint C2 is accepted and states no echo, by which it would be judged"],
  },
  {
    name: "undercut of a visual test",
    given: tested([{ type: "5011 undercut", size: "0.6 mm", length: "100 mm" }], {
      standard: "EN ISO 5817",
      level: "C",
    }),
    objections: [
      "indication (5011 undercut) of joint C2 is accepted and has a size of 0.6 mm; 0.5 mm is the most permitted",
    ],
    source: "EN ISO 5817:2014: above 3 mm, level C, a tenth of the thickness and at most 0.5 mm",
  },
];

function tested(
  indications: readonly Readonly<Record<string, string>>[],
  report: Readonly<Record<string, string>> = {},
) {
  return {
    result: "accepted",
    report: { standard: "EN ISO 10675-1", level: "2", ...report },
    joint: { $: "C2", type: "butt", thicknesses: ["8.0 mm"] },
    indications: indications.map((one) => ({ $: "indication", ...one })),
  };
}
