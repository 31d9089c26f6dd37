import { Buffer } from "node:buffer";
import { crc32 } from "node:zlib";
import yauzl from "yauzl";
import { macroIn } from "../../foreign/forms.ts";
import { tooLarge, type SheetBudget } from "../limits.ts";
import { damaged, refuse, Unreadable } from "../unreadable.ts";

/** The parts of a workbook's archive. Names are told apart without regard to capitals, as spreadsheet programs do. */
export interface Archive {
  readonly names: readonly string[];
  has(name: string): boolean;
  /** Gives the unpacked bytes of a part to `take`; throws Unreadable where there is none or it is damaged. */
  read(name: string, take: (bytes: Uint8Array) => void): Promise<void>;
}

/**
 * Opens an archive: everything that can be refused before a part is unpacked is refused here. What parts unpack to is
 * summed as they declare it; that none gives more or less than it declares is seen to while it is unpacked.
 */
export async function openArchive(bytes: Uint8Array, budget: SheetBudget): Promise<Archive> {
  const { limits } = budget;
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts = new Map<string, yauzl.Entry>();
  let expanded = 0;
  const zip = await whole("its list of parts", async () => {
    const opened = await yauzl.fromBufferPromise(file, { strictFileNames: true, validateEntrySizes: true });
    for await (const entry of opened.eachEntry()) {
      budget.spend("parts");
      if (entry.isEncrypted()) throw locked();
      const name = folded(entry.fileName);
      if (parts.has(name)) throw damaged(`it holds the part ${entry.fileName} twice`);
      expanded += entry.uncompressedSize;
      if (entry.uncompressedSize > limits.part) throw tooLarge(limits.part, "has a part that unpacks to more than");
      if (expanded > limits.expanded) throw tooLarge(limits.expanded, "unpacks to more than");
      parts.set(name, entry);
    }
    return opened;
  });
  const names = [...parts.values()].map(({ fileName }) => fileName);
  const macro = macroIn(names);
  if (macro !== undefined && !parts.has("xl/workbook.bin"))
    throw refuse(
      "the workbook holds macros or embedded programs",
      `it has the part ${macro}`,
      "save it as a workbook without macros (.xlsx), and import that",
    );
  return {
    names,
    has: (name) => parts.has(folded(name)),
    async read(name, take) {
      const entry = parts.get(folded(name));
      if (entry === undefined) throw damaged(`its part ${name} is missing`);
      await whole(name, async () => {
        let crc = 0;
        for await (const chunk of await zip.openReadStreamPromise(entry)) {
          const unpacked = chunk as Buffer;
          crc = crc32(unpacked, crc);
          take(unpacked);
        }
        // The library looks at the length alone.
        if (crc !== entry.crc32) throw damaged(`the check sum of its part ${name} is another than it says`);
      });
    },
  };
}

const folded = (name: string) => name.toLowerCase();

export const locked = (): Unreadable =>
  refuse(
    "the file is under a password",
    "what it holds is encrypted",
    "open it, take the password off, save it anew, and import that",
  );

/** What the archive's library objects to is the file's fault. */
async function whole<Result>(what: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof Unreadable || !(error instanceof Error)) throw error;
    throw damaged(`${what} cannot be unpacked: ${error.message}`);
  }
}
