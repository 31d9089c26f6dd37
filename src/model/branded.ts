/** The name of a text type; it stands in no text, only in what the compiler knows. */
declare const brand: unique symbol;

/** A text of one sort: texts of other sorts, and any text at all, are not taken for it. It is made by its printer alone. */
export type Branded<Name extends string> = string & { readonly [brand]: Name };
