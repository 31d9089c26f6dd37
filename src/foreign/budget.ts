import { beyond, damaged, type Refused } from "./refused.ts";

const MB = 1024 * 1024;

/** What is read of one foreign file, at most. Counts only: they are the same on every machine. */
export interface Limits {
  readonly bytes: number;
  readonly pages: number;
  /** Numbered objects. */
  readonly objects: number;
  /** Values of all sorts: numbers, names, entries of lists. */
  readonly values: number;
  /** Lists and dictionaries inside each other. */
  readonly depth: number;
  /** Bytes that one filter may give. */
  readonly stage: number;
  /** Bytes that all filters of a file may give. */
  readonly expanded: number;
  /** Filters of one stream. */
  readonly filters: number;
  /** Points of a picture. */
  readonly pixels: number;
}

export const usualLimits: Limits = {
  bytes: 256 * MB,
  pages: 5000,
  objects: 250_000,
  values: 3_000_000,
  depth: 96,
  stage: 128 * MB,
  expanded: 2048 * MB,
  filters: 6,
  pixels: 300_000_000,
};

/** Counts what the reading of one file has used, and refuses the file when it is too much. */
export interface Budget {
  readonly limits: Limits;
  spend(what: "objects" | "values" | "pages"): void;
  /** Bytes that the next filter may give. */
  room(): number;
  /** Notes what a filter gave. */
  expanded(bytes: number): void;
  /** The refusal of a filter that would give more than there is room for. */
  tooMuch(): Refused;
  /** Notes bytes looked through because a part does not end where it says. */
  searched(bytes: number): void;
}

const counted = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, "\u00a0");
export const megabytes = (bytes: number): string => `${counted(Math.round(bytes / MB))} MB`;

export function newBudget(limits: Limits = usualLimits): Budget {
  const used = { objects: 0, values: 0, pages: 0 };
  let unpacked = 0;
  let looked = 0;
  const room = () => Math.min(limits.stage, limits.expanded - unpacked);
  return {
    limits,
    room,
    spend(what) {
      const most = limits[what];
      if (++used[what] > most)
        throw beyond(`the file holds more than ${counted(most)} ${what}`, `at most ${counted(most)} ${what}`);
    },
    expanded(bytes) {
      unpacked += bytes;
    },
    tooMuch() {
      const [most, what] =
        room() < limits.stage
          ? [limits.expanded, "the parts of the file unpack"]
          : [limits.stage, "a part of the file unpacks"];
      return beyond(`${what} to more than ${megabytes(most)}`, `parts that unpack to at most ${megabytes(most)}`);
    },
    searched(bytes) {
      looked += bytes;
      if (looked > limits.expanded) throw damaged("its parts do not end where they say");
    },
  };
}
