import type { Address } from "../model/record.ts";

/** Remembers which places findings of earlier stages throw doubt on. */
export interface Ledger {
  accuse(addresses: readonly Address[], finding: string): void;
  /** Keys of the findings that doubt this place: itself, or anything it lies in. */
  doubts(address: Address): readonly string[];
  /** Keys of the findings that doubt a record or anything in it. */
  doubtsWithin(record: Address): readonly string[];
  /** Nothing is accused so far. */
  readonly empty: boolean;
}

const none: readonly string[] = [];
const recordOf = (address: Address): Address => {
  const cut = address.indexOf("/");
  return cut < 0 ? address : address.slice(0, cut);
};

export function newLedger(): Ledger {
  const byRecord = new Map<Address, Map<Address, Set<string>>>();
  return {
    get empty() {
      return byRecord.size === 0;
    },
    accuse(addresses, finding) {
      for (const address of addresses) {
        const record = recordOf(address);
        const places = byRecord.get(record) ?? new Map<Address, Set<string>>();
        byRecord.set(record, places);
        places.set(address, (places.get(address) ?? new Set()).add(finding));
      }
    },
    doubts(address) {
      if (byRecord.size === 0) return none;
      const places = byRecord.get(recordOf(address));
      if (places === undefined) return none;
      const keys = new Set<string>();
      for (let at = address; ; at = at.slice(0, at.lastIndexOf("/"))) {
        for (const key of places.get(at) ?? none) keys.add(key);
        if (!at.includes("/")) return [...keys];
      }
    },
    doubtsWithin(record) {
      return [...new Set([...(byRecord.get(record)?.values() ?? [])].flatMap((keys) => [...keys]))];
    },
  };
}
