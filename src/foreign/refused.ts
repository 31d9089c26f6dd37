import type { OriginalFault } from "../model/original.ts";

/** A foreign file is not read any further. The only error that reading one throws on content, whatever it holds. */
export class Refused extends Error {
  override readonly name = "Refused";
  readonly fault: OriginalFault;

  constructor(fault: OriginalFault) {
    super(fault.found);
    this.fault = fault;
  }
}

/** The file is not what its form says. */
export const damaged = (what: string): Refused =>
  new Refused({
    sort: "damaged",
    found: `the file is damaged: ${what}`,
    accepted: "a file that opens whole",
    hint: "open it, save it again under the same form and record the new file, or ask for another copy",
  });

/** The file asks for more than is read of any file. */
export const beyond = (what: string, accepted: string): Refused =>
  new Refused({
    sort: "bound",
    found: what,
    accepted,
    hint: "ask for a smaller or plainer copy (print it to a new PDF), or divide it; or answer this query: the file itself lies beside the book",
  });

export const isProtected = (): Refused =>
  new Refused({
    sort: "protected",
    found: "the file is encrypted",
    accepted: "a PDF without password and without restrictions",
    hint: "ask its author for a copy without protection and record that; or answer this query: the file itself lies beside the book",
  });
