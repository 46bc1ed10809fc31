import { SAMPLE_RATE } from './synthesis.ts';

const HEADER_BYTES = 44;

/** A WAV file: one channel of 16-bit samples, little-endian (RIFF header of 44 bytes, PCM). */
export function toWav(samples: Int16Array): Uint8Array {
  const bytes = new Uint8Array(HEADER_BYTES + samples.length * 2);
  const view = new DataView(bytes.buffer);
  const word = (at: number, text: string) => {
    for (let i = 0; i < text.length; i++) view.setUint8(at + i, text.charCodeAt(i));
  };
  word(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, SAMPLE_RATE, true);
  view.setUint32(28, SAMPLE_RATE * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  word(36, 'data');
  view.setUint32(40, samples.length * 2, true);
  samples.forEach((sample, i) => {
    view.setInt16(HEADER_BYTES + i * 2, sample, true);
  });
  return bytes;
}

/** The samples of a file that `toWav` made. Errors: throws when the header is another one. */
export function fromWav(bytes: Uint8Array): Int16Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const samples = new Int16Array(view.getUint32(40, true) / 2);
  const expected = toWav(samples).subarray(0, HEADER_BYTES);
  if (!expected.every((byte, i) => bytes[i] === byte)) throw new Error('not a WAV file of this program');
  return samples.map((_, i) => view.getInt16(HEADER_BYTES + i * 2, true));
}
