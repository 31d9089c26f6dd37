import { ownChoice } from "../../model/basis.ts";
import { anyOf, list, optional, text, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";

/** "job TQ417, joint N07" names a joint of the book whose equipment has the serial number TQ417-01. */
const named = /\bjoint\s+([\p{L}\p{N}.-]+)/iu;
const words = (text: string) => text.match(/[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*/gu) ?? [];

export const confirmedByWork = rule({
  id: "welder-confirmed-by-own-work",
  title: "A welder is confirmed by a joint that he welded",
  basis: ownChoice("work of this job is in this book: who welded it can be looked up"),
  kind: "welder-qualification",
  when: [{ path: "confirmations[].evidence", exists: true }],
  severity: "query",
  owner: "welding coordination",
  inputs: {
    welder: text("person"),
    confirmations: anyOf(things("confirmations[]", { evidence: optional(text("evidence")) })),
    serials: anyOf(list(text("book.equipment.serial"))),
    logged: anyOf(list(text("book.weld-log.joint"))),
    joints: anyOf(
      things("book.joint", {
        welders: anyOf(list(text("<weld-log:joint>.runs[].welders[]"))),
        repairers: anyOf(list(text("<repair:joint>.welders[]"))),
      }),
    ),
  },
  *check({ welder, confirmations, serials, logged, joints }, qualification) {
    for (const confirmation of confirmations) {
      const { evidence } = confirmation;
      const number = evidence === undefined ? undefined : named.exec(evidence)?.[1];
      if (evidence === undefined || number === undefined) continue;
      const here = words(evidence).some((word) =>
        serials.some((serial) => serial === word || (word.length >= 4 && serial.startsWith(`${word}-`))),
      );
      if (!here) continue;
      const joint = joints.find(({ $ }) => $.id === number);
      // A joint that others name and nobody recorded is missed by itself.
      if (joint === undefined && (joints.length === 0 || logged.includes(number))) continue;
      const makers = joint === undefined ? [] : [...new Set([...joint.welders, ...joint.repairers])];
      // What nobody has logged yet may be his.
      if (joint !== undefined && (makers.length === 0 || makers.includes(welder))) continue;
      yield {
        at: [confirmation, "evidence"],
        accuses: [[confirmation, "evidence"]],
        name: number,
        message: `${qualification.name} is confirmed by ${evidence}; ${joint === undefined ? `this book has no joint ${number}` : `${number} was welded by ${makers.join(", ")}, not by ${welder}`}`,
        why: "a welder is confirmed by what he welded himself",
        hint: "compare with the certificate and the weld log: name the joint he welded; if there is none, he is not confirmed",
        ...(joint !== undefined && { related: [{ at: joint, message: "this joint" }] }),
      };
    }
  },
  examples: [
    { name: "his own", given: confirmed("job TQ417, joint N07"), objections: [] },
    { name: "of another job", given: confirmed("job TQ409, joint K9"), objections: [] },
    {
      name: "of another welder",
      given: confirmed("job TQ417, joint K3"),
      objections: ["X-01 is confirmed by job TQ417, joint K3; K3 was welded by W03, not by W12"],
    },
    {
      name: "of a joint that is missed",
      given: { ...confirmed("job TQ417, joint K9"), logged: ["K9"] },
      objections: [],
    },
    {
      name: "of nobody",
      given: confirmed("job TQ417, joint K9"),
      objections: ["X-01 is confirmed by job TQ417, joint K9; this book has no joint K9"],
    },
  ],
});

function confirmed(evidence: string) {
  return {
    welder: "W12",
    confirmations: [{ evidence }],
    serials: ["TQ417-01"],
    joints: [
      { $: "N07", welders: ["W12"] },
      { $: "K3", welders: ["W03"] },
    ],
  };
}
