import { ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, text } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** Whoever typed from a paper, if only one record of several, does not compare with it. */
export const comparedByAnother = rule({
  id: "original-compared-by-another",
  title: "What is read from an original is compared with it by somebody who typed none of it",
  basis: ownChoice("nobody sees the own slip: two people, two looks"),
  kind: "original",
  when: [{ path: "transcription.comparedBy", exists: true }],
  severity: "query",
  owner: "document control",
  inputs: {
    typed: anyOf(list(text("transcription.enteredBy[]"))),
    compared: optional(text("transcription.comparedBy")),
  },
  *check({ typed, compared }, original) {
    if (compared === undefined || !typed.includes(compared)) return;
    const alone = typed.length === 1;
    yield {
      at: "compared",
      message: alone
        ? `what is read from original ${original.name} was typed and compared by ${compared} alone`
        : `what is read from original ${original.name} was compared by ${compared}, who typed some of it`,
      why: "the same person is named for both",
      hint: "have a second person compare it, or correct the slip",
    };
  },
  examples: [
    { name: "two people", given: { typed: ["P03"], compared: "P04" }, objections: [] },
    {
      name: "one person",
      given: { typed: ["P03"], compared: "P03" },
      objections: ["what is read from original X-01 was typed and compared by P03 alone"],
    },
    {
      name: "one of two who typed",
      given: { typed: ["P03", "P04"], compared: "P04" },
      objections: ["what is read from original X-01 was compared by P04, who typed some of it"],
    },
  ],
});
