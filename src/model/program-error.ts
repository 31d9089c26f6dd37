/** A mistake in the program or in one of its definitions, never in the data of a book: thrown, and shown with its stack. */
export class ProgramError extends Error {
  override readonly name = "ProgramError";
}
