/** Source of a radiograph as a report names it: what it is, and of an X-ray tube its voltage. */
export interface Radiation {
  readonly kind: string;
  readonly kilovolts: number | undefined;
}

export const xRay = "X-ray";

const isotopes: readonly (readonly [kind: string, words: RegExp])[] = [
  ["Ir-192", /\bir(idium)?[- ]?192\b|\biridium\b/],
  ["Se-75", /\bse(lenium)?[- ]?75\b|\bselenium\b/],
  ["Co-60", /\bco(balt)?[- ]?60\b|\bcobalt\b/],
  ["Yb-169", /\byb[- ]?169\b|\bytterbium\b/],
];

/** "X-ray 180 kV, 4 mA", "Ir-192, 1.2 TBq": undefined where the text names no source known here. */
export function radiationOf(source: string): Radiation | undefined {
  const said = source.toLowerCase();
  const isotope = isotopes.find(([, words]) => words.test(said))?.[0];
  if (isotope !== undefined) return { kind: isotope, kilovolts: undefined };
  const voltage = /(\d+(?:[.,]\d+)?)\s*kv\b/.exec(said)?.[1];
  const kilovolts = voltage === undefined ? undefined : Number(voltage.replace(",", "."));
  return /x[- ]?ray|r(ö|oe)ntgen|tube/.test(said) || kilovolts !== undefined ? { kind: xRay, kilovolts } : undefined;
}

/** "C4" of "C4", "C 4" or "AGFA D7 (C5)": undefined where no class of ISO 11699-1 is named. */
export function filmClassOf(printed: string): number | undefined {
  const digit = /\bC ?([1-6])\b/i.exec(printed)?.[1];
  return digit === undefined ? undefined : Number(digit);
}
