import type { Book, Equipment } from "../../generated/records.ts";

/** A three-pass wet-back shell boiler for saturated steam, 4 t/h at 10 bar: one plain furnace with a hoop, fired with gas. */

export const book: Book = {
  id: "TQ417-MDB",
  format: 1,
  number: "TQ417-MDB-01",
  title: "Three-pass steam boiler, 4 t/h, 10 bar",
  demonstration: true,
  language: "en",
  requireVerifiedBasis: false,
  profile: "ped-en-12953",
  register: "shell-boiler",
  contractNumber: "OD-2604",
  orderDate: "2026-01-12",
  maker: "TARNEQUILL",
  client: "OATMARROW",
  inspectionBody: "PENQUILLITH",
  site: "Boiler house 2, Nether Quellby, Varrenmark",
};

export const equipment: Equipment = {
  id: "TQ417-01",
  serial: "TQ417-01",
  tag: "B-201",
  name: "three-pass wet-back steam boiler",
  type: "steam-boiler",
  year: 2026,
  designStandard: { standard: "EN 12953", edition: "2012" },
  designRules: [
    {
      for: "flat plates, stays, tube plates, breathing spaces, furnace, chamber and tubes under external pressure",
      standard: "Indian Boiler Regulations",
      edition: "1950",
    },
    { for: "shells, and stresses at the pressure test", standard: "EN 13445-3", edition: "2021" },
  ],
  directive: { inScope: true, category: "IV", module: "G" },
  fluid: { name: "water and steam", group: "2", state: "steam" },
  limits: {
    maximumAllowablePressure: "10 bar",
    maximumAllowableTemperature: "185 °C",
    minimumAllowableTemperature: "0 °C",
  },
  volume: "7250 l",
  calculationPressure: "10 bar",
  calculationTemperature: "185 °C",
  testPressure: "15.3 bar",
  corrosionAllowance: "0.75 mm",
  requiredFlow: "4100 kg/h",
  requiredFlowSource: "steam raised at the greatest heat input of the burner, with the hottest feedwater",
  atmosphericPressure: "1.013 bar(a)",
  heatingSurface: "102 m²",
  duty: {
    steamOutput: "4000 kg/h",
    outputFromAndAt: "4150 kg/h",
    workingPressure: "9 bar",
    feedwaterTemperature: "105 °C",
    feedwaterTemperatureHighest: "105 °C",
    blowdownFraction: "3 %",
    heatInput: "2950 kW",
    efficiency: "90 %",
  },
  levels: {
    highestHeatedSurface: "1360 mm",
    lowestPermissible: "1462 mm",
    limiter: "1465 mm",
    normal: "1482 mm",
    highest: "1530 mm",
    steamTakeOff: "1880 mm",
  },
  emptyMass: "10400 kg",
};
