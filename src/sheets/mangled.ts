/** Texts that a spreadsheet program leaves where it could not show a value, and what each means. */
const leftovers: readonly (readonly [form: RegExp, says: string])[] = [
  [
    /^#(?:N\/A|REF!|VALUE!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|GETTING_DATA|N\/V|BEZUG!|WERT!|ZAHL!)$|^Err:\d{3}$/,
    "shows an error: correct it in the sheet",
  ],
  [/^#{2,}$/, "shows #### because its column was too narrow: widen the column, and save or export the sheet anew"],
  [/\ufffd/, "holds the sign \ufffd, which stands for one that was lost: write it anew, and save the sheet as UTF-8"],
];

/** How a program exports a number that it shows in powers of ten: digits may be gone, and zeros before a number are. */
const powerOfTen = /^[+-]?\d(?:[.,]\d+)?E[+-]\d{2,3}$/;

/** Why a text cannot be taken for what was once written, or undefined. `exported`: of a CSV file, where all is text. */
export function mangled(text: string, exported: boolean): string | undefined {
  if (exported && powerOfTen.test(text))
    return (
      `shows ${text}, a power of ten that a spreadsheet program made of what was written: ` +
      "give the column the format of text before writing, write the value again, and export the sheet anew"
    );
  return leftovers.find(([form]) => form.test(text))?.[1];
}
