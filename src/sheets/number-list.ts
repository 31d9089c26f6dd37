/** Numbers one after the other, without knowing how many there will be. */
export interface NumberList {
  push(numbers: ArrayLike<number>): void;
  done(): Uint32Array<ArrayBuffer>;
}

export function newNumberList(): NumberList {
  let held = new Uint32Array(1024);
  let length = 0;
  return {
    push(numbers) {
      if (length + numbers.length > held.length) {
        const larger = new Uint32Array(held.length * 2);
        larger.set(held);
        held = larger;
      }
      // A loop: `set` is slow with few numbers.
      for (let index = 0; index < numbers.length; index++) held[length + index] = numbers[index] ?? 0;
      length += numbers.length;
    },
    done: () => held.slice(0, length),
  };
}
