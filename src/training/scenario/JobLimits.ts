/** What a job may take: book minutes and dollars for parts. Going over never ends a job; it costs points of economy. */
export interface JobLimits {
  readonly minutes?: number;
  readonly dollars?: number;
}

/** A limit of minutes leaves par this much room, as a share of par: nobody works by the book from the first day. Common practice, no source. */
export const LIMIT_MARGIN = 0.25;
