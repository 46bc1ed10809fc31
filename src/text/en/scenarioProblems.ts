/** What can be wrong with a scenario file, and what to do about it. Said behind a place, so they begin small. */
export const scenarioProblems = {
  scenarioProblems: {
    'too-large': 'the file has {{bytes}} KiB. No more than {{limit}} KiB are allowed: shorten it.',
    'not-text': 'this is not text in UTF-8. Save the file as plain text, in UTF-8.',
    'yaml-syntax':
      'this is not YAML ({{detail}}). Check quotes, colons and indents here and on the line above.',
    'nested-too-deep': 'this is nested far too deep. A scenario needs six levels at most.',
    'brackets-closed': 'brackets are closed here that were never opened. Remove them, or quote the text.',
    'several-documents': 'a second document begins here. Keep one scenario in a file; remove the line "---".',
    'alias-not-allowed':
      'anchors (&) and aliases (*) are not allowed. Write the text out, or quote it if it begins with & or *.',
    'tag-not-allowed':
      'tags (!) are not allowed. Remove it, or quote the text if it begins with an exclamation mark.',
    'directive-not-allowed': 'lines that begin with % are not allowed. Remove it, or quote the text.',
    'key-not-a-word':
      'a key must be one plain word before a colon. Write one, or quote the text if this was to be text.',
    'hidden-character':
      'a character stands here that does not show ({{character}}). Delete it, or type the text anew.',
    'unreadable-character': 'a character here was lost (U+FFFD). Type it anew, and save the file as UTF-8.',
    'format-missing': 'the file does not say its format. Add "format: {{newest}}".',
    'format-newer':
      'this file is of format {{found}}, and this version of the program reads up to format {{newest}}. Use a version that reads format {{found}}.',
    'format-unknown':
      'there is no such format. Write a number from {{oldest}} to {{newest}}; a new file has "format: {{newest}}".',
    'duplicate-key': 'the key "{{key}}" stands twice. Remove one of the two.',
    'not-a-map': 'this is not a scenario. Begin with "format: 1" and the other keys, one a line.',
    'unknown-key': 'there is no key "{{key}}" here. Check its spelling, or remove it.',
    'missing-key': 'the key "{{key}}" is missing. Add it.',
    'wrong-type': 'found {{found}}, but {{expected}} belongs here. {{remedy}}',
    'not-finite': '{{found}} is not a number to work with. Write a plain number.',
    'number-not-plain':
      '{{found}} is read differently by different programs. Write a plain decimal number, without a zero ahead.',
    'not-one-of': '"{{found}}" is none of the words for this place. Use one of: {{allowed}}.',
    'number-too-small': '{{found}} is too small. Use {{least}} or more.',
    'number-too-large': '{{found}} is too large. Use {{most}} or less.',
    'not-a-whole-number': '{{found}} is not a whole number. Round it.',
    'text-too-long': 'this text is too long. Keep it to {{most}} characters.',
    'text-empty': 'this text is empty. Write it.',
    'bad-form': '"{{found}}" is not written as this place wants it. Use {{form}}.',
    'list-too-short': 'this list needs {{least}} or more. Add to it.',
    'list-too-long': 'this list is too long. Keep it to {{most}}.',
    'empty-condition':
      'this condition is empty, so it would always hold. Say what shows that the step is done.',
    'unknown-fault': 'there is no fault "{{fault}}". The closest are: {{known}}.',
    'duplicate-fault': 'the fault "{{fault}}" is listed twice. Remove one of the two.',
    'severity-missing':
      'the fault "{{fault}}" can be mild or bad. Add "severity:" from 0 (mildest) to 1 (worst).',
    'severity-not-used': 'the fault "{{fault}}" is there or not; it has no degrees. Remove "severity:".',
    'fault-not-at-start':
      'the fault "{{fault}}" is damage that only a hand on the bench can do. Choose one that can be there when the job begins.',
    'fault-of-other-rig':
      'the rig "{{rig}}" has no fault "{{fault}}". Use another, such as {{known}}; or change "rig:".',
    'step-of-other-rig':
      'the rig "{{rig}}" has no "{{name}}". Name a place, a thing or an item that it has, or change "rig:".',
    'variants-not-allowed':
      'the steps of a job of mode "{{mode}}" speak of one truck, so it has no variants and no ranges. Remove this, or change the mode.',
    'range-not-upwards':
      'severity runs from {{from}} to {{to}}, which is no way up. Make "severity-to:" the larger of the two, or remove it.',
    'when-moved-not-allowed':
      'the fault "{{fault}}" does not come and go with the harness. Remove "when-moved:", or use one of: {{allowed}}.',
    'root-not-listed': 'the root "{{root}}" is not in the list of faults. Add "- fault: {{root}}" to it.',
    'not-a-root': '"{{root}}" is no root cause. Use one of: {{allowed}}, or remove "root:".',
    'faults-in-introduction':
      'an introduction asks for no verdict, so its truck must be sound. Write "{{list}}: []", or change the mode.',
    'steps-missing':
      'a job of mode "{{mode}}" needs its steps. Add "walkthrough:" with a list of steps, or change the mode.',
    'steps-not-allowed':
      'a job of mode "{{mode}}" has no steps. Remove "walkthrough:", or make the mode walkthrough or introduction.',
    'duplicate-step': 'two steps have the id "{{id}}". Give one of them another.',
    'not-in-introduction':
      'an introduction has no verdict and no score, so there is no "{{key}}" in it. Remove it, or change the mode.',
    'weights-sum':
      'these weights make {{sum}} together, and must make {{all}}. Give {{off}} {{way}} to one of them.',
    'limits-empty': 'these limits limit nothing. Add "minutes:", "dollars:" or both, or remove "limits:".',
    'rule-on-and-off': 'the rule "{{rule}}" is turned on and off. Remove one of the two.',
    'tool-twice': 'the tool "{{tool}}" is listed twice. Remove one of the two.',
    'rule-needs-tool':
      'the rule "{{rule}}" cannot be kept with the tools of this job. Add to "tools:": {{tools}}; or remove the rule.',
    'step-needs-tool':
      '"{{key}}" can never come true with the tools of this job. Add to "tools:": {{tools}}; or ask the step for something else.',
    'part-of-other-rig': 'the rig "{{rig}}" has no "{{item}}". Remove it, or choose another rig.',
    'renewed-twice':
      'the part "{{item}}" is listed twice. List it once, and say in the history how often it was renewed.',
    'no-language': 'this text is in no language. Add "en:" or "es:", or write it plain.',
    'translated-twice':
      'the same sentence is translated in another way further up. Give both the same words.',
    'seed-not-by-seat':
      'the steps of a job of mode "{{mode}}" speak of one truck. Write "policy: fixed", or a plain word for the seed.',
    'more-problems_one': 'there is {{count}} more problem. Mend these first.',
    'more-problems_other': 'there are {{count}} more problems. Mend these first.',
  },
  /** Words that fill the gaps of these. */
  scenarioProblemWords: {
    onlyFormat: 'there is no such format. Write "format: {{newest}}".',
    write: 'Write it.',
    quote: 'Put text in quotes.',
    change: 'Change it.',
    more: 'more',
    fewer: 'fewer',
    nothing: 'nothing',
    list: 'a list',
    mapping: 'a group of keys',
    kinds: {
      string: 'text',
      number: 'a number',
      int: 'a whole number',
      boolean: 'true or false',
      array: 'a list',
      object: 'a group of keys',
    },
    forms: {
      slug: 'small letters, digits and single hyphens, as in torn-hose-2',
      'trouble-code':
        'a letter P, B, C or U and four hexadecimal digits, in quotes where YAML would read a number: "P0456"',
    },
  },
} as const;
