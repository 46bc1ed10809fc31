/** The coach: a question for every standard test, what it says beside a test, and its panel. */
export const coach = {
  coach: {
    title: 'Coach',
    lead: 'The coach knows the work order, your readings and what you have done. It does not know what is wrong.',
    price: 'Asking costs no points. The record notes that you asked, and how far.',
    off: 'In an assessment the coach keeps silent.',
    ask: {
      question: 'A question to think about',
      test: 'The test worth doing',
      procedure: 'How to do it',
    },
    silent: 'Ask for a question first. Go deeper only if it does not help.',
    thinking: 'The coach is reading your log.',
    answer: {
      question: 'A question',
      test: 'A test worth doing',
      procedure: 'How to do it',
    },
    stale: 'Given before entry {{entry}}.',
    staleHow: 'You have logged since then. Ask again for advice on what you know now.',
    from: "Begin with the bench as it was found: the truck's own unit, hoses on and hand tight, plug mated, key off.",
    minutes: '{{minutes}} min by the book, set-up and putting back with it.',
    proves: 'What it proves: {{proves}}',
    about: 'It can speak for or against: {{items}}.',
    aboutMany: 'It can speak for or against {{items}} items at once.',
    proveTool:
      'Prove it before you rely on it. What fails its proof is renewed from the parts cupboard and proven again.',
    repeat_one: 'One trial so far.',
    repeat_other: '{{count}} trials so far.',
    repeatOf:
      'Something that comes and goes can stay away that often. Make it {{of}} trials, and count each one.',
    repeatQuestion:
      'You have seen this behave. If it went wrong only now and then, how often would you have to try before you could say so?',
    questions: {
      'meter-on-battery':
        'You are about to believe the meter. What have you had it read whose value you knew beforehand?',
      'meter-leads-together': 'How much of a low ohms reading is the leads themselves?',
      'meter-current-fuse':
        'If the meter shows no current, is there none, or can it not show any? How would you know beforehand?',
      'hand-pump-dead-end':
        'If the needle falls, how will you know that the pump, its hose and its gauge are not the reason?',
      'jumper-proof': 'If nothing happens on the jumper, how will you know that it passed anything on?',
      'plain-lead-proof': 'You are about to join two points by a lead. What do you know of the lead?',
      'look-around': 'What could a pair of eyes settle before any tool is in the hand?',
      'look-plug': 'Three circuits go through one plug. Has anybody seen the inside of it?',
      'look-into-hoses': 'You can see the hoses from outside. What do you know of their inside?',
      'look-fuse': 'One small part feeds the driver and takes a minute to see. Have you seen it?',
      'listen-running':
        'With the engine running there is vacuum for nothing. What could your ears make of it?',
      'drag-terminals': 'A plug can be mated and still touch badly. How would you feel that?',
      'codes-and-freeze-data':
        'The controller has watched this truck longer than you have. What does it remember, before you disturb anything?',
      'reader-at-rest':
        'Before you put a lead on anything: what does the controller itself make of its two circuits?',
      'road-test': "If you let the truck's own monitor run now, what would it say?",
      'sense-at-plug':
        'With the key on the controller puts a voltage on one of the wires. What arrives at the other end?',
      'sense-at-controller': 'A wire has two ends. At which of them have you not looked?',
      'sense-with-solenoid-on':
        'Two circuits share one way back. Does one of them change when the other works?',
      'feed-at-rest': 'While nobody commands anything, what should stand on the feed, and through what?',
      'battery-under-load':
        'A battery can look well until something is asked of it. Has anything been asked?',
      'ground-drop':
        'With nothing flowing every ground reads well. How does this one read while the coil draws its current?',
      'feed-drop': 'The solenoid is fed on command. Does that reach the unit when it has to carry current?',
      'feed-wire-drop': 'How much is lost between the two ends of one wire while it works, and only there?',
      'fused-supply-drop':
        'Current comes from the battery by several parts before it sees the controller. How much arrives there under load?',
      'controller-feed-on': 'The driver is told to be on. What leaves the controller, before any wire?',
      'command-clicks': 'When the solenoid is told to move, does it? Every time?',
      'feed-bias-10-megohm':
        'With the unit unplugged, what should the controller still show on the feed, and what does seeing it prove?',
      'feed-bias-3-kilohm':
        'Not every voltage has something behind it. How would you tell one that has from one that has not?',
      'lamp-on-feed': 'A meter asks next to nothing of a wire. What if the feed had to light something?',
      'lamp-on-ground': 'Without the unit in the way: can the ground carry a real current?',
      'sense-parted': 'Take the unit away. What is left on the sense wire, and does it bear a light load?',
      'sense-current': 'Volts tell you that a wire is connected. What would tell you how well?',
      'bridge-3-to-2': 'If you did the work of the switch yourself, would the controller see it?',
      'sense-wire-drop': 'While the sense wire carries its own small current, do its two ends agree?',
      'feed-wire-ohms':
        'With the circuit dead and parted, what does the feed wire by itself read from end to end?',
      'ground-wire-ohms': 'With the plug apart, does cavity 2 find its way back to the battery?',
      'cavities-1-to-2-ohms': 'Feed and ground sit side by side. Have they anything to do with each other?',
      'cavities-2-to-3-ohms': 'Ground and sense sit side by side. Have they anything to do with each other?',
      'wiggle-sense':
        'Your bench stands still and the road does not. Does the sense reading bear being moved?',
      'wiggle-feed':
        'Your bench stands still and the road does not. Does the feed bear being moved while it works?',
      'wiggle-ground':
        'Your bench stands still and the road does not. Does the ground bear being moved while it works?',
      'tug-plug-switch-closed':
        'A contact and a terminal stand in one line. Which of the two could you hold still while you move the other?',
      'coil-ohms': 'What should the winding read at this temperature, with nothing else joined to it?',
      'switch-ohms': 'You know the switch through the harness. How is its contact by itself, open and made?',
      'jumper-clicks': 'Fed by you, without one wire of the truck: does the unit work? Every time?',
      'vacuum-and-sense': 'The switch has to follow the vacuum both ways. Does it? Every time?',
      'hold-capped':
        'Close everything that is meant to be open on the unit. Does it keep what you draw, and for how long did you watch?',
      'trip-and-reset':
        'At how little does the switch turn, and where does it turn back? Which instrument can show that?',
      'travel-vacuum':
        'How much vacuum does it take until the switch closes? What would a stiff lever ask for, what a switch set wrong?',
      'engine-port-hold':
        'The unit has a second side that works on vacuum. Does it keep what it is given, at rest and energised?',
      'vent-shut-hold':
        'A capped port hides what stands behind it. What does the unit hold with the air port open, as it is on the truck?',
      'stroke-jar': 'The unit is a pump. Have you let it draw on something whose size you know?',
      'slow-strokes-jar':
        'One stroke, slowly. How much does it draw, and how much comes back before the next?',
      'run-and-return':
        'The engine runs. How long does it take to go, and how long to come back? What slows the one, what the other?',
      'engine-vacuum-at-hose':
        'The unit works on borrowed vacuum. What arrives at the end of the hose, still and flowing?',
      'air-hose-breathes': 'The air that the unit moves has to come and go. Is its way free?',
      'draw-whole-system':
        'You can let the unit do here what the monitor lets it do on the road. How long does it draw, and how long does it hold?',
      'draw-canister-hose-plugged':
        'Much lies beyond the canister hose. What would the unit do if none of that was there?',
      'smoke-whole-system': 'Where air can get in, something else can come out. Would you see where?',
      'smoke-vessel-alone':
        'What lies beyond the canister hose: is it tight by itself, and could you see it if not?',
      'smoke-unit-alone':
        'The unit alone has more than one skin. If one was not tight, where would you see it?',
      'smoke-air-hose':
        'What goes in at the end of the air hose has to come out somewhere. Where should that be?',
      'smoke-engine-hose': 'A long thin hose can look whole. What would let you see that it is?',
    },
    decide: {
      title: 'Time to decide',
      question: 'Read your log from the top. What could have shown all of it, and what could not?',
      test: 'No more tests: your evidence stands for one item. Give a verdict, and cite the entries that show it.',
      steps: {
        read: 'Read the log again, entry by entry.',
        choose:
          'Choose the entries that a good part could not have given, and those that clear its neighbours. Eight at most.',
        tools: 'Have the proof of the tools among them where a reading rests on a tool.',
        give: 'Give the verdict: the item, what is wrong with it, and your entries.',
      },
    },
    nothingLeft: {
      title: 'The tests are done',
      question: 'No test at hand tells you more. What do all your readings agree on?',
      test: 'No standard test is expected to tell more. Weigh what you have, and say no more than it carries.',
      steps: {
        read: 'Read the log again. Look for two entries that do not go together, and do one of them once more.',
        moved: 'Where something may come and go, move the harness or try again, and count the trials.',
        give: 'Then give the verdict that your entries carry, and cite them.',
      },
    },
    proveRepair: {
      title: 'Prove the repair',
      question: 'What would show you that the repair has cured it, and not only changed it?',
      test: 'Prove the repair: the test that convicted the old part, now on the fitted one. Then a road test and the codes.',
      steps: {
        new: 'Test the new part before it is fitted, where that can be done.',
        same: 'After fitting, do the same test that convicted the old part.',
        restore: 'Put every hose, cap and plug back. Clamps hand tight, plug locked.',
        clear: 'Tell the codes that your own tests have made from the others, and clear them.',
        drive: 'Road test until the monitor has run.',
        codes: 'Read the codes again, the pending ones too.',
      },
    },
    steps: 'Steps',
  },
} as const;
