import { closer } from "../model/closer.ts";
import { anyOf, date, list, optional, text, things } from "../model/input.ts";
import { closed, holds, lacks } from "./repeated.ts";

/** From the test itself, or from one of its rows. */
const weldedAgainAt = (id: string, kind: string, at: string) =>
  closer({
    id,
    title: "a later production test for the same joints that is accepted",
    kinds: [kind],
    owner: "testing",
    inputs: {
      joints: anyOf(list(text(`${at}joints[]`))),
      day: date(`${at}date`),
      others: anyOf(
        things("book.production-test", {
          joints: anyOf(list(text("joints[]"))),
          day: optional(date("date")),
          result: optional(text("result")),
          parts: anyOf(list(text("otherTests[].result"))),
        }),
      ),
    },
    close({ joints, day, others }, subject) {
      const same = joints.length === 0 ? [] : others.filter((one) => holds(one.joints, joints));
      return closed(
        day,
        same.map(({ $, day: on, result, parts }) => ({ $, day: on, results: [result, ...parts] })),
        subject,
      );
    },
    examples: [
      {
        name: "a second plate",
        given: {
          joints: ["L1"],
          day: "2026-05-20",
          others: [{ $: "PRT-02", joints: ["L1"], day: "2026-06-02", result: "accepted", parts: ["accepted"] }],
        },
        expect: "repeated: PRT-02",
      },
      {
        name: "a part of the second is rejected",
        given: {
          joints: ["L1"],
          day: "2026-05-20",
          others: [{ $: "PRT-02", joints: ["L1"], day: "2026-06-02", result: "accepted", parts: ["rejected"] }],
        },
        expect: lacks,
      },
    ],
  });

export const weldedAgain = weldedAgainAt("later-production-test", "production-test", "");
export const partWeldedAgain = weldedAgainAt("later-production-test-row", "production-test#otherTests", "record.");
