import { err, ok, type Result } from '../../base/Result.ts';
import { MAX_SCENARIO_BYTES } from '../../training/scenario/readYaml.ts';

/** Why a file was not opened. */
export type OpenFileProblem = 'fileTooLarge' | 'fileNotText' | 'fileNotRead';

/** The text of a file that was chosen or dropped. What is too large is not read at all, whatever it is. */
export async function openTextFile(
  file: Pick<File, 'size' | 'arrayBuffer'>,
): Promise<Result<string, OpenFileProblem>> {
  if (file.size > MAX_SCENARIO_BYTES) return err('fileTooLarge');
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return err('fileNotRead');
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.includes('\u0000') ? err('fileNotText') : ok(text);
  } catch {
    return err('fileNotText');
  }
}
