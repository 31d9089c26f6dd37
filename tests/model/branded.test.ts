import { expect, test } from "vitest";
import { calculationKey } from "../../src/model/calculation-key.ts";
import { findingKey, partsOfKey, type FindingKey } from "../../src/model/finding-key.ts";
import { outcomeName, outcomeOf, type OutcomeName } from "../../src/model/outcome-name.ts";
import { addressOf, type Address } from "../../src/model/record.ts";

const joint = { kind: "joint", id: "C2" };

test("keys, names and addresses are texts, and none is taken for another", () => {
  const [calculated, outcome] = [calculationKey("tested-length", joint, ""), outcomeName("tested-length", joint)];
  // @ts-expect-error the result of a calculation is no finding, though both are written alike
  const key: FindingKey = calculated;
  // @ts-expect-error an outcome is no finding either
  partsOfKey(outcome);
  // @ts-expect-error a finding is no outcome
  outcomeOf(findingKey("tested-length", addressOf(joint)));
  // @ts-expect-error a text is an address only where it was printed as one
  const address: Address = "joint:C2";
  // @ts-expect-error an address is no name of an outcome
  const name: OutcomeName = address;
  expect([key, name]).toEqual(["tested-length|joint:C2", "joint:C2"]);
});
