import { lowerTitle } from "../../model/titles.ts";

/** "certificates of the body", "answered queries": the noun before " of " is the one that is counted. */
export function severalOf(title: string): string {
  const lower = lowerTitle(title);
  const cut = lower.indexOf(" of ");
  const [head, tail] = cut < 0 ? [lower, ""] : [lower.slice(0, cut), lower.slice(cut)];
  const plural = /equipment$|personnel$/.test(head)
    ? head
    : /[^aeiou]y$/.test(head)
      ? `${head.slice(0, -1)}ies`
      : /(s|x|ch)$/.test(head)
        ? `${head}es`
        : `${head}s`;
  return plural + tail;
}

/** "11 joints", "1 certificate of the body". */
export const countedTitle = (count: number, title: string): string =>
  `${count} ${count === 1 ? lowerTitle(title) : severalOf(title)}`;

/** "thickness" → "Thickness": the head of a sentence. */
export const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** "1 check", "3 checks". */
export const counted = (count: number, one: string, several = `${one}s`): string =>
  `${count} ${count === 1 ? one : several}`;
