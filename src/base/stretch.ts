import { pbkdf2 } from '@noble/hashes/pbkdf2.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Steps } from './steps.ts';

/** Rounds in all, and in one step: some ten milliseconds on a slow machine. */
const ROUNDS = 100_000;
const ROUNDS_A_STEP = 2_000;

/**
 * A key of 64 hexadecimal digits from a word that people can say to each other, made slow to find out by trying words:
 * PBKDF2 (RFC 8018) with HMAC-SHA-256, chained so that it can be laid down between its steps. `salt` keeps the
 * work done for one thing from being of use for another.
 */
export function* stretchedKey(word: string, salt: string): Steps<string> {
  let key = salt;
  for (let done = 0; done < ROUNDS; done += ROUNDS_A_STEP) {
    key = bytesToHex(pbkdf2(sha256, word, `${key} ${done}`, { c: ROUNDS_A_STEP, dkLen: 32 }));
    yield;
  }
  return key;
}
