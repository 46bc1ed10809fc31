/** The monitor's scaled limits at five fuel levels, as the service data prints them: per cent, litres, seconds. */
export const MONITOR_TABLE = [
  { fuelPercent: 15, litres: 66, trip: 199, small: 20, pass: 75 },
  { fuelPercent: 30, litres: 55, trip: 165, small: 17, pass: 62 },
  { fuelPercent: 50, litres: 40, trip: 120, small: 12, pass: 45 },
  { fuelPercent: 70, litres: 25, trip: 75, small: 8, pass: 28 },
  { fuelPercent: 85, litres: 14, trip: 42, small: 4, pass: 16 },
] as const;
