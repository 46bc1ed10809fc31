/** Handing out a job: readable, or sealed. */
export const handOut = {
  handOut: {
    open: 'Hand out',
    title: 'Hand out this job',
    notYet:
      'The file is not in order yet, so it cannot be handed out. Write and mend what is still listed first.',
    toProblems: 'To what is still listed',
    unfit_one: 'The proof found 1 thing to mend. You can hand the job out all the same.',
    unfit_other: 'The proof found {{count}} things to mend. You can hand the job out all the same.',
    noted_one: 'It notes 1 thing that is worth a second look.',
    noted_other: 'It notes {{count}} things that are worth a second look.',
    toProof: 'To the proof',
    failedProof: 'The proof could not be worked out. You can hand the job out all the same.',
    nothingToProve: 'An introduction asks for no verdict, so there is nothing to prove.',
    proving: 'The proof is still being worked out.',
    fit: 'The proof says that this job is fit to give out.',
    how: 'As what',
    readable: 'A file that anybody can read',
    sealed: 'A sealed file',
    readableLine: 'For practice. It is the scenario file as it stands, faults and all.',
    sealedLine: 'For an assessment. The fault is in the file, but not to be read there.',
    sealedMode: {
      practice: 'This job is set as Practice: the coach stays on.',
      walkthrough: 'This job is set as Walkthrough: it leads step by step.',
      introduction: 'This job is set as First minutes: it leads step by step, and has no score.',
    },
    more: 'More about this',
    moreSealed:
      'The fault is not to be read on the page, in the address or in what the browser keeps either.',
    honest:
      'Without a class code this is a curtain, not a lock: whoever takes the program itself apart can look behind it. With a code of {{strong}} letters and digits or more, drawn by chance, nobody opens the file before the code is read out. What guards a mark is that you sit the record again, with your scenario file.',
    code: 'Class code',
    codeHint: 'May be left empty. Capitals, blanks and hyphens make no difference.',
    draw: 'Draw a code',
    codeUnfit: 'A class code has {{least}} to {{most}} letters and digits.',
    codeWeak:
      'This code is short enough to be tried out. One of {{strong}} letters and digits drawn by chance is not.',
    seats: 'Seats of the class',
    seatsHint:
      'Each seat gets a variant of its own; the learner gives the number of the seat. 1 to {{most}}.',
    seatsUnfit: 'Give a whole number from 1 to {{most}}.',
    variantsNeedCode: 'This job has variants. Without a class code, each sitting draws one by chance.',
    save: 'Save for handing out',
    working: 'Sealing…',
    saved:
      'Saved as {{file}}. Keep your own scenario file: with it, "known-good grade" sits the records of your learners again.',
    savedCode: 'Note the class code: {{code}}. It is kept nowhere.',
    hash: 'Content hash {{hash}}. The record of each learner repeats it.',
    failed: 'The file could not be sealed. Check the file, and try again.',
    tryIt: 'Try it as a learner',
    tryLine: 'Puts the job on the job board of this browser and opens it there.',
  },
} as const;
