/** The suspect board. */
export const suspects = {
  suspects: {
    empty:
      'Rule suspects out by what you read. Settle the likely ones first. A mark counts only as far as its entries carry it.',
    neverUsed: 'No suspect was marked.',
    counts: '{{cleared}} cleared · {{convicted}} convicted · {{open}} undecided',
    locked: 'Locked.',
    lockedText: 'The verdict is given. The board stands as it stood then.',
    /** Not "open": that is what a broken wire is. */
    is: { open: 'undecided', cleared: 'cleared', convicted: 'convicted' },
    by: 'by',
    citedFor: 'Entries cited on: {{item}}',
    noCites: 'no entry cited',
    markTitle: 'Suspect: {{item}}',
    citeTitle: 'Cite entry {{id}}',
    which: 'For which suspect?',
    choose: 'Choose a suspect',
    chooseMark: 'Say whether they clear it or convict it.',
    mark: 'What do the entries say of it?',
    means: { cleared: 'They rule it out.', convicted: 'They prove it is this.' },
    carries: 'A mark counts only as far as its entries carry it.',
    noEntries: 'The log is empty. A mark without entries carries nothing.',
    confirm: 'Set this mark',
    takeBack: 'Take the mark back',
    marked_one: '{{item}}: {{mark}}, by entry {{entries}}.',
    marked_other: '{{item}}: {{mark}}, by entries {{entries}}.',
    markedBare: '{{item}}: {{mark}}, without an entry.',
    tookBack: '{{item}}: mark taken back, undecided again.',
    citeThis: 'Cite',
    citeThisName: 'Cite entry {{id}} for a suspect',
  },
} as const;
