import { keepTextsIn } from "../../src/foreign/texts.ts";

// Several processes run the test files: the texts of the demonstrations' originals are read once for all of them.
keepTextsIn(process.env["DATABOOK_CACHE"]);
