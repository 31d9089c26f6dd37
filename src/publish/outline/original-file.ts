import type { BookFile, BookRecord } from "../../model/record.ts";
import { pathNamedBy } from "../../model/shelf.ts";
import type { OriginalNature } from "../../model/original.ts";
import { plain, type Context } from "./context.ts";
import { noFile } from "./landing.ts";

/** What stands beside the book of an original, in sentences for its pages. */
export interface OriginalState {
  /** The sentence that stands in place of a link; absent when there is a file to open. */
  readonly withheld?: string;
  /** Why its pages are not printed, after a colon; absent when they are. */
  readonly notShown?: string;
  /** What a reader must know of the file and of its copy in the book. */
  readonly remarks: readonly string[];
}

const files = new WeakMap<Context, ReadonlyMap<string, BookFile>>();

/** Files of the book by their path. */
function filesByPath(context: Context): ReadonlyMap<string, BookFile> {
  const known = files.get(context) ?? new Map(context.judged.loaded.files.map((file) => [file.path, file]));
  files.set(context, known);
  return known;
}

/** The file an original's record names. */
export const fileOf = (context: Context, original: BookRecord): BookFile | undefined =>
  filesByPath(context).get(pathNamedBy(original, plain(original.value["path"])));

/** How the file of an original stands to the book. */
export function originalState(context: Context, original: BookRecord): OriginalState {
  const file = fileOf(context, original);
  if (file === undefined) return { withheld: noFile, notShown: "the file is not in this book", remarks: [] };
  return file.nature === undefined ? { remarks: [] } : stateOf(file.nature);
}

function stateOf({ published, shown, fault, leftOut }: OriginalNature): OriginalState {
  if (!published) {
    const found = fault?.found ?? "its form is none that is published";
    return {
      withheld: `The file is not published: ${found}. Its record and its hash remain.`,
      notShown: found,
      remarks: [],
    };
  }
  if (fault !== null)
    return {
      notShown: fault.found,
      remarks: [`Its pages are not shown in the PDF: ${fault.found}. The file itself lies beside the book.`],
    };
  if (!shown)
    return {
      notShown: "a file of its form is not printed",
      remarks: ["It is not printed in the PDF; the file itself lies beside the book, to be opened there."],
    };
  if (leftOut.length === 0) return { remarks: [] };
  return {
    remarks: [`Its copy in the PDF leaves out: ${leftOut.join("; ")}. The untouched file lies beside the book.`],
  };
}
