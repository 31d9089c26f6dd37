import { bearing, proofsOf, slip, takenBy, type Proof, type Side, type Taken } from "../../judge/proved.ts";
import type { Computed } from "../../model/book.ts";
import { addTo } from "../../model/grouped.ts";
import { fieldsOn } from "../../model/kind.ts";
import { lowerTitle, titleOfDefinition } from "../../model/titles.ts";
import type { Block, Row, Text } from "../blocks.ts";
import { linkTo, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import type { Numbering } from "./record-blocks.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { counted } from "./titles.ts";
import { labelOfField } from "./values.ts";

const tenth = `${slip * 100} %`;

const wrongTo = (sides: readonly Side[]): string =>
  sides.length > 1 ? `${tenth} too low, and ${tenth} too high` : `${tenth} too ${sides[0] ?? ""}`;

/** How the values that enter a calculation by one symbol are proved; nothing of what is no quantity of a record. */
export function provedText(context: Context, computed: Computed, symbol: string): Text {
  if (computed.state !== "done") return [];
  const proofs = proofsOf(context.judged);
  const own = takenBy(context.judged, computed).flatMap(({ symbol: name, address }) => {
    const proof = name === symbol ? proofs.get(address) : undefined;
    return proof === undefined ? [] : [proof];
  });
  const [only] = own;
  if (only === undefined) return [];
  if (own.length === 1) return oneText(context, only);
  const stated = own.filter(({ state }) => state === "as stated").length;
  const confirmed = own.filter(({ state }) => state === "confirmed").length;
  return [
    [
      ...(confirmed > 0 ? [`${confirmed} confirmed`] : []),
      ...(stated > 0 ? [`${stated} as stated`] : []),
      ...(own.length > confirmed + stated ? [`${own.length - confirmed - stated} of little weight`] : []),
    ].join(", "),
  ];
}

function oneText(context: Context, proof: Proof): Text {
  switch (proof.state) {
    case "confirmed": {
      const [first = "", ...others] = proof.by;
      const title = lowerTitle(titleOfDefinition(context.judged.titles, first));
      return [`confirmed: ${title}${others.length > 0 ? `, and ${others.length} more` : ""}`];
    }
    case "as stated":
      return [{ type: "strong", text: "as stated" }, `: if it is ${wrongTo(proof.sides)}, nothing here finds it`];
    case "slight":
      return ["of little weight"];
  }
}

/** How many values that these calculations take something else confirms; undefined where they take none. */
export function provedSentence(context: Context, computed: readonly Computed[]): string | undefined {
  const proofs = proofsOf(context.judged);
  const own = new Map(
    computed.flatMap((one) =>
      one.state === "done" ? takenBy(context.judged, one).map(({ address }) => [address, proofs.get(address)]) : [],
    ),
  );
  const count = (state: Proof["state"]) => [...own.values()].filter((proof) => proof?.state === state).length;
  if (own.size === 0) return undefined;
  return `Of ${counted(own.size, "value")} of records that they take, ${count("confirmed")} are confirmed by something else in the book, ${count("as stated")} are as stated, and ${count("slight")} are of little weight.`;
}

/** Values that calculations take and nothing confirms, for the page of what was not checked. */
export function statedBlocks(context: Context, next: Numbering): Block[] {
  const { judged } = context;
  const proofs = proofsOf(judged);
  const taken = new Map<string, Taken>();
  for (const one of judged.computed)
    if (one.state === "done") for (const own of takenBy(judged, one)) taken.set(own.address, own);
  const groups = new Map<string, { readonly one: Taken; readonly sides: readonly Side[] }[]>();
  for (const one of taken.values()) {
    const proof = proofs.get(one.address);
    if (proof?.state !== "as stated") continue;
    const path = pathOf(one);
    addTo(groups, `${one.record.kind} ${path} ${proof.sides.join(" ")}`, { one, sides: proof.sides });
  }
  const rows = [...groups.values()].map((group): Row => {
    const [first] = group;
    const records = [...new Set(group.map(({ one }) => one.record))];
    return {
      cells: [
        wordsCell(first === undefined ? "" : words(context, first.one)),
        {
          type: "text",
          text: listed(
            records.map((record) => [linkTo(context, record)]),
            shown,
          ),
        },
        wordsCell(first === undefined ? "" : wrongTo(first.sides)),
      ],
    };
  });
  const stated = [...proofs.values()].filter(({ state }) => state === "as stated").length;
  return [
    { type: "heading", level: 2, text: "Values that calculations take as stated" },
    {
      type: "paragraph",
      text: [
        proofs.size === 0
          ? "No calculation takes a quantity from a record."
          : `Each quantity that a calculation takes from a record was made ${tenth} smaller and greater, and everything that reads it was judged again, but for the maker’s own sheets, which repeat it. ` +
            `Where an acceptance became easier to meet by more than ${bearing * 100} % of what it is held against, and nothing objected, the value stands as it was stated: ${stated} of ${proofs.size}. They rest on whoever recorded them, and on the comparison with the paper.`,
      ],
    },
    ...(rows.length === 0
      ? []
      : [
          plainTable(
            next(),
            "Values that calculations take as stated",
            { Value: 3, "Recorded in": 5, "What nothing would find": 3 },
            rows,
          ),
        ]),
  ];
}

const shown = 12;

/** The path of a field, rows without their numbers: `regions[].pitch`. */
const pathOf = ({ pointer }: Taken): string =>
  pointer
    .slice(1)
    .replaceAll(/\/\d+(?=\/|$)/g, "[]")
    .replaceAll("/", ".");

/** "Part: regions, pitch". */
function words({ kinds }: Context, one: Taken): string {
  const kind = kinds.get(one.record.kind);
  const fields = fieldsOn(kind, pathOf(one)).map((field) => labelOfField(field).toLowerCase());
  return `${kind?.title ?? one.record.kind}: ${fields.join(", ")}`;
}
