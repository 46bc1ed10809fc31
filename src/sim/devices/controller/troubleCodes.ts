/** Generic codes that the controllers of the rigs can set. Texts of SAE J2012 / ISO 15031-6 stand in `text`. */
export const TROUBLE_CODES = [
  'P0441',
  'P0442',
  'P0446',
  'P0455',
  'P0456',
  'P0457',
  'P2004',
  'P2006',
  'P2008',
  'P2009',
  'P2010',
  'P2014',
  'P2015',
  'P2016',
  'P2017',
  'P2018',
  'P2400',
  'P2401',
  'P2402',
  'P2404',
  'P2405',
  'P2406',
  'P2407',
] as const;
export type TroubleCode = (typeof TROUBLE_CODES)[number];

export const CODE_STATUSES = ['pending', 'stored', 'permanent'] as const;
export type CodeStatus = (typeof CODE_STATUSES)[number];

/** What the controller wrote down at the moment a code was first seen to fail. */
export interface FreezeData {
  readonly code: TroubleCode;
  /** Miles since the work order was written; negative before it. */
  readonly miles: number;
  readonly fuelPercent: number;
  readonly ambientC: number;
  readonly barometerKPa: number;
  readonly batteryVolts: number;
  readonly senseVolts: number;
  readonly strokes: number;
  readonly holdSeconds: number | null;
}
