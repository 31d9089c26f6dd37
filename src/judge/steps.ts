import { stage, type Court } from "../court/court.ts";
import { ProgramError } from "../model/program-error.ts";

/** One step of judging. */
export interface Step {
  readonly name: string;
  readonly does: string;
  /**
   * Whether a stage ends with it: what it finds doubts nothing before, and everything after. Some end stages of their own, one after
   * the other; one that ends none leaves that to the next, or finds nothing.
   */
  readonly ends: "a stage" | "stages of its own" | "none";
}

interface Runs extends Step {
  readonly run: (state: object) => unknown;
}

interface HasCourt {
  readonly court: Court;
}

/**
 * Steps in their order. Each is given what all before it have handed on, and may hand on more, by name: what a later step
 * asks for and no earlier one hands on is an error of types.
 */
export class Steps<Start extends HasCourt, State extends Start = Start> {
  readonly #steps: readonly Runs[];

  private constructor(steps: readonly Runs[]) {
    this.#steps = steps;
  }

  static from<Start extends HasCourt>(): Steps<Start> {
    return new Steps<Start>([]);
  }

  /** A step at whose end what it found takes effect. */
  stage<More>(name: string, does: string, run: (state: State) => More) {
    return this.#with(name, does, "a stage", run);
  }

  /** A step that ends a stage with each thing it does, since the next rests on it. */
  stages<More>(name: string, does: string, run: (state: State) => More) {
    return this.#with(name, does, "stages of its own", run);
  }

  step<More>(name: string, does: string, run: (state: State) => More) {
    return this.#with(name, does, "none", run);
  }

  /** Names and purposes, in order: the table of contents of judging. */
  get list(): readonly Step[] {
    return this.#steps;
  }

  /** Runs them all, and gives what they have handed on. */
  run(start: Start): State {
    let state: object = start;
    for (const { name, ends, run } of this.#steps) {
      const go = () => {
        const more = run(state);
        if (typeof more !== "object" || more === null) return;
        const twice = Object.keys(more).filter((one) => Object.hasOwn(state, one));
        if (twice.length > 0) throw new ProgramError(`step "${name}" hands on ${twice.join(", ")} once more`);
        state = { ...state, ...more };
      };
      if (ends === "a stage") stage(start.court, go);
      else go();
    }
    // Each step was added with the type of what the steps before it hand on.
    return state as State;
  }

  #with<More>(name: string, does: string, ends: Step["ends"], run: (state: State) => More) {
    const step: Runs = { name, does, ends, run: (state) => run(state as State) };
    return new Steps<Start, State & (More extends object ? More : unknown)>([...this.#steps, step]);
  }
}
