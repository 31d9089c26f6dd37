// Made from schemas/ by `npm run types`; change the schemas, not this file.

/**
 * What every record may state.
 */
export interface RecordProperties {
  /**
   * Number of this record, unique within its kind and never used again.
   */
  id: string;
  /**
   * Anything a reader should know that no other field holds.
   */
  remarks?: string;
  /**
   * Where the whole record was read from.
   */
  source?: {
    /**
     * The original the value was read from.
     */
    original?: string;
    /**
     * Page of the original, counted from 1.
     */
    page?: number;
    /**
     * Last page, where what was read runs on over several.
     */
    to?: number;
  };
  /**
   * Where single values were read from, by their place in the record.
   */
  sources?: {
    /**
     * This interface was referenced by `undefined`'s JSON-Schema definition
     * via the `patternProperty` "^/".
     */
    [k: string]: {
      /**
       * The original the value was read from.
       */
      original: string;
      /**
       * Page of the original, counted from 1.
       */
      page?: number;
      /**
       * Last page, where what was read runs on over several.
       */
      to?: number;
    };
  };
  /**
   * Originals that belong to this record.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  attachments?: string[];
  /**
   * Who signed it, in which role, when.
   */
  signatures?: {
    /**
     * Name of this row, where "role" alone does not tell it from another.
     */
    row?: string;
    /**
     * Role in which the person signed.
     */
    role:
      | "welder"
      | "welding operator"
      | "welding coordinator"
      | "quality control"
      | "design"
      | "checker"
      | "shop"
      | "testing"
      | "inspection body"
      | "client"
      | "authorised signatory"
      | "supplier"
      | "laboratory"
      | "document control";
    /**
     * Person who signed.
     */
    person: string;
    /**
     * Day of the signature.
     */
    date?: string;
  }[];
  /**
   * Sheet the record was imported from, written by the import; the next import of the sheet compares with it.
   */
  imported?: {
    /**
     * Name of the sheet's file.
     */
    file: string;
    /**
     * SHA-256 of the file as it was imported.
     */
    sha256: string;
    /**
     * Sheet of the workbook; a CSV file has one without a name.
     */
    sheet?: string;
    /**
     * Row of the sheet, counted from 1; of several the first.
     */
    row: number;
    /**
     * All rows of the sheet, where the record stands in several.
     */
    rows?: number[];
    /**
     * Map it was imported by, a file of imports/ without its ending.
     */
    map: string;
    /**
     * Digest of the values the import wrote: another one says that they were changed since.
     */
    fields: string;
  };
}

/**
 * Steel identified on the finished part by what it is made of, beside its mark and its certificate.
 */
export interface AlloyReport extends RecordProperties {
  /**
   * Number printed on the report.
   */
  report?: string;
  /**
   * Day of the test.
   */
  date?: string;
  /**
   * Revision of the test procedure.
   */
  procedure?: string;
  /**
   * Person who made the test.
   */
  by?: string;
  /**
   * Organisation that made the test, if not the maker.
   */
  laboratory?: string;
  /**
   * Instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * How the steel was analysed.
   */
  method?: "X-ray fluorescence" | "optical emission";
  /**
   * One row per part.
   */
  rows?: {
    /**
     * Name of the row.
     */
    row: string;
    /**
     * Part analysed.
     */
    part?: string;
    /**
     * Steel it was found to be.
     */
    grade?: string;
    /**
     * Contents found.
     */
    elements?: {
      /**
       * Chemical element.
       */
      element:
        | "C"
        | "Si"
        | "Mn"
        | "P"
        | "S"
        | "N"
        | "Al"
        | "Cr"
        | "Cu"
        | "Mo"
        | "Ni"
        | "Nb"
        | "Ti"
        | "V"
        | "B"
        | "Sn"
        | "As"
        | "Sb"
        | "Co"
        | "W"
        | "Ca"
        | "H"
        | "O"
        | "Zr";
      /**
       * Content found.
       */
      value?: string;
    }[];
  }[];
  /**
   * Result of the whole report.
   */
  result?: "accepted" | "rejected";
}

/**
 * An answer to a question the check put to a person.
 */
export interface AnsweredQuery extends RecordProperties {
  /**
   * The findings it answers, each as the check prints it.
   */
  answers?: {
    /**
     * Key of the finding.
     */
    finding: string;
    /**
     * Digest of what the finding rests on; when that changes, the finding is open again.
     */
    digest: string;
  }[];
  /**
   * Why it is acceptable.
   */
  reason?: string;
  /**
   * On what authority: clause, letter, minutes.
   */
  authority?: string;
  /**
   * Person who decided it.
   */
  by?: string;
  /**
   * Day it was decided.
   */
  date?: string;
  /**
   * Last day it holds; left out if it has no end.
   */
  end?: string;
}

/**
 * A certificate of the inspection body: type examination, verification, or approval of a quality system.
 */
export interface BodyCertificate extends RecordProperties {
  /**
   * Equipment it is for.
   */
  equipment: string;
  /**
   * Number of the certificate.
   */
  number?: string;
  /**
   * What the body certifies.
   */
  type?:
    | "EU-type examination"
    | "design examination"
    | "product verification"
    | "unit verification"
    | "quality system approval";
  /**
   * Body that issued it.
   */
  body?: string;
  /**
   * Serial number as written there.
   */
  serial?: string;
  /**
   * Year of manufacture as written there.
   */
  year?: number;
  /**
   * Maximum allowable pressure (PS) as written there.
   */
  maximumAllowablePressure?: string;
  /**
   * Maximum allowable temperature (TS max) as written there.
   */
  maximumAllowableTemperature?: string;
  /**
   * Minimum allowable temperature (TS min) as written there.
   */
  minimumAllowableTemperature?: string;
  /**
   * Volume (V) as written there.
   */
  volume?: string;
  /**
   * Greatest continuous steam output as written there.
   */
  steamOutput?: string;
  /**
   * Heating surface as written there.
   */
  heatingSurface?: string;
  /**
   * Test pressure (PT) as written there.
   */
  testPressure?: string;
  /**
   * Day of the pressure test as written there.
   */
  testDate?: string;
  /**
   * Fluid group as written there.
   */
  fluidGroup?: "1" | "2";
  /**
   * Category as written there.
   */
  category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
  /**
   * Conformity assessment procedure as written there.
   */
  module?: "A" | "A2" | "B+C2" | "B+D" | "B+E" | "B+F" | "D1" | "E1" | "G" | "H" | "H1";
  /**
   * Identification number of the inspection body as written there.
   */
  bodyNumber?: string;
  /**
   * Revisions of drawings it names.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  drawings?: string[];
  /**
   * Day of the certificate.
   */
  date?: string;
  /**
   * Last day it is valid, where it ends.
   */
  validTo?: string;
  /**
   * Person who signed for the body.
   */
  signatory?: string;
}

/**
 * The data book itself: what it is about, for whom it is made and by which rules it is judged.
 */
export interface Book extends RecordProperties {
  /**
   * Version of the record format; always 1.
   */
  format: number;
  /**
   * Number of the book; it never changes from issue to issue.
   */
  number: string;
  /**
   * Title on the front page.
   */
  title: string;
  /**
   * True for invented data: every page then says so.
   */
  demonstration?: boolean;
  /**
   * Language the book is written in, as a language tag.
   */
  language?: string;
  /**
   * True if every value and limit must rest on a published source, a checked table, the contract or a derivation.
   */
  requireVerifiedBasis?: boolean;
  /**
   * Name of the set of parameters the book is judged with.
   */
  profile?: string;
  /**
   * Parameters of the profile that are replaced for this book.
   */
  overrides?: {
    /**
     * Name of the parameter in the profile.
     */
    parameter: string;
    /**
     * Value that replaces it, with unit.
     */
    value?: string;
    /**
     * Document, edition and clause the value comes from, or the reason.
     */
    basis?: string;
    /**
     * Person who decided it.
     */
    by?: string;
    /**
     * On what authority: contract clause, letter, agreement.
     */
    authority?: string;
    /**
     * Day it was decided.
     */
    date?: string;
  }[];
  /**
   * Name of the register of what this book must contain.
   */
  register?: string;
  /**
   * Folders of records that several books share: what this book reaches there by links is read, judged and issued with it.
   *
   * @maxItems 16
   */
  shelves?: {
    /**
     * Name of the shelf, as places on it are printed: shelves/<name>/….
     */
    name: string;
    /**
     * Folder of the shelf, relative to that of the book, with /. While the book holds a folder shelves/<name>/, that copy is read instead.
     */
    folder: string;
    /**
     * What stands on the shelf and whose it is, as pages say it behind its name.
     */
    holds?: string;
  }[];
  /**
   * Order and titles of the sections, where they differ from the usual ones.
   */
  sections?: {
    /**
     * Name of the section.
     */
    id: string;
    /**
     * Title printed in this book.
     */
    title?: string;
  }[];
  /**
   * Number of the contract or order.
   */
  contractNumber?: string;
  /**
   * Day of the order.
   */
  orderDate?: string;
  /**
   * Organisation that makes the equipment.
   */
  maker?: string;
  /**
   * Organisation that ordered it.
   */
  client?: string;
  /**
   * Body that inspects it, if one takes part.
   */
  inspectionBody?: string;
  /**
   * Place where the equipment will be used.
   */
  site?: string;
}

/**
 * The maker's paper for one calculation of one thing: what went in, what came out, what was adopted. A maker without such papers may adopt the recomputation of this book instead, by its digest and the signature of the designer.
 */
export interface CalculationSheet extends RecordProperties {
  /**
   * Name of the calculation, as in the list of calculations.
   */
  calculation: string;
  /**
   * What it was made for.
   */
  subject: string;
  /**
   * Number printed on the sheet.
   */
  number?: string;
  /**
   * Revision of the sheet.
   */
  revision?: string;
  /**
   * Day of the sheet.
   */
  date?: string;
  /**
   * Person who made it.
   */
  preparedBy?: string;
  /**
   * Person, other than who made it, who checked it.
   */
  checkedBy?: string;
  /**
   * Standard, edition and clause printed on the sheet.
   */
  basis?: string;
  /**
   * Values the sheet starts from.
   */
  inputs?: {
    /**
     * Symbol as on the sheet.
     */
    symbol: string;
    /**
     * Input with unit as printed on the sheet, or the word of a class.
     */
    value?: string;
  }[];
  /**
   * Values the sheet arrives at.
   */
  results?: {
    /**
     * Symbol as on the sheet.
     */
    symbol: string;
    /**
     * Result with unit as printed on the sheet, or the word of a class.
     */
    value?: string;
  }[];
  /**
   * Value chosen for manufacture.
   */
  adopted?: string;
  /**
   * Digest of the recomputed figures that the designer has looked at and signs for, as check prints it; instead of figures of an own sheet.
   */
  adopts?: string;
}

/**
 * A coat as applied: preparation of the steel, each layer with the air it was applied in, the film measured zone by zone.
 */
export interface CoatingReport extends RecordProperties {
  /**
   * Number printed on the report.
   */
  report?: string;
  /**
   * Surface that was coated.
   */
  surface?: string;
  /**
   * Parts whose surface it is.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  parts?: string[];
  /**
   * Revision of the coating procedure.
   */
  procedure?: string;
  /**
   * Day the finished coat was measured.
   */
  date?: string;
  /**
   * Person who measured and judged it.
   */
  by?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * Day the steel was prepared, with the time where the time to the first layer counts.
   */
  prepared?: string;
  /**
   * Grade of preparation found.
   */
  preparation?: "Sa 1" | "Sa 2" | "Sa 2½" | "Sa 3" | "St 2" | "St 3";
  /**
   * Grade of preparation that the procedure asks for.
   */
  preparationAsked?: "Sa 1" | "Sa 2" | "Sa 2½" | "Sa 3" | "St 2" | "St 3";
  /**
   * One row per layer, in the order applied.
   */
  layers?: {
    /**
     * Number of the layer.
     */
    layer: string;
    /**
     * Product as named by its maker.
     */
    product?: string;
    /**
     * Batch of the product.
     */
    batch?: string;
    /**
     * Day it was applied, with the time where the time between layers counts.
     */
    applied?: string;
    /**
     * Temperature of the steel.
     */
    surfaceTemperature?: string;
    /**
     * Temperature of the air.
     */
    airTemperature?: string;
    /**
     * Relative humidity of the air.
     */
    humidity?: string;
    /**
     * Dew point of the air, as stated.
     */
    dewPoint?: string;
  }[];
  /**
   * Nominal thickness of the whole dry film, if the procedure names one.
   */
  nominal?: string;
  /**
   * Least thickness the procedure permits.
   */
  minimum?: string;
  /**
   * Greatest thickness the procedure permits.
   */
  maximum?: string;
  /**
   * Readings the procedure asks for in each zone.
   */
  readingsAsked?: number;
  /**
   * Readings of the finished film, zone by zone.
   */
  zones?: {
    /**
     * Zone measured.
     */
    zone: string;
    /**
     * Readings of the dry film.
     *
     * Items: One reading.
     */
    readings?: string[];
    /**
     * Least reading, as stated.
     */
    least?: string;
    /**
     * Mean of the readings, as stated.
     */
    mean?: string;
    /**
     * Greatest reading, as stated.
     */
    greatest?: string;
  }[];
  /**
   * How pores were looked for, if they were.
   */
  poreTest?: "low voltage, wet sponge" | "high voltage";
  /**
   * Pores found that were left.
   */
  pores?: number;
  /**
   * Result of the whole report.
   */
  result?: "accepted" | "rejected";
}

/**
 * A batch of welding wire, electrodes, flux or gas, and the document that certifies it.
 */
export interface ConsumableBatch extends RecordProperties {
  /**
   * What it is.
   */
  type?: "wire" | "rod" | "covered electrode" | "flux-cored wire" | "flux" | "shielding gas" | "backing gas";
  /**
   * Designation to its standard, as in the welding procedure.
   */
  designation?: string;
  /**
   * Designations to other standards that its certificate states beside it.
   *
   * Items: Text of up to 200 characters.
   */
  classifications?: string[];
  /**
   * Trade name on the pack.
   */
  tradeName?: string;
  /**
   * Organisation that made it.
   */
  manufacturer?: string;
  /**
   * Welding processes it is for.
   */
  processes?: (
    "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
  )[];
  /**
   * Filler material group.
   */
  fillerGroup?: "FM1" | "FM2" | "FM3" | "FM4" | "FM5" | "FM6";
  /**
   * Diameter of wire, rod or electrode core.
   */
  diameter?: string;
  /**
   * Batch or lot number on the pack.
   */
  batch?: string;
  /**
   * Mass received.
   */
  quantity?: string;
  /**
   * Day it was received and checked.
   */
  received?: string;
  /**
   * Last day the maker lets it be used, if it names one.
   */
  usableUntil?: string;
  /**
   * Inspection document of the batch.
   */
  certificate?: {
    /**
     * Number printed on it.
     */
    number?: string;
    /**
     * Type of inspection document.
     */
    type?: "2.1" | "2.2" | "3.1" | "3.2";
    /**
     * Day printed on it.
     */
    issued?: string;
    /**
     * Batch number printed on it.
     */
    batch?: string;
  };
  /**
   * Dryings of electrodes or flux before use, one row each.
   */
  dryings?: {
    /**
     * When it was dried.
     */
    date: string;
    /**
     * Drying temperature.
     */
    temperature?: string;
    /**
     * Drying time.
     */
    time?: string;
  }[];
}

/**
 * The maker's declaration of conformity.
 */
export interface Declaration extends RecordProperties {
  /**
   * Equipment it declares.
   */
  equipment: string;
  /**
   * Number of the declaration.
   */
  number?: string;
  /**
   * Name of the maker.
   */
  makerName?: string;
  /**
   * Address of the maker.
   */
  makerAddress?: string;
  /**
   * Whether it states that it is issued under the sole responsibility of the maker.
   */
  soleResponsibility?: boolean;
  /**
   * Description of the equipment, as written.
   */
  description?: string;
  /**
   * Legislation it names.
   *
   * Items: Text of up to 200 characters.
   */
  legislation?: string[];
  /**
   * Standards it names.
   */
  standards?: {
    /**
     * Name of this row, where "standard" alone does not tell it from another.
     */
    row?: string;
    /**
     * Number of the standard.
     */
    standard: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  }[];
  /**
   * Serial number as written there.
   */
  serial?: string;
  /**
   * Year of manufacture as written there.
   */
  year?: number;
  /**
   * Maximum allowable pressure (PS) as written there.
   */
  maximumAllowablePressure?: string;
  /**
   * Maximum allowable temperature (TS max) as written there.
   */
  maximumAllowableTemperature?: string;
  /**
   * Minimum allowable temperature (TS min) as written there.
   */
  minimumAllowableTemperature?: string;
  /**
   * Volume (V) as written there.
   */
  volume?: string;
  /**
   * Greatest continuous steam output as written there.
   */
  steamOutput?: string;
  /**
   * Heating surface as written there.
   */
  heatingSurface?: string;
  /**
   * Test pressure (PT) as written there.
   */
  testPressure?: string;
  /**
   * Day of the pressure test as written there.
   */
  testDate?: string;
  /**
   * Fluid group as written there.
   */
  fluidGroup?: "1" | "2";
  /**
   * Category as written there.
   */
  category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
  /**
   * Conformity assessment procedure as written there.
   */
  module?: "A" | "A2" | "B+C2" | "B+D" | "B+E" | "B+F" | "D1" | "E1" | "G" | "H" | "H1";
  /**
   * Identification number of the inspection body as written there.
   */
  bodyNumber?: string;
  /**
   * Name and address of the inspection body, if one took part.
   */
  bodyName?: string;
  /**
   * Certificates of the inspection body it names.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  bodyCertificates?: string[];
  /**
   * Place of signature.
   */
  place?: string;
  /**
   * Day of signature.
   */
  date?: string;
  /**
   * Person who signed for the maker.
   */
  signatory?: string;
  /**
   * Function of that person.
   */
  function?: string;
}

/**
 * A permission to accept something that does not meet a requirement.
 */
export interface Deviation extends RecordProperties {
  /**
   * The findings it answers, each as the check prints it.
   */
  answers?: {
    /**
     * Key of the finding.
     */
    finding: string;
    /**
     * Digest of what the finding rests on; when that changes, the finding is open again.
     */
    digest: string;
  }[];
  /**
   * Why it is acceptable.
   */
  reason?: string;
  /**
   * On what authority: clause, letter, minutes.
   */
  authority?: string;
  /**
   * Person who decided it.
   */
  by?: string;
  /**
   * Day it was decided.
   */
  date?: string;
  /**
   * Last day it holds; left out if it has no end.
   */
  end?: string;
  /**
   * What it is about, in a few words.
   */
  title?: string;
  /**
   * Requirement that is not met.
   */
  requirement?: string;
  /**
   * Nonconformity report it belongs to.
   */
  nonconformity?: string;
  /**
   * Conditions under which it holds.
   */
  conditions?: string;
  /**
   * Why the safety the law asks for is reached all the same, where a legal requirement is touched.
   */
  equivalentSafety?: string;
  /**
   * Who agreed to it.
   */
  agreement?: {
    /**
     * Name of this row, where "role" alone does not tell it from another.
     */
    row?: string;
    /**
     * Role in which the person agreed.
     */
    role:
      | "welder"
      | "welding operator"
      | "welding coordinator"
      | "quality control"
      | "design"
      | "checker"
      | "shop"
      | "testing"
      | "inspection body"
      | "client"
      | "authorised signatory"
      | "supplier"
      | "laboratory"
      | "document control";
    /**
     * Person who agreed.
     */
    person?: string;
    /**
     * Day of the agreement.
     */
    date?: string;
  }[];
}

/**
 * A report of measured dimensions, each with what the drawing allows.
 */
export interface DimensionCheck extends RecordProperties {
  /**
   * What was measured.
   */
  title?: string;
  /**
   * Day of the measurement.
   */
  date?: string;
  /**
   * Person who measured.
   */
  by?: string;
  /**
   * Revision of the drawing measured to.
   */
  drawing?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * One row per feature measured.
   */
  rows?: {
    /**
     * Name of this row, where "feature" alone does not tell it from another.
     */
    row?: string;
    /**
     * What was measured, and where.
     */
    feature: string;
    /**
     * Part it belongs to.
     */
    part?: string;
    /**
     * Joint it belongs to.
     */
    joint?: string;
    /**
     * What of the shape it is, where the standard of the equipment has a limit for it.
     */
    shape?: "peaking" | "diameters of one section" | "offset of edges";
    /**
     * Nominal value on the drawing.
     */
    nominal?: string;
    /**
     * Least value allowed.
     */
    minimum?: string;
    /**
     * Greatest value allowed.
     */
    maximum?: string;
    /**
     * How many places it was to be measured at.
     */
    stations?: number;
    /**
     * Readings, with unit.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    measured?: string[];
    /**
     * Result stated by who measured.
     */
    result?: "accepted" | "rejected";
  }[];
  /**
   * Result of the whole report.
   */
  result?: "accepted" | "rejected";
}

/**
 * A document of the book that is neither a drawing nor a procedure: risk analysis, instructions, inspection plan.
 */
export interface Document extends RecordProperties {
  /**
   * Number printed on the document.
   */
  number?: string;
  /**
   * Title printed on the document.
   */
  title?: string;
  /**
   * Type of document.
   */
  type?:
    | "risk-analysis"
    | "design-data"
    | "inspection-plan"
    | "material-list"
    | "operating-instructions"
    | "compliance-statement"
    | "final-inspection-report"
    | "supplier-declaration"
    | "correspondence"
    | "other";
  /**
   * Language it is written in, as a language tag.
   */
  language?: string;
  /**
   * Every revision issued for use, oldest first; drafts are left out.
   */
  revisions?: {
    /**
     * Revision mark as printed on the document.
     */
    revision: string;
    /**
     * Day this revision was issued.
     */
    date?: string;
    /**
     * What this revision may be used for.
     */
    status?: "for-construction" | "as-built" | "for-record" | "superseded" | "withdrawn";
    /**
     * What changed against the revision before.
     */
    reason?: string;
    /**
     * Person who prepared it.
     */
    preparedBy?: string;
    /**
     * Person who checked it, another one than who prepared it.
     */
    checkedBy?: string;
    /**
     * Person who approved it.
     */
    approvedBy?: string;
    /**
     * Day from which it was approved for use.
     */
    approved?: string;
    /**
     * Number of sheets or pages.
     */
    sheets?: number;
    /**
     * File that shows this revision.
     */
    original?: string;
  }[];
}

/**
 * A drawing with its revisions, the parts and joints it shows, and the figures in its title block.
 */
export interface Drawing extends RecordProperties {
  /**
   * Number printed on the document.
   */
  number?: string;
  /**
   * Title printed on the document.
   */
  title?: string;
  /**
   * What the drawing is for.
   */
  type?: "arrangement" | "detail" | "weld-map" | "nameplate";
  /**
   * Every revision issued for use, oldest first; drafts are left out.
   */
  revisions?: {
    /**
     * Revision mark as printed on the document.
     */
    revision: string;
    /**
     * Day this revision was issued.
     */
    date?: string;
    /**
     * What this revision may be used for.
     */
    status?: "for-construction" | "as-built" | "for-record" | "superseded" | "withdrawn";
    /**
     * What changed against the revision before.
     */
    reason?: string;
    /**
     * Person who prepared it.
     */
    preparedBy?: string;
    /**
     * Person who checked it, another one than who prepared it.
     */
    checkedBy?: string;
    /**
     * Person who approved it.
     */
    approvedBy?: string;
    /**
     * Day from which it was approved for use.
     */
    approved?: string;
    /**
     * Number of sheets or pages.
     */
    sheets?: number;
    /**
     * File that shows this revision.
     */
    original?: string;
  }[];
  /**
   * Parts the drawing shows.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  parts?: string[];
  /**
   * Joints the drawing shows.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  joints?: string[];
  /**
   * Figures restated in the title block or design table.
   */
  designData?: {
    /**
     * Serial number as written there.
     */
    serial?: string;
    /**
     * Year of manufacture as written there.
     */
    year?: number;
    /**
     * Maximum allowable pressure (PS) as written there.
     */
    maximumAllowablePressure?: string;
    /**
     * Maximum allowable temperature (TS max) as written there.
     */
    maximumAllowableTemperature?: string;
    /**
     * Minimum allowable temperature (TS min) as written there.
     */
    minimumAllowableTemperature?: string;
    /**
     * Volume (V) as written there.
     */
    volume?: string;
    /**
     * Greatest continuous steam output as written there.
     */
    steamOutput?: string;
    /**
     * Heating surface as written there.
     */
    heatingSurface?: string;
    /**
     * Test pressure (PT) as written there.
     */
    testPressure?: string;
    /**
     * Day of the pressure test as written there.
     */
    testDate?: string;
    /**
     * Fluid group as written there.
     */
    fluidGroup?: "1" | "2";
    /**
     * Category as written there.
     */
    category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
    /**
     * Conformity assessment procedure as written there.
     */
    module?: "A" | "A2" | "B+C2" | "B+D" | "B+E" | "B+F" | "D1" | "E1" | "G" | "H" | "H1";
    /**
     * Identification number of the inspection body as written there.
     */
    bodyNumber?: string;
  };
}

/**
 * The delivered equipment: identity, duty and the limits it is designed for.
 */
export interface Equipment extends RecordProperties {
  /**
   * Serial number given by the maker.
   */
  serial: string;
  /**
   * Number the client gave it.
   */
  tag?: string;
  /**
   * What it is, in a few words.
   */
  name?: string;
  /**
   * Type of equipment.
   */
  type?: "air-receiver" | "steam-boiler" | "tank";
  /**
   * Year of manufacture.
   */
  year?: number;
  /**
   * Standard it is designed and made to.
   */
  designStandard?: {
    /**
     * Number of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  };
  /**
   * Rules of other standards that parts of the design follow, and for what.
   */
  designRules?: {
    /**
     * What is designed by them.
     */
    for: string;
    /**
     * Number or name of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  }[];
  /**
   * How the pressure equipment directive applies.
   */
  directive?: {
    /**
     * Whether the directive applies.
     */
    inScope?: boolean;
    /**
     * Category the maker determined; left out if the directive does not apply.
     */
    category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
    /**
     * Conformity assessment procedure chosen; left out if none is needed.
     */
    module?: "A" | "A2" | "B+C2" | "B+D" | "B+E" | "B+F" | "D1" | "E1" | "G" | "H" | "H1";
  };
  /**
   * Fluid it contains.
   */
  fluid?: {
    /**
     * Name of the fluid.
     */
    name?: string;
    /**
     * Fluid group: 1 dangerous, 2 all others.
     */
    group?: "1" | "2";
    /**
     * State of the fluid at the limits.
     */
    state?: "gas" | "steam" | "liquid";
  };
  /**
   * Limits of use.
   */
  limits?: {
    /**
     * Maximum allowable pressure (PS), gauge.
     */
    maximumAllowablePressure?: string;
    /**
     * Maximum allowable temperature (TS max).
     */
    maximumAllowableTemperature?: string;
    /**
     * Lowest pressure it may come under, gauge: below nothing where it must bear vacuum.
     */
    minimumAllowablePressure?: string;
    /**
     * Minimum allowable temperature (TS min).
     */
    minimumAllowableTemperature?: string;
  };
  /**
   * Volume (V) of the pressure space.
   */
  volume?: string;
  /**
   * Pressure the strength calculation is made for, gauge.
   */
  calculationPressure?: string;
  /**
   * Metal temperature the strength calculation is made for.
   */
  calculationTemperature?: string;
  /**
   * Test pressure (PT) specified by the design, gauge.
   */
  testPressure?: string;
  /**
   * Corrosion allowance that applies where a part states none.
   */
  corrosionAllowance?: string;
  /**
   * Flow the safety valves must be able to relieve.
   */
  requiredFlow?: string;
  /**
   * Full pressure cycles it is designed for in its life.
   */
  pressureCycles?: number;
  /**
   * What supplies that flow.
   */
  requiredFlowSource?: string;
  /**
   * Atmospheric pressure at the site, absolute; it turns gauge into absolute pressures.
   */
  atmosphericPressure?: string;
  /**
   * Heating surface, gas side.
   */
  heatingSurface?: string;
  /**
   * Duty of a boiler.
   */
  duty?: {
    /**
     * Greatest continuous steam output.
     */
    steamOutput?: string;
    /**
     * The same output stated from and at 100 °C.
     */
    outputFromAndAt?: string;
    /**
     * Working pressure, gauge.
     */
    workingPressure?: string;
    /**
     * Feedwater temperature at full output.
     */
    feedwaterTemperature?: string;
    /**
     * Highest feedwater temperature of operation.
     */
    feedwaterTemperatureHighest?: string;
    /**
     * Continuous blow-down as a share of the steam output.
     */
    blowdownFraction?: string;
    /**
     * Greatest heat input of the burner, net calorific.
     */
    heatInput?: string;
    /**
     * Efficiency at full output, net calorific.
     */
    efficiency?: string;
  };
  /**
   * Water levels, measured upward from the lowest inside point of the shell.
   */
  levels?: {
    /**
     * Highest surface that hot gas heats.
     */
    highestHeatedSurface?: string;
    /**
     * Lowest permissible water level.
     */
    lowestPermissible?: string;
    /**
     * Level at which the low-water limiters cut the heat.
     */
    limiter?: string;
    /**
     * Normal water level.
     */
    normal?: string;
    /**
     * Highest permissible water level.
     */
    highest?: string;
    /**
     * Lowest edge of the steam take-off.
     */
    steamTakeOff?: string;
  };
  /**
   * Mass when empty.
   */
  emptyMass?: string;
}

/**
 * A mounting or an assembly bought for the equipment, other than a safety valve: what it is rated for, what it is set to, and what was tried.
 */
export interface Fitting extends RecordProperties {
  /**
   * Equipment it belongs to.
   */
  equipment: string;
  /**
   * What it is.
   */
  sort:
    | "pressure-gauge"
    | "water-level-indicator"
    | "low-water-limiter"
    | "high-water-limiter"
    | "level-controller"
    | "pressure-limiter"
    | "pressure-controller"
    | "temperature-limiter"
    | "flow-limiter"
    | "main-stop-valve"
    | "feed-stop-valve"
    | "feed-check-valve"
    | "feed-pump"
    | "blow-down-valve"
    | "continuous-blow-down-valve"
    | "sampling-point"
    | "air-vent"
    | "inspection-opening"
    | "explosion-door"
    | "burner"
    | "gas-train"
    | "control-panel"
    | "economiser";
  /**
   * Tag on the drawing.
   */
  tag?: string;
  /**
   * Branch or frame of the equipment it is mounted on; of a water level indicator the one on the side of the steam.
   */
  branch?: string;
  /**
   * Branch of the other end of a water level indicator, on the side of the water.
   */
  waterBranch?: string;
  /**
   * Organisation that made it.
   */
  manufacturer?: string;
  /**
   * Type or model.
   */
  model?: string;
  /**
   * Serial number or batch.
   */
  serial?: string;
  /**
   * Nominal size.
   */
  nominalSize?: string;
  /**
   * Rating by nominal pressure.
   */
  pressureRating?: string;
  /**
   * Highest pressure it may be used at, at its highest temperature, gauge.
   */
  allowablePressure?: string;
  /**
   * Highest temperature it may be used at.
   */
  allowableTemperature?: string;
  /**
   * Certificate it came with.
   */
  certificate?: {
    /**
     * Number printed on it.
     */
    number?: string;
    /**
     * Type of inspection document.
     */
    type?: "2.1" | "2.2" | "3.1" | "3.2";
    /**
     * Day printed on it.
     */
    date?: string;
  };
  /**
   * Number of the type examination it rests on, of a safety accessory.
   */
  typeExamination?: string;
  /**
   * Declaration its supplier gave for it.
   */
  declaration?: string;
  /**
   * Pressure at which a pressure controller turns the firing off, gauge.
   */
  cutOut?: string;
  /**
   * Pressure at which a pressure controller turns the firing on, gauge.
   */
  cutIn?: string;
  /**
   * Pressure at which a pressure limiter cuts the heat, gauge.
   */
  settingPressure?: string;
  /**
   * Temperature at which a temperature limiter cuts the heat.
   */
  settingTemperature?: string;
  /**
   * Flow below which a flow limiter cuts the heat.
   */
  settingFlow?: string;
  /**
   * Level at which it switches, measured as the water levels of the equipment.
   */
  switchLevel?: string;
  /**
   * Whether it keeps the heat cut until it is reset by hand.
   */
  lockOut?: boolean;
  /**
   * Whether it watches itself for faults.
   */
  selfMonitoring?: boolean;
  /**
   * Safety circuit it acts in.
   */
  circuit?: string;
  /**
   * Mark of the sensing element of a limiter or controller.
   */
  sensor?: string;
  /**
   * Mark of the unit that turns the signal of the sensing element into switching or control.
   */
  switchingUnit?: string;
  /**
   * Whether a broken wire, a lost supply or a failed sensing element cuts the heat.
   */
  failSafe?: boolean;
  /**
   * Lowest level that shows, measured as the water levels of the equipment.
   */
  visibleMinimum?: string;
  /**
   * Highest level that shows, measured as the water levels of the equipment.
   */
  visibleMaximum?: string;
  /**
   * Scale of a pressure gauge.
   */
  gaugeRange?: {
    /**
     * Lowest value of the scale, gauge.
     */
    minimum?: string;
    /**
     * Highest value of the scale, gauge.
     */
    maximum?: string;
  };
  /**
   * Accuracy class of a pressure gauge, in percent of its range.
   */
  accuracyClass?: string;
  /**
   * Pressure the red mark of a pressure gauge stands at, gauge.
   */
  redMark?: string;
  /**
   * Points of the curve of a feed pump.
   */
  pumpPoints?: {
    /**
     * Name of the point.
     */
    point: string;
    /**
     * Flow delivered.
     */
    flow?: string;
    /**
     * Pressure at the boiler at that flow, less the losses of the line, gauge.
     */
    pressure?: string;
  }[];
  /**
   * Fuel of a burner.
   */
  fuel?: "gas" | "oil" | "gas and oil" | "solid";
  /**
   * Least heat input a burner is set to, net calorific.
   */
  heatInputLeast?: string;
  /**
   * Greatest heat input a burner is set to, net calorific.
   */
  heatInputMost?: string;
  /**
   * Trials of what it does.
   */
  functionTests?: {
    /**
     * Name of this row, where "function" alone does not tell it from another.
     */
    row?: string;
    /**
     * What was tried.
     */
    function: string;
    /**
     * Day of the trial.
     */
    date?: string;
    /**
     * Person who tried it.
     */
    by?: string;
    /**
     * Measuring instrument used.
     */
    instrument?: string;
    /**
     * Water level at which it switched.
     */
    level?: string;
    /**
     * Pressure at which it switched, gauge.
     */
    pressure?: string;
    /**
     * Result of the trial.
     */
    result?: "accepted" | "rejected";
  }[];
}

/**
 * Hardness of finished joints: weld metal, heat-affected zones and parent metal.
 */
export interface HardnessReport extends RecordProperties {
  /**
   * Number printed on the report.
   */
  report?: string;
  /**
   * Day of the test, with the time where its order to other work on the day counts.
   */
  date?: string;
  /**
   * Revision of the test procedure.
   */
  procedure?: string;
  /**
   * Person who made the test.
   */
  by?: string;
  /**
   * Organisation that made the test, if not the maker.
   */
  laboratory?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * Stage of manufacture.
   */
  stage?: "as welded" | "after heat treatment";
  /**
   * Greatest hardness the report permits.
   */
  greatest?: string;
  /**
   * One row per joint and place.
   */
  rows?: {
    /**
     * Name of the row.
     */
    row: string;
    /**
     * Joint tested.
     */
    joint?: string;
    /**
     * Where the readings were taken.
     */
    place?: "weld metal" | "heat-affected zone" | "parent metal";
    /**
     * Readings.
     *
     * Items: One reading.
     */
    values?: string[];
  }[];
  /**
   * Result of the whole report.
   */
  result?: "accepted" | "rejected";
}

/**
 * One furnace charge or local heat treatment, with the points of its chart.
 */
export interface HeatTreatment extends RecordProperties {
  /**
   * Number of the charge.
   */
  charge?: string;
  /**
   * Kind of heat treatment.
   */
  type?: "stress relief" | "normalising" | "tempering" | "solution annealing";
  /**
   * Revision of the procedure.
   */
  procedure?: string;
  /**
   * Parts treated.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  parts?: string[];
  /**
   * Joints treated.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  joints?: string[];
  /**
   * When it began.
   */
  started?: string;
  /**
   * When it ended.
   */
  finished?: string;
  /**
   * Furnace temperature at loading.
   */
  loadingTemperature?: string;
  /**
   * Greatest rate of heating.
   */
  heatingRate?: string;
  /**
   * Lowest temperature of any thermocouple during the hold.
   */
  holdingLowest?: string;
  /**
   * Highest temperature of any thermocouple during the hold.
   */
  holdingHighest?: string;
  /**
   * Time within the holding range.
   */
  holdingTime?: string;
  /**
   * Greatest rate of cooling.
   */
  coolingRate?: string;
  /**
   * Thermocouples, in the order of the temperatures of each point.
   */
  thermocouples?: {
    /**
     * Number of the thermocouple.
     */
    thermocouple: string;
    /**
     * Where it sat.
     */
    place?: string;
  }[];
  /**
   * Points read from the chart.
   */
  readings?: {
    /**
     * Time of the point.
     */
    time: string;
    /**
     * Temperature of each thermocouple, always in the same order.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    temperatures?: string[];
  }[];
  /**
   * Recorder and thermocouples.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * Result stated by who evaluated the chart.
   */
  result?: "accepted" | "rejected";
}

/**
 * A step of the inspection and test plan: who attends, what evidence it leaves, and when it was done.
 */
export interface InspectionStep extends RecordProperties {
  /**
   * Number of the step in the plan.
   */
  step: number;
  /**
   * Phase of manufacture it belongs to.
   */
  phase?: string;
  /**
   * What is inspected or done.
   */
  activity?: string;
  /**
   * What it must meet.
   */
  criterion?: string;
  /**
   * Procedure, document or drawing it is done to.
   */
  procedure?: string;
  /**
   * Steps that must be done before.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  predecessors?: string[];
  /**
   * Part each party takes.
   */
  points?: {
    /**
     * Party.
     */
    party: "maker" | "inspection body" | "client";
    /**
     * What the party does: work stops at a hold until it is released.
     */
    point?: "hold" | "witness" | "review" | "monitor" | "approve" | "perform";
    /**
     * What happened.
     */
    outcome?: "attended" | "not attended" | "released in writing" | "reviewed";
    /**
     * Person who signed for the party.
     */
    person?: string;
    /**
     * Day the person signed.
     */
    date?: string;
    /**
     * Letter or mail that released a hold.
     */
    release?: string;
  }[];
  /**
   * Records that are the evidence of the step.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  records?: string[];
  /**
   * Day planned.
   */
  planned?: string;
  /**
   * Day notice was given to the other parties.
   */
  notice?: string;
  /**
   * When the step was begun.
   */
  started?: string;
  /**
   * When the step was done.
   */
  done?: string;
  /**
   * Nonconformity report, if the step was rejected.
   */
  nonconformity?: string;
}

/**
 * A measuring instrument with its calibrations.
 */
export interface Instrument extends RecordProperties {
  /**
   * What it is, in a few words.
   */
  name?: string;
  /**
   * Kind of instrument.
   */
  type?:
    | "pressure gauge"
    | "pressure transmitter"
    | "recorder"
    | "thermometer"
    | "thermocouple"
    | "densitometer"
    | "step tablet"
    | "light meter"
    | "ultraviolet meter"
    | "magnetic yoke"
    | "field meter"
    | "ultrasonic set"
    | "thickness meter"
    | "calliper"
    | "micrometer"
    | "tape"
    | "weld gauge"
    | "hardness tester"
    | "welding meter"
    | "coating thickness meter"
    | "other";
  /**
   * Name of who made it.
   */
  manufacturer?: string;
  /**
   * Serial number.
   */
  serial?: string;
  /**
   * Measuring range.
   */
  range?: {
    /**
     * Lowest value of the scale.
     */
    minimum?: string;
    /**
     * Highest value of the scale.
     */
    maximum?: string;
  };
  /**
   * Accuracy class, or greatest error, in percent of the range.
   */
  accuracyClass?: string;
  /**
   * Greatest permissible error, where no class is given.
   */
  maximumError?: string;
  /**
   * Value of one scale division.
   */
  division?: string;
  /**
   * Smallest difference that can be read.
   */
  resolution?: string;
  /**
   * Force with which a magnetic yoke lifts, as checked.
   */
  liftingForce?: string;
  /**
   * Current of a magnetic yoke: alternating or direct.
   */
  yokeCurrent?: "AC" | "DC";
  /**
   * Spread of repeated readings of the same value.
   */
  repeatability?: string;
  /**
   * Calibrations, oldest first.
   */
  calibrations?: {
    /**
     * Number of the calibration certificate.
     */
    certificate: string;
    /**
     * Day of the calibration.
     */
    date?: string;
    /**
     * Last day it is valid.
     */
    validTo?: string;
    /**
     * Laboratory that calibrated it.
     */
    laboratory?: string;
    /**
     * State in which it came to the laboratory.
     */
    asFound?: "within limits" | "outside limits";
    /**
     * State in which it left the laboratory.
     */
    asLeft?: "within limits" | "outside limits";
    /**
     * Uncertainty of the calibration.
     */
    uncertainty?: string;
    /**
     * File of the certificate.
     */
    original?: string;
  }[];
}

/**
 * One issue of the book: its revision and state, and up to which day it is judged. It alone changes from issue to issue.
 */
export interface Issue extends RecordProperties {
  /**
   * Revision of the book, as printed on every page.
   */
  revision: string;
  /**
   * Interim while the equipment is being made; final at release.
   */
  state: "interim" | "final";
  /**
   * Day printed as the date of this issue.
   */
  issueDate: string;
  /**
   * Last day whose events are in this issue; nothing recorded may have happened later.
   */
  dataCutOff: string;
  /**
   * Points of manufacture that make evidence due, in their order.
   */
  milestones?: {
    /**
     * Name of the milestone.
     */
    name: string;
    /**
     * Day it was reached; after the data cut-off, the day planned. Left out while nobody can say.
     */
    reached?: string;
  }[];
  /**
   * Issues of the book, oldest first, ending with this one; owed for every revision after the first.
   */
  history?: {
    /**
     * Revision of that issue.
     */
    revision: string;
    /**
     * State of that issue.
     */
    state?: "interim" | "final";
    /**
     * Day of that issue.
     */
    date?: string;
    /**
     * Why it was issued, and what changed.
     */
    reason?: string;
    /**
     * Evidence fingerprint of that issue, as its front page prints it; owed for every final one before this.
     */
    fingerprint?: string;
  }[];
}

/**
 * A welded joint of the weld map; its number is the id.
 */
export interface Joint extends RecordProperties {
  /**
   * What is stamped or painted beside the joint.
   */
  mark?: string;
  /**
   * Type of joint.
   */
  type?: "butt" | "fillet" | "t-butt" | "corner" | "branch" | "attachment";
  /**
   * Where the joint lies on the equipment.
   */
  role?: "longitudinal" | "circumferential" | "nozzle" | "attachment";
  /**
   * Whether the weld contains pressure.
   */
  pressureBearing?: boolean;
  /**
   * The two parts it joins; one part for a seam that closes a part on itself.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  parts?: string[];
  /**
   * Thickness of each part at the joint, in the order of the parts.
   *
   * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
   */
  thicknesses?: string[];
  /**
   * Deposited thickness of a butt weld.
   */
  depositedThickness?: string;
  /**
   * Throat of a fillet weld.
   */
  throat?: string;
  /**
   * Outside diameter of the pipe or shell that is welded.
   */
  outsideDiameter?: string;
  /**
   * Length of the weld.
   */
  length?: string;
  /**
   * Weld detail: side, backing, number of runs.
   */
  detail?: "ss nb" | "ss mb" | "ss gb" | "ss fb" | "bs" | "sl" | "ml";
  /**
   * Welding processes planned.
   */
  processes?: (
    "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
  )[];
  /**
   * Welding positions planned.
   */
  positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
  /**
   * Revision of the welding procedure to be used.
   */
  weldingProcedure?: string;
  /**
   * Revision of the drawing or weld map that shows it.
   */
  drawing?: string;
  /**
   * Joint coefficient the calculation counts on for this joint.
   */
  weldCoefficient?: string;
  /**
   * Quality level the weld must reach.
   */
  qualityLevel?: "B" | "C" | "D";
  /**
   * Non-destructive tests the joint needs.
   */
  requiredTests?: {
    /**
     * Test method: visual, magnetic particle, penetrant, radiographic, ultrasonic.
     */
    method: "VT" | "MT" | "PT" | "RT" | "UT";
    /**
     * Share of the length to be tested.
     */
    extent?: string;
    /**
     * Clause or table the extent comes from.
     */
    basis?: string;
  }[];
  /**
   * Longitudinal joints that end on this one, and where.
   */
  crossings?: {
    /**
     * Joint that ends here.
     */
    joint: string;
    /**
     * Where it ends, from the zero mark.
     */
    at: string;
  }[];
  /**
   * Whether the joint is heat treated after welding.
   */
  postWeldHeatTreatment?: boolean;
}

/**
 * A test for leaks at low pressure: of the space behind a pad, of tube ends, of a finished vessel. No pressure test.
 */
export interface LeakTest extends RecordProperties {
  /**
   * Number printed on the report.
   */
  report?: string;
  /**
   * What was tested.
   */
  subject?: string;
  /**
   * Parts tested.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  parts?: string[];
  /**
   * Joints tested.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  joints?: string[];
  /**
   * Revision of the test procedure.
   */
  procedure?: string;
  /**
   * Day of the test, with the time where its order to other work on the day counts.
   */
  date?: string;
  /**
   * Person who made the test.
   */
  by?: string;
  /**
   * Organisation that made the test, if not the maker.
   */
  laboratory?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * How leaks show.
   */
  method?: "bubbles" | "pressure change" | "tracer gas";
  /**
   * Test medium.
   */
  medium?: "air" | "nitrogen" | "helium" | "air with helium";
  /**
   * Test pressure, gauge.
   */
  pressure?: string;
  /**
   * Time for which the pressure stood before leaks were looked for.
   */
  soak?: string;
  /**
   * Leaks found that were left.
   */
  leaks?: number;
  /**
   * Result of the test.
   */
  result?: "accepted" | "rejected";
}

/**
 * An inspection document of a material: who tested what, and one row per heat or test unit with its sizes, analysis and test results.
 */
export interface MaterialCertificate extends RecordProperties {
  /**
   * Number printed on the document.
   */
  number?: string;
  /**
   * Type of inspection document.
   */
  type?: "2.1" | "2.2" | "3.1" | "3.2";
  /**
   * Standard the document is issued to.
   */
  documentStandard?: {
    /**
     * Number of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  };
  /**
   * Works that made and tested the material.
   */
  mill?: string;
  /**
   * Stockist it was bought from, if not from the mill.
   */
  supplier?: string;
  /**
   * Order number and item printed on the document.
   */
  order?: string;
  /**
   * Day printed on the document.
   */
  issued?: string;
  /**
   * Day the material and its document were received and checked.
   */
  received?: string;
  /**
   * Number of sheets the document says it has.
   */
  pages?: number;
  /**
   * Who validated the document for the mill.
   */
  validatedBy?: {
    /**
     * Name printed on the document.
     */
    name?: string;
    /**
     * Function printed on the document.
     */
    function?: string;
  };
  /**
   * Who countersigned a document of type 3.2.
   */
  countersignedBy?: {
    /**
     * Name printed on the document.
     */
    name?: string;
    /**
     * Body or purchaser the person acted for.
     */
    organisation?: string;
  };
  /**
   * Whether the document states that the material complies with the order.
   */
  statesCompliance?: boolean;
  /**
   * One row per heat or test unit.
   */
  rows?: {
    /**
     * Name of this row, where "heat" alone does not tell it from another.
     */
    row?: string;
    /**
     * Heat (cast) number exactly as printed.
     */
    heat: string;
    /**
     * Plate, tube or test-piece number the results were taken from.
     */
    testUnit?: string;
    /**
     * Number of pieces.
     */
    pieces?: number;
    /**
     * Material standard.
     */
    standard?: string;
    /**
     * Edition of the material standard.
     */
    edition?: string;
    /**
     * Steel grade.
     */
    grade?: string;
    /**
     * Product form.
     */
    form?: "plate" | "tube" | "pipe" | "forging" | "bar" | "section" | "formed-end" | "fitting" | "bolting";
    /**
     * Delivery condition as printed.
     */
    deliveryCondition?: string;
    /**
     * Nominal thickness of plate or wall; of a forging or bar, its governing section.
     */
    thickness?: string;
    /**
     * Width.
     */
    width?: string;
    /**
     * Length.
     */
    length?: string;
    /**
     * Outside diameter.
     */
    diameter?: string;
    /**
     * Mass of the row.
     */
    mass?: string;
    /**
     * Steelmaking route as printed.
     */
    meltingProcess?: string;
    /**
     * Ladle analysis, one row per element.
     */
    chemistry?: {
      /**
       * Chemical element.
       */
      element:
        | "C"
        | "Si"
        | "Mn"
        | "P"
        | "S"
        | "N"
        | "Al"
        | "Cr"
        | "Cu"
        | "Mo"
        | "Ni"
        | "Nb"
        | "Ti"
        | "V"
        | "B"
        | "Sn"
        | "As"
        | "Sb"
        | "Co"
        | "W"
        | "Ca"
        | "H"
        | "O"
        | "Zr";
      /**
       * Content by mass as printed.
       */
      value?: string;
    }[];
    /**
     * Analysis of the product, if one was ordered.
     */
    productAnalysis?: {
      /**
       * Chemical element.
       */
      element:
        | "C"
        | "Si"
        | "Mn"
        | "P"
        | "S"
        | "N"
        | "Al"
        | "Cr"
        | "Cu"
        | "Mo"
        | "Ni"
        | "Nb"
        | "Ti"
        | "V"
        | "B"
        | "Sn"
        | "As"
        | "Sb"
        | "Co"
        | "W"
        | "Ca"
        | "H"
        | "O"
        | "Zr";
      /**
       * Content by mass as printed.
       */
      value?: string;
    }[];
    /**
     * Sum of Cr, Cu, Mo and Ni as printed.
     */
    sumCrCuMoNi?: string;
    /**
     * Carbon equivalent as printed.
     */
    carbonEquivalent?: string;
    /**
     * Tensile tests, one row per test piece.
     */
    tensile?: {
      /**
       * Number of the test piece, or 1, 2, 3 where none is printed.
       */
      test: string;
      /**
       * Direction of the test piece to rolling, or to the weld.
       */
      direction?: "longitudinal" | "transverse" | "through-thickness";
      /**
       * Temperature of the test.
       */
      temperature?: string;
      /**
       * Which yield or proof strength is stated.
       */
      yieldKind?: "ReH" | "ReL" | "Rp0.2" | "Rp1.0";
      /**
       * Yield or proof strength as printed.
       */
      yieldStrength?: string;
      /**
       * Tensile strength (Rm) as printed.
       */
      tensileStrength?: string;
      /**
       * Elongation after fracture (A) as printed.
       */
      elongation?: string;
      /**
       * Gauge length of the elongation.
       */
      gaugeLength?: string;
      /**
       * Reduction of area (Z) as printed.
       */
      reductionOfArea?: string;
      /**
       * Where a weld test piece broke.
       */
      breakLocation?: string;
    }[];
    /**
     * Impact tests, one row per set of test pieces.
     */
    impact?: {
      /**
       * Number of the set, or 1, 2, 3 where none is printed.
       */
      test: string;
      /**
       * Direction of the test pieces to rolling.
       */
      direction?: "longitudinal" | "transverse";
      /**
       * Where the notch lies, for weld tests.
       */
      location?: string;
      /**
       * Temperature of the test.
       */
      temperature?: string;
      /**
       * Width of the test pieces.
       */
      specimenWidth?: string;
      /**
       * Energy of each test piece as printed, usually three.
       *
       * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
       */
      values?: string[];
      /**
       * Mean as printed.
       */
      mean?: string;
    }[];
    /**
     * Hardness readings.
     */
    hardness?: {
      /**
       * Where or on which piece it was measured.
       */
      test: string;
      /**
       * Hardness as printed.
       */
      value?: string;
    }[];
    /**
     * Other tests of the product standard: flattening, tightness, ultrasonic, visual.
     */
    otherTests?: {
      /**
       * Name of the test.
       */
      test: string;
      /**
       * Standard or limit tested to.
       */
      requirement?: string;
      /**
       * Result as printed.
       */
      result?: "accepted" | "rejected";
    }[];
  }[];
}

/**
 * The approval of a material maker's quality system that lets its own certificates of specific control count.
 */
export interface MillApproval extends RecordProperties {
  /**
   * Works that is approved.
   */
  mill: string;
  /**
   * Body that approved it.
   */
  body?: string;
  /**
   * Number of the certificate.
   */
  certificate?: string;
  /**
   * Products and grades it covers, as printed.
   */
  scope?: string;
  /**
   * Product forms it covers.
   */
  forms?: ("plate" | "tube" | "pipe" | "forging" | "bar" | "section" | "formed-end" | "fitting" | "bolting")[];
  /**
   * Whether the body is established in the European Union.
   */
  bodyInUnion?: boolean;
  /**
   * First day it is valid.
   */
  validFrom?: string;
  /**
   * Last day it is valid.
   */
  validTo?: string;
}

/**
 * What the plate on the equipment says.
 */
export interface Nameplate extends RecordProperties {
  /**
   * Equipment the plate is fixed to.
   */
  equipment: string;
  /**
   * Name of the maker on the plate.
   */
  makerName?: string;
  /**
   * Address of the maker on the plate.
   */
  makerAddress?: string;
  /**
   * Type or model on the plate.
   */
  type?: string;
  /**
   * Serial number as written there.
   */
  serial?: string;
  /**
   * Year of manufacture as written there.
   */
  year?: number;
  /**
   * Maximum allowable pressure (PS) as written there.
   */
  maximumAllowablePressure?: string;
  /**
   * Maximum allowable temperature (TS max) as written there.
   */
  maximumAllowableTemperature?: string;
  /**
   * Minimum allowable temperature (TS min) as written there.
   */
  minimumAllowableTemperature?: string;
  /**
   * Volume (V) as written there.
   */
  volume?: string;
  /**
   * Greatest continuous steam output as written there.
   */
  steamOutput?: string;
  /**
   * Heating surface as written there.
   */
  heatingSurface?: string;
  /**
   * Test pressure (PT) as written there.
   */
  testPressure?: string;
  /**
   * Day of the pressure test as written there.
   */
  testDate?: string;
  /**
   * Fluid group as written there.
   */
  fluidGroup?: "1" | "2";
  /**
   * Category as written there.
   */
  category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
  /**
   * Conformity assessment procedure as written there.
   */
  module?: "A" | "A2" | "B+C2" | "B+D" | "B+E" | "B+F" | "D1" | "E1" | "G" | "H" | "H1";
  /**
   * Identification number of the inspection body as written there.
   */
  bodyNumber?: string;
  /**
   * Set pressure of the safety device on the plate, gauge.
   */
  setPressure?: string;
  /**
   * Whether the plate bears the CE mark.
   */
  ceMark?: boolean;
  /**
   * Photograph or rubbing of the fixed plate.
   */
  photograph?: string;
  /**
   * Day the plate was fixed or stamped.
   */
  fixed?: string;
}

/**
 * A certificate of a person who makes or judges non-destructive tests, for one method.
 */
export interface NdtPersonnel extends RecordProperties {
  /**
   * Person who is certified.
   */
  person: string;
  /**
   * Test method.
   */
  method: "VT" | "MT" | "PT" | "RT" | "UT";
  /**
   * Level: 1 tests under supervision, 2 tests and judges, 3 approves procedures.
   */
  level?: "1" | "2" | "3";
  /**
   * Sector printed on it.
   */
  sector?: string;
  /**
   * Number printed on it.
   */
  certificate?: string;
  /**
   * Standard it was issued to.
   */
  standard?: {
    /**
     * Number of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  };
  /**
   * Body that issued it.
   */
  body?: string;
  /**
   * First day it is valid.
   */
  issued?: string;
  /**
   * Last day it is valid.
   */
  validTo?: string;
  /**
   * Day of the last test of near vision.
   */
  visionTest?: string;
  /**
   * Day the employer authorised the person to test.
   */
  employerAuthorisation?: string;
  /**
   * Whether a recognised third-party organisation approved the person.
   */
  thirdPartyApproval?: boolean;
}

/**
 * A report of non-destructive tests: method, how, by whom, with what, and one row per joint or length tested.
 */
export interface NdtReport extends RecordProperties {
  /**
   * Test method: visual, magnetic particle, penetrant, radiographic, ultrasonic.
   */
  method: "VT" | "MT" | "PT" | "RT" | "UT";
  /**
   * Day of the test, with the time where a waiting time after welding must be shown.
   */
  date?: string;
  /**
   * Revision of the test procedure.
   */
  procedure?: string;
  /**
   * Revision of the drawing or weld map the report cites.
   */
  drawing?: string;
  /**
   * Quality level judged to.
   */
  qualityLevel?: "B" | "C" | "D";
  /**
   * Acceptance criteria.
   */
  acceptance?: {
    /**
     * Standard of the criteria.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
    /**
     * Acceptance level.
     */
    level?: string;
  };
  /**
   * Technique, class or testing level.
   */
  technique?: string;
  /**
   * Person who made the test.
   */
  operator?: string;
  /**
   * Person under whose direct supervision a level 1 made the test.
   */
  supervisor?: string;
  /**
   * Person who judged or reviewed it.
   */
  reviewer?: string;
  /**
   * Organisation that made the test, if not the maker.
   */
  laboratory?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * Stage of manufacture, where it matters.
   */
  stage?: "before heat treatment" | "after heat treatment" | "after pressure test";
  /**
   * How indications of a penetrant or magnetic particle test are seen: by their colour in white light, or by fluorescence in the dark.
   */
  seenBy?: "colour contrast" | "fluorescence";
  /**
   * Temperature of the surface, for penetrant tests.
   */
  surfaceTemperature?: string;
  /**
   * Light on the surface.
   */
  illuminance?: string;
  /**
   * Ultraviolet light on the surface, of a fluorescent test.
   */
  irradiance?: string;
  /**
   * Time for which the penetrant was left to work.
   */
  penetrationTime?: string;
  /**
   * Time for which the developer was left to work.
   */
  developmentTime?: string;
  /**
   * Tangential field of a magnetic particle test.
   */
  fieldStrength?: string;
  /**
   * Directions in which a part was magnetised.
   */
  directions?: number;
  /**
   * Technique of an ultrasonic test.
   */
  ultrasonic?: {
    /**
     * Testing level of EN ISO 17640.
     */
    testingLevel?: "A" | "B" | "C" | "D";
    /**
     * Frequency of each probe.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    frequencies?: string[];
    /**
     * Correction for surface and material of the part.
     */
    transferCorrection?: string;
    /**
     * Sensitivity found at the check after the test, against what was set.
     */
    drift?: string;
  };
  /**
   * Source and film of a radiographic test.
   */
  radiography?: {
    /**
     * Class of the technique: A, basic; B, improved.
     */
    techniqueClass?: "A" | "B";
    /**
     * Through how many walls the films were exposed, and on which side the image quality indicator stood.
     */
    arrangement?:
      | "single wall, indicator on source side"
      | "single wall, indicator on film side"
      | "double wall, single image, indicator on film side"
      | "double wall, double image, indicator on film side"
      | "double wall, double image, indicator on source side";
    /**
     * Kind of source with its strength.
     */
    source?: string;
    /**
     * Size of the source.
     */
    sourceSize?: string;
    /**
     * Distance from source to object.
     */
    distance?: string;
    /**
     * Where the source stood; outside, if it is not stated.
     */
    sourcePlace?: "outside the part" | "inside, off the centre" | "at the centre";
    /**
     * Detector or imaging plate of a digital radiograph, which has no film.
     */
    detector?: string;
    /**
     * Class of film.
     */
    filmClass?: string;
  };
  /**
   * One row per joint, or per length or film of a joint.
   */
  rows?: {
    /**
     * Name of this row, where "joint" alone does not tell it from another.
     */
    row?: string;
    /**
     * Joint tested.
     */
    joint: string;
    /**
     * Number of the film or scan.
     */
    film?: string;
    /**
     * Start of the tested length, from the zero mark.
     */
    from?: string;
    /**
     * End of the tested length.
     */
    to?: string;
    /**
     * Length tested.
     */
    length?: string;
    /**
     * Thinnest wire of the image quality indicator seen.
     */
    wire?: string;
    /**
     * Film densities measured, least and greatest.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    density?: string[];
    /**
     * Least normalised signal-to-noise ratio measured in a digital image.
     */
    signalToNoise?: string;
    /**
     * Pair of the duplex wire indicator that a digital image no longer shows as two.
     */
    duplexWire?: "D1" | "D2" | "D3" | "D4" | "D5" | "D6" | "D7" | "D8" | "D9" | "D10" | "D11" | "D12" | "D13";
    /**
     * Result of the row.
     */
    result?: "accepted" | "rejected";
    /**
     * Indications found.
     */
    indications?: {
      /**
       * Number of the indication in this row.
       */
      indication: string;
      /**
       * What it is, with its code number if printed.
       */
      type?: string;
      /**
       * Where it begins, from the zero mark.
       */
      at?: string;
      /**
       * Length of the indication.
       */
      length?: string;
      /**
       * Greatest other dimension: diameter, height, depth.
       */
      size?: string;
      /**
       * Greatest echo of an ultrasonic test against the reference level.
       */
      echo?: string;
      /**
       * Judged by the tester.
       */
      verdict?: "accepted" | "rejected";
    }[];
    /**
     * Repair whose re-test this row is.
     */
    repair?: string;
    /**
     * Rejected row for which this one, of another joint of the same welder, is a further length.
     */
    furtherTo?: string;
  }[];
}

/**
 * The maker's report of something found wrong: what, what was done about it, and how it was closed.
 */
export interface NonconformityReport extends RecordProperties {
  /**
   * What it is about, in a few words.
   */
  title?: string;
  /**
   * How far it has come.
   */
  state?:
    "raised" | "item held" | "proposal made" | "agreed" | "under correction" | "verified" | "closed" | "cancelled";
  /**
   * Records of what is affected.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  affected?: string[];
  /**
   * Requirement that is not met.
   */
  requirement?: string;
  /**
   * What was found, with values and units.
   */
  found?: string;
  /**
   * Person who found it.
   */
  foundBy?: string;
  /**
   * Day it was raised.
   */
  raised?: string;
  /**
   * Whether it concerns a part or weld that contains pressure.
   */
  pressureRelated?: boolean;
  /**
   * Why it arose.
   */
  cause?: string;
  /**
   * What was done at once to hold the item.
   */
  containment?: string;
  /**
   * What is done with the item; none for a cancelled report.
   */
  disposition?: "use-as-is" | "repair" | "rework" | "scrap" | "return" | "regrade" | "none";
  /**
   * Technical reason of the disposition.
   */
  reason?: string;
  /**
   * What was done to correct it.
   */
  correction?: string;
  /**
   * Person who corrected it.
   */
  correctedBy?: string;
  /**
   * Who agreed to the disposition.
   */
  approvals?: {
    /**
     * Name of this row, where "role" alone does not tell it from another.
     */
    row?: string;
    /**
     * Role in which the person agreed.
     */
    role:
      | "welder"
      | "welding operator"
      | "welding coordinator"
      | "quality control"
      | "design"
      | "checker"
      | "shop"
      | "testing"
      | "inspection body"
      | "client"
      | "authorised signatory"
      | "supplier"
      | "laboratory"
      | "document control";
    /**
     * Person who agreed.
     */
    person?: string;
    /**
     * Day of the agreement.
     */
    date?: string;
  }[];
  /**
   * Deviation that permits it, for use as is and for repair.
   */
  concession?: string;
  /**
   * Records that show the correction was checked.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  verification?: string[];
  /**
   * Person who closed it, another one than who corrected it.
   */
  closedBy?: string;
  /**
   * Day it was closed.
   */
  closed?: string;
}

/**
 * A permission for steps that were done in another order than usual.
 */
export interface OrderException extends RecordProperties {
  /**
   * The findings it answers, each as the check prints it.
   */
  answers?: {
    /**
     * Key of the finding.
     */
    finding: string;
    /**
     * Digest of what the finding rests on; when that changes, the finding is open again.
     */
    digest: string;
  }[];
  /**
   * Why it is acceptable.
   */
  reason?: string;
  /**
   * On what authority: clause, letter, minutes.
   */
  authority?: string;
  /**
   * Person who decided it.
   */
  by?: string;
  /**
   * Day it was decided.
   */
  date?: string;
  /**
   * Last day it holds; left out if it has no end.
   */
  end?: string;
  /**
   * What was done so that nothing was lost by the order, such as a conditional release.
   */
  condition?: string;
}

/**
 * A company or body named in the book.
 */
export interface Organisation extends RecordProperties {
  /**
   * Name of the organisation.
   */
  name: string;
  /**
   * What it does for this book.
   */
  roles?: ("maker" | "client" | "supplier" | "stockist" | "mill" | "laboratory" | "testing" | "inspection body")[];
  /**
   * Postal address.
   */
  address?: string;
  /**
   * Identification number of an inspection body, four digits.
   */
  number?: string;
  /**
   * Number of the accreditation of a laboratory.
   */
  accreditation?: string;
}

/**
 * A scan or other file in the folder files/, known by its path and its hash.
 */
export interface Original extends RecordProperties {
  /**
   * Path of the file in the book.
   */
  path: string;
  /**
   * SHA-256 of the file, as sha256sum prints it.
   */
  sha256: string;
  /**
   * What the file shows.
   */
  title?: string;
  /**
   * Kind of file.
   */
  mediaType?:
    | "application/pdf"
    | "image/png"
    | "image/jpeg"
    | "image/tiff"
    | "text/plain"
    | "text/csv"
    | "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
    | "application/octet-stream";
  /**
   * Number of pages.
   */
  pages?: number;
  /**
   * Language of the text, as a language tag.
   */
  language?: string;
  /**
   * Whether the file bears a digital signature.
   */
  signed?: boolean;
  /**
   * Who typed the records that were read from it, and who compared them with it: once for all of them.
   */
  transcription?: {
    /**
     * Whoever typed the records, or took them from a sheet.
     *
     * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
     */
    enteredBy?: string[];
    /**
     * Person, other than who typed them, who compared them with the original.
     */
    comparedBy?: string;
    /**
     * Day they were compared.
     */
    date?: string;
    /**
     * SHA-256 of the file they were compared with; of another file the comparison says nothing. Written by the command compared.
     */
    sha256?: string;
    /**
     * Each record that was compared, behind the digest of the values it takes from this original: another digest says that they were changed since. Written by the command compared.
     */
    records?: string[];
  };
}

/**
 * A position of the parts list: what it is made of, its sizes and what its certificate must be.
 */
export interface Part extends RecordProperties {
  /**
   * Name in the parts list.
   */
  name?: string;
  /**
   * What the part does.
   */
  role?:
    | "shell-course"
    | "end"
    | "nozzle-neck"
    | "flange"
    | "blind-flange"
    | "coupling"
    | "pad"
    | "manhole"
    | "tube-plate"
    | "tube"
    | "furnace"
    | "furnace-hoop"
    | "reversal-chamber"
    | "access-tube"
    | "flat-plate"
    | "stay-tube"
    | "stay"
    | "bolting"
    | "gasket"
    | "support"
    | "lifting-lug"
    | "nameplate-bracket"
    | "lining";
  /**
   * Revision of the drawing that shows it.
   */
  drawing?: string;
  /**
   * Whether the part contains pressure.
   */
  pressureBearing?: boolean;
  /**
   * How many such parts the equipment has.
   */
  quantity?: number;
  /**
   * Material the parts list asks for.
   */
  material?: {
    /**
     * Material standard.
     */
    standard?: string;
    /**
     * Edition of the material standard.
     */
    edition?: string;
    /**
     * Steel grade.
     */
    grade?: string;
    /**
     * Product form.
     */
    form?: "plate" | "tube" | "pipe" | "forging" | "bar" | "section" | "formed-end" | "fitting" | "bolting";
    /**
     * Supplementary options of the order.
     */
    options?: string;
  };
  /**
   * Nominal thickness on the drawing; of a forging or a bolt, its governing section.
   */
  nominalThickness?: string;
  /**
   * Least thickness the drawing allows after forming, of a formed part.
   */
  minimumThickness?: string;
  /**
   * Thickness readings on the finished part.
   *
   * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
   */
  measuredThickness?: string[];
  /**
   * How far the material standard lets the thickness fall below nominal.
   */
  thicknessUndertolerance?: string;
  /**
   * Corrosion allowance of this part; that of the equipment where none is stated.
   */
  corrosionAllowance?: string;
  /**
   * Inside diameter.
   */
  insideDiameter?: string;
  /**
   * Outside diameter.
   */
  outsideDiameter?: string;
  /**
   * Length of a course, neck or tube.
   */
  length?: string;
  /**
   * Inside radius of the crown of a dished end.
   */
  crownRadius?: string;
  /**
   * Inside radius of the knuckle of a dished end.
   */
  knuckleRadius?: string;
  /**
   * Joint coefficient the calculation of this part uses.
   */
  weldCoefficient?: string;
  /**
   * Metal temperature of this part, where it differs from the equipment's.
   */
  calculationTemperature?: string;
  /**
   * How hot gas heats the part: not at all, by convection, or by radiation of the flame as well.
   */
  heating?: "none" | "convection" | "radiation";
  /**
   * Length between effective supports of a cylinder under external pressure; of a furnace hoop, the mean of the two lengths it parts.
   */
  unsupportedLength?: string;
  /**
   * Greatest out-of-roundness the calculation of this part allows for: 200·(largest − least)/(largest + least) diameter.
   */
  outOfRoundness?: string;
  /**
   * Outside diameters measured on the finished part, for its out-of-roundness.
   *
   * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
   */
  measuredDiameters?: string[];
  /**
   * Section of a furnace hoop; its wall is the nominal thickness.
   */
  hoop?: {
    /**
     * Radial depth of the hoop over all.
     */
    depth?: string;
    /**
     * Axial width of the hoop over all.
     */
    width?: string;
    /**
     * Furnace it stiffens.
     */
    furnace?: string;
  };
  /**
   * Unstayed regions of a flat plate: the largest circle that can be drawn between its supports.
   */
  regions?: {
    /**
     * Name of the region on the drawing.
     */
    region: string;
    /**
     * Diameter of the largest circle through at least three points of support.
     */
    circleDiameter?: string;
    /**
     * Supports the circle touches.
     */
    supports?: (
      "flanged-edge" | "welded-edge" | "gusset" | "bar-stay" | "stay-tube" | "access-tube" | "smoke-tube" | "doubtful"
    )[];
  }[];
  /**
   * Spaces of a flat plate that let furnace and tubes grow: each at its narrowest; plates of a reversal chamber need keep none.
   */
  breathingSpaces?: {
    /**
     * Name of the space on the drawing.
     */
    space: string;
    /**
     * What the space lies between.
     */
    between?: "furnace-shell" | "furnace-tubes" | "tubes-shell" | "gusset-tubes" | "gusset-furnace" | "other";
    /**
     * Clear width at the narrowest place.
     */
    width?: string;
  }[];
  /**
   * Area of plate one stay or stay tube carries, bounded half way to its neighbours, gross.
   */
  carriedArea?: string;
  /**
   * Area of that plate which tubes and the stay itself occupy.
   */
  occupiedArea?: string;
  /**
   * Fields of smoke tubes in a tube plate.
   */
  tubeFields?: {
    /**
     * Name of the field on the drawing.
     */
    field: string;
    /**
     * Tubes of the field.
     */
    tube?: string;
    /**
     * Pattern of the holes.
     */
    pattern?: "triangular" | "square";
    /**
     * Distance of neighbouring hole centres.
     */
    pitch?: string;
    /**
     * Diameter of the holes.
     */
    holeDiameter?: string;
    /**
     * Length over which the tubes are expanded into the plate.
     */
    expandedLength?: string;
    /**
     * Plain tubes in the field.
     */
    tubes?: number;
    /**
     * Stay tubes in the field.
     */
    stayTubes?: number;
  }[];
  /**
   * Openings of a shell course that its calculation covers.
   */
  openings?: {
    /**
     * Mark of the opening on the drawing.
     */
    opening: string;
    /**
     * Branch or frame welded into it.
     */
    branch?: string;
    /**
     * Distance of its centre along the axis, for all courses from the same end of the shell.
     */
    along?: string;
    /**
     * Distance of its centre from the top line, round the outside of the shell in one sense for all.
     */
    around?: string;
    /**
     * Length of the branch outside the shell.
     */
    branchLength?: string;
    /**
     * Whether the branch passes through the shell.
     */
    setIn?: boolean;
    /**
     * Width of an opening that is not round, along the axis of the shell.
     */
    axialWidth?: string;
  }[];
  /**
   * Least type of inspection document that must cover the part.
   */
  requiredCertificateType?: "2.1" | "2.2" | "3.1" | "3.2";
  /**
   * Organisation that made the part, if it was bought as a finished part.
   */
  madeBy?: string;
}

/**
 * A person who welds, tests, checks or signs.
 */
export interface Person extends RecordProperties {
  /**
   * Name of the person.
   */
  name: string;
  /**
   * Stamp or initials the person signs with.
   */
  mark?: string;
  /**
   * Organisation the person works for.
   */
  employer?: string;
  /**
   * What the person is appointed to do.
   */
  roles?: {
    /**
     * Name of this row, where "role" alone does not tell it from another.
     */
    row?: string;
    /**
     * Role.
     */
    role:
      | "welder"
      | "welding operator"
      | "welding coordinator"
      | "quality control"
      | "design"
      | "checker"
      | "shop"
      | "testing"
      | "inspection body"
      | "client"
      | "authorised signatory"
      | "supplier"
      | "laboratory"
      | "document control";
    /**
     * First day of the appointment.
     */
    from?: string;
    /**
     * Last day of the appointment; left out while it lasts.
     */
    to?: string;
    /**
     * Certificate, letter or register behind the appointment.
     */
    authority?: string;
  }[];
  /**
   * Original that shows the signature and the stamp.
   */
  specimen?: string;
}

/**
 * The mark stamped on one piece of material: which part it became, which certificate row covers it, and how the mark was carried over at each cut.
 */
export interface PieceMark extends RecordProperties {
  /**
   * Part the piece became.
   */
  part: string;
  /**
   * Mark as stamped on the steel.
   */
  mark?: string;
  /**
   * Row of the certificate that covers the piece.
   */
  certificateRow?: string;
  /**
   * Number of the plate, tube or forging as printed on the certificate.
   */
  pieceNumber?: string;
  /**
   * Larger piece it was cut from.
   */
  parent?: string;
  /**
   * Day the piece was cut; of a part bought finished, the day it was taken into stock.
   */
  cut?: string;
  /**
   * Area of plate used.
   */
  area?: string;
  /**
   * Length of tube, pipe or bar used.
   */
  length?: string;
  /**
   * How many pieces bear this mark.
   */
  pieces?: number;
  /**
   * How the mark was carried over before each cut.
   */
  transfers?: {
    /**
     * Mark it was taken from.
     */
    from?: string;
    /**
     * Mark that was put on.
     */
    to: string;
    /**
     * How the mark was put on; as delivered, where the supplier's own mark was compared and kept.
     */
    method?: "hard stamp" | "vibrating pen" | "paint" | "tag" | "as delivered";
    /**
     * Person who transferred the mark.
     */
    by?: string;
    /**
     * Day of the transfer.
     */
    date?: string;
    /**
     * Person who witnessed it.
     */
    witness?: string;
  }[];
}

/**
 * The pressure test of the equipment, with the readings of both gauges.
 */
export interface PressureTest extends RecordProperties {
  /**
   * Equipment that was tested.
   */
  equipment: string;
  /**
   * Day of the test.
   */
  date?: string;
  /**
   * Test medium.
   */
  medium?: "water" | "water with additive" | "oil" | "air" | "nitrogen";
  /**
   * Revision of the test procedure.
   */
  procedure?: string;
  /**
   * Revision of the drawing the report cites.
   */
  drawing?: string;
  /**
   * Serial number as written on the report.
   */
  serial?: string;
  /**
   * Test pressure required, gauge, at the highest point.
   */
  requiredPressure?: string;
  /**
   * Test pressure reached and held, gauge, at the highest point.
   */
  testPressure?: string;
  /**
   * The two gauges, as the report describes them.
   */
  gauges?: {
    /**
     * Letter of the gauge in the readings.
     */
    gauge: "A" | "B";
    /**
     * Gauge or transmitter.
     */
    instrument?: string;
    /**
     * Highest value of its scale, as written on the report.
     */
    range?: string;
    /**
     * Its accuracy class in percent of the range, as written on the report.
     */
    accuracyClass?: string;
    /**
     * Smallest difference that can be read on it.
     */
    resolution?: string;
    /**
     * Height of the gauge above the highest point of the equipment; negative when it sits lower.
     */
    elevation?: string;
  }[];
  /**
   * Readings, in the order they were taken.
   */
  readings?: {
    /**
     * Time of the reading, with offset.
     */
    time: string;
    /**
     * Reading of gauge A.
     */
    gaugeA?: string;
    /**
     * Reading of gauge B.
     */
    gaugeB?: string;
    /**
     * Temperature of the test medium.
     */
    waterTemperature?: string;
    /**
     * Temperature of the metal.
     */
    metalTemperature?: string;
  }[];
  /**
   * Thermometers used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  thermometers?: string[];
  /**
   * Time the pump was shut off from the equipment.
   */
  pumpIsolated?: string;
  /**
   * Time the hold began, as written on the report.
   */
  holdStart?: string;
  /**
   * Time the hold ended, as written on the report.
   */
  holdEnd?: string;
  /**
   * Volume pumped in from filling to test pressure.
   */
  pumpedVolume?: string;
  /**
   * Look at every joint, at the maximum allowable pressure or above, up to the test pressure.
   */
  visualExamination?: {
    /**
     * Pressure during the look, gauge.
     */
    pressure?: string;
    /**
     * Person who looked.
     */
    by?: string;
    /**
     * When.
     */
    date?: string;
    /**
     * Result: accepted if nothing leaked or wept.
     */
    result?: "accepted" | "rejected";
  };
  /**
   * Lasting change of the girth measured after the test.
   */
  permanentSet?: string;
  /**
   * Whether joints were painted, coated or lagged before the test.
   */
  coated?: boolean;
  /**
   * Why the test was broken off before its hold was over; left out of a test that was not. A test that was broken off is rejected, and made again.
   */
  stopped?: string;
  /**
   * Result of the test.
   */
  result?: "accepted" | "rejected";
}

/**
 * A working procedure other than a welding procedure, with its revisions.
 */
export interface Procedure extends RecordProperties {
  /**
   * What is done by it.
   */
  type:
    | "ndt"
    | "pressure-test"
    | "heat-treatment"
    | "forming"
    | "expanding"
    | "marking"
    | "dimensions"
    | "cleaning"
    | "coating"
    | "hardness-test"
    | "leak-test"
    | "alloy-analysis"
    | "set-pressure"
    | "final-inspection";
  /**
   * Test method, of a test procedure.
   */
  method?: "VT" | "MT" | "PT" | "RT" | "UT";
  /**
   * Title printed on it.
   */
  title?: string;
  /**
   * Number printed on it.
   */
  number?: string;
  /**
   * Every revision issued for use, oldest first; drafts are left out.
   */
  revisions?: {
    /**
     * Revision mark as printed on the document.
     */
    revision: string;
    /**
     * Day this revision was issued.
     */
    date?: string;
    /**
     * What this revision may be used for.
     */
    status?: "for-construction" | "as-built" | "for-record" | "superseded" | "withdrawn";
    /**
     * What changed against the revision before.
     */
    reason?: string;
    /**
     * Person who prepared it.
     */
    preparedBy?: string;
    /**
     * Person who checked it, another one than who prepared it.
     */
    checkedBy?: string;
    /**
     * Person who approved it.
     */
    approvedBy?: string;
    /**
     * Day from which it was approved for use.
     */
    approved?: string;
    /**
     * Limits that a procedure for heat treatment states; of all its charges.
     */
    heatTreatment?: {
      /**
       * Lowest holding temperature.
       */
      lowest?: string;
      /**
       * Highest holding temperature.
       */
      highest?: string;
      /**
       * Least holding time.
       */
      holdingTime?: string;
      /**
       * Highest furnace temperature at loading.
       */
      loadingTemperature?: string;
      /**
       * Greatest rate of heating.
       */
      heatingRate?: string;
      /**
       * Greatest rate of cooling.
       */
      coolingRate?: string;
    };
    /**
     * Number of sheets or pages.
     */
    sheets?: number;
    /**
     * File that shows this revision.
     */
    original?: string;
  }[];
}

/**
 * The record of a qualified welding procedure: what was welded and tested, and the ranges it covers.
 */
export interface ProcedureQualification extends RecordProperties {
  /**
   * Number printed on it.
   */
  certificate?: string;
  /**
   * Standard it was qualified to.
   */
  standard?: {
    /**
     * Number of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  };
  /**
   * Level of the qualification, where the standard has levels.
   */
  level?: "1" | "2";
  /**
   * Welding processes of the test piece.
   */
  processes?: (
    "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
  )[];
  /**
   * How far welding of the test piece was mechanised.
   */
  mechanisation?: "manual" | "partly mechanised" | "fully mechanised" | "automatic";
  /**
   * Type of joint of the test piece.
   */
  jointType?: "butt" | "fillet" | "t-butt" | "branch" | "tube-to-tube-plate";
  /**
   * Product of the test piece.
   */
  product?: "plate" | "pipe";
  /**
   * Material group of the test piece.
   */
  materialGroup?: string;
  /**
   * Steel grade of the test piece.
   */
  grade?: string;
  /**
   * Thickness of the test piece.
   */
  testThickness?: string;
  /**
   * Whether the test piece was welded in a single run or in several.
   */
  layers?: "single" | "multi";
  /**
   * Throat of a fillet weld test piece.
   */
  throat?: string;
  /**
   * Outside diameter of a pipe test piece.
   */
  testDiameter?: string;
  /**
   * Whether the tubes of the test piece were expanded as well, of a test of tubes in a tube plate.
   */
  expanded?: boolean;
  /**
   * Positions of the test piece.
   */
  positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
  /**
   * Weld detail of the test piece.
   */
  detail?: "ss nb" | "ss mb" | "ss gb" | "ss fb" | "bs" | "sl" | "ml";
  /**
   * Designations of the filler metals.
   *
   * Items: Text of up to 200 characters.
   */
  fillers?: string[];
  /**
   * Designation of the shielding gas of the test piece.
   */
  shieldingGas?: string;
  /**
   * Kind of current and polarity of the test piece.
   */
  current?: "DC+" | "DC-" | "AC";
  /**
   * Transfer modes that the test piece was welded with, of gas metal arc processes.
   */
  transferModes?: ("dip" | "globular" | "spray" | "pulsed")[];
  /**
   * Heat input of the test piece.
   */
  heatInput?: string;
  /**
   * Preheat temperature of the test piece.
   */
  preheat?: string;
  /**
   * Highest interpass temperature of the test piece.
   */
  interpass?: string;
  /**
   * Whether the test piece was heat treated after welding.
   */
  postWeldHeatTreatment?: boolean;
  /**
   * Whether impact tests were required and made.
   */
  impactTested?: boolean;
  /**
   * Whether hardness tests were required and made.
   */
  hardnessTested?: boolean;
  /**
   * Day the test piece was welded.
   */
  testDate?: string;
  /**
   * Body that approved it.
   */
  approvedBy?: string;
  /**
   * Day of the approval.
   */
  approved?: string;
  /**
   * Tests of the test piece.
   */
  tests?: {
    /**
     * Number of the test, or 1, 2, 3.
     */
    test: string;
    /**
     * What was tested.
     */
    type?:
      "visual" | "surface" | "volumetric" | "tensile" | "bend" | "impact" | "hardness" | "macro" | "fracture" | "leak";
    /**
     * Standard or limit tested to.
     */
    requirement?: string;
    /**
     * Temperature of an impact test.
     */
    temperature?: string;
    /**
     * Values as printed, with unit.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    value?: string[];
    /**
     * Result as printed.
     */
    result?: "accepted" | "rejected";
  }[];
  /**
   * Ranges printed on the certificate.
   */
  range?: {
    /**
     * Welding processes.
     */
    processes?: (
      "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
    )[];
    /**
     * Types of joint.
     */
    jointTypes?: ("butt" | "fillet" | "t-butt" | "corner" | "branch" | "attachment" | "tube-to-tube-plate")[];
    /**
     * Material groups.
     *
     * Items: Text of up to 200 characters.
     */
    materialGroups?: string[];
    /**
     * Thickness of the parts; of welds between tubes and tube plates, of the tube.
     */
    thickness?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Throat of fillet welds.
     */
    throat?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Outside diameter.
     */
    outsideDiameter?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Welding positions.
     */
    positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
    /**
     * Heat input.
     */
    heatInput?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Lowest preheat temperature.
     */
    preheat?: string;
    /**
     * Highest interpass temperature.
     */
    interpass?: string;
  };
}

/**
 * A test piece welded along with the equipment and tested by a laboratory.
 */
export interface ProductionTest extends RecordProperties {
  /**
   * Mark of the test plate.
   */
  mark?: string;
  /**
   * Joints it represents.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  joints?: string[];
  /**
   * Revision of the welding procedure used.
   */
  weldingProcedure?: string;
  /**
   * Welders who made it.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  welders?: string[];
  /**
   * Rows of the certificates of its plates.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  certificateRows?: string[];
  /**
   * Day it was welded.
   */
  welded?: string;
  /**
   * Heat treatment it went through with the equipment, if any.
   */
  heatTreatment?: string;
  /**
   * Laboratory that tested it.
   */
  laboratory?: string;
  /**
   * Number of the laboratory's report.
   */
  report?: string;
  /**
   * Day of the report.
   */
  date?: string;
  /**
   * Tensile tests, one row per test piece.
   */
  tensile?: {
    /**
     * Number of the test piece, or 1, 2, 3 where none is printed.
     */
    test: string;
    /**
     * Direction of the test piece to rolling, or to the weld.
     */
    direction?: "longitudinal" | "transverse" | "through-thickness";
    /**
     * Temperature of the test.
     */
    temperature?: string;
    /**
     * Which yield or proof strength is stated.
     */
    yieldKind?: "ReH" | "ReL" | "Rp0.2" | "Rp1.0";
    /**
     * Yield or proof strength as printed.
     */
    yieldStrength?: string;
    /**
     * Tensile strength (Rm) as printed.
     */
    tensileStrength?: string;
    /**
     * Elongation after fracture (A) as printed.
     */
    elongation?: string;
    /**
     * Gauge length of the elongation.
     */
    gaugeLength?: string;
    /**
     * Reduction of area (Z) as printed.
     */
    reductionOfArea?: string;
    /**
     * Where a weld test piece broke.
     */
    breakLocation?: string;
  }[];
  /**
   * Impact tests, one row per set of test pieces.
   */
  impact?: {
    /**
     * Number of the set, or 1, 2, 3 where none is printed.
     */
    test: string;
    /**
     * Direction of the test pieces to rolling.
     */
    direction?: "longitudinal" | "transverse";
    /**
     * Where the notch lies, for weld tests.
     */
    location?: string;
    /**
     * Temperature of the test.
     */
    temperature?: string;
    /**
     * Width of the test pieces.
     */
    specimenWidth?: string;
    /**
     * Energy of each test piece as printed, usually three.
     *
     * Items: Value with unit exactly as written on the paper, with a decimal point; < or > for a bound.
     */
    values?: string[];
    /**
     * Mean as printed.
     */
    mean?: string;
  }[];
  /**
   * Hardness readings.
   */
  hardness?: {
    /**
     * Place of the reading.
     */
    test: string;
    /**
     * Hardness as printed.
     */
    value?: string;
  }[];
  /**
   * Bend, macro and other tests.
   */
  otherTests?: {
    /**
     * Name or number of the test.
     */
    test: string;
    /**
     * Standard or limit tested to.
     */
    requirement?: string;
    /**
     * Result as printed.
     */
    result?: "accepted" | "rejected";
  }[];
  /**
   * Result of the whole test.
   */
  result?: "accepted" | "rejected";
}

/**
 * A table of a standard, copied by the maker from its own copy, that replaces the table shipped with the tool.
 */
export interface ReferenceTable extends RecordProperties {
  /**
   * Name of the table it replaces.
   */
  table: string;
  /**
   * Standard the table is copied from.
   */
  standard: string;
  /**
   * Edition of the standard.
   */
  edition: string;
  /**
   * Person who compared it with the standard.
   */
  checkedBy?: string;
  /**
   * Day it was compared.
   */
  date?: string;
  /**
   * Rows of the table.
   */
  rows?: {
    /**
     * Name of the row.
     */
    row: string;
    /**
     * Cells of the row: keys as a value or an interval, and values.
     */
    cells: {
      /**
       * Name of the column.
       */
      name: string;
      /**
       * Value with unit, a word, or an interval in the unit of the key.
       */
      value?: string;
      /**
       * Points of a curve.
       */
      points?: {
        /**
         * Coordinates of the point.
         */
        values: {
          /**
           * Name of the coordinate.
           */
          name: string;
          /**
           * Value with unit.
           */
          value: string;
        }[];
      }[];
    }[];
  }[];
}

/**
 * One repair of a joint: what was rejected, how it was repaired and by whom, by welding or by dressing alone. The re-test is a row of an NDT report that names it.
 */
export interface Repair extends RecordProperties {
  /**
   * Joint that was repaired.
   */
  joint: string;
  /**
   * Row of the report that rejected it.
   */
  rejected?: string;
  /**
   * How many times this place has now been repaired.
   */
  cycle?: number;
  /**
   * Why the defect arose.
   */
  cause?: string;
  /**
   * Start of the repaired length, from the zero mark.
   */
  from?: string;
  /**
   * End of the repaired length.
   */
  to?: string;
  /**
   * Depth of the excavation.
   */
  depth?: string;
  /**
   * Revision of the welding procedure used.
   */
  weldingProcedure?: string;
  /**
   * Welding process.
   */
  process?:
    "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311";
  /**
   * Welders who made it.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  welders?: string[];
  /**
   * Batches of consumables used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  batches?: string[];
  /**
   * Day it was welded or dressed.
   */
  date?: string;
  /**
   * The place was ground or dressed, and nothing was welded.
   */
  dressing?: {
    /**
     * Person who dressed it.
     */
    by?: string;
    /**
     * Part whose wall was measured there.
     */
    part?: string;
    /**
     * Least thickness measured where it was dressed.
     */
    leastThickness?: string;
  };
  /**
   * Report of the surface test of the excavation.
   */
  excavationTest?: string;
  /**
   * Consent to a further repair of the same place, where one is needed.
   */
  approval?: string;
  /**
   * Nonconformity report the repair belongs to, if there is one.
   */
  nonconformity?: string;
}

/**
 * A safety valve: certified figures, its plate, and the bench test that set it.
 */
export interface SafetyValve extends RecordProperties {
  /**
   * Equipment it protects.
   */
  equipment: string;
  /**
   * Tag on the drawing.
   */
  tag?: string;
  /**
   * Serial number on the certificate.
   */
  serial?: string;
  /**
   * Organisation that made it.
   */
  manufacturer?: string;
  /**
   * Type or model.
   */
  model?: string;
  /**
   * Nominal sizes of inlet and outlet.
   */
  size?: string;
  /**
   * Category of the valve as a safety accessory.
   */
  category?: "sound engineering practice" | "I" | "II" | "III" | "IV";
  /**
   * Identification number of the inspection body on the valve.
   */
  bodyNumber?: string;
  /**
   * Least flow diameter (d0).
   */
  flowDiameter?: string;
  /**
   * Flow area (A) the certificate states.
   */
  flowArea?: string;
  /**
   * Certified derated coefficient of discharge (Kdr).
   */
  coefficient?: string;
  /**
   * Set pressure, gauge.
   */
  setPressure?: string;
  /**
   * Certified overpressure at which the capacity holds.
   */
  overpressure?: string;
  /**
   * Pressure at the outlet during discharge, gauge.
   */
  backPressure?: string;
  /**
   * Pressure lost between the equipment and the valve while it blows at its certified capacity.
   */
  inletLoss?: string;
  /**
   * Lift of the disc at its certified capacity.
   */
  lift?: string;
  /**
   * Medium it discharges.
   */
  medium?: {
    /**
     * Name of the medium.
     */
    name?: string;
    /**
     * State of the medium at the inlet.
     */
    state?: "gas" | "steam" | "liquid";
    /**
     * Temperature at the inlet during discharge.
     */
    temperature?: string;
    /**
     * Molar mass (M) of a gas.
     */
    molarMass?: string;
    /**
     * Isentropic exponent (k) of a gas.
     */
    isentropicExponent?: string;
    /**
     * Compressibility factor (Z) of a gas at the inlet.
     */
    compressibilityFactor?: string;
  };
  /**
   * Atmospheric pressure the capacity is stated for, absolute.
   */
  atmosphericPressure?: string;
  /**
   * Capacity stated by the certificate for this medium and set pressure.
   */
  certifiedCapacity?: string;
  /**
   * Certificate of the valve.
   */
  certificate?: {
    /**
     * Number printed on it.
     */
    number?: string;
    /**
     * Day printed on it.
     */
    date?: string;
    /**
     * Body that issued or approved it.
     */
    body?: string;
    /**
     * Number of the type examination it rests on.
     */
    typeExamination?: string;
  };
  /**
   * What the plate of the valve says.
   */
  plate?: {
    /**
     * Serial number.
     */
    serial?: string;
    /**
     * Set pressure, gauge.
     */
    setPressure?: string;
    /**
     * Capacity.
     */
    capacity?: string;
  };
  /**
   * Test that set the valve.
   */
  bench?: {
    /**
     * Day of the bench test.
     */
    date?: string;
    /**
     * Revision of the procedure for setting.
     */
    procedure?: string;
    /**
     * Gauge of the bench.
     */
    instrument?: string;
    /**
     * Test medium.
     */
    medium?: string;
    /**
     * Each opening.
     */
    readings?: {
      /**
       * 1 for the first opening, and so on.
       */
      number: number;
      /**
       * Pressure at which it opened, gauge.
       */
      pop?: string;
      /**
       * Pressure at which it closed, gauge.
       */
      reseat?: string;
    }[];
    /**
     * Pressure of the seat tightness test, gauge.
     */
    seatTestPressure?: string;
    /**
     * Result of the seat tightness test.
     */
    seatTightness?: "accepted" | "rejected";
    /**
     * Number of the seal put on after setting.
     */
    sealNumber?: string;
    /**
     * Person who set it.
     */
    tester?: string;
  };
}

/**
 * All ends of one sort of tube in one field of a tube plate: how they are joined to the plate, by whom, and a sample as measured.
 */
export interface TubeEndGroup extends RecordProperties {
  /**
   * Field of tubes in its tube plate.
   */
  field: string;
  /**
   * Sort of tube: the plain tubes of the field, or its stay tubes.
   */
  tube: string;
  /**
   * Which end of the tubes it is: where the hot gas enters them, or where it leaves.
   */
  end?: "gas-inlet" | "gas-outlet";
  /**
   * How the ends are joined to the plate.
   */
  joining: "expanded" | "expanded-and-welded" | "welded";
  /**
   * How many ends the group has.
   */
  count: number;
  /**
   * Revision of the procedure for expanding.
   */
  procedure?: string;
  /**
   * Revision of the procedure by which the ends are welded.
   */
  weldingProcedure?: string;
  /**
   * Position in which the ends were welded.
   */
  position?: "PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045";
  /**
   * Expander used, and its setting.
   */
  expander?: string;
  /**
   * People who made the ends.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  operators?: string[];
  /**
   * Welders of the ends, where they are welded.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  welders?: string[];
  /**
   * Day the last end of the group was finished.
   */
  date?: string;
  /**
   * Measuring instruments used.
   *
   * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
   */
  instruments?: string[];
  /**
   * Expanded ends that were measured.
   */
  measured?: {
    /**
     * Place of the tube in the field.
     */
    position: string;
    /**
     * Diameter of the hole.
     */
    holeDiameter?: string;
    /**
     * Outside diameter of the tube before expanding.
     */
    tubeOutside?: string;
    /**
     * Inside diameter of the tube before expanding.
     */
    insideBefore?: string;
    /**
     * Inside diameter of the tube after expanding.
     */
    insideAfter?: string;
    /**
     * Reduction of the wall as the shop recorded it.
     */
    wallReduction?: string;
  }[];
  /**
   * Reduction of the wall that the procedure asks for, where it is narrower than the usual one.
   */
  reductionAsked?: {
    /**
     * Least reduction.
     */
    minimum?: string;
    /**
     * Greatest reduction.
     */
    maximum?: string;
  };
  /**
   * Greatest length by which the ends stand out of the plate.
   */
  projection?: string;
  /**
   * Result stated by who examined the ends.
   */
  result?: "accepted" | "rejected";
}

/**
 * A permission to leave out evidence, or the ground on which a requirement does not apply.
 */
export interface Waiver extends RecordProperties {
  /**
   * The findings it answers, each as the check prints it.
   */
  answers?: {
    /**
     * Key of the finding.
     */
    finding: string;
    /**
     * Digest of what the finding rests on; when that changes, the finding is open again.
     */
    digest: string;
  }[];
  /**
   * Why it is acceptable.
   */
  reason?: string;
  /**
   * On what authority: clause, letter, minutes.
   */
  authority?: string;
  /**
   * Person who decided it.
   */
  by?: string;
  /**
   * Day it was decided.
   */
  date?: string;
  /**
   * Last day it holds; left out if it has no end.
   */
  end?: string;
  /**
   * Why the requirement does not apply at all, where that is the case.
   */
  ground?: string;
  /**
   * Who agreed to it.
   */
  agreement?: {
    /**
     * Name of this row, where "role" alone does not tell it from another.
     */
    row?: string;
    /**
     * Role in which the person agreed.
     */
    role:
      | "welder"
      | "welding operator"
      | "welding coordinator"
      | "quality control"
      | "design"
      | "checker"
      | "shop"
      | "testing"
      | "inspection body"
      | "client"
      | "authorised signatory"
      | "supplier"
      | "laboratory"
      | "document control";
    /**
     * Person who agreed.
     */
    person?: string;
    /**
     * Day of the agreement.
     */
    date?: string;
  }[];
}

/**
 * How one joint was fitted and welded: each group of runs with welder, day, batch and parameters.
 */
export interface WeldLog extends RecordProperties {
  /**
   * Joint that was welded.
   */
  joint: string;
  /**
   * Revision of the welding procedure that was used.
   */
  weldingProcedure?: string;
  /**
   * Check of the fit-up before welding.
   */
  fitUp?: {
    /**
     * When it was checked.
     */
    date?: string;
    /**
     * Person who checked it.
     */
    by?: string;
    /**
     * Whether it was accepted.
     */
    accepted?: boolean;
    /**
     * Root gap measured; of several places, one of them.
     */
    gap?: string;
    /**
     * Greatest offset of the edges measured.
     */
    offset?: string;
    /**
     * Places along the joint where gap and offset were measured.
     */
    stations?: {
      /**
       * Name or place of the measurement.
       */
      station: string;
      /**
       * Root gap there.
       */
      gap?: string;
      /**
       * Offset of the edges there.
       */
      offset?: string;
    }[];
  };
  /**
   * One row per group of runs made alike: what would fill more than 1000 rows is written by groups.
   *
   * @maxItems 1000
   */
  runs?: {
    /**
     * Name of this row, where "layer" alone does not tell it from another.
     */
    row?: string;
    /**
     * Which part of the weld.
     */
    layer: "root" | "fill" | "cap" | "full";
    /**
     * Welding process.
     */
    process?:
      "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311";
    /**
     * Welding position.
     */
    position?: "PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045";
    /**
     * Welders or operators who made it.
     *
     * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
     */
    welders?: string[];
    /**
     * Day it was welded, the last day if several; with the time, when the layer was begun.
     */
    date?: string;
    /**
     * Time welding ended, where tests must wait for it.
     */
    finished?: string;
    /**
     * Batches of consumables used.
     *
     * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
     */
    batches?: string[];
    /**
     * Side of the joint, of a weld made from both sides where each side is told apart.
     */
    side?: "first" | "second";
    /**
     * Thickness deposited by these runs, without excess of the cap.
     */
    depositedThickness?: string;
    /**
     * Temperature of the parts before welding.
     */
    preheat?: string;
    /**
     * Highest interpass temperature measured.
     */
    interpass?: string;
    /**
     * Welding current measured.
     */
    current?: string;
    /**
     * Arc voltage measured.
     */
    voltage?: string;
    /**
     * Travel speed measured.
     */
    travelSpeed?: string;
    /**
     * Heat input as recorded.
     */
    heatInput?: string;
    /**
     * Meters the parameters were read from.
     *
     * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
     */
    instruments?: string[];
  }[];
}

/**
 * A certificate of a welder or operator, with the half-yearly confirmations that keep it alive.
 */
export interface WelderQualification extends RecordProperties {
  /**
   * Welder or operator.
   */
  person: string;
  /**
   * Number printed on it.
   */
  certificate?: string;
  /**
   * Standard it was qualified to.
   */
  standard?: {
    /**
     * Number of the standard.
     */
    standard?: string;
    /**
     * Edition of the standard.
     */
    edition?: string;
  };
  /**
   * Designation as printed.
   */
  designation?: string;
  /**
   * Welding process of the test.
   */
  process?:
    "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311";
  /**
   * Transfer modes that the test piece was welded with, of gas metal arc processes.
   */
  transferModes?: ("dip" | "globular" | "spray" | "pulsed")[];
  /**
   * Product of the test piece.
   */
  product?: "plate" | "pipe";
  /**
   * Weld of the test piece.
   */
  weldType?: "butt" | "fillet" | "tube-to-tube-plate";
  /**
   * Filler material group of the test; none for a test without filler.
   */
  fillerGroup?: "FM1" | "FM2" | "FM3" | "FM4" | "FM5" | "FM6" | "none";
  /**
   * Symbol of the filler or covering.
   */
  fillerType?: string;
  /**
   * Deposited thickness (s) of a butt weld, material thickness (t) of a fillet weld, wall of the tube in a tube plate.
   */
  thickness?: string;
  /**
   * Outside diameter of a pipe test piece.
   */
  outsideDiameter?: string;
  /**
   * Positions of the test.
   */
  positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
  /**
   * Weld detail of the test.
   */
  detail?: "ss nb" | "ss mb" | "ss gb" | "ss fb" | "bs" | "sl" | "ml";
  /**
   * Whether a fillet test piece was welded beside the butt weld.
   */
  supplementaryFillet?: boolean;
  /**
   * Day the test piece was welded.
   */
  testDate?: string;
  /**
   * Name of the examiner.
   */
  examiner?: string;
  /**
   * Body that issued it.
   */
  body?: string;
  /**
   * Whether an inspection body or a recognised third party approved it.
   */
  thirdPartyApproval?: boolean;
  /**
   * Route of prolongation printed on it.
   */
  route?: "9.3a" | "9.3b" | "9.3c";
  /**
   * Day of the last prolongation by its route, if it was prolonged.
   */
  prolonged?: string;
  /**
   * Last day it is valid, as printed.
   */
  validTo?: string;
  /**
   * Half-yearly confirmations by the employer.
   */
  confirmations?: {
    /**
     * Day of the confirmation.
     */
    date: string;
    /**
     * Person who confirmed it.
     */
    by?: string;
    /**
     * Work it rests on.
     */
    evidence?: string;
  }[];
  /**
   * Ranges printed on the certificate.
   */
  range?: {
    /**
     * Welding processes.
     */
    processes?: (
      "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
    )[];
    /**
     * Products.
     */
    products?: ("plate" | "pipe")[];
    /**
     * Types of weld.
     */
    weldTypes?: ("butt" | "fillet" | "tube-to-tube-plate")[];
    /**
     * Filler material groups.
     */
    fillerGroups?: ("FM1" | "FM2" | "FM3" | "FM4" | "FM5" | "FM6")[];
    /**
     * Deposited or material thickness; of welds between tubes and tube plates, wall of the tube.
     */
    thickness?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Outside diameter.
     */
    outsideDiameter?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Welding positions.
     */
    positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
    /**
     * Weld details.
     */
    details?: ("ss nb" | "ss mb" | "ss gb" | "ss fb" | "bs" | "sl" | "ml")[];
  };
}

/**
 * A welding procedure specification with its revisions; each revision states all its ranges.
 */
export interface WeldingProcedure extends RecordProperties {
  /**
   * What it is for, in a few words.
   */
  title?: string;
  /**
   * Every revision issued for use, oldest first; each states all its ranges.
   */
  revisions?: {
    /**
     * Revision mark as printed on the document.
     */
    revision: string;
    /**
     * Day this revision was issued.
     */
    date?: string;
    /**
     * What this revision may be used for.
     */
    status?: "for-construction" | "as-built" | "for-record" | "superseded" | "withdrawn";
    /**
     * What changed against the revision before.
     */
    reason?: string;
    /**
     * Person who prepared it.
     */
    preparedBy?: string;
    /**
     * Person who checked it, another one than who prepared it.
     */
    checkedBy?: string;
    /**
     * Person who approved it.
     */
    approvedBy?: string;
    /**
     * Day from which it was approved for use.
     */
    approved?: string;
    /**
     * Number of sheets or pages.
     */
    sheets?: number;
    /**
     * File that shows this revision.
     */
    original?: string;
    /**
     * Procedure qualifications that support it.
     *
     * Items: Another record by its number; kind:number where several kinds are possible, number#row for a row, number@revision for a revision.
     */
    qualifications?: string[];
    /**
     * Welding processes, root first.
     */
    processes?: (
      "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311"
    )[];
    /**
     * How far welding is mechanised.
     */
    mechanisation?: "manual" | "partly mechanised" | "fully mechanised" | "automatic";
    /**
     * Types of joint it is for.
     */
    jointTypes?: ("butt" | "fillet" | "t-butt" | "corner" | "branch" | "attachment" | "tube-to-tube-plate")[];
    /**
     * Material groups it is for.
     *
     * Items: Text of up to 200 characters.
     */
    materialGroups?: string[];
    /**
     * Thickness of the parts; of welds between tubes and tube plates, of the tube.
     */
    thickness?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Throat of fillet welds.
     */
    throat?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Outside diameter of pipes.
     */
    outsideDiameter?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Welding positions.
     */
    positions?: ("PA" | "PB" | "PC" | "PD" | "PE" | "PF" | "PG" | "PH" | "PJ" | "H-L045" | "J-L045")[];
    /**
     * Weld details: side, backing, number of runs.
     */
    details?: ("ss nb" | "ss mb" | "ss gb" | "ss fb" | "bs" | "sl" | "ml")[];
    /**
     * Root gap of the joint as prepared.
     */
    gap?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Designations of the filler metals.
     *
     * Items: Text of up to 200 characters.
     */
    fillers?: string[];
    /**
     * Designation of the shielding gas.
     */
    shieldingGas?: string;
    /**
     * Kind of current and polarity.
     */
    current?: "DC+" | "DC-" | "AC";
    /**
     * Transfer modes of gas metal arc processes.
     */
    transferModes?: ("dip" | "globular" | "spray" | "pulsed")[];
    /**
     * Heat input.
     */
    heatInput?: {
      /**
       * Lowest value allowed.
       */
      minimum?: string;
      /**
       * Highest value allowed.
       */
      maximum?: string;
    };
    /**
     * Lowest preheat temperature.
     */
    preheat?: string;
    /**
     * Highest interpass temperature.
     */
    interpass?: string;
    /**
     * Whether the joint is heat treated after welding.
     */
    postWeldHeatTreatment?: boolean;
    /**
     * Parameters run by run.
     */
    runs?: {
      /**
       * Run or runs.
       */
      run: string;
      /**
       * Welding process.
       */
      process?:
        "111" | "114" | "121" | "125" | "131" | "135" | "136" | "138" | "141" | "142" | "143" | "145" | "15" | "311";
      /**
       * Kind of current and polarity of these runs, where the procedure has several.
       */
      polarity?: "DC+" | "DC-" | "AC";
      /**
       * Transfer mode of these runs, where the procedure has several.
       */
      transferMode?: "dip" | "globular" | "spray" | "pulsed";
      /**
       * Diameter of the filler.
       */
      fillerDiameter?: string;
      /**
       * Welding current.
       */
      current?: {
        /**
         * Lowest value allowed.
         */
        minimum?: string;
        /**
         * Highest value allowed.
         */
        maximum?: string;
      };
      /**
       * Arc voltage.
       */
      voltage?: {
        /**
         * Lowest value allowed.
         */
        minimum?: string;
        /**
         * Highest value allowed.
         */
        maximum?: string;
      };
      /**
       * Travel speed.
       */
      travelSpeed?: {
        /**
         * Lowest value allowed.
         */
        minimum?: string;
        /**
         * Highest value allowed.
         */
        maximum?: string;
      };
    }[];
  }[];
}

/** The type of a record by its kind. */
export interface RecordTypes {
  "alloy-report": AlloyReport;
  "answered-query": AnsweredQuery;
  "body-certificate": BodyCertificate;
  "book": Book;
  "calculation-sheet": CalculationSheet;
  "coating-report": CoatingReport;
  "consumable-batch": ConsumableBatch;
  "declaration": Declaration;
  "deviation": Deviation;
  "dimension-check": DimensionCheck;
  "document": Document;
  "drawing": Drawing;
  "equipment": Equipment;
  "fitting": Fitting;
  "hardness-report": HardnessReport;
  "heat-treatment": HeatTreatment;
  "inspection-step": InspectionStep;
  "instrument": Instrument;
  "issue": Issue;
  "joint": Joint;
  "leak-test": LeakTest;
  "material-certificate": MaterialCertificate;
  "mill-approval": MillApproval;
  "nameplate": Nameplate;
  "ndt-personnel": NdtPersonnel;
  "ndt-report": NdtReport;
  "nonconformity-report": NonconformityReport;
  "order-exception": OrderException;
  "organisation": Organisation;
  "original": Original;
  "part": Part;
  "person": Person;
  "piece-mark": PieceMark;
  "pressure-test": PressureTest;
  "procedure": Procedure;
  "procedure-qualification": ProcedureQualification;
  "production-test": ProductionTest;
  "reference-table": ReferenceTable;
  "repair": Repair;
  "safety-valve": SafetyValve;
  "tube-end-group": TubeEndGroup;
  "waiver": Waiver;
  "weld-log": WeldLog;
  "welder-qualification": WelderQualification;
  "welding-procedure": WeldingProcedure;
}
