import type MarkdownIt from "markdown-it";

type Token = ReturnType<MarkdownIt["parse"]>[number];

/** Columns and rows of a table in a remark that are printed; a table of the record itself has a kind of its own. */
export const mostColumns = 12;
export const mostRows = 60;

/** Signs of a remark that are read as text with marks; a longer one would take long, and is cut there. */
export const longestRemark = 100_000;

/** A remark as far as it is printed: one that is cut says so itself, and where all of it stands. */
export function boundedRemark(markdown: string): string {
  if (markdown.length <= longestRemark) return markdown;
  return `${markdown.slice(0, longestRemark).replace(/[\ud800-\udbff]$/, "")} …\n\n(${markdown.length} signs, of which ${longestRemark} are printed; the record has all of them.)`;
}

/** The tokens of a remark with its tables bounded; `say` makes the tokens of a sentence about what was left out. */
export function boundedTables(tokens: readonly Token[], say: (sentence: string) => readonly Token[]): Token[] {
  const kept: Token[] = [];
  let table: { columns: number; rows: number; cell: number } | undefined;
  let skipping = 0;
  for (const token of tokens) {
    if (token.type === "table_open") table = { columns: 0, rows: 0, cell: 0 };
    if (table !== undefined) {
      if (token.type === "tr_open") {
        table.rows += 1;
        table.cell = 0;
      }
      if (token.type === "th_open" || token.type === "td_open") {
        table.cell += 1;
        table.columns = Math.max(table.columns, table.cell);
      }
      const opens = token.type === "tr_open" || token.type === "th_open" || token.type === "td_open";
      const closes = token.type === "tr_close" || token.type === "th_close" || token.type === "td_close";
      if (opens && (skipping > 0 || table.rows > mostRows + 1 || table.cell > mostColumns)) skipping += 1;
      const drop = skipping > 0;
      if (closes && skipping > 0) skipping -= 1;
      if (drop) continue;
    }
    kept.push(token);
    if (token.type === "table_close" && table !== undefined) {
      // The head counts as a row of the tokens, not of the sentence.
      const rows = table.rows - 1;
      if (table.columns > mostColumns || rows > mostRows)
        kept.push(
          ...say(
            `The table has ${table.columns} columns and ${rows} rows, of which ${Math.min(table.columns, mostColumns)} and ${Math.min(rows, mostRows)} are printed; the record has all of them.`,
          ),
        );
      table = undefined;
    }
  }
  return kept;
}
