/** One sort of weld imperfection: the name tables know it by, its numbers of ISO 6520-1, and words reports use. */
interface Family {
  readonly name: string;
  readonly codes: RegExp;
  readonly words: RegExp;
}

/** A mark of the film or its processing: nothing of the weld, and the length under it was not seen. */
export const artefact = "film artefact";

/** Codes are matched whole; of words the first family that knows them counts. */
const families: readonly Family[] = [
  { name: artefact, codes: /^$/, words: /artefact|artifact|emulsion|processing mark|film mark/ },
  { name: "crack", codes: /^10[0-6]\d?$/, words: /crack|fissure/ },
  { name: "copper inclusion", codes: /^3042$/, words: /copper/ },
  { name: "metallic inclusion", codes: /^304[13]?$/, words: /tungsten|metallic inclusion/ },
  { name: "lack of penetration", codes: /^402\d?$/, words: /penetration(?!\s*too|.*excess)|incomplete root/ },
  { name: "lack of fusion", codes: /^401\d?$/, words: /fusion|cold lap/ },
  { name: "pore cluster", codes: /^2013$/, words: /cluster/ },
  { name: "linear porosity", codes: /^2014$/, words: /linear poros|pores? in line|aligned pores?/ },
  { name: "elongated cavity", codes: /^201[56]$/, words: /worm.?hole|elongated cavit/ },
  { name: "surface pore", codes: /^2017$/, words: /surface pore/ },
  { name: "crater pipe", codes: /^202[45]$/, words: /crater pipe/ },
  { name: "shrinkage cavity", codes: /^202[12]?$/, words: /shrinkage cavit/ },
  { name: "root porosity", codes: /^516$/, words: /root poros/ },
  { name: "gas pore", codes: /^20[01]$|^201[12]$/, words: /\bpores?\b|porosity|gas cavit/ },
  { name: "slag inclusion", codes: /^30[0-3]\d?$/, words: /slag|flux inclusion|oxide|inclusion/ },
  { name: "shrinkage groove", codes: /^5013$/, words: /shrinkage groove|root undercut/ },
  { name: "undercut", codes: /^501[1245]?$/, words: /undercut/ },
  { name: "excess weld metal", codes: /^502$/, words: /excess weld metal|reinforcement/ },
  { name: "excessive convexity", codes: /^503$/, words: /convexity/ },
  { name: "excess penetration", codes: /^504\d?$/, words: /excess(ive)? penetration/ },
  { name: "overlap", codes: /^506\d?$/, words: /overlap/ },
  { name: "misalignment", codes: /^507\d?$/, words: /misalign/ },
  { name: "incompletely filled groove", codes: /^509\d?$|^511$/, words: /sagging|incompletely filled|underfill/ },
  { name: "unequal legs", codes: /^512$/, words: /unequal|asymmetr/ },
  { name: "root concavity", codes: /^515$/, words: /root concavity|suck.?back/ },
  { name: "throat too small", codes: /^5213$/, words: /throat too small|insufficient throat/ },
  { name: "throat too large", codes: /^5214$/, words: /throat too large|excessive throat/ },
  { name: "stray arc", codes: /^601$/, words: /stray arc|arc strike/ },
  { name: "spatter", codes: /^602$/, words: /spatter/ },
  { name: "non-linear", codes: /^$/, words: /non.?linear|round/ },
  { name: "linear", codes: /^$/, words: /linear/ },
  { name: "planar", codes: /^$/, words: /(?<!non.?|not )planar/ },
];

/** Of what nobody names: no table knows it. */
export const unnamed = "not named";

/**
 * What an indication is called in the tables: by the number it bears, and by its words. Where the two differ both
 * count, so that "2011 crack" is judged as a crack too.
 */
export function familiesOf(type: string): readonly string[] {
  const said = type.toLowerCase();
  const code = /^\s*(\d{3,4})(?!\d)/.exec(said)?.[1];
  const byCode = code === undefined ? undefined : families.find(({ codes }) => codes.test(code))?.name;
  // "excess penetration" is no lack of it: what says so is looked for first.
  const excess = /excess(ive)? penetration/.test(said) ? "excess penetration" : undefined;
  const byWords = excess ?? families.find(({ words }) => words.test(said))?.name;
  const found = [byCode, byWords].filter((one) => one !== undefined);
  if (found.length === 0) return [unnamed];
  // The number is the more exact of two that lie in one another: "2017 pore", "2013 porosity".
  const general: readonly string[] = ["gas pore", "slag inclusion", "linear", "non-linear", "planar"];
  const exact = byCode !== undefined && byWords !== undefined && general.includes(byWords) ? [byCode] : found;
  return [...new Set(exact)];
}

/** "ISO 10675-1" of "EN ISO 10675-1:2021" or "DIN EN ISO 10675-1"; what is no standard of ISO stays as it is written. */
export function isoName(standard: string): string {
  const match = /\bISO[ /-]*(\d{3,5}(?:-\d+)?)/i.exec(standard);
  return match?.[1] === undefined ? standard.trim() : `ISO ${match[1]}`;
}
