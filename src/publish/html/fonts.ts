import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const require = createRequire(import.meta.url);

const families = [
  {
    name: "source-serif-4",
    files: ["SourceSerif4_400Regular", "SourceSerif4_400Regular_Italic", "SourceSerif4_600SemiBold"],
  },
  {
    name: "source-sans-3",
    files: ["SourceSans3_400Regular", "SourceSans3_400Regular_Italic", "SourceSans3_600SemiBold"],
  },
  { name: "source-code-pro", files: ["SourceCodePro_400Regular"] },
] as const;

/** The seven font files of the site and the licences they are passed on under, by their path in the issue. */
export function fontFiles(): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const { name, files: fonts } of families) {
    const folder = dirname(require.resolve(`@expo-google-fonts/${name}/package.json`));
    for (const font of fonts) {
      const weight = font.slice(font.indexOf("_") + 1);
      files.set(`fonts/${font}.ttf`, readFileSync(join(folder, weight, `${font}.ttf`)));
    }
    files.set(`fonts/${name}-licence.txt`, readFileSync(join(folder, "LICENSE_FONT")));
  }
  return files;
}
