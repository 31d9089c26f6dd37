/** File that marks a folder as written by this tool; a book never holds one. */
export const markerName = "published.json";
export const hashListName = "hashes.sha256";
/** Hashes of evidence that is not published because of its form; there only when there is such evidence. */
export const withheldName = "withheld.sha256";

/** What `published.json` says. */
export interface Marker {
  readonly format: 1;
  /** A findings report is what a final issue that did not pass leaves instead. */
  readonly holds: "issue" | "findings";
  readonly number: string;
  readonly revision: string;
  readonly state: "interim" | "final";
  /** Full fingerprint of the evidence. */
  readonly fingerprint: string;
  readonly tool: string;
}

export function markerText({ format, holds, number, revision, state, fingerprint, tool }: Marker): string {
  return `${JSON.stringify({ format, holds, number, revision, state, fingerprint, tool }, null, 2)}\n`;
}

/** The marker in a text, or why it is none. */
export function readMarker(text: string): Marker | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return `${markerName} is not JSON`;
  }
  if (typeof value !== "object" || value === null) return `${markerName} holds no object`;
  const fields = new Map<string, unknown>(Object.entries(value));
  const text_ = (name: string) => {
    const found = fields.get(name);
    return typeof found === "string" ? found : undefined;
  };
  if (fields.get("format") !== 1)
    return `${markerName} says format ${JSON.stringify(fields.get("format"))}; expected 1`;
  const holds = text_("holds");
  const state = text_("state");
  const [number, revision, fingerprint, tool] = ["number", "revision", "fingerprint", "tool"].map(text_);
  if (holds !== "issue" && holds !== "findings") return `${markerName} does not say what the folder holds`;
  if (state !== "interim" && state !== "final")
    return `${markerName} says state "${state ?? ""}"; expected interim or final`;
  if (fingerprint === undefined || !/^[0-9a-f]{64}$/.test(fingerprint))
    return `${markerName} holds no fingerprint of 64 hex digits`;
  if (number === undefined || revision === undefined || tool === undefined)
    return `${markerName} lacks number, revision or tool`;
  return { format: 1, holds, number, revision, state, fingerprint, tool };
}
