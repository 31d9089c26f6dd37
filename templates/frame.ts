import type { Page, Publication } from "../src/publish/publication.ts";
import { html, textOf, type Hole, type Html } from "./html.ts";

/** What stands around a page: its place in the book and its neighbours. */
export interface Place {
  /** Relative address of another page or file. */
  readonly path: (path: string) => string;
  readonly section: { readonly number: string; readonly title: string; readonly opening: string } | undefined;
  readonly before: Page | undefined;
  readonly next: Page | undefined;
  readonly findings: boolean;
}

export interface Framed {
  readonly page: Pick<Page, "url" | "title" | "number">;
  readonly place: Place;
  readonly body: Html;
  /** Classic scripts of the page; all others have none. */
  readonly scripts?: readonly string[];
  /** Sent by a server that states the policy itself. */
  readonly served?: boolean;
}

/** A whole page as text: head, running head, trail, body, foot. */
export function frame(publication: Publication, { page, place, body, scripts = [], served = false }: Framed): string {
  const { state, number, title, interim, demonstration } = publication;
  return textOf(
    html`<!DOCTYPE html>
      <html lang="${publication.language}">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          ${!served && html`<meta http-equiv="Content-Security-Policy" content="${contentPolicy(scripts.length > 0)}" />`}
          <title>${page.title} · ${number}, ${state}</title>
          <meta name="generator" content="${publication.tool}" />
          <link rel="stylesheet" href="${place.path("styles.css")}" />
          <link rel="stylesheet" href="${place.path("print.css")}" media="print" />
          ${scripts.map((script) => html`<script src="${place.path(script)}" defer></script> `)}
        </head>
        <body class="${interim ? "interim" : "final"}">
          <a class="skip" href="#text">To the text</a>
          <header>
            <div class="run">
              <p><b>${number}</b> ${title}</p>
              <p>${state}</p>
              ${demonstration && html`<p class="demo">demonstration, invented data</p> `}
            </div>
            ${publication.interimLine !== undefined && html`<p class="interim-line">${interimLine(publication.interimLine)}</p> `}
          </header>
          ${trail(page, place)}
          <main id="text">${body}</main>
          ${foot(publication)}
        </body>
      </html> `,
  );
}

/** Nothing from elsewhere, nothing inline; scripts only where a page has one. */
const contentPolicy = (hasScripts: boolean) =>
  [
    "default-src 'none'",
    ...(hasScripts ? ["script-src 'self'"] : []),
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/** The first sentence carries the warning and stands out. */
function interimLine(line: string): Html {
  const [, first = line, rest = ""] = /^(.*?\.)(\s.*)$/su.exec(line) ?? [];
  return html`<strong>${first}</strong>${rest}`;
}

function trail(page: Framed["page"], { path, section, before, next, findings }: Place): Html {
  const isFront = page.url === "index.html";
  const isOpening = section?.opening === page.url;
  const own = isOpening ? `${section.number} ${section.title}` : shortTitle(page);
  const steps: Hole[] = [
    ...(isFront ? [] : [html`<a href="${path("index.html")}">Front page</a>`]),
    ...(section === undefined || isOpening
      ? []
      : [html`<a href="${path(section.opening)}">${section.number} ${section.title}</a>`]),
    html`<span aria-current="page">${isFront ? "Front page" : own}</span>`,
  ];
  const ways: Hole[] = [
    ...(page.url === "find.html" ? [] : [html`<a href="${path("find.html")}">Find</a>`]),
    ...(isFront && findings ? [html`<a href="${path("findings.html")}">Findings</a>`] : []),
    ...(isFront ? [html`<a href="${path("book.pdf")}">Book as PDF</a>`] : []),
    ...(before === undefined || isFront
      ? []
      : [html`before: <a href="${path(before.url)}" rel="prev">${shortTitle(before)}</a>`]),
    ...(next === undefined || isFront
      ? []
      : [html`next: <a href="${path(next.url)}" rel="next">${shortTitle(next)}</a>`]),
  ];
  return html`<nav class="trail" aria-label="Place in the book">
    <ul class="place">
      ${items(steps)}
    </ul>
    <ul class="ways">
      ${items(ways)}
    </ul>
  </nav>`;
}

const items = (list: readonly Hole[]): Html[] => list.map((item) => html`<li>${item}</li>`);

/** Number and title, cut at a word when the trail could not hold it. */
function shortTitle({ url, number, title }: Pick<Page, "url" | "number" | "title">): string {
  if (url === "index.html") return "Front page";
  const whole = [number, title].filter((part) => part !== undefined && part !== "").join(" ");
  const cut = /^.{0,36}/u.exec(whole)?.[0] ?? "";
  if (cut === whole) return whole;
  const word = cut.lastIndexOf(" ");
  return `${(word > 12 ? cut.slice(0, word) : cut).replace(/[,;:. ]+$/, "")} …`;
}

function foot(publication: Publication): Html {
  const { fingerprint, dataCutOff, maker, client, demonstration } = publication;
  const groups = fingerprint.slice(0, 16).match(/.{1,4}/g) ?? [];
  const whom = [maker, client].filter((name) => name !== "").join(" for ");
  return html`<footer class="foot">
    <p>Evidence fingerprint <code>${groups.join(" ")}</code> …, evidence up to <span class="nb">${dataCutOff}</span></p>
    <p>${whom !== "" && `${whom}. `}${demonstration && "Demonstration, invented data."}</p>
  </footer>`;
}
