export function addTo<Key, Item>(groups: Map<Key, Item[]>, key: Key, item: Item): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, [item]);
  else group.push(item);
}

/** The items by their key, keys and items in the order they come. */
export function grouped<Key, Item>(items: Iterable<Item>, keyOf: (item: Item) => Key): ReadonlyMap<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) addTo(groups, keyOf(item), item);
  return groups;
}
