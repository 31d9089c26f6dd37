import { addressOf, type Address, type BookRecord } from "./record.ts";

/** A place that was read: in a record, or by its address where that is all there is of it. */
interface Place {
  readonly record: BookRecord | null;
  readonly pointer: string;
}

/**
 * Places by their addresses, each once. They are kept as what they are made of, a record and a pointer one after the other: a
 * large book holds hundreds of thousands, whose addresses would each be a text of its own, and few of them are asked for.
 */
export class Places implements Iterable<Address> {
  readonly parts: readonly (BookRecord | string | null)[];

  constructor(places: readonly Place[]) {
    const parts: (BookRecord | string | null)[] = [];
    let before: Place | undefined;
    for (const place of places) {
      // What is read twice is mostly read twice at once.
      if (before?.record !== place.record || before.pointer !== place.pointer) parts.push(place.record, place.pointer);
      before = place;
    }
    // As long as it is, without the room that a list keeps to grow.
    this.parts = parts.slice();
  }

  [Symbol.iterator](): Iterator<Address> {
    return this.#addresses().values();
  }

  #addresses(): ReadonlySet<Address> {
    const found = new Set<Address>();
    for (let at = 0; at < this.parts.length; at += 2) {
      const [record, pointer] = [this.parts[at], this.parts[at + 1]];
      if (typeof pointer !== "string") continue;
      found.add(typeof record === "object" && record !== null ? addressOf(record, pointer) : (pointer as Address));
    }
    return found;
  }
}
