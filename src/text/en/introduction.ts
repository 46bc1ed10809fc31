/** The first minutes: the offer on the board, the page before them, the panel after them. */
export const introduction = {
  introduction: {
    offer: 'New here? Five minutes at the bench',
    begin: 'To the bench',
    notNow: 'Not now',
    /** Before the button of the small line on the board. */
    later: 'New to the bench, or showing someone?',
    open: 'Five minutes at the bench',
    resume: 'Go on with the five minutes',
    learn: 'You will learn to',
    before: 'Before you touch a truck',
    cautions: 'Cautions',
    skipRest: 'Skip the rest',
    done: 'Done',
    canNow: 'That was it. You can now',
    canNowSome: 'Not every step was done. The whole of the five minutes teaches you to',
    allDone: 'No more steps.',
    firstJob: 'Open the first job: {{title}}',
    board: 'To the job board',
    again: 'Once more from the beginning',
  },
} as const;
