/** The parts cupboard. */
export const cupboard = {
  cupboard: {
    title: 'Parts cupboard',
    lead: 'Choose what to fit. Parts are paid for, right or wrong.',
    toolsLead: 'Before the verdict only the tools can be renewed.',
    fit: 'Fit {{item}}',
    ask: 'Fit {{item}} for {{price}}?',
    askFree: 'Fit {{item}}?',
    askText:
      'It goes on at once. It is paid for whether the old one was bad or not, and does not go back on the shelf.',
    askFreeText:
      'It takes the place of the one on the bench at once. It costs nothing, but the old one is gone.',
    confirm: 'Fit it',
    fitted: '{{item}} fitted.',
    fittedBefore: 'fitted',
    keyOffHint: 'Key off and plug parted first, as on a real truck.',
    known: 'Known-good unit',
    knownText:
      'A unit that was tested and found good. Put it in the place of the other on the bench and run the same test on it.',
    here: 'Now on the bench: {{unit}}',
    swapIn: 'Put the known-good unit on the bench',
    swapBack: "Put the truck's unit back",
    swapNeeds: 'Part the plug and take everything off the barbs first.',
    swapNeedsPlug: 'Part the plug first.',
    swapNeedsBarbs: 'Take everything off the barbs first.',
    swapped: 'On the bench now: {{unit}}.',
    free: 'no charge',
  },
} as const;
