import { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged } from "../refused.ts";
import { newOutput } from "./plain-filters.ts";

const clear = 256;
const end = 257;
const most = 4096;

/** LZW as PDF and TIFF have it: codes of 9 to 12 bits, highest bit first (ISO 32000-1, 7.4.4). */
export function lzw(bytes: Buffer, budget: Budget, early: boolean): Buffer {
  const out = newOutput(budget, bytes.length * 3);
  // Each code is an earlier one and one byte more.
  const before = new Int16Array(most);
  const last = new Uint8Array(most);
  const length = new Uint16Array(most);
  for (let code = 0; code < 256; code++) {
    last[code] = code;
    length[code] = 1;
  }
  const scratch = Buffer.allocUnsafe(most + 1);
  const spell = (code: number): Buffer => {
    const size = length[code] ?? 0;
    for (let at = size - 1, one = code; at >= 0; at--, one = before[one] ?? 0) scratch[at] = last[one] ?? 0;
    return scratch.subarray(0, size);
  };
  let next = 258;
  let width = 9;
  let previous = -1;
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = ((held << 8) | byte) & 0xffffff;
    bits += 8;
    if (bits < width) continue;
    bits -= width;
    const code = (held >> bits) & ((1 << width) - 1);
    if (code === end) break;
    if (code === clear) {
      next = 258;
      width = 9;
      previous = -1;
      continue;
    }
    if (code > next || (code === next && previous < 0)) throw damaged("a compressed part of it cannot be unpacked");
    if (previous >= 0 && next < most) {
      before[next] = previous;
      length[next] = (length[previous] ?? 0) + 1;
      // A code that is made only now begins as the one before it.
      last[next] = spell(code === next ? previous : code)[0] ?? 0;
      next++;
    }
    if (code >= next) throw damaged("a compressed part of it cannot be unpacked");
    out.bytes(spell(code));
    previous = code;
    const shift = early ? 1 : 0;
    width = next + shift >= 2048 ? 12 : next + shift >= 1024 ? 11 : next + shift >= 512 ? 10 : 9;
  }
  return out.all();
}
