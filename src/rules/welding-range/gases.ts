/** Symbols of EN ISO 14175 that a text names: "EN ISO 14175 - M21 (135), I1 (141)" names M21 and I1. */
export const gasesIn = (text: string): readonly string[] => [
  ...new Set(text.match(/\b(?:I[1-3]|M[1-3][1-7]|C[12]|R[12]|N[1-5]|O1|Z)\b/gu) ?? [text]),
];
