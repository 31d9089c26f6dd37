import { nearestIds } from "../link/alike.ts";
import { formatOption, UsageError, type Command } from "./command.ts";
import { explainJson } from "./explain-json.ts";
import { explainText, listText } from "./explain-text.ts";
import { explained, named, names } from "./explained.ts";

export const explain: Command = {
  name: "explain",
  summary: "list every kind, calculation and rule, or explain one of them",
  arguments: [
    { name: "name", required: false, means: "a kind, a calculation, a rule, a requirement: what stands in a finding" },
  ],
  options: { format: formatOption(["text", "json"]) },
  help: [
    "A kind: its fields with types, units and when they are owed. A calculation: formulas, limits, inputs and worked examples " +
      "with their sources. A rule: what it reads, how grave its objections are, and examples on each side of every limit.",
  ],
  run(given, effects) {
    const all = explained(effects.engine.definitions(), effects.engine.builtIns);
    const name = given.arguments[0];
    const chosen = name === undefined ? all : named(all, name);
    if (name !== undefined && names(chosen).length === 0) {
      const near = nearestIds(name, names(all));
      throw new UsageError(
        `nothing is called "${name}"; ${near.length > 0 ? `did you mean ${near.join(" or ")}?` : "list all names with: databook explain"}`,
      );
    }
    if (given.options.get("format") === "json") effects.print(explainJson(chosen));
    else effects.print(name === undefined ? listText(all, effects.ink) : explainText(chosen, effects.ink));
    return Promise.resolve(0);
  },
};
