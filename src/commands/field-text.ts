import type { Field } from "../model/kind.ts";

/** One line for each field, nested ones indented: name, what it holds, when it is owed, what it means. */
export function fieldLines(fields: ReadonlyMap<string, Field>): readonly string[] {
  return [...fields.values()].flatMap((field) => [
    `${field.name}: ${[typeText(field), ...traits(field)].join(", ")}`,
    ...(field.description === "" ? [] : [`  ${field.description}`]),
    ...(field.called === undefined ? [] : [`  in sheets also: ${field.called.join(" · ")}`]),
    ...fieldLines(innerFields(field)).map((line) => `  ${line}`),
  ]);
}

function innerFields(field: Field): ReadonlyMap<string, Field> {
  return field.fields ?? field.item?.fields ?? new Map<string, Field>();
}

function typeText(field: Field): string {
  switch (field.type) {
    case "list":
      return field.item === undefined ? "list" : `list of ${typeText(field.item)}`;
    case "quantity":
      return `quantity${unitText(field)}`;
    case "link":
      return `link to ${(field.targets ?? []).join(" or ")}`;
    case "text":
      return field.options === undefined ? "text" : `one of ${field.options.join(" | ")}`;
    case "date":
      return field.date === undefined ? "date" : `date (${field.date})`;
    default:
      return field.type;
  }
}

function unitText({ unit, difference }: Field): string {
  if (unit === undefined || unit === "any") return " in any unit";
  if (unit === "1") return " without unit";
  return ` in ${unit}${difference === true ? " (a difference)" : ""}`;
}

function traits({
  required,
  due,
  owner,
  unless,
  replaces = [],
  plausible,
  sign,
  notBelow,
  rowKey,
}: Field): readonly string[] {
  return [
    ...(required ? ["always needed"] : []),
    ...(due === undefined
      ? []
      : [
          `due at ${due}${owner === undefined ? "" : `, owed by ${owner}`}${unless === undefined ? "" : `, unless ${unless} is there`}`,
        ]),
    ...(replaces.length === 0 ? [] : [`instead of ${replaces.join(", ")}`]),
    ...(sign === undefined ? [] : [sign === "positive" ? "above 0" : "not below 0"]),
    ...(notBelow === undefined ? [] : [`not below ${notBelow}`]),
    ...(plausible === undefined ? [] : [`usually ${plausible[0]} to ${plausible[1]}`]),
    ...(rowKey === undefined ? [] : [`rows named by ${rowKey}`]),
  ];
}
