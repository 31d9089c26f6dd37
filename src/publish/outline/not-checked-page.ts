import type { Text } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { linkTo, nameOf, plain, recordOf, type Context } from "./context.ts";

/** What the checks leave out: said aloud, since silence is never a pass. */
export function notCheckedPage(context: Context, number: string, section: number): Page {
  const { outcomes, definitions, graph, loaded } = context.judged;
  const open = outcomes.filter(({ verdict, because }) => verdict === "not judged" && because?.type !== "not due");
  const judgedKinds = new Set([
    ...definitions.rules.map(({ kind }) => kind.split("#")[0]),
    ...definitions.calculations.map(({ appliesTo }) => appliesTo.kind.split("#")[0]),
  ]);
  const unjudged = [...graph.byKind.keys()].filter((kind) => !judgedKinds.has(kind) && kind !== "heat");
  const uncompared = graph.records.filter(
    (record) => record.value["source"] !== undefined && record.value["transcription"] === undefined,
  );
  const applied = new Set(context.judged.computed.map(({ calculation }) => calculation.id));
  const idle = definitions.calculations.filter(({ id }) => !applied.has(id));
  // A part without an acceptance of its own was drawn, but its strength was not recomputed.
  const bare = [...(graph.byKind.get("part")?.values() ?? [])].filter(
    (part) =>
      part.value["pressureBearing"] === true &&
      !context.computed.get(part)?.some((one) => one.state === "done" && one.accept.length > 0),
  );
  const names = (list: readonly string[]): Text => [list.length === 0 ? "None." : `${list.join(", ")}.`];
  return {
    url: "not-checked.html",
    number,
    title: "What was not checked",
    under: ["A check that was not made is not a check that passed."],
    section,
    blocks: [
      { type: "heading", level: 2, text: "Outside the loaded rules" },
      {
        type: "list",
        ordered: false,
        items: [
          [
            "Whether an original is genuine, and whether it describes this equipment: a person compares it with the thing.",
          ],
          [
            "Wind, earthquake, lifting, external piping loads and fatigue, unless a calculation of this book covers them by name.",
          ],
          [
            "Whether the code chosen is the right one for the place and use, and whether its edition is in force there.",
          ],
          ["Anything that is only on a scan and in no record."],
        ],
      },
      { type: "heading", level: 2, text: "Not judged in this book" },
      open.length === 0
        ? { type: "paragraph", text: ["Every check that applies was judged."] }
        : {
            type: "list",
            ordered: false,
            items: open
              .slice(0, 200)
              .map((outcome): Text => [
                `${context.titles.get(outcome.definition) ?? outcome.definition}, `,
                ...(outcome.subject === null ? ["the book"] : subjectText(context, outcome.subject)),
              ]),
          },
      { type: "heading", level: 2, text: "Pressure parts whose thickness was not recomputed" },
      {
        type: "paragraph",
        text:
          bare.length === 0
            ? ["None."]
            : [
                ...bare.flatMap((part, index): Text => [
                  index === 0 ? "" : ", ",
                  nameOf(context, part),
                  ` (${plain(part.value["name"])})`,
                ]),
                ". Openings and their reinforcement are recomputed only where the part lists them; where the maker calculated others, the document is among the records.",
              ],
      },
      { type: "heading", level: 2, text: "Kinds that are read, linked and checked for form only" },
      { type: "paragraph", text: names(unjudged.map((kind) => definitions.kinds.get(kind)?.title ?? kind)) },
      { type: "heading", level: 2, text: "Calculations that apply to nothing here" },
      { type: "paragraph", text: names(idle.map(({ title }) => title)) },
      { type: "heading", level: 2, text: "Records not yet compared with their original by a person" },
      {
        type: "paragraph",
        text:
          uncompared.length === 0
            ? ["None."]
            : uncompared
                .slice(0, 100)
                .flatMap((record, index): Text =>
                  index === 0 ? [linkTo(context, record)] : [", ", linkTo(context, record)],
                ),
      },
      { type: "heading", level: 2, text: "Files" },
      {
        type: "paragraph",
        text: [
          loaded.unreadable.length === 0
            ? "Every file of the book could be read."
            : `Not read: ${loaded.unreadable.join(", ")}.`,
        ],
      },
    ],
  };
}

function subjectText(context: Context, subject: { readonly kind: string; readonly id: string }): Text {
  const record = recordOf(context, subject);
  return record === undefined ? [`${subject.kind} ${subject.id}`] : [nameOf(context, record)];
}
