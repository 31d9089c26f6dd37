import type { SheetToWrite } from "../../src/sheets/cells.ts";

/** More than a list in the cell itself may hold. */
export const many = Array.from({ length: 60 }, (_, index) => `joint:L${index + 1}`);
/** Texts that a program likes to take for something else. */
export const awkward = [
  "=1+1",
  "0042",
  "8,0",
  " µ ",
  "one\ntwo\r\nthree",
  "_x0041_",
  "tab\there",
  '"quoted"',
  "\u0001",
  "😀",
];
/** A sheet with all that we write: notes, widths, lists to choose from, shaded cells, awkward texts. */
export const ours: SheetToWrite = {
  name: "weld-log",
  columns: [
    { heading: "Id", note: "What is stamped.\nIn capitals." },
    { heading: "Thickness [mm]", width: 14 },
    { heading: "Result", choices: ["accepted", "rejected"] },
    { heading: "Joint, or part", choices: many },
  ],
  rows: [["WL-1", { text: "8.0", known: true }, "accepted"], ...awkward.map((text) => [text, "", "", ""])],
};
