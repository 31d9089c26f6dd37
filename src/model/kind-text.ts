/**
 * A kind (`joint`), or the rows (`material-certificate#rows`) or revisions (`welding-procedure@revisions`) of one of its
 * lists, as definitions say what they apply to and schemas what a link leads to.
 */
export interface KindText {
  readonly kind: string;
  /** Empty: the record itself. */
  readonly list: string;
  readonly sign: "#" | "@" | "";
}

/** What a text such as `material-certificate#rows` names. */
export function kindText(text: string): KindText {
  const cut = text.search(/[#@]/);
  if (cut < 0) return { kind: text, list: "", sign: "" };
  return { kind: text.slice(0, cut), list: text.slice(cut + 1), sign: text[cut] === "@" ? "@" : "#" };
}

/** The kind alone. */
export const kindIn = (text: string): string => kindText(text).kind;

/** `kind#list`; without a list the kind. */
export const rowsOfKind = (kind: string, list: string): string => (list === "" ? kind : `${kind}#${list}`);
