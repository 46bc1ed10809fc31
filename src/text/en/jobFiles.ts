/** Job files that are handed out: what is asked for on opening them, and why one cannot be opened. */
export const jobFiles = {
  jobFiles: {
    problems: {
      'job-file-too-large':
        'This file has {{size}} kB, and no job file has more than {{limit}} kB. Check that it is the right one.',
      'job-file-empty': 'This file is empty. Ask for it again.',
      'job-file-not-text': 'This is not text in UTF-8, as every job file is. Check that it is the right one.',
      'job-file-not-read': 'This file could not be read. Copy it to this device and open it from there.',
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
