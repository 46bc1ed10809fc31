import i18next, { type i18n } from 'i18next';
import type { backRoomScreen } from './en/backRoomScreen.ts';
import type { catalogue as english } from './en/catalogue.ts';
import { firstScreen } from './en/firstScreen.ts';
import { displayUnits, inShownUnits, type UnitSystem } from './units.ts';

/** A catalogue of another language: the same keys, other sentences. */
export type Catalogue = Widened<typeof english>;
/** The same of what the back room says besides. */
export type BackRoomCatalogue = Widened<typeof backRoomScreen>;
type Widened<T> = { readonly [K in keyof T]: T[K] extends string ? string : Widened<T[K]> };

type Dotted<T, P extends string = ''> = {
  [K in keyof T & (string | number)]: T[K] extends string ? `${P}${K}` : Dotted<T[K], `${P}${K}.`>;
}[keyof T & (string | number)];
type WithoutPlural<K extends string> = K extends `${infer Stem}_one` | `${infer Stem}_other` ? Stem : K;

/** Key of one sentence, such as `refusals.point-needs-pin`. Plural forms share the key without `_one`, `_other`. */
export type TextKey = WithoutPlural<Dotted<typeof english> | Dotted<typeof backRoomScreen>>;
export type TextValues = Readonly<Record<string, string | number>>;

const engine: i18n = i18next.createInstance();
void engine.init({
  lng: 'en',
  fallbackLng: 'en',
  initAsync: false,
  interpolation: { escapeValue: false },
  resources: { en: { translation: firstScreen } },
});

/** Told at every look into the catalogue, so that whoever draws sentences can draw them anew in another language. */
let heed = (): void => {};

/** Gives the page its chance to notice what it drew from the catalogue. */
export function heedLanguage(noticed: () => void): void {
  heed = noticed;
}

/**
 * Sentences with their gaps, as looked up before, in each system of units: the bench asks for some hundred of them ten
 * times a second.
 */
const templates: Readonly<Record<UnitSystem, Map<string, string>>> = { us: new Map(), metric: new Map() };
const GAP = /\{\{(\w+)\}\}/g;

/**
 * The sentence for a key in the present language and units, its `{{gaps}}` filled from `values`; `count` chooses the
 * plural form.
 */
export function say(key: TextKey, values: TextValues = {}): string {
  heed();
  const units = displayUnits();
  if (values['count'] !== undefined) return inShownUnits(engine.t(key, { ...values, ns: namespaces }));
  let template = templates[units].get(key);
  if (template === undefined) {
    template = inShownUnits(engine.t(key, { skipInterpolation: true, ns: namespaces }));
    templates[units].set(key, template);
  }
  return template.replace(GAP, (gap, name: string) => String(values[name] ?? gap));
}

/** True when the present catalogue, or English behind it, holds this key. For ids that come from files. */
export function has(key: string): key is TextKey {
  heed();
  return engine.exists(key);
}

/** Adds a language, or the rest of one, at run time; `setLanguage` switches to it. */
export function addLanguage(code: string, catalogue: Partial<Catalogue & BackRoomCatalogue>): void {
  engine.addResourceBundle(code, 'translation', catalogue);
  forget();
}

/** Switches the language of every later `say`. */
export async function setLanguage(code: string): Promise<void> {
  await engine.changeLanguage(code);
  forget();
}

/** Sentences of a rig that stand in the place of the common ones while it is on the bench: some of their keys. */
export type RigWords = Partial<DeepPartial<Catalogue>>;
type DeepPartial<T> = { readonly [K in keyof T]?: T[K] extends string ? string : DeepPartial<T[K]> };

const COMMON = 'translation';
let namespaces: readonly string[] = [COMMON];

/** Adds what a rig's things are called in a language. */
export function addRigWords(rig: string, code: string, words: RigWords): void {
  engine.addResourceBundle(code, rig, words);
  forget();
}

/** Every later `say` speaks of this rig; of the first one where none is named. */
export function speakOfRig(rig: string | undefined): void {
  const [first] = namespaces;
  if (first === (rig ?? COMMON)) return;
  namespaces = rig === undefined ? [COMMON] : [rig, COMMON];
  forget();
}

function forget(): void {
  templates.us.clear();
  templates.metric.clear();
}

/** Present language as a BCP 47 tag, for `<html lang>` and number formatting. */
export function language(): string {
  heed();
  return engine.language;
}
