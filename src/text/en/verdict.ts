/** Verdict, repair and parts cupboard. */
export const verdict = {
  verdict: {
    title: 'Verdict',
    lead: 'Name the one thing that must be renewed, and cite the entries that prove it. The verdict is given once.',
    item: 'What is bad?',
    cites: 'Cited entries ({{count}} of {{max}})',
    noEntries: 'The log is empty. A verdict without entries is a guess.',
    ask: 'Lock this verdict?',
    askText: 'You name {{item}} and cite {{count}} log entries. It cannot be changed afterwards.',
    next: 'Give this verdict',
    lock: 'Lock it',
    review: 'Look again',
    chooseItem: 'Choose an item first.',
    locked: 'Verdict locked: {{item}}.',
  },
  closing: {
    title: 'Close the job',
    text: 'Closing ends the work and opens the debrief. Are the hoses on, the caps and pins off, the plug mated and the repair tested?',
    confirm: 'Close the job',
    stay: 'Keep working',
  },
} as const;
