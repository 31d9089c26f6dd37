import { Buffer } from "node:buffer";
import { damaged } from "../refused.ts";
import type { PdfValue } from "./values.ts";

/** Undoes the predictor of the parameters, if there is one (ISO 32000-1, 7.4.4.4). */
export function unpredicted(bytes: Buffer, parm: (name: string) => PdfValue): Buffer {
  const number = (name: string, usual: number) => {
    const value = parm(name);
    return typeof value === "number" ? value : usual;
  };
  const predictor = number("Predictor", 1);
  if (predictor <= 1) return bytes;
  const [colours, depth, columns] = [number("Colors", 1), number("BitsPerComponent", 8), number("Columns", 1)];
  const sound = [colours, depth, columns].every((value) => Number.isInteger(value) && value > 0);
  const row = Math.ceil((colours * depth * columns) / 8);
  if (!sound || row > bytes.length + 1) throw damaged("a part of it does not say rightly how it is packed");
  const step = Math.max(1, (colours * depth) >> 3);
  if (predictor >= 10) return fromPng(bytes, row, step);
  if (predictor !== 2 || depth !== 8) throw damaged("a part of it is packed in an unknown way");
  const out = Buffer.from(bytes);
  for (let at = 0; at < out.length; at++)
    if (at % row >= step) out[at] = ((out[at] ?? 0) + (out[at - step] ?? 0)) & 0xff;
  return out;
}

function fromPng(bytes: Buffer, row: number, step: number): Buffer {
  const rows = Math.ceil(bytes.length / (row + 1));
  const out = Buffer.alloc(rows * row);
  for (let y = 0; y < rows; y++) {
    const from = y * (row + 1);
    const to = y * row;
    const type = bytes[from] ?? 0;
    for (let x = 0; x < row; x++) {
      const left = x < step ? 0 : (out[to + x - step] ?? 0);
      const up = y === 0 ? 0 : (out[to + x - row] ?? 0);
      const corner = y === 0 || x < step ? 0 : (out[to + x - row - step] ?? 0);
      out[to + x] = ((bytes[from + 1 + x] ?? 0) + predicted(type, left, up, corner)) & 0xff;
    }
  }
  return out;
}

function predicted(type: number, left: number, up: number, corner: number): number {
  switch (type) {
    case 0:
      return 0;
    case 1:
      return left;
    case 2:
      return up;
    case 3:
      return (left + up) >> 1;
    case 4: {
      const guess = left + up - corner;
      const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
      return a <= b && a <= c ? left : b <= c ? up : corner;
    }
    default:
      throw damaged("a part of it is packed in an unknown way");
  }
}
