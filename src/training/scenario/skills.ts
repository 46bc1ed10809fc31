/**
 * Skills that aims speak of: a short list, so that a board can be narrowed by it. An aim trains a skill when one of the skill's
 * words stands in it; so whatever file a job comes from, its own sentences say where it belongs, and nothing else has to be kept.
 * Aims are written in English, in whatever other languages they are given too.
 */
export const SKILLS = [
  'tools',
  'loaded',
  'narrow',
  'air',
  'controller',
  'doubt',
  'patience',
  'unit',
  'lasting',
] as const;
export type Skill = (typeof SKILLS)[number];

const WORDS: Readonly<Record<Skill, RegExp>> = {
  tools: /\b(tools?|instruments?|measure with|prove (a|the) meter)\b/i,
  loaded: /\b(load|does its work|do work|something flows)\b/i,
  narrow: /\b(hal(f|ve|ves)|stretch|in two|one (point|need) after the other|end to the other|whole path)\b/i,
  air: /\b(leaks?|smoke|gauge|vacuum|breathes|hold)\b/i,
  controller: /\b(codes?|monitor|controller|command)\b/i,
  doubt: /\b(history|sheet|note|believe|blame|what else|mislead)\b/i,
  patience: /\b(comes and goes|more than once|slowly|remembers)\b/i,
  unit: /\bunit\b/i,
  lasting: /\b(repair|cause|caused|mended|as fitted|lasts)\b/i,
};

/** The skills that some aims train, in the order of the list. */
export function skillsOf(aims: readonly string[]): readonly Skill[] {
  return SKILLS.filter((skill) => aims.some((aim) => WORDS[skill].test(aim)));
}
