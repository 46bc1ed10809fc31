import { later } from './later.tsx';

/** The row of jobs that came from files: fetched where there are any. */
export const FileJobs = later(() => import('./FileJobs.tsx').then((m) => m.FileJobs));
