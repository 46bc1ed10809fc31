/** What the fields of a scenario are called in the form, and what belongs in them, by their path in the file. */
export const formFields = {
  formFields: {
    id: {
      label: 'Name of the file',
      hint: 'Small letters, digits and single hyphens. The learner sees it, too: it must not give the answer away.',
    },
    title: { label: 'Title', hint: 'On the job board. It must not give the answer away.' },
    summary: { label: 'Summary', hint: 'One to three sentences for the job board.' },
    mode: {
      label: 'How it is sat',
      hint: 'Practice has the coach; an assessment keeps what would help to itself. A walkthrough leads step by step.',
    },
    rig: { label: 'What is on the bench', hint: 'Another unit has faults, tests and codes of its own.' },
    level: { label: 'Level', hint: '1 is easy, 4 is hard.' },
    minutes: {
      label: 'Minutes',
      hint: 'What a careful learner should need at the screen, 5 to 240. These are not book minutes: par is often twice as much.',
    },
    aims: { label: 'Aims', hint: 'What the learner should be able to do afterwards, one to eight.' },
    'work-order': {
      label: 'Work order',
      number: { label: 'Number of the order' },
      vehicle: { label: 'Vehicle' },
      complaint: { label: 'Complaint', hint: 'What the customer says.' },
      history: { label: 'History', hint: 'What was done before, in order.' },
      renewed: { label: 'Parts already renewed', hint: 'They are new on this truck, and less suspected.' },
      codes: {
        label: 'Codes on file',
        hint: 'The proof tells which codes the drives would really leave.',
        code: { label: 'Code' },
        status: { label: 'Status' },
      },
      cautions: { label: 'Cautions', hint: 'At least one. They are read before the job is taken.' },
    },
    bench: {
      label: 'Bench',
      'ambient-celsius': { label: 'Temperature, °C', hint: '−30 to 50. Cold copper has less resistance.' },
      'altitude-metres': {
        label: 'Altitude, metres',
        hint: '−400 to 4500. High up there is less vacuum to be had.',
      },
      'fuel-percent': { label: 'Fuel in the tank, per cent' },
    },
    tools: { label: 'Tools at hand', hint: 'What is on the bench for this job.' },
    limits: {
      label: 'Limit the minutes or the money',
      hint: 'By the price list of the shop. Leave one of the two empty if only the other is limited.',
      minutes: { label: 'Minutes of work' },
      dollars: { label: 'Dollars' },
    },
    seed: {
      label: 'Seed',
      hint: 'Any small word. Another word draws another truck of the same make.',
      policy: { label: 'Who gets this truck' },
    },
    variants: {
      label: 'Variants',
      hint: 'The job as it stands above is variant 1. Each seat of a class gets one of them. They should be equally hard; the proof says whether they are.',
    },
    drives: {
      label: 'Drives',
      cycles: {
        label: 'Drives with the faults in',
        hint: '0 to 40. They fill the memory of the controller before the order is written.',
      },
      refuelled: { label: 'The tank was filled just before them' },
    },
    faults: {
      label: 'Faults',
      fault: { label: 'Fault' },
      severity: { label: 'How bad' },
      'when-moved': {
        label: 'Comes and goes when the harness is moved',
        hint: 'At rest it is not there.',
      },
      root: { label: 'What damaged it' },
    },
    rules: {
      label: 'Rules',
      off: { label: 'Method rules that this job does not ask for' },
      on: { label: 'Method rules that this job asks for in any case' },
    },
    weights: {
      label: 'Weigh the score in another way',
      hint: 'Points of a hundred. They must make a hundred together.',
      verdict: { label: 'Verdict' },
      evidence: { label: 'Evidence' },
      method: { label: 'Method' },
      economy: { label: 'Economy' },
      repair: { label: 'Repair' },
    },
    walkthrough: {
      label: 'Steps',
      id: { label: 'Name of the step', hint: 'Small letters, digits and single hyphens.' },
      say: { label: 'Why it is done' },
      how: { label: 'How it is done' },
      done: { label: 'When it is done', hint: 'One line each. All of them must be true at one moment.' },
    },
    remark: { label: 'Remark', hint: 'What was wrong, and what is to be learnt from it.' },
  },
  formOptions: {
    rig: { 'leak-detection-pump': 'leak detection pump', 'flap-actuator': 'flap actuator' },
    seed: {
      policy: {
        usual: 'as usual for the way it is sat',
        fixed: 'everybody the same one',
        'by-seat': 'each sitting, or seat, one of its own',
      },
    },
    level: {
      1: '1, the usual tests',
      2: '2, others were here before',
      3: '3, the first reading may mislead',
      4: '4, long jobs',
    },
    'work-order': { codes: { status: { stored: 'stored', pending: 'pending' } } },
  },
} as const;
