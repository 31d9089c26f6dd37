import { Buffer } from "node:buffer";
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { OriginalFault, OriginalNature } from "../model/original.ts";
import { megabytes, newBudget, usualLimits, type Budget, type Limits } from "./budget.ts";
import type { Copied } from "./copied.ts";
import { copyJpeg, copyPng } from "./copy-picture.ts";
import { formOf, type Form } from "./forms.ts";
import { copyPdf } from "./pdf/copy.ts";
import { beyond, Refused } from "./refused.ts";
import { tiffPages } from "./tiff.ts";

/** What a file was found to be, and its pages if they can be shown. */
export interface Examined {
  readonly nature: OriginalNature;
  readonly copied: Copied | null;
}

/**
 * Examines an original: form, bounds, and everything that its copy in the book is made of. The same bytes under the same
 * name give the same, on every machine; what is wrong with the file is in the nature, never thrown. `size` tells how large
 * the file is when only its beginning is given.
 */
export async function examine(
  path: string,
  file: Buffer,
  limits: Limits = usualLimits,
  size: number = file.length,
): Promise<Examined> {
  if (file.length === 0) return refused("application/octet-stream", empty, true);
  let form: Form;
  try {
    form = formOf(path, file);
  } catch (error) {
    return refused("application/octet-stream", faultOf(error), false);
  }
  try {
    if (size > limits.bytes) throw tooLarge(size, limits);
    return await examined(form, file, () => newBudget(limits));
  } catch (error) {
    return refused(form.mediaType, faultOf(error), true);
  }
}

/** As `examine`, of a file on disk; of one that is too large, no more than its beginning is read. */
export async function examineFile(path: string, at: string, limits: Limits = usualLimits): Promise<OriginalNature> {
  const file = openSync(at, "r");
  try {
    const { size } = fstatSync(file);
    const bytes = Buffer.alloc(size > limits.bytes ? 4096 : size);
    let filled = 0;
    for (let got = -1; filled < bytes.length && got !== 0; filled += got)
      got = readSync(file, bytes, filled, bytes.length - filled, filled);
    const { nature } = await examine(path, bytes.subarray(0, filled), limits, Math.max(size, filled));
    return nature;
  } finally {
    closeSync(file);
  }
}

async function examined({ shows, mediaType }: Form, file: Buffer, budget: () => Budget): Promise<Examined> {
  const copied =
    shows === "pdf"
      ? copyPdf(file, budget)
      : shows === "png"
        ? await copyPng(file, budget())
        : shows === "jpeg"
          ? copyJpeg(file, budget())
          : null;
  const pages = copied?.pages.length ?? (mediaType === "image/tiff" ? tiffPages(file, budget()) : 1);
  const leftOut = copied?.leftOut ?? [];
  const signed = copied?.signed ?? null;
  return {
    nature: { mediaType, pages, signed, shown: copied !== null, published: true, leftOut, fault: null },
    copied,
  };
}

const refused = (mediaType: string, fault: OriginalFault, published: boolean): Examined => ({
  nature: { mediaType, pages: null, signed: null, shown: false, published, leftOut: [], fault },
  copied: null,
});

const empty: OriginalFault = {
  sort: "empty",
  found: "the file is empty",
  accepted: "a file with its content",
  hint: "copy it again from where it came, or ask for another copy",
};

const tooLarge = (bytes: number, limits: Limits) =>
  beyond(`the file holds ${megabytes(bytes)}`, `at most ${megabytes(limits.bytes)}`);

/** The refusal; anything else that was thrown is a fault of this program, and is not taken for one of the file. */
function faultOf(error: unknown): OriginalFault {
  if (error instanceof Refused) return error.fault;
  throw error;
}
