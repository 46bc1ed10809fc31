import { workerUrl } from 'virtual:worker/src/app/evidence/evidenceWorker.ts';
import { type LineEnd, openWorker, type WorkerLine } from '../workers/livingWorker.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** A line to someone who weighs the evidence. */
export type EvidenceLine = WorkerLine<ToWorker>;

/** What is said on a line, and what becomes of it. */
export type Said = FromWorker | LineEnd;

/** Opens a line; what is said on it goes to `hear`, a failure to start too. */
export type OpenLine = (hear: (message: Said) => void) => EvidenceLine;

/** A line to a worker of its own. */
export const workerLine: OpenLine = (hear) => openWorker<ToWorker, FromWorker>(workerUrl, 'evidence', hear);
