import type { ReadBack } from "../../model/read-back.ts";
import type { Block, Text } from "../blocks.ts";
import { nameOf, recordOf, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { counted } from "./titles.ts";
import { partsOfAddress } from "../../model/record.ts";

const shownNames = 60;

const unreadBecause: Readonly<Record<Exclude<ReadBack["state"], "read">, string>> = {
  recognised: "Their text was recognised by a machine on a scan: what is not found there is a note",
  "no text": "The pages they cite hold no text",
  unread: "The text of their original was not read",
};

/** What was read back from the text of originals, and what could not be. */
export function readBackBlocks(context: Context): Block[] {
  const { judged } = context;
  const { readBack, graph } = judged;
  const all = [...readBack.values()];
  const items: Text[] = (["recognised", "no text", "unread"] as const).flatMap((state) => {
    const records = [...readBack].flatMap(([address, read]) => {
      const record = recordOf(context, partsOfAddress(address));
      return read.state === state && record !== undefined ? [record] : [];
    });
    if (records.length === 0) return [];
    return [
      [
        `${unreadBecause[state]}: `,
        ...listed(
          records.map((one) => [nameOf(context, one)]),
          shownNames,
        ),
        ".",
      ],
    ];
  });
  const cites = graph.records.filter(({ value }) => value["source"] !== undefined).length;
  const values = all.reduce((sum, one) => sum + (one.state === "read" ? one.values : 0), 0);
  const sentence =
    all.length === 0
      ? "Nothing was read back from the text of originals."
      : `${counted(values, "value")} of ${counted(all.filter(({ state }) => state === "read").length, "record")} were looked for ` +
        `on the pages they were taken from, of ${counted(cites, "record")} that cite an original. This trusts the file's own text: ` +
        `it finds slips of typing, and ${
          judged.parameters.get("comparisonByReading")?.value === "allowed"
            ? "stands in place of the person who compares where nobody did, as the profile allows."
            : "does not replace the person who compares."
        }`;
  return [
    { type: "heading", level: 2, text: "Read back from the papers" },
    { type: "paragraph", text: [sentence] },
    {
      type: "paragraph",
      text: [
        "Not looked for are choices and sentences, which a paper puts in words of its own, and what the schema says no paper shows.",
      ],
    },
    ...(items.length > 0 ? [{ type: "list", ordered: false, items } satisfies Block] : []),
  ];
}
