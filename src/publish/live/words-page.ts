import { html, textOf } from "../../../templates/html.ts";
import type { Answer } from "./server.ts";

/** A page that stands alone and says why there is no other: lines are kept as they are. */
export function wordsPage(status: number, title: string, lines: readonly string[]): Answer {
  const body = textOf(
    html`<!DOCTYPE html>
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <title>${title}</title>
          <style>
            body {
              font:
                1.0625rem/1.5 Georgia,
                serif;
              max-width: 46rem;
              margin: 2rem auto;
              padding: 0 1.1rem;
            }
            pre {
              font: inherit;
              white-space: pre-wrap;
              overflow-wrap: anywhere;
            }
          </style>
        </head>
        <body>
          <main>
            <h1>${title}</h1>
            ${lines.map((line) => html`<pre>${line}</pre>`)}
            <p><a href="/">To the findings</a></p>
          </main>
        </body>
      </html> `,
  );
  return { status, type: "text/html; charset=utf-8", body };
}
