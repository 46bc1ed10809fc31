/** Job files that are handed out: what is asked for on opening them, and why one cannot be opened. */
export const jobFiles = {
  jobFiles: {
    title: 'Job files',
    reading: 'Reading this file …',
    notInOrder_one: 'This scenario file is not in order. One thing is to be mended:',
    notInOrder_other: 'This scenario file is not in order. {{count}} things are to be mended:',
    at: 'Line {{line}}, column {{column}}',
    asksCode: 'This file is sealed. It opens with the class code that your instructor gives out.',
    asksSeat:
      'This file is sealed, and each seat has a truck of its own. Give the class code and the number of your seat.',
    classCode: 'Class code',
    seat: 'Seat (1 to {{seats}})',
    open: 'Open',
    opening: 'Being opened …',
    new: 'The job is on the board, under “From files”.',
    'there-already': 'This job is on the board already.',
    shipped: 'This is a job of the board itself. It stays where it is.',
    namesake:
      'The board has another job of the same name with other content. Both stay, with sittings of their own; this one has the content {{hash}}.',
    notKept:
      'This browser keeps nothing, so the job is here for this visit only. Keep the file, and export the record before you close the page.',
    removeTitle: 'Remove the job',
    removePlain: 'The job goes from the board. With its file you can open it again.',
    removeWithRecords_one:
      'One sitting of this job is kept on this device. An open one is put away as unfinished. What is to become of its record?',
    removeWithRecords_other:
      '{{count}} sittings of this job are kept on this device. An open one is put away as unfinished. What is to become of their records?',
    removeKept: 'Keep the records on this device',
    removeExported: 'Export the records, then delete them',
    removeJob: 'Remove',
    problems: {
      'job-file-too-large':
        'This file has {{size}} KiB, and no job file has more than {{limit}} KiB. Check that it is the right one.',
      'job-file-empty': 'This file is empty. Ask for it again.',
      'job-file-not-text':
        'This is not a job file: it is a picture or other data, or text that is not in UTF-8. Choose the file that your instructor gave out.',
      'job-file-not-read': 'This file could not be read. Copy it to this device and open it from there.',
      'job-file-stopped':
        'This file could not be put on the board: a part of the program did not come. Reload the page, then open the file again.',
      'job-file-damaged':
        'This sealed file was changed or cut short on its way. Ask for it again, and take it as a file, not as text in a message.',
      'job-file-newer': 'This sealed file was made by a newer version. Use a version that reads it.',
      'job-file-not-its-own':
        'This sealed file holds something else than it says. Somebody put it together by hand; ask for it again.',
      'class-code-wanted': 'This file opens with a class code. Give the code that your instructor read out.',
      'class-code-unfit': 'A class code has 4 to 60 letters and digits. Check how it is written.',
      'class-code-wrong': 'This class code does not open this file. Check the letters, or ask for the code.',
      'seat-unfit': 'There is no such seat in this class. Give a number from 1 to {{seats}}.',
    },
  },
} as const;
