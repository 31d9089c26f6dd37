export { serveLive } from "./server.ts";
export { wordsPage } from "./words-page.ts";
