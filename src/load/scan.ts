import { isKept, type WrittenNumber } from "./lost-numbers.ts";

/** A member name that stands more than once in one object: offsets of the quotes that open it, first and later. */
export interface Duplicate {
  readonly name: string;
  readonly first: number;
  readonly again: number;
}

export interface Scan {
  readonly duplicates: readonly Duplicate[];
  /** Where nesting goes deeper than allowed; nothing behind it was scanned. */
  readonly tooDeep?: number;
  /** Numbers that would not be kept as they are written. */
  readonly numbers: readonly WrittenNumber[];
}

/** Objects and lists inside each other, at most. */
export const maxDepth = 64;

const linearKeys = 32;

/**
 * Finds names that stand twice in one object, at any level, and nesting beyond the cap, in one pass (`JSON.parse` would
 * keep the last of two values and say nothing). Stops after `most` duplicates. Of a text that is not JSON it may report
 * anything, but it ends.
 *
 * Names are compared by a hash made while they are read, so that no text is copied unless two hashes are equal.
 */
export function scanJson(text: string, most = 50): Scan {
  const duplicates: Duplicate[] = [];
  const numbers: WrittenNumber[] = [];
  const frames = new Int32Array(maxDepth + 2);
  const inObject = new Uint8Array(maxDepth + 2);
  const large: (Map<string, number> | undefined)[] = [];
  let hashes = new Int32Array(256);
  let starts = new Int32Array(256);
  let ends = new Int32Array(256);
  let top = 0;
  let depth = 0;
  let atName = false;
  const length = text.length;

  const nameAt = (key: number) => decodeName(text, starts[key] ?? 0, ends[key] ?? 0);

  const isRepeated = (from: number): number => {
    const key = top - 1;
    if (top - from > linearKeys) {
      let names = large[depth];
      if (names === undefined) {
        large[depth] = names = new Map();
        for (let i = from; i < key; i++) if (!names.has(nameAt(i))) names.set(nameAt(i), starts[i] ?? 0);
      }
      const name = nameAt(key);
      const first = names.get(name);
      if (first === undefined) names.set(name, starts[key] ?? 0);
      return first ?? -1;
    }
    for (let i = from; i < key; i++) {
      if (hashes[i] === hashes[key] && nameAt(i) === nameAt(key)) return starts[i] ?? 0;
    }
    return -1;
  };

  for (let i = 0; i < length; i++) {
    const sign = text.charCodeAt(i);
    if (sign === 34) {
      const start = i;
      if (!atName) {
        for (let c = text.charCodeAt(++i); c !== 34 && i < length; c = text.charCodeAt(++i)) if (c === 92) i++;
        continue;
      }
      let hash = 0;
      let escaped = false;
      for (let c = text.charCodeAt(++i); c !== 34 && i < length; c = text.charCodeAt(++i)) {
        if (c === 92) {
          escaped = true;
          i++;
        } else hash = (Math.imul(hash, 31) + c) | 0;
      }
      if (top === hashes.length) {
        hashes = grown(hashes);
        starts = grown(starts);
        ends = grown(ends);
      }
      starts[top] = start;
      ends[top] = i + 1;
      hashes[top] = escaped ? hashOf(decodeName(text, start, i + 1)) : hash;
      top++;
      atName = false;
      const first = isRepeated(frames[depth] ?? 0);
      if (first >= 0) {
        duplicates.push({ name: nameAt(top - 1), first, again: start });
        if (duplicates.length >= most) return { duplicates, numbers };
      }
    } else if (sign === 123 || sign === 91) {
      depth++;
      if (depth > maxDepth) return { duplicates, numbers, tooDeep: i };
      atName = sign === 123;
      inObject[depth] = atName ? 1 : 0;
      frames[depth] = top;
      large[depth] = undefined;
    } else if (sign === 125 || sign === 93) {
      top = frames[depth] ?? 0;
      if (depth > 0) depth--;
      atName = false;
    } else if (sign === 44) {
      atName = inObject[depth] === 1;
    } else if (sign === 45 || (sign >= 48 && sign <= 57)) {
      const end = numberEnd(text, i);
      const written = text.slice(i, end);
      // Short ones without sign and power are always kept.
      if ((sign === 45 || end - i > 15 || /e/i.test(written)) && numbers.length < most && !isKept(written))
        numbers.push({ offset: i, text: written });
      i = end - 1;
    }
  }
  return { duplicates, numbers };
}

/** End of the signs a number is made of. */
function numberEnd(text: string, start: number): number {
  let at = start + 1;
  for (
    let sign = text.charCodeAt(at);
    (sign >= 48 && sign <= 57) || numberSigns.has(sign);
    sign = text.charCodeAt(++at)
  );
  return at;
}

const numberSigns: ReadonlySet<number> = new Set(Array.from("+-.eE", (sign) => sign.charCodeAt(0)));

/** The name written between two offsets, quotes included, with its escapes resolved. */
function decodeName(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end - 1);
  if (!raw.includes("\\")) return raw;
  try {
    return String(JSON.parse(`"${raw}"`));
  } catch {
    return raw;
  }
}

function hashOf(name: string): number {
  let hash = 0;
  for (let i = 0; i < name.length; i++) hash = (Math.imul(hash, 31) + name.charCodeAt(i)) | 0;
  return hash;
}

function grown(array: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(array.length * 2);
  larger.set(array);
  return larger;
}
