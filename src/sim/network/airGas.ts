/** Specific gas constant of dry air, J/(kg·K). Source: US Standard Atmosphere 1976. */
export const AIR_GAS_CONSTANT = 287.0529;

/** Ratio of specific heats of air. */
export const AIR_HEAT_RATIO = 1.4;
