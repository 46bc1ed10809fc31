/** How a form lets a field be written. What it may hold is the schema's affair (`fieldLimits`). */
export type FormControl =
  /** A line, or a paragraph, of text. */
  | 'line'
  | 'paragraph'
  | 'number'
  | 'choice'
  | 'switch'
  /** Texts one under the other. */
  | 'lines'
  /** Some of a closed list of words. */
  | 'picks'
  /** The same where all are meant as long as the key is left out. */
  | 'all-picks'
  /** Groups one under the other, each with the fields that begin with this path. */
  | 'rows'
  /** A group that may be left out, with the fields that begin with this path. */
  | 'group'
  /** A word that draws the truck, and for whom it draws the same one. */
  | 'seed'
  | 'faults'
  /** Other truths of the same job. */
  | 'variants'
  | 'steps';

export interface FormField {
  /** As the schema writes it. */
  readonly path: string;
  readonly control: FormControl;
}

export interface FormSection {
  readonly id: 'about' | 'order' | 'truck' | 'wrong' | 'score' | 'steps' | 'remark';
  readonly fields: readonly FormField[];
}

const field = (path: string, control: FormControl): FormField => ({ path, control });

/** The form of a scenario in the order in which an author thinks of it. A new key of the format is a row here, or a reason below. */
export const FORM: readonly FormSection[] = [
  {
    id: 'about',
    fields: [
      field('title', 'line'),
      field('id', 'line'),
      field('summary', 'paragraph'),
      field('rig', 'choice'),
      field('mode', 'choice'),
      field('level', 'choice'),
      field('minutes', 'number'),
      field('aims', 'lines'),
    ],
  },
  {
    id: 'wrong',
    fields: [field('faults', 'faults'), field('variants', 'variants')],
  },
  {
    id: 'order',
    fields: [
      field('work-order.number', 'line'),
      field('work-order.vehicle', 'line'),
      field('work-order.complaint', 'paragraph'),
      field('work-order.history', 'lines'),
      field('work-order.renewed', 'picks'),
      field('work-order.codes', 'rows'),
      field('work-order.codes[].code', 'line'),
      field('work-order.codes[].status', 'choice'),
      field('work-order.cautions', 'lines'),
    ],
  },
  {
    id: 'truck',
    fields: [
      field('drives.cycles', 'number'),
      field('drives.refuelled', 'switch'),
      field('bench.ambient-celsius', 'number'),
      field('bench.altitude-metres', 'number'),
      field('bench.fuel-percent', 'number'),
      field('seed', 'seed'),
      field('tools', 'all-picks'),
    ],
  },
  {
    id: 'score',
    fields: [
      field('limits', 'group'),
      field('limits.minutes', 'number'),
      field('limits.dollars', 'number'),
      field('weights', 'group'),
      field('weights.verdict', 'number'),
      field('weights.evidence', 'number'),
      field('weights.method', 'number'),
      field('weights.economy', 'number'),
      field('weights.repair', 'number'),
      field('rules.off', 'picks'),
      field('rules.on', 'picks'),
    ],
  },
  { id: 'steps', fields: [field('walkthrough', 'steps')] },
  { id: 'remark', fields: [field('remark', 'paragraph')] },
];

/** What the form has no row for, and why. It is written in the text beside it. */
export const NOT_IN_THE_FORM: Readonly<Record<string, string>> = {
  format: 'the program writes it',
};

/** The fields right below a group or an entry of a list. */
export function fieldsBelow(path: string): readonly FormField[] {
  const all = FORM.flatMap(({ fields }) => fields);
  return all.filter((each) => {
    const rest = each.path.startsWith(path) ? each.path.slice(path.length) : '';
    return /^(\[\])?\.[^.[]+$/.test(rest);
  });
}

/** Whether a field stands inside another one of the form: a row's column, a group's member. */
export function isInside(path: string): boolean {
  return FORM.some(({ fields }) =>
    fields.some(
      ({ path: outer, control }) =>
        (control === 'rows' || control === 'group') &&
        path !== outer &&
        fieldsBelow(outer).some((each) => each.path === path),
    ),
  );
}
