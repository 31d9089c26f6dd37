import type { PageContext } from "../../../templates/context.ts";
import { ProgramError } from "../../model/program-error.ts";
import { relativeLink, relativePath } from "./links.ts";

/** What the templates of one page share while it is printed once. */
export function pageContext(url: string): PageContext {
  const taken = new Set(["text"]);
  let names = 0;
  let level: 1 | 2 | 3 = 1;
  return {
    href: (target) => relativeLink(url, target),
    file: (path) => relativePath(url, path),
    anchor: (name) => {
      if (name === undefined || taken.has(name)) return undefined;
      if (name === "" || /\s/.test(name))
        throw new ProgramError(`anchor on ${url} is "${name}"; expected a name without spaces`);
      taken.add(name);
      return name;
    },
    // Anchors are made of ids and row names, which hold no underscore.
    ownName: () => `own_${++names}`,
    headingLevel: (wanted) => {
      level = wanted === 3 && level > 1 ? 3 : 2;
      return level;
    },
    itemLevel: () => (level === 1 ? 2 : 3),
  };
}
