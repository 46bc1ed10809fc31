import { readFileSync } from 'node:fs';
import { sealedFileOf } from '../../../src/training/handout/sealedFileOf.ts';

/** A file as it is chosen in a page. */
interface ChosenFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** One that comes on the board, one that asks for code and seat, and one that is not in order. */
export function handedOut(): ChosenFile[] {
  const shipped = readFileSync(new URL('../../../scenarios/the-new-steps.yaml', import.meta.url), 'utf8');
  const text = shipped.replace('id: the-new-steps', 'id: steps-in-class');
  const sealed = sealedFileOf(text, 'steps', { classCode: 'Copper 17', seats: 24 });
  if (!sealed.ok) throw new Error(sealed.error.code);
  const of = (name: string, content: string): ChosenFile => ({
    name,
    mimeType: '',
    buffer: Buffer.from(content),
  });
  return [
    of('steps.yaml', text),
    of('steps.job.json', sealed.value),
    of('steps-broken.yaml', text.replace('level: 2', 'level: 9')),
  ];
}
