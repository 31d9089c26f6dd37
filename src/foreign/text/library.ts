/** What is used of the PDF library, in its own words. */
export interface PdfText {
  readonly numPages: number;
  getPage(number: number): Promise<{
    getTextContent(): Promise<{ readonly items: readonly unknown[] }>;
    cleanup(): boolean;
  }>;
  destroy(): Promise<void>;
}

/** Drawing is never asked for: these only keep the library from looking for a program that draws. */
const undrawn = ["DOMMatrix", "ImageData", "Path2D"] as const;

let opened: Promise<(bytes: Uint8Array) => Promise<PdfText>> | undefined;

/** The library, loaded when the first text is read. It runs no script of a file, fetches nothing and reads no other file. */
export function openText(bytes: Uint8Array): Promise<PdfText> {
  opened ??= load();
  return opened.then((open) => open(bytes));
}

async function load(): Promise<(bytes: Uint8Array) => Promise<PdfText>> {
  const world = globalThis as Record<string, unknown>;
  for (const name of undrawn) world[name] ??= function Undrawn() {};
  // It warns on the terminal of what it cannot draw; this thread has nothing to say there.
  const { warn } = console;
  console.warn = () => undefined;
  const [library, worker] = await Promise.all([
    import("pdfjs-dist/legacy/build/pdf.mjs"),
    // @ts-expect-error: the library ships no types for its own worker
    import("pdfjs-dist/legacy/build/pdf.worker.mjs") as Promise<unknown>,
  ]);
  console.warn = warn;
  // Its worker runs in this thread, which is already one that can be ended.
  world["pdfjsWorker"] = worker;
  return (data) =>
    library.getDocument({
      data,
      verbosity: 0,
      isEvalSupported: false,
      disableFontFace: true,
      useSystemFonts: false,
      useWorkerFetch: false,
      useWasm: false,
      enableXfa: false,
      stopAtErrors: false,
    }).promise;
}
