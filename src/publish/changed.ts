/** A file of the book is no longer what was judged. */
export class ChangedWhileBuilding extends Error {}
