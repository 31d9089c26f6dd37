import type { Kind } from "../../model/kind.ts";
import { type BookRecord } from "../../model/record.ts";
import type { Block } from "../blocks.ts";
import type { Page } from "../publication.ts";
import { announcedBlocks } from "./announced-blocks.ts";
import { groupPage } from "./address.ts";
import { extraBlocks } from "./extras.ts";
import { labelOf, type Context } from "./context.ts";
import { grouped } from "../../model/grouped.ts";
import { computedBlocks } from "./computed-blocks.ts";
import { namedBy, scanBlocks, signatureBlock } from "./evidence-blocks.ts";
import { judgedBlock } from "./judged-block.ts";
import { limitsTable } from "./limits-table.ts";
import { numbering, recordBlocks, type Numbering } from "./record-blocks.ts";
import { recordsOf } from "./section-pages.ts";
import { soughtIn } from "./sought.ts";

/** Records that share a page: each with its anchor, heading and data. The key of the page never depends on neighbours. */
export function groupPages(context: Context, kind: Kind, number: () => string, section: number): Page[] {
  return [...grouped(recordsOf(context, kind), groupPage)].map(([url, records]) => {
    const own = number();
    const ids = records.map(({ id }) => id);
    return {
      url,
      number: own,
      kindLine: kind.title,
      title:
        ids.length === 1 ? `${kind.title} ${ids[0] ?? ""}` : `${kind.title} ${ids[0] ?? ""} to ${ids.at(-1) ?? ""}`,
      under: [kind.description],
      section,
      sought: records.flatMap((record) => soughtIn(context, record, record.id)),
      get blocks() {
        const next = numbering(own);
        return records.flatMap((record) => sharedPageBlocks(context, record, next));
      },
    };
  });
}

function sharedPageBlocks(context: Context, record: BookRecord, next: Numbering): Block[] {
  const label = labelOf(context, record);
  const { before, after, skip } = extraBlocks(context, record, next);
  return [
    { type: "heading", level: 2, text: label === "" ? record.id : `${record.id}, ${label}`, anchor: record.id },
    ...before,
    ...recordBlocks(context, record, next, `${record.id}.`, skip),
    ...after,
    ...lower(announcedBlocks(context, record, next)),
    ...lower(limitsTable(context, record, next)),
    ...lower(computedBlocks(context, record)),
    ...lower(judgedBlock(context, record)),
    ...signatureBlock(context, record),
    ...lower(scanBlocks(context, record)),
    ...lower(namedBy(context, record)),
  ];
}

/** On a shared page the headings of a record stand one level lower. */
function lower(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => (block.type === "heading" ? { ...block, level: 3 } : block));
}
