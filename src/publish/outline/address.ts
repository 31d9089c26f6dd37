import type { Kind } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
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
  row?: string,
): Target {
  if (frontKinds.has(record.kind)) return { page: "index.html" };
  const anchor = row === undefined ? undefined : rowAnchor(row);
  if (kind.page === "each")
    return { page: `${record.kind}/r-${record.id}.html`, ...(anchor !== undefined && { anchor }) };
  return { page: groupPage(record), anchor: anchor === undefined ? record.id : `${record.id}.${anchor}` };
}

export function groupPage(record: Pick<BookRecord, "kind" | "id">): string {
  return `${record.kind}/g-${record.id.slice(0, -2).replace(/\.+$/, "")}.html`;
}

/** Row names are free text of certificates: only portable signs go into an address. */
export const rowAnchor = (row: string) => `row-${row.replaceAll(/[^A-Za-z0-9.-]/g, "-")}`;

export const calculationPage = (id: string, record: Pick<BookRecord, "kind" | "id">, row: string) =>
  `calculation/${id}.${record.kind}.${record.id}${row === "" ? "" : `.${row.replaceAll(/[^A-Za-z0-9.-]/g, "-")}`}.html`;

/** Anchor of a finding, made of its key. */
export const findingAnchor = (key: string) => `f-${key.replaceAll(/[^A-Za-z0-9.-]+/g, "-")}`;
