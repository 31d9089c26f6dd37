/** A term n·x^I·y^J of a fundamental equation. */
export type Term = readonly [I: number, J: number, n: number];

/** The sum of all terms and its derivatives by x and y. */
export interface Sums {
  readonly g: number;
  readonly x: number;
  readonly xx: number;
  readonly y: number;
  readonly yy: number;
  readonly xy: number;
}

/**
 * Makes the function that sums the terms at x and y, neither of them nought. Each power is taken once, by multiplication,
 * and every derivative comes from the same terms: (∂/∂x) n·x^I·y^J = I/x times the term.
 */
export function sumOfTerms(terms: readonly Term[]): (x: number, y: number) => Sums {
  const I = Uint8Array.from(terms, ([power]) => power);
  const J = Int8Array.from(terms, ([, power]) => power);
  const n = Float64Array.from(terms, ([, , coefficient]) => coefficient);
  const lowest = Math.min(0, ...J);
  const highest = Math.max(0, ...J);
  // Overwritten in each call: allocating them anew would cost as much as the sums.
  const powersOfX = new Float64Array(Math.max(...I) + 1);
  const powersOfY = new Float64Array(highest - lowest + 1);
  const count = terms.length;
  return (x, y) => {
    fill(powersOfX, 0, powersOfX.length, x);
    fill(powersOfY, -lowest, powersOfY.length, y);
    fillDown(powersOfY, -lowest, 1 / y);
    let [g, i, ii, j, jj, ij] = [0, 0, 0, 0, 0, 0];
    for (let k = 0; k < count; k++) {
      const a = I[k] ?? 0;
      const b = J[k] ?? 0;
      const term = (n[k] ?? 0) * (powersOfX[a] ?? 0) * (powersOfY[b - lowest] ?? 0);
      g += term;
      i += a * term;
      ii += a * (a - 1) * term;
      j += b * term;
      jj += b * (b - 1) * term;
      ij += a * b * term;
    }
    return { g, x: i / x, xx: ii / (x * x), y: j / y, yy: jj / (y * y), xy: ij / (x * y) };
  };
}

function fill(powers: Float64Array, from: number, to: number, base: number): void {
  let power = 1;
  for (let k = from; k < to; k++, power *= base) powers[k] = power;
}

function fillDown(powers: Float64Array, from: number, inverse: number): void {
  let power = inverse;
  for (let k = from - 1; k >= 0; k--, power *= inverse) powers[k] = power;
}
