import { sourceDistance } from "../calculations/source-distance.ts";
import type { AnswerSource } from "../model/answer.ts";
import { ask, mm } from "./ask.ts";

export const unsharpness: AnswerSource = {
  source:
    "U.S. Department of Defense, TM 1-1500-335-23 (T.O. 33B-1-1), 6.7.2.5.2, example of the nomogram of geometric unsharpness",
  class: "excerpt seen",
  answers: [
    {
      what: "geometric unsharpness",
      given: "focus of 6 mm, specimen of 1.5 in, 20 in from source to film",
      printed: 0.47,
      unit: "mm",
      ours: () => ask(sourceDistance, { d: 6, f: mm(18.5), k: 7.5, t: mm(1.5), w: 0, c: 0 }, "Ug"),
      within: 0.04,
      because: "read off a nomogram, whose distance is that to the film; ours is that to the object",
      reaches: ["source-distance"],
    },
  ],
};
