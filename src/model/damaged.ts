/** What was installed is not whole: neither a fault of the program nor of a book. Said in one line, without a stack. */
export class DamagedInstallation extends Error {
  override readonly name = "DamagedInstallation";

  constructor(missing: string) {
    super(
      `the installation is damaged: ${missing} is missing. Nothing was judged or written. Install the package again; in a clone, npm run build makes it`,
    );
  }
}
