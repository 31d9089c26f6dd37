import type { Kind } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import { digestOf } from "../../model/stable.ts";
import type { Target } from "../blocks.ts";

/** Records that the front page is made of. */
export const frontKinds: ReadonlySet<string> = new Set(["book", "issue"]);

/**
 * Where a record is printed. An id decides its own address, so that an inserted record moves nobody: a page of its own,
 * or an anchor on the page of all ids that differ only in their last two signs.
 */
export function addressOfRecord(
  kind: Pick<Kind, "page">,
  record: Pick<BookRecord, "kind" | "id">,
  slug?: string,
): Target {
  if (frontKinds.has(record.kind)) return { page: "index.html" };
  const anchor = slug === undefined ? undefined : rowAnchor(slug);
  if (kind.page === "each")
    return { page: `${record.kind}/r-${record.id}.html`, ...(anchor !== undefined && { anchor }) };
  return { page: groupPage(record), anchor: anchor === undefined ? record.id : `${record.id}.${anchor}` };
}

export function groupPage(record: Pick<BookRecord, "kind" | "id">): string {
  return `${record.kind}/g-${record.id.slice(0, -2).replace(/\.+$/, "")}.html`;
}

export const rowAnchor = (slug: string) => `row-${slug}`;

const longestSlug = 60;

/**
 * What the rows of one list are called in addresses: their names, which are free text of certificates, in portable signs.
 * Two rows never share one, on no system; a row without a name is called by its place.
 */
export function rowSlugs(names: readonly (string | undefined)[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name, index) => {
    const own = (name ?? "").replaceAll(/[^A-Za-z0-9.-]/g, "-").slice(0, longestSlug);
    let slug = own === "" ? String(index + 1) : own;
    while (taken.has(slug.toLowerCase())) slug += `-${index + 1}`;
    taken.add(slug.toLowerCase());
    return slug;
  });
}

/** Ids hold no underscore: a row of P1 never has the page of P1.2. */
export const calculationPage = (id: string, record: Pick<BookRecord, "kind" | "id">, slug: string | undefined) =>
  `calculation/${id}.${record.kind}.${record.id}${slug === undefined ? "" : `_${slug}`}.html`;

/** Anchor of a finding: its key as far as it can be read there, and a digest, since keys may differ in other signs only. */
export const findingAnchor = (key: string) =>
  `f-${key.replaceAll(/[^A-Za-z0-9.-]+/g, "-").slice(0, longestSlug)}-${digestOf(key).slice(0, 8)}`;
