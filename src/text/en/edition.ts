/** The program as this device keeps it: work without the network, and new versions. */
export const edition = {
  edition: {
    kept: 'Kept on this device: works without the network.',
    'not-kept':
      'This browser keeps no copy of the program, so the page needs the network to open; nothing else is lost.',
    offered: 'A new version of Known Good is ready. What you have done so far is saved.',
    later:
      'A new version of Known Good is ready. It will be offered on the job board; nothing changes while you work here.',
    'job-elsewhere':
      'A job is open in another page. Go back to the job board there, then use the new version.',
    taking: 'Putting in the new version …',
    'taken-elsewhere': 'The new version was put in from another page. Reload this one to use it here, too.',
    take: 'Use the new version',
  },
} as const;
