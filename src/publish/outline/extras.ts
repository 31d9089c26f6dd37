import type { BookRecord } from "../../model/record.ts";
import type { Block } from "../blocks.ts";
import type { Context } from "./context.ts";
import { certificateBlocks } from "./certificate-blocks.ts";
import { pressureTestBlocks } from "./pressure-test-blocks.ts";
import type { Numbering } from "./record-blocks.ts";

/** What a page of one kind shows beside its record: figures, and values against their limits. */
export interface Extra {
  readonly before: readonly Block[];
  readonly after: readonly Block[];
  /** Fields that the extra blocks show already. */
  readonly skip: ReadonlySet<string>;
  /** The extra blocks say what was judged. */
  readonly judged?: boolean;
}

type MakeExtra = (context: Context, record: BookRecord, next: Numbering) => Extra;

/** One entry per kind that has more to show than its fields. */
const extras: ReadonlyMap<string, MakeExtra> = new Map([
  ["material-certificate", certificateBlocks],
  ["pressure-test", pressureTestBlocks],
]);

const none: Extra = { before: [], after: [], skip: new Set() };

export function extraBlocks(context: Context, record: BookRecord, next: Numbering): Extra {
  return record.faulty ? none : (extras.get(record.kind)?.(context, record, next) ?? none);
}
