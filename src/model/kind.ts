import { fieldPath, fieldSteps, isEachStep, stepName } from "./field-steps.ts";
import type { JsonObject } from "./json.ts";
import type { Unread } from "./unread.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/** What the next job takes along of the last: the words of `x-carry`. */
export const carries = ["always", "named", "same-design", "follows", "anew", "never"] as const;

/**
 * Of a kind: always, with its originals and its comparison · named, where a carried record names it · same-design, field by
 * field, where the design is the same · anew, one record made for each job · never, evidence of one job. Of a field: the
 * same, where the record is carried; `anew` names one job and is given anew, `named` keeps the rows that carried records name,
 * and a record that `follows` a link stays behind with what it names, where that was the job's alone.
 */
export type Carry = (typeof carries)[number];

export const isCarry = (word: unknown): word is Carry => (carries as readonly unknown[]).includes(word);

/** A kind of record, read from its schema file: everything checks, links, pages and docs need to know of it. */
export interface Kind {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** Scope of its records; none named: of any book. */
  readonly scope?: string;
  /** Default section of the book its records are printed in. */
  readonly section: string;
  readonly page: "each" | "group";
  /** On paper the table of the section is all there is of a record: what else it says stands elsewhere in the book. */
  readonly tableOnPaper: boolean;
  /** What the next job takes along of its records; nothing where the schema says nothing. */
  readonly carry: Carry;
  /** Path of the field that names a record beside its id. */
  readonly label?: string;
  /** Paths of the fields a summary table shows. */
  readonly columns: readonly string[];
  readonly fields: ReadonlyMap<string, Field>;
  /** Why no paper shows its records: none of their values is read back from one. */
  readonly unprinted?: string;
  /** Milestone from which the paper is owed that a record of this kind copies. */
  readonly transcribes?: Milestone;
  /** Field of a record that owes no such paper. */
  readonly transcribesUnless?: string;
  /** Path of what numbers the paper a record copies: two with different ones are no records of one paper. */
  readonly number?: string;
  /** Path of the day of what the record is signed for: whoever signs, signs then or later. */
  readonly dated?: string;
  /** Milestone from which the original that a record of this kind names is to have been compared with it by a second person. */
  readonly compared?: Milestone;
  /** Derived kinds (heat) are made from other records and never read from files. */
  readonly derived: boolean;
  /** Composed JSON Schemas, closed at every level: a file holding one record, and a row of `records`. */
  readonly single: JsonObject;
  readonly row: JsonObject;
}

export type FieldType = "text" | "quantity" | "date" | "link" | "integer" | "number" | "boolean" | "object" | "list";

export const signs = ["positive", "not-negative"] as const;

/** Of a quantity that is above nothing by its nature (a thickness), or not below it (an allowance). */
export type Sign = (typeof signs)[number];

/** One property of a kind, or the item of a list. */
export interface Field {
  readonly name: string;
  readonly type: FieldType;
  readonly title: string;
  readonly description: string;
  /** The schema itself demands it: part of the record's identity. */
  readonly required: boolean;
  /** Allowed values. */
  readonly options?: readonly string[];
  /** Kinds (or `kind#array`, `kind@array`) a link may name. */
  readonly targets?: readonly string[];
  /** Of a link: kinds of what it names to which the record belongs, so that it comes with them from a shelf. */
  readonly belongs?: readonly string[];
  /** Of a link to a firm or person: for whom of those who must act it stands, in what concerns this record. */
  readonly acts?: readonly Owner[];
  /** Canonical unit, or "any". */
  readonly unit?: string;
  /** A temperature difference, not a temperature. */
  readonly difference?: boolean;
  readonly plausible?: readonly [string, string];
  /** What the value must be, whatever else is asked of it. */
  readonly sign?: Sign;
  /** Field beside it, of the same sort, that it is not below: the lower end of a range of which it is the upper. */
  readonly notBelow?: string;
  /** Of a field that may say *rejected*: ids of what closes it. */
  readonly closedBy?: readonly string[];
  /** Milestone at which the field is owed. */
  readonly due?: Milestone;
  /** Who owes it then; document control where the schema does not say. */
  readonly owner?: Owner;
  /** Field beside it that frees it from being owed. */
  readonly unless?: string;
  /** Fields beside it whose place it takes: they may not stand there too. */
  readonly replaces?: readonly string[];
  /** Path of the value that counts where a record states none. */
  readonly instead?: string;
  readonly date?: "event" | "limit" | "plan";
  /** What the next job takes along, where that is not what it takes of the record. */
  readonly carry?: Carry;
  /** Of the rows of a list: milestone from which the paper is owed that each of them copies. */
  readonly transcribes?: Milestone;
  /** Why no paper shows it: it is not read back from one. */
  readonly unprinted?: string;
  /** Why no definition reads what it says. */
  readonly unread?: Unread;
  /** People look the record up by it: the find page knows it. */
  readonly sought?: true;
  /**
   * What a shop heads a column of it with, beside its name and title: words of the trade, symbols of standards. Of a list whose
   * rows a closed list of names tells apart: with that name in braces, `{element} product`.
   */
  readonly called?: readonly string[];
  /** Of a list of objects: the property that identifies a row. */
  readonly rowKey?: string;
  /** Of a list of a record: the day of the record from which its paper states each row whole, so that all a row lacks is owed at once. */
  readonly wholeFrom?: string;
  /** Of a list of links of a record: the day of the record on which what they name was there. */
  readonly thereBy?: string;
  /** Of an object. */
  readonly fields?: ReadonlyMap<string, Field>;
  /** Of a list. */
  readonly item?: Field;
}

/** The field at a dotted path (`rows[].joint`, `limits.setPressure`), looking through lists, or undefined. */
export function fieldAt(kind: Pick<Kind, "fields">, path: string): Field | undefined {
  let fields: ReadonlyMap<string, Field> | undefined = kind.fields;
  let field: Field | undefined;
  for (const step of fieldSteps(path)) {
    field = fields?.get(stepName(step));
    if (field === undefined) return undefined;
    if (isEachStep(step)) field = field.item;
    fields = field?.fields ?? field?.item?.fields;
  }
  return field;
}

/** The fields on a dotted path, outermost first: those of `rows[].joint` are `rows` and `joint`. None of a kind there is none of. */
export function fieldsOn(kind: Pick<Kind, "fields"> | undefined, path: string): readonly Field[] {
  const names = fieldSteps(path).map(stepName);
  return names.flatMap((_, index) => {
    const field = kind === undefined ? undefined : fieldAt(kind, fieldPath(names.slice(0, index + 1)));
    return field === undefined ? [] : [field];
  });
}
