/** What of a sheet cannot be read, by the place a person looks it up. */
export interface ImportFault {
  readonly sheet: string;
  readonly row?: number;
  /** Letters of the column. */
  readonly column?: string;
  readonly heading?: string;
  readonly message: string;
  readonly hint: string;
}

/** Where a value of a record was read. */
export interface CellAt {
  readonly sheet: string;
  readonly row: number;
  readonly column?: string;
  readonly heading?: string;
}
