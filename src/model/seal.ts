/** Signs of a digest: none that is taken for another (no I, L, O, S, U); a prime number of them, so that slips show. */
const signs = "0123456789ABCDEFGHJKMNPQRTVWXYZ";
const length = 12;
const base = BigInt(signs.length);

/**
 * Eleven signs of a hash (hexadecimal, at least 64 bits are used) and one that checks them, in three groups of four. One
 * wrong sign and two that changed places never go unnoticed.
 */
export function sealed(hash: string): string {
  let rest = BigInt(`0x${hash.slice(0, 16)}`);
  let own = "";
  for (let n = 1; n < length; n++) {
    own += signs.charAt(Number(rest % base));
    rest /= base;
  }
  const last = Array.from(signs).find((sign) => isSound(own + sign)) ?? "";
  return (own + last).replaceAll(/.{4}(?=.)/g, "$&-");
}

/** Whether the last sign of a digest belongs to the others; where it does not, some sign was mistyped. */
export function isSealed(digest: string): boolean {
  return isSound(digest.replaceAll("-", ""));
}

function isSound(text: string): boolean {
  const values = Array.from(text, (sign) => signs.indexOf(sign));
  const sum = values.reduce((all, value, index) => all + value * (index + 1), 0);
  return text.length === length && !values.includes(-1) && sum % signs.length === 0;
}
