import { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { damaged } from "../refused.ts";

/** Bytes as a filter gives them; refuses the file when they are more than the budget has room for. */
export interface Output {
  byte(value: number): void;
  bytes(values: Uint8Array): void;
  all(): Buffer;
}

export function newOutput(budget: Budget, guess: number): Output {
  const most = budget.room();
  let buffer = Buffer.allocUnsafe(Math.max(64, Math.min(guess, most)));
  let size = 0;
  const grow = (by: number) => {
    if (size + by > most) throw budget.tooMuch();
    if (size + by <= buffer.length) return;
    const larger = Buffer.allocUnsafe(Math.min(most, Math.max(size + by, buffer.length * 2)));
    buffer.copy(larger, 0, 0, size);
    buffer = larger;
  };
  return {
    byte(value) {
      grow(1);
      buffer[size++] = value;
    },
    bytes(values) {
      grow(values.length);
      buffer.set(values, size);
      size += values.length;
    },
    all: () => buffer.subarray(0, size),
  };
}

const isSpace = (byte: number) => byte === 0 || byte === 9 || byte === 10 || byte === 12 || byte === 13 || byte === 32;

const wrongSign = () => damaged("a part of it holds a sign that has no place there");

export function asciiHex(bytes: Buffer, budget: Budget): Buffer {
  const out = newOutput(budget, bytes.length / 2 + 1);
  let half = -1;
  for (const byte of bytes) {
    if (byte === 0x3e) break;
    if (isSpace(byte)) continue;
    const digit = Number.parseInt(String.fromCharCode(byte), 16);
    if (Number.isNaN(digit)) throw wrongSign();
    if (half < 0) half = digit;
    else {
      out.byte(half * 16 + digit);
      half = -1;
    }
  }
  if (half >= 0) out.byte(half * 16);
  return out.all();
}

export function ascii85(bytes: Buffer, budget: Budget): Buffer {
  const out = newOutput(budget, bytes.length);
  const flush = (value: number, count: number) => {
    for (let index = 0; index < count; index++) out.byte(Math.floor(value / 256 ** (3 - index)) & 0xff);
  };
  let value = 0;
  let count = 0;
  for (const byte of bytes) {
    if (byte === 0x7e) break;
    if (isSpace(byte)) continue;
    if (byte === 0x7a && count === 0) flush(0, 4);
    else if (byte < 0x21 || byte > 0x75) throw wrongSign();
    else {
      value = value * 85 + byte - 0x21;
      if (++count < 5) continue;
      flush(value, 4);
      value = count = 0;
    }
  }
  if (count > 1) {
    for (let index = count; index < 5; index++) value = value * 85 + 84;
    flush(value, count - 1);
  }
  return out.all();
}

export function runLength(bytes: Buffer, budget: Budget): Buffer {
  const out = newOutput(budget, bytes.length * 2);
  for (let at = 0; at < bytes.length;) {
    const length = bytes[at++] ?? 128;
    if (length === 128) break;
    if (length < 128) {
      out.bytes(bytes.subarray(at, at + length + 1));
      at += length + 1;
    } else out.bytes(Buffer.alloc(257 - length, bytes[at++] ?? 0));
  }
  return out.all();
}
