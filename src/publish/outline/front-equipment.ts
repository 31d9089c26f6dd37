import { isList, isObject } from "../../model/json.ts";
import { countSentence, markOf } from "../../model/mark.ts";
import { type BookRecord } from "../../model/record.ts";
import type { Block, Fact } from "../blocks.ts";
import { linkTo, type Context } from "./context.ts";
import { lowerTitle } from "../../model/titles.ts";
import { counted } from "./titles.ts";
import { labelOfField, textOf } from "./values.ts";

/** The equipment's own fields as facts: limits and directive data are objects of one level. */
export function equipmentFacts(context: Context, equipment: BookRecord): Block[] {
  const kind = context.kinds.get("equipment");
  const facts = [...(kind?.fields ?? [])].flatMap(([field, { fields, ...rest }]): Fact[] => {
    const value = equipment.value[field];
    if (
      value === undefined ||
      ["id", "remarks", "source", "sources", "attachments", "signatures", "imported", "kind"].includes(field)
    )
      return [];
    if (isObject(value) && fields !== undefined)
      return [...fields].flatMap(([inner, innerField], index): Fact[] => {
        const one = value[inner];
        if (one === undefined || isObject(one)) return [];
        // "Limits" say themselves what they are; a standard or a name does not.
        const label =
          field === "limits"
            ? labelOfField(innerField)
            : `${labelOfField(rest)}, ${lowerTitle(labelOfField(innerField))}`;
        return [
          {
            label,
            value: textOf(context, equipment, innerField, one, `/${field}/${inner}`),
            ...(index === 0 && { gap: true }),
          },
        ];
      });
    return isList(value) && value.some(isObject)
      ? []
      : [{ label: labelOfField(rest), value: textOf(context, equipment, rest, value, `/${field}`) }];
  });
  return [
    {
      type: "facts",
      facts,
      notes: [
        { lead: "Source", text: [linkTo(context, equipment), " ", { type: "code", text: context.source(equipment) }] },
        { text: [factsSentence(context)] },
      ],
    },
  ];
}

/** What became of the figures that more than one record states. */
function factsSentence({ judged: { definitions, outcomes } }: Context): string {
  const facts = new Set(definitions.facts.map(({ id }) => id));
  const marks = outcomes.filter(({ definition }) => facts.has(definition)).map(markOf);
  return `${countSentence(marks, (count) => counted(count, "figure that several records state", "figures that several records state"))}.`;
}
