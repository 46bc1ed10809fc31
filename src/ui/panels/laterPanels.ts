import type { ComponentType } from 'preact';
import { later } from './later.tsx';
import { wholeSentences } from './laterSentences.ts';

/** A part of a job's screen with every sentence that it may say. */
export const part = <Props extends object>(fetch: () => Promise<ComponentType<Props>>) =>
  later(async () => (await Promise.all([fetch(), wholeSentences()]))[0]);

// What the bench can do without until it is opened. Each is fetched once the bench stands, or when it is asked for sooner.
export const VerdictDialog = part(() => import('./VerdictDialog.tsx').then((m) => m.VerdictDialog));
export const CupboardDialog = part(() => import('./CupboardDialog.tsx').then((m) => m.CupboardDialog));
export const RoadTestDialog = part(() => import('./RoadTestDialog.tsx').then((m) => m.RoadTestDialog));
export const CloseJobDialog = part(() => import('./CloseJobDialog.tsx').then((m) => m.CloseJobDialog));
export const MarkDialog = part(() => import('./MarkDialog.tsx').then((m) => m.MarkDialog));
export const ShortcutsDialog = part(() => import('./ShortcutsDialog.tsx').then((m) => m.ShortcutsDialog));
export const SuspectBoard = part(() => import('./SuspectBoard.tsx').then((m) => m.SuspectBoard));
export const ServiceData = part(() => import('./ServiceData.tsx').then((m) => m.ServiceData));
export const ReaderPanel = part(() => import('./ReaderPanel.tsx').then((m) => m.ReaderPanel));
export const CoachPanel = part(() => import('./CoachPanel.tsx').then((m) => m.CoachPanel));
export const InsideView = part(() => import('../inside/InsideView.tsx').then((m) => m.InsideView));
