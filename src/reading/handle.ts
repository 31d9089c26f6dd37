import type { Handle } from "../model/input.ts";
import { isList, isObject, listAround } from "../model/json.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { subjectId } from "../model/subject.ts";
import { placeWords } from "../model/words.ts";
import { startAt, type Hit } from "./hit.ts";
import type { World } from "./world.ts";

/** How a definition's code names a subject or thing. */
export function handleOf(world: World, hit: Hit): Handle {
  const { record, pointer } = hit;
  if (record !== null) return new PlaceHandle(world, record, pointer, nameOf(world, hit));
  const id = hit.origin?.type === "table" ? hit.origin.row : "";
  return { address: "", kind: "", id, name: id };
}

class PlaceHandle implements Handle {
  readonly address: Address;
  readonly kind: string;
  readonly id: string;
  readonly #kinds: World["kinds"];
  readonly #record: BookRecord;
  readonly #pointer: string;

  constructor({ kinds }: World, record: BookRecord, pointer: string, id: string) {
    this.address = addressOf(record, pointer);
    this.kind = record.kind;
    this.id = id;
    this.#kinds = kinds;
    this.#record = record;
    this.#pointer = pointer;
  }

  /** Only sentences ask for it. */
  get name(): string {
    return placeWords(this.#kinds, this.#record, this.#pointer).short;
  }
}

/** "CRT-012", or "CRT-012#84613" for a row that has a name. */
function nameOf(world: World, hit: Hit): string {
  if (hit.record === null) return "";
  if (hit.pointer === "") return hit.record.id;
  const list = startAt(world, hit.record, listAround(hit.pointer));
  if (list.field === null || !isList(list.value)) return hit.record.id;
  const name = isObject(hit.value) ? rowName(list.field, hit.value) : undefined;
  return subjectId(hit.record.id, name);
}
