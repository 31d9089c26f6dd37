/** What a file is by its first bytes, and how many pages it has, as far as that can be told. */
export interface FileNature {
  readonly mediaType: string;
  readonly pages?: number;
  /** Why no pages could be counted. */
  readonly problem?: string;
}

const startsWith = (bytes: Uint8Array, ...signs: readonly number[]) => signs.every((sign, at) => bytes[at] === sign);

/** Media type and page count of an original. Never throws on content: a file that cannot be counted says why. */
export async function natureOf(path: string, bytes: Uint8Array): Promise<FileNature> {
  if (startsWith(bytes, 0x25, 0x50, 0x44, 0x46, 0x2d)) return pdfNature(bytes);
  if (startsWith(bytes, 0x89, 0x50, 0x4e, 0x47)) return { mediaType: "image/png", pages: 1 };
  if (startsWith(bytes, 0xff, 0xd8, 0xff)) return { mediaType: "image/jpeg", pages: 1 };
  if (startsWith(bytes, 0x49, 0x49, 0x2a, 0) || startsWith(bytes, 0x4d, 0x4d, 0, 0x2a)) return tiffNature(bytes);
  if (/\.csv$/i.test(path)) return { mediaType: "text/csv", pages: 1 };
  if (/\.(txt|md)$/i.test(path)) return { mediaType: "text/plain", pages: 1 };
  return { mediaType: "application/octet-stream", problem: "its pages cannot be counted; state them by hand" };
}

async function pdfNature(bytes: Uint8Array): Promise<FileNature> {
  const mediaType = "application/pdf";
  try {
    // Loaded only when a PDF is met: most commands never need it.
    const { PDFDocument } = await import("pdf-lib");
    const document = await PDFDocument.load(bytes, { ignoreEncryption: true, updateMetadata: false });
    const pages = document.getPageCount();
    return pages > 0 ? { mediaType, pages } : { mediaType, problem: "it has no page" };
  } catch {
    return { mediaType, problem: "it is damaged or no whole PDF; open it, save it again, or ask for another copy" };
  }
}

/** A TIFF file is a chain of directories, one for each page (TIFF revision 6.0, section 2). */
function tiffNature(bytes: Uint8Array): FileNature {
  const mediaType = "image/tiff";
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const little = bytes[0] === 0x49;
  const seen = new Set<number>();
  for (let at = view.byteLength < 8 ? 0 : view.getUint32(4, little); at !== 0;) {
    const end = at + 2 <= view.byteLength ? at + 2 + 12 * view.getUint16(at, little) : Infinity;
    if (seen.has(at) || end + 4 > view.byteLength) return { mediaType, problem: "it is damaged or not whole" };
    seen.add(at);
    at = view.getUint32(end, little);
  }
  return seen.size > 0 ? { mediaType, pages: seen.size } : { mediaType, problem: "it has no page" };
}
