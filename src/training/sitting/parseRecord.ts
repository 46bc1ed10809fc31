import { err, ok, type Result } from '../../base/Result.ts';
import { actionSchema } from './actionSchema.ts';
import { recordEnvelopeSchema } from './recordSchema.ts';
import type { TimedAction } from './SittingAction.ts';
import type { SittingRecord } from './SittingRecord.ts';

/** An hour of steady work is some hundred kilobytes. */
export const MAX_RECORD_CHARS = 16 * 1024 * 1024;

export interface RecordProblem {
  readonly code: 'record-too-large' | 'record-not-json' | 'record-wrong-form' | 'record-unknown-action';
  /** Where in the record, as `actions[3].tick`; empty for the whole. */
  readonly path: string;
}

/** Reads a record's JSON text. Errors: the first thing that is not as the format has it. */
export function parseRecord(text: string): Result<SittingRecord, RecordProblem> {
  if (text.length > MAX_RECORD_CHARS) return err({ code: 'record-too-large', path: '' });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return err({ code: 'record-not-json', path: '' });
  }
  const envelope = recordEnvelopeSchema.safeParse(json);
  if (!envelope.success) {
    return err({ code: 'record-wrong-form', path: pathText(envelope.error.issues[0]?.path ?? []) });
  }
  const actions: TimedAction[] = [];
  for (const [index, { tick, action }] of envelope.data.actions.entries()) {
    const parsed = actionSchema.safeParse(action);
    if (!parsed.success) return err({ code: 'record-unknown-action', path: `actions[${index}].action` });
    actions.push({ tick, action: parsed.data });
  }
  return ok({ ...envelope.data, actions });
}

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');
}
