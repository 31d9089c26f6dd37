/**
 * Why no definition reads what a field says. identity: names the record or a row, and is judged only as a name · free text: for
 * a person to understand · for the reader: shown beside what is judged, and nothing follows from it · no method here: something
 * could be wrong with it, and no rule or calculation of ours would find out.
 */
export const unreadReasons = ["identity", "free text", "for the reader", "no method here"] as const;

export type UnreadReason = (typeof unreadReasons)[number];

/** The word `x-unread` of a field; what has no method says in a sentence what is therefore not known. */
export type Unread =
  | { readonly reason: Exclude<UnreadReason, "no method here"> }
  | { readonly reason: "no method here"; readonly why: string };

/** What a schema says in `x-unread`: a reason, or `{"no method here": "sentence"}`. Undefined for anything else. */
export function unreadOf(word: unknown): Unread | undefined {
  const plain = unreadReasons.find((reason) => reason === word);
  if (plain !== undefined) return plain === "no method here" ? undefined : { reason: plain };
  if (typeof word !== "object" || word === null || Object.keys(word).length !== 1) return undefined;
  const why = (word as Readonly<Record<string, unknown>>)["no method here"];
  return typeof why === "string" && why !== "" ? { reason: "no method here", why } : undefined;
}
