/** Heads of the columns in which people sign, on screen and on paper: who signs there is told which line is for what. */
export const signatureHeads = ["For", "Signs that", "Date", "Signature"] as const;
