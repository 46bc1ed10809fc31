/**
 * Where the inch, the mile and the degree Fahrenheit are at home: the United States with their islands, and the two
 * others that the Unicode CLDR lists beside them (supplemental data, measurement systems; from memory).
 */
const CUSTOMARY: ReadonlySet<string> = new Set(['US', 'AS', 'GU', 'MP', 'PR', 'UM', 'VI', 'LR', 'MM']);

/** The program is made for North America: its two languages without a region say nothing of the units. */
const AT_HOME: ReadonlySet<string> = new Set(['en', 'es']);

/** The units a device's BCP 47 tag speaks for; US where it says nothing of a region. */
export function unitsOf(deviceLanguage: string): 'us' | 'metric' {
  try {
    const locale = new Intl.Locale(deviceLanguage);
    const region = locale.region ?? (AT_HOME.has(locale.language) ? undefined : locale.maximize().region);
    return region === undefined || CUSTOMARY.has(region) ? 'us' : 'metric';
  } catch {
    // Not a language tag at all.
    return 'us';
  }
}
