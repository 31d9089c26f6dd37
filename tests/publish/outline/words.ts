/** What a reader reads of blocks, without their form. */
export const wordsIn = (value: unknown): string => {
  if (typeof value === "string") return value.replaceAll("\u00a0", " ");
  if (Array.isArray(value)) return value.map(wordsIn).join("");
  if (typeof value === "object" && value !== null && "type" in value && value.type === "whole" && "text" in value)
    return wordsIn(value.text);
  return typeof value === "object" && value !== null ? Object.values(value).map(wordsIn).join(" ") : "";
};

/** Pages that blocks link to. */
export const linksIn = (value: unknown): readonly string[] => {
  if (typeof value !== "object" || value === null) return [];
  const own = "type" in value && value.type === "link" && "to" in value ? value.to : undefined;
  const page = typeof own === "object" && own !== null && "page" in own ? [String(own.page)] : [];
  return [...page, ...Object.values(value).flatMap(linksIn)];
};
