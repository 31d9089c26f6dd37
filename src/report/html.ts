import { createHash } from "node:crypto";
import { describeBasis } from "../model/basis.ts";
import { excerpt, plain } from "./plain.ts";
import type { Placed, Report } from "./report.ts";
import { foundSentence, groups, judgedSentence, owners, releaseSentence, type Group } from "./words.ts";

const style = `
:root{color-scheme:light dark;--paper:#fdfdfc;--ink:#16181b;--soft:#545a62;--hair:#b4b8be}
@media (prefers-color-scheme:dark){:root{--paper:#131518;--ink:#e3e2de;--soft:#a3a8af;--hair:#4a4f56}}
@media print{:root{--paper:#fff;--ink:#000;--soft:#3c3c3c;--hair:#9a9a9a}}
body{background:var(--paper);color:var(--ink);font:1.0625rem/1.5 "Source Serif 4",Charter,Cambria,Georgia,serif;margin:0}
main{max-width:46rem;margin:0 auto;padding:1.5rem 1.1rem 4rem;overflow-wrap:anywhere}
header{border-bottom:1.5px solid var(--ink);padding-bottom:.4rem;color:var(--soft)}
header,dl,h3{font-family:"Source Sans 3","Segoe UI","Helvetica Neue",Arial,sans-serif}
h1{font-size:2.25rem;line-height:1.12;font-weight:400;margin:2rem 0 .6rem}
h2{font-size:1.375rem;line-height:1.25;font-weight:600;margin:3rem 0 .9rem}
h3{font-size:1.0625rem;font-weight:600;margin:0}
article{border-top:.75px solid var(--hair);padding:.7rem 0 1rem;break-inside:avoid}
article p{font-size:1.1875rem;line-height:1.35;margin:.15rem 0 .5rem}
dl{display:grid;grid-template-columns:5rem 1fr;gap:.2rem 1rem;font-size:.9375rem;line-height:1.4;margin:0}
dt{color:var(--soft)}dd{margin:0}
code,pre{font:.8125rem/1.4 "Source Code Pro",Consolas,Menlo,"DejaVu Sans Mono",monospace}
@media (max-width:40rem){dl{grid-template-columns:1fr}dd{margin:0 0 .4rem}}
`;

const policy = `default-src 'none'; style-src 'sha256-${createHash("sha256").update(style).digest("base64")}'; base-uri 'none'; form-action 'none'`;

const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
interface Html {
  readonly html: string;
}

function markup(parts: TemplateStringsArray, ...values: readonly (string | number | Html | readonly Html[])[]): Html {
  return { html: parts.map((part, at) => part + filled(values[at])).join("") };
}

function filled(value: string | number | Html | readonly Html[] | undefined): string {
  if (value === undefined) return "";
  if (typeof value === "object") return "html" in value ? value.html : value.map((part) => part.html).join("\n");
  return plain(String(value)).replaceAll(/[&<>"']/g, (sign) => signs[sign] ?? sign);
}

const nothing: Html = { html: "" };

/** The findings report as one page that stands alone: what a final issue that did not pass leaves behind. */
export function reportHtml(report: Report): string {
  const { book, counts } = report;
  const page = markup`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${{ html: policy }}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Findings, ${book.number} revision ${book.revision}</title>
<style>${{ html: style }}</style>
</head>
<body>
<main>
<header>${book.number} ${book.title} · revision ${book.revision}, ${book.state}${
    book.demonstration ? markup` · <em>demonstration, invented data</em>` : nothing
  }</header>
<h1>Findings: not issued</h1>
<p>This is not an issue of the book. Judged on the evidence up to ${book.dataCutOff}, with profile ${book.profile}:
${releaseSentence(report)}.</p>
<p>Found: ${foundSentence(counts)}. ${judgedSentence(counts)}.</p>
<p>Evidence <code>${book.fingerprint}</code>, judged with ${report.tool}. The same findings for programs:
<a href="findings.json">findings.json</a>.</p>
${ownersHtml(report)}
${groups(report.findings).map(groupHtml)}
<p>The checks compare what was recorded with itself and with the loaded rules. They do not replace inspection, the
applicable code, local law, or the judgement of licensed people.</p>
</main>
</body>
</html>
`;
  return page.html;
}

function ownersHtml(report: Report): Html {
  const rows = owners(report.findings).map(({ owner, count }) => row(owner, String(count)));
  return rows.length === 0 ? nothing : markup`<h2>Who must act</h2>\n<dl>\n${rows}\n</dl>`;
}

function groupHtml({ title, findings }: Group): Html {
  const capital = title.slice(0, 1).toUpperCase() + title.slice(1);
  return markup`<section>\n<h2>${capital}</h2>\n${findings.map(findingHtml)}\n</section>`;
}

function row(label: string, text: string): Html {
  return markup`<dt>${label}</dt><dd>${text}</dd>`;
}

function findingHtml({ finding, position, line, sheet, related, waits }: Placed): Html {
  const at = `${finding.place.file}:${position.line}:${position.column}`;
  return markup`<article>
<h3>${finding.severity}</h3>
<p>${finding.message}</p>
<dl>
<dt>at</dt><dd><code>${at}</code>${
    line === undefined ? nothing : markup`<br><code>${excerpt(line, position.column).trim()}</code>`
  }</dd>
${sheet === undefined ? nothing : row("sheet", sheet)}
${row("why", finding.why)}
${row("basis", describeBasis(finding.basis))}
${row("hint", finding.hint)}
${row("to act", finding.due === null ? finding.owner : `${finding.owner}, due at ${finding.due}`)}
${related.map(({ related: other, position: there, sheet: from }) =>
  row(
    "see",
    `${other.place.file}:${there.line}:${there.column} ${other.message}${from === undefined ? "" : ` (${from})`}`,
  ),
)}
${waits.length === 0 ? nothing : row("waiting", waits.join("; "))}
${finding.exception === null ? nothing : row("answered", `by ${finding.exception}`)}
<dt>key</dt><dd><code>${finding.key}</code>, digest <code>${finding.digest}</code></dd>
</dl>
</article>`;
}
