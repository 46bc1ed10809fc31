import { z } from 'zod';
import { ITEMS } from '../../sim/devices/items.ts';
import {
  AIR_SITES,
  CLAMP_SETTINGS,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
} from '../../sim/devices/places.ts';
import type { SittingAction } from './SittingAction.ts';

/** Longest note a record may carry; the paperwork's own limit is lower and has its own refusal. */
const MAX_RECORDED_NOTE = 1000;

const cavity = z.literal([1, 2, 3]);
const share = z.number().min(0).max(1);
const bare = <K extends string>(kind: K) => z.strictObject({ kind: z.literal(kind) });

/** Every action of a sitting, as it stands in a record. Unknown kinds and unknown keys are refused. */
export const actionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('set-key'), position: z.enum(KEY_POSITIONS) }),
  z.strictObject({ kind: z.literal('set-meter'), function: z.enum(METER_FUNCTIONS) }),
  z.strictObject({ kind: z.literal('place-lead'), end: z.enum(LEAD_ENDS), point: z.enum(LEAD_POINTS) }),
  z.strictObject({ kind: z.literal('lift-lead'), end: z.enum(LEAD_ENDS) }),
  z.strictObject({ kind: z.literal('insert-pin'), cavity }),
  z.strictObject({ kind: z.literal('remove-pin'), cavity }),
  bare('part-plug'),
  bare('mate-plug'),
  z.strictObject({ kind: z.literal('switch-jumper'), on: z.boolean() }),
  bare('renew-jumper-fuse'),
  bare('pull-fuse'),
  bare('fit-fuse'),
  z.strictObject({ kind: z.literal('fit'), item: z.enum(FITTINGS), site: z.enum(AIR_SITES) }),
  z.strictObject({ kind: z.literal('take-off'), item: z.enum(FITTINGS) }),
  z.strictObject({ kind: z.literal('clamp'), port: z.enum(UNIT_PORTS), setting: z.enum(CLAMP_SETTINGS) }),
  z.strictObject({ kind: z.literal('pump-handle'), position: share }),
  z.strictObject({ kind: z.literal('stroke'), depth: share }),
  z.strictObject({ kind: z.literal('release'), open: z.boolean() }),
  z.strictObject({ kind: z.literal('command-solenoid'), command: z.enum(SOLENOID_COMMANDS) }),
  z.strictObject({ kind: z.literal('renew'), item: z.enum(ITEMS) }),
  bare('accept-job'),
  bare('log'),
  z.strictObject({
    kind: z.literal('annotate'),
    entry: z.number().int().min(1),
    text: z.string().max(MAX_RECORDED_NOTE),
  }),
  z.strictObject({
    kind: z.literal('give-verdict'),
    item: z.enum([...ITEMS, 'nothing-wrong']),
    cites: z.array(z.number().int().min(1)).max(64),
  }),
  bare('close-job'),
]) satisfies z.ZodType<SittingAction>;
