import { keepTextsIn } from "../../src/foreign/texts.ts";

// Each test file is a process of its own: the texts of the demonstrations' originals are read once for all of them.
keepTextsIn(process.env["DATABOOK_CACHE"]);
