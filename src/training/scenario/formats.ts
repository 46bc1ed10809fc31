import type { Document } from 'yaml';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

/** Makes a file of one format one of the next. */
export interface Migration {
  /** The format that it reads; it leaves the one above. */
  readonly from: number;
  /**
   * Changes the document in place, so that what it keeps keeps its place in the text: rename a key by its node, move a
   * pair whole. It meets files that nobody has checked, and must leave alone what is not of the shape that it knows.
   */
  readonly migrate: (document: Document) => void;
}

export interface Formats {
  readonly newest: number;
  /** One for each older format, without a gap. */
  readonly migrations: readonly Migration[];
}

/** The formats that this program reads. */
export const FORMATS: Formats = { newest: 1, migrations: [] };

export interface FormatReading {
  readonly problems: readonly ScenarioProblem[];
  /** Whether the rest can be judged: that of a newer format cannot. */
  readonly known: boolean;
}

/** Brings the document to the newest format, or says why that cannot be. */
export function toNewestFormat(document: Document, formats: Formats, places: YamlPlaces): FormatReading {
  const { newest, migrations } = formats;
  const oldest = Math.min(newest, ...migrations.map(({ from }) => from));
  const found: unknown = document.get('format');
  if (found === undefined) {
    return { problems: [places.problem('format-missing', [], { newest }, 'format')], known: true };
  }
  if (typeof found === 'number' && Number.isInteger(found) && found > newest) {
    return { problems: [places.problem('format-newer', ['format'], { found, newest })], known: false };
  }
  if (typeof found !== 'number' || !Number.isInteger(found) || found < oldest) {
    return { problems: [places.problem('format-unknown', ['format'], { oldest, newest })], known: true };
  }
  for (let format = found; format < newest; format++) {
    migrations.find(({ from }) => from === format)?.migrate(document);
  }
  if (found < newest) document.set('format', newest);
  return { problems: [], known: true };
}
