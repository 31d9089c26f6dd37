/** Everything that is given one by one, by its path: for tests that look at many files of a site or an issue. */
export async function allFiles<Content>(
  given: AsyncIterable<readonly [path: string, content: Content]>,
): Promise<Map<string, Content>> {
  const files = new Map<string, Content>();
  for await (const [path, content] of given) {
    if (files.has(path)) throw new Error(`${path} is given twice`);
    files.set(path, content);
  }
  return files;
}
