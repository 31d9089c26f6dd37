import type { WantedKinds } from "../imports/propose.ts";
import { nearestName } from "../model/nearest.ts";
import type { Kind } from "../model/kind.ts";
import type { Workbook } from "../sheets/cells.ts";
import { UsageError } from "./command.ts";

/** What `--kind` says: one kind for all rows, or `Log=weld-log,WPS=welding-procedure` of several sheets. */
export function wantedKinds(
  given: string | undefined,
  { sheets }: Workbook,
  kinds: ReadonlyMap<string, Kind>,
): WantedKinds {
  if (given === undefined) return { bySheet: new Map() };
  if (!given.includes("=")) return { all: kindNamed(given, kinds), bySheet: new Map() };
  const names = sheets.map(({ name }) => name);
  return {
    bySheet: new Map(
      given.split(",").map((part) => {
        const cut = part.lastIndexOf("=");
        const sheet = part.slice(0, Math.max(cut, 0)).trim();
        if (!names.includes(sheet))
          throw new UsageError(
            `the file has no sheet "${sheet}" of "${part.trim()}"; write SHEET=KIND, with commas; its sheets are ${names.map((name) => `"${name}"`).join(", ")}`,
          );
        return [sheet, kindNamed(part.slice(cut + 1).trim(), kinds)] as const;
      }),
    ),
  };
}

function kindNamed(name: string, kinds: ReadonlyMap<string, Kind>): Kind {
  const kind = kinds.get(name);
  if (kind !== undefined && !kind.derived) return kind;
  const near = nearestName(
    name,
    [...kinds.values()].filter(({ derived }) => !derived).map((one) => one.name),
  );
  throw new UsageError(`there is no kind "${name}" to import${near === undefined ? "" : `; nearest: ${near}`}`);
}
