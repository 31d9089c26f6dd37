import type { Target } from "../blocks.ts";
import type { Drawing, Figure, Shape } from "../figures/shapes.ts";
import { attribute, html, type Html } from "../../../templates/html.ts";

type Point = readonly [number, number];
type LineShape = Extract<Shape, { type: "line" }>;
type TextShape = Extract<Shape, { type: "text" }>;

/** What a drawing needs of its page. */
export interface DrawingContext {
  href(target: Target): string;
  ownName(): string;
}

/** A figure as two drawings of one content; the style sheet shows the one that fits the width. */
export function drawings(context: DrawingContext, figure: Figure): Html {
  return html`${drawing(context, figure, figure.wide, "broad")} ${drawing(context, figure, figure.narrow, "narrow")}`;
}

function drawing(context: DrawingContext, figure: Figure, { width, height, shapes }: Drawing, size: string): Html {
  const name = context.ownName();
  // A drawing with links in it is a group: the contents of an image cannot be reached.
  const role = shapes.some((shape) => shape.type === "text" && shape.to !== undefined) ? "group" : "img";
  return html`<svg
    class="drawing ${size}"
    viewBox="0 0 ${round(width)} ${round(height)}"
    role="${role}"
    aria-labelledby="${name}t"
    aria-describedby="${name}d"
  >
    <title id="${name}t">${figure.title}</title>
    <desc id="${name}d">${figure.description}</desc>
    ${shapes.map((shape) => html`${draw(context, shape)} `)}
  </svg>`;
}

function draw(context: DrawingContext, shape: Shape): Html {
  switch (shape.type) {
    case "line":
      return html`${stroke(`M${at(shape.from)}L${at(shape.to)}`, shape.weight, shape.broken)}${heads(shape)}`;
    case "path": {
      const path = `M${shape.points.map(at).join("L")}${shape.closed === true ? "Z" : ""}`;
      return stroke(path, shape.weight, shape.broken);
    }
    case "ring":
      return html`<circle
        cx="${round(shape.at[0])}"
        cy="${round(shape.at[1])}"
        r="${round(shape.radius)}"
        stroke-width="${shape.weight}"
      />`;
    case "hatch":
      return stroke(hatching(shape), 0.6);
    case "text":
      return shape.to === undefined ? label(shape) : html`<a href="${context.href(shape.to)}">${label(shape)}</a>`;
  }
}

const stroke = (path: string, weight: number, broken = false): Html =>
  html`<path d="${path}" stroke-width="${weight}" ${broken && html` stroke-dasharray="6 3"`} />`;

function label({ at: [x, y], text, size, anchor, turned, strong }: TextShape): Html {
  const turn = turned === true ? `rotate(-90 ${round(x)} ${round(y)})` : undefined;
  return html`<text
    x="${round(x)}"
    y="${round(y)}"
    font-size="${size}"
    text-anchor="${anchor}"
    ${strong === true && html` font-weight="600"`}${attribute("transform", turn)}
    >${text}</text
  >`;
}

/** Open arrow heads at the ends of a dimension line, in its own weight. */
function heads({ from, to, weight, arrows }: LineShape): Html | false {
  if (arrows === undefined) return false;
  const ends = arrows === "both" ? head(from, to) + head(to, from) : head(to, from);
  return ends !== "" && stroke(ends, weight);
}

function head(tip: Point, tail: Point): string {
  const length = Math.hypot(tail[0] - tip[0], tail[1] - tip[1]);
  if (length === 0) return "";
  const along: Point = [(tail[0] - tip[0]) / length, (tail[1] - tip[1]) / length];
  const side = (sign: number): Point => [
    tip[0] + 6 * along[0] - sign * 3 * along[1],
    tip[1] + 6 * along[1] + sign * 3 * along[0],
  ];
  return `M${at(side(1))}L${at(tip)}L${at(side(-1))}`;
}

/** Lines at 45°, 5 apart along the edge, cut at the edges of the region. */
function hatching({ x, y, width, height }: Extract<Shape, { type: "hatch" }>): string {
  let path = "";
  for (let start = 5; start < width + height; start += 5) {
    const from: Point = [x + Math.min(start, width), y + Math.max(0, start - width)];
    const to: Point = [x + Math.max(0, start - height), y + Math.min(start, height)];
    path += `M${at(from)}L${at(to)}`;
  }
  return path;
}

const at = ([x, y]: Point) => `${round(x)} ${round(y)}`;
const round = (value: number) => String(Math.round(value * 100) / 100);
