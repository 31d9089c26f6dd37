import type { JudgedBook, LoadedBook } from "../model/book.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Kind } from "../model/kind.ts";
import type { Block } from "../publish/blocks.ts";
import type { Rule } from "../model/rule.ts";
import type { IssueFile } from "../publish/issue/index.ts";
import type { Answer } from "../publish/live/server.ts";
import type { LastChange } from "../publish/outline/live.ts";
import type { Ink } from "../report/text.ts";

/** 0 nothing blocks · 1 findings block · 2 the work could not be done. */
export type Exit = 0 | 1 | 2;

export interface Option {
  /** Stands in the help for what follows: `--out DIR`. None: a switch. */
  readonly value?: string;
  readonly choices?: readonly string[];
  readonly means: string;
}

export interface Argument {
  readonly name: string;
  readonly required: boolean;
  readonly means: string;
}

/** One command of the command line: what it takes, what its help says, and what it does. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly arguments: readonly Argument[];
  readonly options: Readonly<Record<string, Option>>;
  /** It reads a book, as a rule: what looks at originals comes to life while the program is loaded. */
  readonly readsBook?: true;
  /** Paragraphs of its help. */
  readonly help: readonly string[];
  run(given: Given, effects: Effects): Promise<Exit>;
}

/** What stood on the command line, already checked against the command. */
export interface Given {
  readonly arguments: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}

/** The world outside, as far as commands may touch it besides reading and writing files below the folders they are given. */
export interface Effects {
  /** Folder that relative paths start from. */
  readonly cwd: string;
  /** The day it is here, for what begins now: no judgement reads it. */
  readonly today: () => string;
  /** Data, for a person or the next program. */
  readonly print: (text: string) => void;
  /** Talk: why, what was done. */
  readonly say: (text: string) => void;
  /** Which stage runs; shown only on a terminal. */
  readonly progress: (stage: string) => void;
  readonly ink: Ink;
  readonly sayInk: Ink;
  readonly engine: Engine;
  /** Ends when a person stops the program, or as `failed` does. */
  readonly interrupted: (failed: Promise<never>) => Promise<void>;
}

export interface ReadBook extends LoadedBook {
  readonly kinds: ReadonlyMap<string, Kind>;
}

/** The stages of the pipeline as commands use them. */
export interface Engine {
  /** Name and version. */
  readonly tool: string;
  /** What is shipped as data and differs from what the program was built with: "tables", "schemas". */
  changedSinceBuild(): readonly string[];
  readonly builtIns: readonly BuiltIn[];
  /** Reads a book; or, where that is said, a shelf, which needs no book and no issue. */
  readBook(dir: string, options?: { readonly isShelf?: boolean; readonly since?: ReadBook }): ReadBook;
  /** What is asked of a book that takes records from another: whether they still hold. */
  readonly expiries: readonly Rule[];
  judgeExpiries(read: ReadBook): JudgedBook;
  /** `told` hears how many of the originals' texts have been read, while that takes time. */
  judgeBook(read: ReadBook, told?: (done: number, of: number) => void): JudgedBook;
  /** Gives a judge of one book in the making, who remembers it: what has not changed since is judged no second time. */
  judgingAgain(): (read: ReadBook) => JudgedBook;
  /** The files of the issue, each given as soon as it is made. */
  publishBook(judged: JudgedBook, progress: (stage: string) => void): AsyncIterable<IssueFile>;
  /** The pages of a judged book, each made when it is asked for. */
  liveSite(judged: JudgedBook, change: LastChange): Promise<(path: string) => Promise<Answer>>;
  traceRecord(judged: JudgedBook, kind: string, id: string): Promise<Extract<Block, { type: "chain" }> | undefined>;
  definitions(): Definitions;
}

/** A fault in how the tool was called, or in what it was pointed at: said in one line, exit 2. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

export const formatOption = (choices: readonly string[]): Option => ({
  value: "FORM",
  choices,
  means: `form of the output: ${choices.join(", ")}; text if not given`,
});

export const bookArgument: Argument = {
  name: "book",
  required: false,
  means: "folder of the book; if not given, the book one stands in, or records/",
};
