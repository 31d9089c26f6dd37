import type { Procedure } from "../../generated/records.ts";
import { procedures as shop } from "../../order/facts/procedures.ts";
import type { Paragraphs } from "../../sheets/procedure.ts";

const ultrasonic: Paragraphs = [
  ["Scope", "Corner joints and butt welds of ferritic steel, 12 mm and thicker, from one or both surfaces."],
  [
    "Technique",
    "Probes 45°, 60° and 70°, 4 MHz; also straight beam for the bond to the plate. Reference: side-drilled holes Ø 3 mm, transfer correction measured at each joint.",
  ],
  ["Surface", "Clean and smooth over the width of one and a half skips; temperature 5 °C to 40 °C."],
  ["Waiting time", "Not before the day after the last run."],
  ["Assessment", "Acceptance level 3. Echoes above the recording level are measured for length at half amplitude."],
];

/** What a procedure says that both shops share: the testers' and the maker's own, by the same number. */
export function procedureWords({ id, method }: Procedure): Paragraphs {
  const words = method === "UT" ? ultrasonic : shop.find(({ record }) => record.id === id)?.paragraphs;
  if (words === undefined) throw new Error(`procedure ${id} has no words`);
  return words;
}
