/** What went wrong with the program or the machine, and what it means for the learner. */
export const troubles = {
  troubles: {
    'store-blocked':
      'This browser keeps nothing (private window or storage switched off). The job goes on in memory; export the record before you close the page.',
    'store-full':
      'The disk is full, so the job is no longer saved. It goes on in memory; export the record before you close the page.',
    'store-failed':
      'The job could not be saved just now. It goes on in memory; export the record before you close the page.',
    'store-newer':
      'Another page of Known Good with a different version is open, so nothing is saved here. Close the other page and reload.',
    'settings-not-kept': 'This browser does not keep settings; they hold until you close the page.',
    'record-damaged':
      'The saved record of this job cannot be read. Export it as it is, or start the job anew.',
    'record-changed':
      'The saved record belongs to an older version of this job. Export it as it is, or start the job anew.',
    'record-newer':
      'The saved record of this job was written by a newer version of Known Good. Reload the page to get that version, or export the record as it is.',
    'record-gone': 'The record of this job is no longer kept on this device.',
    'open-elsewhere':
      'This job is open in another page. Go on there, or close that page and open the job again.',
    'context-lost':
      'The graphics of this device went away for a moment. The bench is drawn the simple way now; nothing is lost.',
    'no-graphics':
      'The bench cannot be drawn on this device. All of it can still be worked from the list of controls.',
    unexpected:
      'Something in the program broke ({{detail}}). Your actions are safe: export the record, then reload.',
    'part-missing':
      'A part of the program could not be fetched. Nothing is lost: reload the page when the network is back.',
    'same-id': '{{file}}:1:1: the id "{{id}}" is used by {{other}} already. Give each scenario its own.',
    'scenario-broken': 'This job cannot be opened: {{detail}}.',
    'no-spanish':
      'Spanish could not be fetched, so the program stays in English (no se pudo cargar el español); choose it again in Settings when the network is back.',
    'no-english':
      'English could not be fetched, so the program stays in Spanish; choose it again in Settings when the network is back.',
    exportRecord: 'Export the record',
    startAnew: 'Start anew',
    reload: 'Reload',
    dismiss: 'Hide',
  },
} as const;
