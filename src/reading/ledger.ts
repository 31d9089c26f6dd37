import type { FindingKey } from "../model/finding-key.ts";
import { placeAround, recordIn, type Address } from "../model/record.ts";

/** Remembers which places findings of earlier stages throw doubt on, or dispute. */
export interface Ledger {
  accuse(addresses: readonly Address[], finding: FindingKey): void;
  dispute(addresses: readonly Address[], finding: FindingKey): void;
  /** Keys of the findings that doubt this place: itself, or anything it lies in. */
  doubts(address: Address): readonly FindingKey[];
  /** Keys of the findings that dispute it, in the same sense. */
  disputes(address: Address): readonly FindingKey[];
  /** Keys of the findings that doubt a record or anything in it. */
  doubtsWithin(record: Address): readonly FindingKey[];
  /** Whether anything of a record, by its address, is accused or disputed. */
  knows(record: Address): boolean;
  /** Nothing is accused or disputed so far. */
  readonly empty: boolean;
}

const none: readonly FindingKey[] = [];

/** Findings by the places they name, by record. */
class Register {
  readonly byRecord = new Map<Address, Map<Address, Set<FindingKey>>>();

  add(addresses: readonly Address[], finding: FindingKey): void {
    for (const address of addresses) {
      const record = recordIn(address);
      const places = this.byRecord.get(record) ?? new Map<Address, Set<FindingKey>>();
      this.byRecord.set(record, places);
      places.set(address, (places.get(address) ?? new Set()).add(finding));
    }
  }

  at(address: Address): readonly FindingKey[] {
    const places = this.byRecord.size === 0 ? undefined : this.byRecord.get(recordIn(address));
    if (places === undefined) return none;
    const keys = new Set<FindingKey>();
    for (let at: Address | undefined = address; at !== undefined; at = placeAround(at))
      for (const key of places.get(at) ?? none) keys.add(key);
    return [...keys];
  }
}

export function newLedger(): Ledger {
  const [accused, disputed] = [new Register(), new Register()];
  return {
    get empty() {
      return accused.byRecord.size === 0 && disputed.byRecord.size === 0;
    },
    accuse: (addresses, finding) => {
      accused.add(addresses, finding);
    },
    dispute: (addresses, finding) => {
      disputed.add(addresses, finding);
    },
    doubts: (address) => accused.at(address),
    disputes: (address) => disputed.at(address),
    knows: (record) => accused.byRecord.has(record) || disputed.byRecord.has(record),
    doubtsWithin: (record) => [
      ...new Set([...(accused.byRecord.get(record)?.values() ?? [])].flatMap((keys) => [...keys])),
    ],
  };
}
