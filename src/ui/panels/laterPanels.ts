import { later } from './later.tsx';

// What the bench can do without until it is opened. Each is fetched once the bench stands, or when it is asked for sooner.
export const VerdictDialog = later(() => import('./VerdictDialog.tsx').then((m) => m.VerdictDialog));
export const CupboardDialog = later(() => import('./CupboardDialog.tsx').then((m) => m.CupboardDialog));
export const RoadTestDialog = later(() => import('./RoadTestDialog.tsx').then((m) => m.RoadTestDialog));
export const CloseJobDialog = later(() => import('./CloseJobDialog.tsx').then((m) => m.CloseJobDialog));
export const MarkDialog = later(() => import('./MarkDialog.tsx').then((m) => m.MarkDialog));
export const ShortcutsDialog = later(() => import('./ShortcutsDialog.tsx').then((m) => m.ShortcutsDialog));
export const SuspectBoard = later(() => import('./SuspectBoard.tsx').then((m) => m.SuspectBoard));
export const ServiceData = later(() => import('./ServiceData.tsx').then((m) => m.ServiceData));
export const ReaderPanel = later(() => import('./ReaderPanel.tsx').then((m) => m.ReaderPanel));
export const CoachPanel = later(() => import('./CoachPanel.tsx').then((m) => m.CoachPanel));
