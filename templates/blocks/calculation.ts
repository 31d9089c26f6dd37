import type { CalculationBlock, CalculationStep } from "../../src/publish/blocks.ts";
import { formula } from "../../src/publish/html/mathml.ts";
import type { PageContext } from "../context.ts";
import { html, type Html } from "../html.ts";
import { notes } from "../inline.ts";

/** The steps of a calculation: what each is, its formula, the same with values, the result unrounded and rounded. */
export function calculation(context: PageContext, { steps }: CalculationBlock): Html[] {
  return steps.map((step, index) => {
    const ends = [index === 0 ? " first" : "", index === steps.length - 1 ? " last" : ""].join("");
    return html`<div class="pair">
      <div class="step${ends}">
        <p class="say">${step.means}</p>
        <dl>${rows(step)}</dl>
      </div>
      ${notes(context, step.notes)}
    </div> `;
  });
}

function rows(step: CalculationStep): Html[] {
  const { formula: symbols, substituted, rounded, governs } = step;
  return [
    ...(symbols === undefined ? [] : [row("formula", formula(symbols))]),
    ...(substituted === undefined ? [] : [row("with values", formula(substituted))]),
    ...(step.lines.length === 0
      ? []
      : [row("found from", html`${step.lines.map((line) => html`<span class="line">${line}</span>`)}`)]),
    row(
      "result",
      html`<span class="res"
          >${step.result}${rounded !== undefined && html` <span class="nb">= <b>${rounded}</b></span>`}</span
        >${governs !== undefined && html` <span class="governs">${governs}</span>`}`,
    ),
  ];
}

const row = (label: string, content: Html): Html =>
  html`<div class="row">
    <dt>${label}</dt>
    <dd>${content}</dd>
  </div> `;
