import { readFields, unreadFields, valueFields, type ValueField } from "../../judge/unread.ts";
import { builtInRules } from "../../judge/built-in.ts";
import { fileRules } from "../../load/file-rules.ts";
import type { BuiltIn } from "../../model/definitions.ts";
import { fieldsOn, type Field, type Kind } from "../../model/kind.ts";
import { eachLeaf } from "../../model/leaves.ts";
import type { UnreadReason } from "../../model/unread.ts";
import type { Block, Row, Text } from "../blocks.ts";
import type { Context } from "./context.ts";
import type { Numbering } from "./record-blocks.ts";
import { plainTable, wordsCell } from "./plain-table.ts";
import { labelOfField } from "./values.ts";

type Why = UnreadReason | "elsewhere" | "none";

/** In words, for what is listed below the table: what nothing follows from. */
const listedAs = {
  elsewhere: "Read only for equipment of another scope",
  "for the reader": "Shown for the reader",
  "free text": "Text for a person to understand",
  identity: "Names of the record or its paper, judged only as names",
} as const satisfies Partial<Record<Why, string>>;

/**
 * What records of this book state and nothing judges: in a table what could be wrong and would not be found, below it what only
 * names, tells or shows. What is common to all kinds is said once.
 */
export function unreadBlocks(context: Context, next: Numbering): Block[] {
  const { definitions, graph } = context.judged;
  const read = readFields(definitions, builtIn);
  const whole = definitions.whole === undefined ? read : readFields(definitions.whole, builtIn);
  const kinds = [...definitions.kinds.values()].filter(({ name, derived }) => !derived && graph.byKind.has(name));
  const all = kinds.map((kind) => {
    const stated = statedFields(context, kind);
    const unread = unreadFields(kind, read).filter(
      ({ path, field }) => stated.has(field) && !everywhere.has(path.split(/[.[]/)[0] ?? ""),
    );
    const because = (why: Why) =>
      unread.filter(({ field }) => (whole.has(field) ? "elsewhere" : (field.unread?.reason ?? "none")) === why);
    return { kind, because };
  });
  const rows = all.flatMap(({ kind, because }): readonly Row[] => {
    const none = because("none");
    const methodless = because("no method here");
    return [
      ...(none.length === 0 ? [] : [rowOf(kind, none, "No definition of this book reads it.")]),
      ...methodless.map((one) =>
        rowOf(kind, [one], one.field.unread?.reason === "no method here" ? one.field.unread.why : ""),
      ),
    ];
  });
  const items = (Object.keys(listedAs) as (keyof typeof listedAs)[]).flatMap((why): Text[] => {
    const named = all.flatMap(({ kind, because }) => {
      const own = because(why);
      return own.length === 0 ? [] : [`${kind.title} (${own.map((one) => words(kind, one).toLowerCase()).join("; ")})`];
    });
    return named.length === 0 ? [] : [[{ type: "strong", text: listedAs[why] }, `: ${named.join(", ")}.`]];
  });
  return [
    { type: "heading", level: 2, text: "Recorded, and judged by nothing" },
    {
      type: "paragraph",
      text: [
        "A value is judged where a rule, a calculation or a comparison takes what it says. That it is there, has the form of its field " +
          "and stands on the paper it was read from is checked for all values, and not counted here. " +
          (rows.length === 0
            ? "Of what records of this book measure, choose or date, something judges every field."
            : "The table lists what records of this book state and no definition would find wrong."),
      ],
    },
    ...(rows.length === 0
      ? []
      : [
          plainTable(
            next(),
            "Recorded, and judged by nothing",
            { Kind: 2, "What is recorded": 5, "Why nothing judges it": 3 },
            rows,
          ),
        ]),
    {
      type: "list",
      ordered: false,
      items: [
        ...items,
        [
          { type: "strong", text: "Of any record" },
          ": its number, remarks, attachments, and the note of the sheet it was imported from.",
        ],
      ],
    },
  ];
}

const builtIn: readonly BuiltIn[] = [...builtInRules, ...fileRules];

/** Properties every record may have: said in the paragraph. */
const everywhere: ReadonlySet<string> = new Set(["id", "remarks", "attachments", "imported"]);

const rowOf = (kind: Kind, fields: readonly ValueField[], why: string): Row => ({
  cells: [wordsCell(kind.title), wordsCell(fields.map((one) => words(kind, one)).join("; ")), wordsCell(why)],
});

/** "Rows, density". */
const words = (kind: Kind, { path }: ValueField): string =>
  fieldsOn(kind, path)
    .map((field, index) => (index === 0 ? labelOfField(field) : labelOfField(field).toLowerCase()))
    .join(", ");

function statedFields({ judged }: Context, kind: Kind): ReadonlySet<Field> {
  const stated = new Set<Field>();
  for (const record of judged.graph.byKind.get(kind.name)?.values() ?? [])
    eachLeaf(record, kind.fields, ({ field }) => stated.add(field));
  // Values of a list have the field of its item.
  for (const { field } of valueFields(kind)) if (field.item !== undefined && stated.has(field.item)) stated.add(field);
  return stated;
}
