import type { Basis } from "../../src/model/basis.ts";

/** What a designer writes under "basis": the document, or the method. */
export function basisText(basis: Basis): string {
  switch (basis.class) {
    case "published":
    case "from memory":
    case "excerpt seen":
      return basis.document;
    case "derived":
      return basis.from;
    case "common practice":
      return basis.what;
    default:
      return "design manual TB-DM-02";
  }
}
