/** The weighing of the evidence beside the bench: what it is at, and what to do when it cannot go on. */
export const evidence = {
  evidence: {
    workingOut: 'Working out what your evidence was worth …',
    working: 'Weighing everything that was shown',
    notWorkedOut: 'The debrief could not be worked out',
    closedAndKept:
      'The job is closed and its record is kept. Export it, and the command line grades it as the program would: npm run -s known-good -- grade FILE',
    again: 'Try again',
    reload: 'Reload',
    /** The detail of what broke off where nothing said why. */
    gone: 'it stopped without a word',
    /** Why it cannot be weighed, in a sentence that stands before one of the two below. */
    failures: {
      'no-worker': 'This browser did not start the part that weighs the evidence ({{detail}}).',
      'no-tables': 'The tables for weighing the evidence could not be fetched ({{detail}}).',
      'other-rig':
        'The tables for weighing the evidence are not of this version of the program ({{detail}}).',
      broke: 'Weighing the evidence broke off ({{detail}}).',
    },
    benchGoesOn: {
      'no-worker':
        'This browser did not start the part that weighs the evidence ({{detail}}). The bench goes on and nothing is lost. The coach is silent until you try again.',
      'no-tables':
        'The tables for weighing the evidence could not be fetched ({{detail}}). The bench goes on and nothing is lost. Try again when the network is back; the coach is silent until then.',
      'other-rig':
        'The tables for weighing the evidence are not of this version of the program ({{detail}}). The bench goes on and nothing is lost. Reload the page for the coach.',
      broke:
        'Weighing the evidence broke off ({{detail}}). The bench goes on and nothing is lost. The coach is silent until you try again.',
    },
  },
} as const;
