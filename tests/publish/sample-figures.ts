import type { Drawing, Figure, Shape } from "../../src/publish/figures/shapes.ts";

/** Every kind of shape, at a given width. */
function everyShape(width: number): Drawing {
  const right = width - 20;
  const shapes: readonly Shape[] = [
    { type: "line", from: [20, 160], to: [right, 160], weight: 1 },
    { type: "line", from: [20, 160], to: [20, 167], weight: 0.6 },
    { type: "line", from: [20, 60], to: [right, 60], weight: 0.6, broken: true },
    { type: "line", from: [20, 40], to: [right / 2, 40], weight: 0.6, arrows: "both" },
    { type: "line", from: [right / 2, 40], to: [right, 40], weight: 0.6, arrows: "end" },
    { type: "hatch", x: width * 0.4, y: 60, width: width * 0.2, height: 30 },
    {
      type: "path",
      points: [
        [20, 160],
        [width * 0.4, 75],
        [width * 0.6, 76],
        [right, 150],
      ],
      weight: 2,
    },
    {
      type: "path",
      points: [
        [width * 0.7, 110],
        [width * 0.8, 110],
        [width * 0.75, 130],
      ],
      weight: 1,
      closed: true,
    },
    { type: "ring", at: [width * 0.5, 75], radius: 4, weight: 1 },
    { type: "line", from: [right, 60], to: [right, 170], weight: 3 },
    { type: "text", at: [20, 182], text: "0 °C", size: 14, anchor: "middle" },
    { type: "text", at: [width / 2, 30], text: "held 30 min ≥ 30 min", size: 14, anchor: "middle", strong: true },
    { type: "text", at: [width * 0.5, 110], text: "C2", size: 14, anchor: "start", to: { page: "joint/r-C2.html" } },
    { type: "text", at: [10, 110], text: "pressure, bar", size: 12, anchor: "middle", turned: true },
    { type: "text", at: [right, 182], text: "<b>µ</b> & Ø", size: 12, anchor: "end" },
  ];
  return { width, height: 190, shapes };
}

export const pressureFigure: Figure = {
  title: "Pressure against time, with <script>alert(1)</script> in its title",
  description:
    "The pressure rises to 15.8 bar, stays inside the band from 15.73 to 17.30 bar for 30 minutes, and falls.",
  wide: everyShape(904),
  narrow: everyShape(350),
};
