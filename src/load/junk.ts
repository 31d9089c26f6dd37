/** Files that systems and programs leave in every folder; they are no evidence, and are passed over. */
export const isJunk = (name: string): boolean =>
  name.startsWith(".") || name.startsWith("~$") || /^(?:thumbs\.db|ehthumbs\.db|desktop\.ini|icon\r?)$/i.test(name);
