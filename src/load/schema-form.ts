import { fieldSteps } from "../model/field-steps.ts";
import { isObject, type JsonObject } from "../model/json.ts";
import { carries, fieldAt, isCarry, signs, type Kind } from "../model/kind.ts";
import { ProgramError } from "../model/program-error.ts";
import { unreadOf, unreadReasons } from "../model/unread.ts";
import { unitOf } from "../model/units.ts";
import { isMilestone, isOwner, milestones, owners } from "../model/vocabulary.ts";
import { isAnnotation, objectOf, textOf, texts } from "./inline.ts";
import { kindIn, kindText } from "../model/kind-text.ts";

/** Words a property may use beside those that only say something; anything else is a slip, or hides what is expected. */
const checking: ReadonlySet<string> = new Set(
  "type enum const pattern minLength maxLength minimum maximum exclusiveMinimum exclusiveMaximum multipleOf items minItems maxItems uniqueItems properties required additionalProperties patternProperties propertyNames".split(
    " ",
  ),
);
const names = /^[a-z][A-Za-z0-9]*$/;

/** Refuses a schema file whose head breaks the form of a kind. Throws `ProgramError` naming file and fault. */
export function checkHead(name: string, file: string, schema: JsonObject, shared: JsonObject): void {
  const need = (holds: boolean, what: string) => {
    if (!holds) throw new ProgramError(`${file}: ${what}`);
  };
  need(/^[a-z][a-z0-9-]*$/.test(name), "a kind is named in small letters, digits and hyphens");
  need(schema["$id"] === name, `"$id" is ${JSON.stringify(schema["$id"])}; expected "${name}", as the file is named`);
  for (const word of ["title", "description", "x-section"])
    need((textOf(schema, word) ?? "") !== "", `"${word}" is missing; expected a text`);
  need(["each", "group"].includes(textOf(schema, "x-page") ?? ""), '"x-page" is missing; expected "each" or "group"');
  need([undefined, "table"].includes(textOf(schema, "x-paper")), '"x-paper" may only be "table"');
  for (const word of ["x-transcribes", "x-compared"]) {
    const owed = schema[word];
    need(
      owed === undefined || (typeof owed === "string" && isMilestone(owed)),
      `"${word}" is a milestone: ${milestones.join(", ")}`,
    );
  }
  const unless = textOf(schema, "x-unless");
  need(
    unless === undefined ||
      (schema["x-transcribes"] !== undefined && Object.hasOwn(objectOf(schema, "properties"), unless)),
    '"x-unless" is a property of the kind, beside "x-transcribes"',
  );
  need(carried(schema), `"x-carry" may only be ${carries.join(", ")}`);
  need(schema["type"] === "object" && isObject(schema["properties"]), 'expected "type": "object" with "properties"');
  for (const property of [...Object.keys(shared), "kind", "$schema"])
    need(
      !Object.hasOwn(objectOf(schema, "properties"), property),
      `"${property}" is a property of every record; leave it out here`,
    );
}

/** Refuses a composed kind whose fields break the form. Throws `ProgramError` naming file, path and fault. */
export function checkKind(kind: Kind, file: string, kinds: ReadonlyMap<string, Kind>): void {
  checkObject(kind.row, "", (path, what) => {
    throw new ProgramError(`${file}: ${path === "" ? "the record" : path} ${what}`);
  });
  for (const path of [kind.label, kind.number, ...kind.columns])
    if (path !== undefined && fieldAt(kind, path) === undefined)
      throw new ProgramError(`${file}: "${path}" of x-columns, x-label or x-number is no field of ${kind.name}`);
  if (kind.dated !== undefined && fieldAt(kind, kind.dated)?.date !== "event")
    throw new ProgramError(`${file}: "${kind.dated}" of x-dated is no day of an event in ${kind.name}`);
  for (const [name, { wholeFrom }] of kind.fields)
    if (wholeFrom !== undefined && kind.fields.get(wholeFrom)?.date !== "event")
      throw new ProgramError(
        `${file}: ${name} is whole from "${wholeFrom}", which is no day of an event in ${kind.name}`,
      );
  for (const [name, { thereBy }] of kind.fields)
    if (thereBy !== undefined && kind.fields.get(thereBy)?.date !== "event")
      throw new ProgramError(`${file}: ${name} is there by "${thereBy}", which is no day of an event in ${kind.name}`);
  checkTargets(kind.row, "", file, kinds);
}

type Refuse = (path: string, what: string) => never;

function checkObject(schema: JsonObject, path: string, refuse: Refuse): void {
  const properties = objectOf(schema, "properties");
  if (schema["additionalProperties"] !== false) refuse(path, 'is open; expected "additionalProperties": false');
  for (const name of texts(schema, "required"))
    if (!Object.hasOwn(properties, name)) refuse(path, `requires "${name}", which is no property of it`);
  for (const [name, property] of Object.entries(properties)) {
    const inner = path === "" ? name : `${path}.${name}`;
    if (!names.test(name)) refuse(inner, "is no name of a property; expected letters and digits, a small letter first");
    if (name === "record") refuse(inner, "may not be named so: in paths the word leads from a row to its record");
    if (isObject(property)) {
      if ((textOf(property, "description") ?? "") === "") refuse(inner, "has no description");
      checkValue(property, inner, refuse);
      for (const one of [...texts(property, "x-replaces"), textOf(property, "x-unless") ?? name])
        if (!Object.hasOwn(properties, one)) refuse(inner, `names "${one}", which is no property beside it`);
      checkUpperEnd(property, inner, properties, refuse);
    }
  }
  for (const [name, property] of Object.entries(objectOf(schema, "patternProperties")))
    if (isObject(property)) checkValue(property, `${path}.${name}`, refuse);
}

/** Both ends of a range are of one sort, else they could not be compared. */
function checkUpperEnd(property: JsonObject, path: string, properties: JsonObject, refuse: Refuse): void {
  const name = textOf(property, "x-not-below");
  if (name === undefined) return;
  const lower = objectOf(properties, name);
  const sort = textOf(property, "x-type");
  const same = ["x-type", "x-unit"].every((word) => textOf(lower, word) === textOf(property, word));
  if (!same || !["quantity", "date", "day"].includes(sort ?? ""))
    refuse(path, `is not below "${name}"; expected a quantity in its unit or a day like it, beside it`);
}

const carried = (schema: JsonObject) => schema["x-carry"] === undefined || isCarry(schema["x-carry"]);

function checkValue(schema: JsonObject, path: string, refuse: Refuse): void {
  const type = textOf(schema, "type");
  const named = textOf(schema, "x-type");
  for (const word of Object.keys(schema))
    if (!checking.has(word) && !isAnnotation(word)) refuse(path, `uses "${word}", which is no word of this form`);
  if (type === undefined) refuse(path, 'has no "type"');
  if (schema["pattern"] !== undefined && schema["maxLength"] === undefined)
    refuse(path, 'has a "pattern" without "maxLength"');
  if (named === "quantity") {
    const unit = textOf(schema, "x-unit");
    if (unit === undefined) refuse(path, 'is a quantity without "x-unit"');
    else if (unit !== "any" && unitOf(unit) === undefined) refuse(path, `has the unit "${unit}", which is not listed`);
  }
  const sign = schema["x-sign"];
  if (sign !== undefined && (named !== "quantity" || !signs.some((one) => one === sign)))
    refuse(path, `has an "x-sign" that only a quantity may have; expected ${signs.join(" or ")}`);
  if ((named === "date" || named === "day") && !["event", "limit", "plan"].includes(textOf(schema, "x-date") ?? ""))
    refuse(path, 'is a date without "x-date"; expected "event", "limit" or "plan"');
  const rejects = texts(schema, "enum").includes("rejected");
  const closed = texts(schema, "x-closed-by").length > 0;
  if (closed ? !rejects && type !== "boolean" : rejects)
    refuse(
      path,
      'has "rejected" among its values, or "x-closed-by", without the other; expected what closes a rejection',
    );
  if (named === "link" && texts(schema, "x-link").length === 0) refuse(path, 'is a link without "x-link"');
  const due = textOf(schema, "x-due");
  if (due !== undefined && !isMilestone(due))
    refuse(path, `is due at "${due}", which is no milestone; there are ${milestones.join(", ")}`);
  const owner = textOf(schema, "x-owner");
  if (owner !== undefined && (!isOwner(owner) || due === undefined))
    refuse(path, `has the "x-owner" ${JSON.stringify(owner)}; expected, beside "x-due", one of ${owners.join(", ")}`);
  const paper = textOf(schema, "x-transcribes");
  if (paper !== undefined && (!isMilestone(paper) || type !== "object" || !path.endsWith("[]")))
    refuse(path, 'has "x-transcribes", which only rows of a list may have, with a milestone');
  const strangers = texts(schema, "x-acts").filter((one) => !isOwner(one));
  if (strangers.length > 0 || (schema["x-acts"] !== undefined && named !== "link"))
    refuse(path, `has an "x-acts" that no link may have; expected a link, and some of ${owners.join(", ")}`);
  checkUnread(schema, path, refuse);
  if (!carried(schema)) refuse(path, `has an "x-carry" that is none of ${carries.join(", ")}`);
  if (type === "object") checkObject(schema, path, refuse);
  if (type === "array") {
    const items = schema["items"];
    if (isObject(items)) checkValue(items, `${path}[]`, refuse);
    else refuse(path, 'is a list without "items"');
    const key = textOf(schema, "x-row-key");
    if (key !== undefined && !(isObject(items) && Object.hasOwn(objectOf(items, "properties"), key)))
      refuse(path, `has the row key "${key}", which is no property of its items`);
    if (schema["x-whole-from"] !== undefined && (key === undefined || /[.[]/.test(path)))
      refuse(path, 'has "x-whole-from", which only a list of the record may have, whose rows have a key');
  }
}

/** What is measured, chosen or dated could be wrong: that nothing judges it needs a sentence. */
function checkUnread(schema: JsonObject, path: string, refuse: Refuse): void {
  const word = schema["x-unread"];
  if (word === undefined) return;
  const unread = unreadOf(word);
  if (unread === undefined)
    refuse(
      path,
      `has the "x-unread" ${JSON.stringify(word)}; expected ${unreadReasons.slice(0, -1).join(", ")}, or {"no method here": "a sentence"}`,
    );
  const judgeable = schema["x-type"] === "quantity" || schema["x-date"] === "event" || texts(schema, "enum").length > 0;
  if (judgeable && unread.reason !== "no method here")
    refuse(
      path,
      'is a quantity, a choice or the day of an event: its "x-unread" may only say {"no method here": "a sentence"}',
    );
  if (schema["type"] === "object" || isObject(objectOf(schema, "items")["properties"]))
    refuse(path, 'has an "x-unread", which only a value may have');
}

/** Each target of a link is a kind, or a list with row keys or revisions in one. */
function checkTargets(schema: JsonObject, path: string, file: string, kinds: ReadonlyMap<string, Kind>): void {
  for (const target of texts(schema, "x-link")) {
    const { kind: kindName, list } = kindText(target);
    const kind = kinds.get(kindName);
    if (kind === undefined)
      throw new ProgramError(`${file}: ${path} links to "${target}"; there is no kind "${kindName}"`);
    if (list !== "" && kind.fields.get(list)?.type !== "list")
      throw new ProgramError(`${file}: ${path} links to "${target}"; ${kindName} has no list "${list}"`);
  }
  const named = new Set(texts(schema, "x-link").map(kindIn));
  for (const owner of texts(schema, "x-belongs"))
    if (!named.has(owner)) throw new ProgramError(`${file}: ${path} belongs to "${owner}", which it does not link to`);
  const instead = textOf(schema, "x-instead");
  if (instead !== undefined) {
    const [kindName = "", name = ""] = fieldSteps(instead);
    const field = kinds.get(kindName)?.fields.get(name);
    if (field?.unit === undefined || field.unit !== textOf(schema, "x-unit"))
      throw new ProgramError(`${file}: ${path} takes "${instead}" instead, which is no quantity of its unit`);
  }
  for (const holder of [objectOf(schema, "properties"), objectOf(schema, "patternProperties")])
    for (const [name, property] of Object.entries(holder))
      if (isObject(property)) checkTargets(property, path === "" ? name : `${path}.${name}`, file, kinds);
  const items = schema["items"];
  if (isObject(items)) checkTargets(items, `${path}[]`, file, kinds);
}
