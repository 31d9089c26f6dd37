import * as numfmt from "numfmt";
import { addDays } from "../../model/calendar.ts";
import type { Cell } from "../cells.ts";
import type { NumberFormat } from "./formats.ts";

/** What is told of a number: what it shows, and what of that is taken. */
export type ShownNumber = Pick<Cell, "type" | "shown" | "figure" | "day" | "fault" | "note">;

const form = /^-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

const asNumber = (fault: string): ShownNumber => ({ type: "number", shown: null, fault });
const asText = "the format of text, and write there what is on paper";

/** A number as its cell shows it. Spreadsheet programs keep fifteen digits, and so does this; what they lose has a fault. */
export function shownNumber(stored: string, format: NumberFormat, code: string, epoch1904: boolean): ShownNumber {
  if (!form.test(stored)) return asNumber(`holds “${stored.slice(0, 40)}”, which is no number: write it anew`);
  const value = Number(stored);
  if (!Number.isFinite(value)) return asNumber("holds a number larger than any program keeps: write it anew");
  switch (format.sort) {
    case "general":
      return general(value, stored);
    case "digits":
      return digits(value, format.code, stored);
    case "day":
      return day(value, format.code, epoch1904);
    case "other":
      return asNumber(
        `shows ${format.shows} (number format ${code}); read are General, 0.00, #,##0.00, percent, text, ` +
          `and dates of day, month and year: give the column one of these, or ${asText}`,
      );
  }
}

function general(value: number, stored: string): ShownNumber {
  const shown = numfmt.format("General", value);
  if (/e/i.test(shown) || Number(shown) !== kept(value) || tooLong(value))
    return asNumber(
      `shows ${shown} or fewer digits, and holds ${stored}: give the column the format 0.00 with as many decimals as count, or ${asText}`,
    );
  return { type: "number", shown, figure: shown };
}

function digits(value: number, code: string, stored: string): ShownNumber {
  const shown = numfmt.format(code, value);
  const percent = code.endsWith("%");
  const figure = shown.replace(/[,%\s]/g, "");
  if (tooLong(value) || !/^-?\d+(?:\.\d+)?$/.test(figure))
    return asNumber(`holds ${stored}, more digits than a spreadsheet program keeps: give the column ${asText}`);
  if (value < 0 && Number(figure) === 0)
    return asNumber(`holds ${stored} and shows zero, with its sign in some programs only: show more decimals`);
  const behind = percent ? kept(value * 100) : kept(value);
  return {
    type: "number",
    shown,
    figure: percent ? `${figure} %` : figure,
    ...(Number(figure) !== behind && { note: `shows ${shown}, and holds ${kept(value)}` }),
  };
}

/** Spreadsheet programs agree on days from March 1900; the last one they show is that of the year 9999. */
const firstAgreed = 61;
const lastDay = 2_958_465;
const from1904 = 1462;

function day(value: number, code: string | undefined, epoch1904: boolean): ShownNumber {
  const serial = Math.floor(value) + (epoch1904 ? from1904 : 0);
  const none = (fault: string): ShownNumber => ({ type: "date", shown: null, fault });
  if (value < 0 || serial > lastDay) return none("shows ##### instead of a day: write the day anew");
  if (serial < firstAgreed)
    return none("shows a day before March 1900, on which spreadsheet programs do not agree: write the day as text");
  const calendar = addDays("1899-12-30", serial);
  if (code === undefined)
    return {
      type: "date",
      shown: calendar,
      day: calendar,
      note: `is the day ${calendar}, shown in the form of each machine's language`,
    };
  return { type: "date", shown: numfmt.format(code, serial), day: calendar };
}

/** A number with the fifteen digits that spreadsheet programs keep. */
const kept = (value: number) => Number(value.toPrecision(15));

/** Whole numbers of more digits have lost their last ones when they were stored: long heat or serial numbers. */
const tooLong = (value: number) => Math.abs(value) >= 1e15;
