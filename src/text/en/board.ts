/** Job board and work order. */
export const board = {
  board: {
    title: 'Job board',
    lead: 'Pick a job. Prove what is wrong, then repair it and prove the repair.',
    level: 'Level {{level}}',
    minutes: 'about {{minutes}} min',
    aims: 'You practise',
    take: 'Open the job',
    resume: 'Resume the job',
    openSince: 'Open on your bench, {{elapsed}} in',
    done: 'Done before: {{score}} of 100',
    startAnew: 'Start anew',
    startAnewAsk: 'The open job and its log will be put away as unfinished. Start anew?',
    records: 'Finished jobs',
    recordOn: '{{title}} · {{score}} of 100 · {{date}}',
    unfinished: 'put away unfinished',
    exportRecord: 'Export',
    empty: 'No jobs on the board.',
  },
  order: {
    title: 'Work order',
    number: 'No. {{number}}',
    vehicle: 'Vehicle',
    complaint: 'Complaint',
    history: 'History',
    codes: 'Codes read',
    noCodes: 'none stored',
    cautions: 'Cautions',
    accept: 'Take the job',
    defer:
      'Vehicle, unit and wire colours are invented for teaching. On a real truck its own service information, local codes and licensed practice come first.',
  },
} as const;
