/** What the bench says of a scenario before anybody sits it. */
export const proof = {
  proof: {
    working: 'Working it out …',
    fit: 'Fit to give out.',
    unfit: 'Not fit to give out yet.',
    solvedBy: 'Solved by {{count}} runs of tests, {{minutes}} book minutes and {{money}} with the repair:',
    notSolved: 'The best tests run out after {{count}} runs:',
    needs: 'Needs: {{tools}}.',
    rivals: 'After the complaint the truth has {{chance}}. What else it could be: {{rivals}}.',
    noRivals: 'After the complaint the truth has {{chance}}, and nothing else is likely.',
    rival: '{{item}} {{chance}}',
    difficulty: 'Level {{level}} by estimate: {{because}}.',
    plain: 'Level {{level}} by estimate: one thing is wrong, and the usual tests show it.',
    noCodes: 'no codes',
    stored: '{{codes}} stored',
    pending: '{{codes}} pending',
    because: {
      'many-tests': 'many different tests',
      'favourite-is-wrong': 'the complaint speaks for something else',
      'few-tests-show-it': 'hardly any test shows it',
      'comes-and-goes': 'it comes and goes',
      'tool-is-bad': 'a tool is bad',
      'two-things-wrong': 'two things are wrong',
      'nothing-is-wrong': 'nothing is wrong with the truck',
      'root-behind-it': 'a cause stands behind the fault',
      'fine-instrument': 'manometer, jar or smoke are needed',
    },
    where: {
      id: 'name of the file',
      title: 'title',
      summary: 'summary',
      seed: 'seed',
      aims: 'aims',
      complaint: 'complaint',
      history: 'history',
    },
    variants: {
      only: 'variant {{variant}}',
      mild: 'variant {{variant}} at its mildest',
      worst: 'variant {{variant}} at its worst',
      line: '{{variant}}: {{faults}}; par {{minutes}} book minutes and {{money}}.',
      nothing: 'nothing wrong',
    },
    findings: {
      'variant-not-solvable':
        'Of {{variant}} no plan of tests ends in a true proof. Make its fault worse, or choose another.',
      'variant-codes-differ':
        'For {{variant}} the work order states {{stated}}, but the controller holds {{held}}. Give it these codes of its own, or change its drives and severity.',
      'variant-answer-in-text':
        'The texts before the verdict give away what is wrong in {{variant}}: “{{fault}}” Say there what the customer saw.',
      'variant-learners': '{{variant}}: {{finding}}',
      'variants-minutes':
        'The variants are not equally hard: par is {{from}} book minutes for {{least}} and {{to}} for {{most}}, more than 20 % apart. Narrow the range, or take a fault that is found by the same tests.',
      'variants-money':
        'The variants do not cost alike: the parts come to {{from}} for {{least}} and {{to}} for {{most}}, more than 20 % apart. Take faults of the same part, or of parts that cost the same.',
      'not-solvable':
        'No plan of tests ends in a true proof. Make the fault worse, take away one of two faults, or choose a fault that a test shows.',
      'tools-lacking': 'The tools at hand do not prove what is wrong. Add to the tools: {{tools}}.',
      'tools-lacking-any':
        'The tools at hand do not prove what is wrong. Add one of these to the tools: {{tools}}.',
      'codes-differ':
        'The work order states {{stated}}, but after these drives the controller holds {{held}}. Write these codes, or change drives and severity.',
      'answer-in-text':
        'The {{where}} gives the answer away: “{{fault}}” Say there what the customer saw, not what is wrong.',
      'prior-below':
        'The complaint leaves the truth {{figure}}, less than {{limit}}: nobody could think of it. Choose a commoner fault, or a complaint and codes that speak for it.',
      'prior-above':
        'The complaint leaves the truth {{figure}}, more than {{limit}}: it is known before the first test. Choose a rarer fault, or codes that others set as well.',
      'median-below':
        'The {{learner}} reaches {{figure}} of 100 and must reach {{limit}}: good work is not rewarded. Give it a fault that tests show more clearly, or turn off rules that this job does not need.',
      'median-above':
        'The {{learner}} reaches {{figure}} of 100 and must not pass {{limit}}: bad work is rewarded. Let the complaint speak less for the truth, or give the proof more steps.',
      'not-below-by-the-book':
        'The {{learner}} reaches {{figure}} and must stay below the one who goes by the book, {{limit}}. Choose a fault, or a bad tool, that punishes haste.',
      'careful-names-below':
        'The careful learner finds the truth in {{figure}} of its sittings, less than {{limit}}. Make the fault worse, or choose one that comes and goes less rarely.',
      'limit-minutes':
        'Par takes {{par}} book minutes, and the limit of {{limit}} leaves it no quarter to spare. Give {{wanted}} or more, or make the job shorter.',
      'limit-dollars':
        'The parts that the repair needs cost {{par}}, and the limit is {{limit}}. Give {{wanted}} or more, or choose a cheaper fault.',
      'not-told-apart': 'No test tells these apart: {{items}}. A verdict on either counts as right.',
      'level-differs':
        'You give it level {{level}}, the estimate is {{estimate}}. Check which learners it is for.',
      'other-shop':
        'Par and learners are worked out for the shop in which the shipped jobs stand: its temperature, altitude and fuel level. Your bench differs, so take their figures as near, not exact.',
    },
    learners: {
      careful: 'careful learner',
      'by-the-book': 'learner by the book',
      hasty: 'hasty learner',
      'parts-changer': 'parts changer',
      guesser: 'guesser',
      reckless: 'reckless learner',
      'logs-everything': 'one who logs everything',
      'names-the-favourite': 'one who names the likeliest',
      'marks-all': 'one who marks all suspects',
      'spams-one-test': 'one who repeats one test',
      'swaps-first': 'one who swaps first',
      'told-the-answer': 'one who was told the answer',
    },
  },
} as const;
