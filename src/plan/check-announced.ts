import type { AnnouncedLimit, AnnouncedSymbol, Announcement } from "../model/announcement.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { nearestWords } from "../model/nearest.ts";
import { pathOf } from "../reading/bind.ts";
import { checkPath } from "./check-paths.ts";
import type { Coverage } from "./coverage.ts";

interface Announcing {
  readonly when?: readonly Condition[];
  readonly announces?: readonly Announcement<AnnouncedLimit | AnnouncedSymbol>[];
  readonly inputs: object;
  readonly steps?: Calculation["steps"];
}

/** What is wrong with the limits a definition announces: what is awaited must be owed, and each limit be there. */
export function checkAnnounced(
  definitions: Definitions,
  coverage: Coverage,
  kind: string,
  { when = [], announces = [], inputs, steps = [] }: Announcing,
): readonly string[] {
  const symbols = new Set([...Object.keys(inputs), ...steps.map(({ symbol }) => symbol)]);
  const parameters = new Set(definitions.profiles.flatMap((profile) => Object.keys(profile.parameters)));
  const walk = (path: string, required: boolean, conditions: readonly Condition[]) =>
    checkPath(definitions, coverage, kind, pathOf(path), required, conditions).problems;
  return announces.flatMap(({ awaits, when: more = [], limits }) => {
    const known = [...when, ...more];
    return [
      ...walk(awaits, true, known),
      ...more.flatMap(({ path, exists }, index) =>
        walk(path, exists === undefined, known.slice(0, when.length + index)),
      ),
      ...limits.flatMap((limit) => {
        if ("symbol" in limit)
          return symbols.has(limit.symbol)
            ? []
            : [`announces "${limit.symbol}", which is no symbol${nearestWords(limit.symbol, symbols)}`];
        if ("path" in limit) return walk(limit.path, false, known);
        return parameters.has(limit.parameter)
          ? []
          : [`announces "${limit.parameter}", which is no parameter${nearestWords(limit.parameter, parameters)}`];
      }),
    ];
  });
}
