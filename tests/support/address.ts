import { addressOf, partsOfAddress, type Address } from "../../src/model/record.ts";

/** The address that a test writes as text: `joint:C1`, `part:P01/nominalThickness`. */
export function address(text: string): Address {
  const { kind, id, pointer } = partsOfAddress(text);
  return addressOf({ kind, id }, pointer);
}
