import type { SheetFault } from "./cells.ts";

/** A sheet file is not read any further. The only error that reading one throws on content, whatever it holds. */
export class Unreadable extends Error {
  override readonly name = "Unreadable";
  readonly fault: SheetFault;

  constructor(fault: SheetFault) {
    super(fault.message);
    this.fault = fault;
  }
}

export const refuse = (message: string, why: string, hint: string, place?: string): Unreadable =>
  new Unreadable({ message, why, hint, ...(place !== undefined && { place }) });

/** The file is not what its form says. */
export const damaged = (why: string, place?: string): Unreadable =>
  refuse(
    "the file is damaged",
    why,
    "open it in a spreadsheet program, look whether all is there, and save it anew; or ask for another copy",
    place,
  );
