/** The work on a foreign file was ended: it says nothing of the file that would hold on another machine. */
export class ForeignWorkEnded extends Error {
  override readonly name = "ForeignWorkEnded";
  readonly why: string;

  constructor(path: string, why: string) {
    super(
      `the work on ${path} was ended: ${why}. Nothing was judged or written. Take the file out of files/ and try again; ` +
        "ask its author for a plainer copy",
    );
    this.why = why;
  }
}
