/** Classes of the filler metals, as procedures and batches name them. */
export const wire = "EN ISO 14341-A - G 42 4 M21 3Si1";
export const rod = "EN ISO 636-A - W 42 5 W3Si1";
