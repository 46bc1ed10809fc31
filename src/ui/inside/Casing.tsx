import { PLAN } from './plan.ts';

/** The body that every unit has: air passage, neck of the solenoid valve, casing. */
export function Casing() {
  const { casing, width, air, valve } = PLAN;
  return (
    <>
      <rect
        x={casing.x + casing.width}
        y={air.top + 1}
        width={width - casing.x - casing.width - 2}
        height={air.bottom - air.top - 2}
      />
      <rect x={valve.x - 16} y="50" width="32" height="60" />
      <rect {...casing} rx="10" />
    </>
  );
}
