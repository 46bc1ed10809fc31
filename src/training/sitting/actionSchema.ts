import { z } from 'zod/mini';
import { ITEMS } from '../../sim/devices/items.ts';
import {
  AIR_SITES,
  CLAMP_SETTINGS,
  EXAMINED_PLACES,
  EXTREMES,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  SMOKE_GASES,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
  UNITS,
  WIGGLE_PLACES,
} from '../../sim/devices/places.ts';
import { BOARD_MARKS, COACH_DEPTHS, type SittingAction } from './SittingAction.ts';

/** Longest note a record may carry; the paperwork's own limit is lower and has its own refusal. */
const MAX_RECORDED_NOTE = 1000;

/** Bounds of what a hand can ask for: ranges of the meter, the smoke regulator's scale, drives in one go, a long wait. */
const MAX_RANGE = 9;
const MAX_SMOKE_PA = 14_000;
export const MAX_DRIVE_CYCLES = 20;
export const LEAST_WAIT_SECONDS = 0.1;
export const MAX_WAIT_SECONDS = 3600;

const cavity = z.literal([1, 2, 3]);
const share = z.number().check(z.gte(0), z.lte(1));
const cites = z.array(z.int().check(z.gte(1))).check(z.maxLength(64));
const bare = <K extends string>(kind: K) => z.strictObject({ kind: z.literal(kind) });

/** Every action of a sitting, as it stands in a record. Unknown kinds and unknown keys are refused. */
export const actionSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('set-key'), position: z.enum(KEY_POSITIONS) }),
  z.strictObject({ kind: z.literal('set-meter'), function: z.enum(METER_FUNCTIONS) }),
  z.strictObject({ kind: z.literal('meter-jack'), jack: z.enum(METER_JACKS) }),
  z.strictObject({
    kind: z.literal('meter-range'),
    range: z.nullable(z.int().check(z.gte(0), z.lte(MAX_RANGE))),
  }),
  z.strictObject({ kind: z.literal('meter-hold'), on: z.boolean() }),
  z.strictObject({ kind: z.literal('meter-extremes'), show: z.enum(EXTREMES) }),
  z.strictObject({ kind: z.literal('meter-relative'), on: z.boolean() }),
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
  z.strictObject({ kind: z.literal('switch-supply'), on: z.boolean() }),
  z.strictObject({ kind: z.literal('set-bleed'), openness: share }),
  bare('refill-manometer'),
  z.strictObject({
    kind: z.literal('set-smoke'),
    gas: z.enum(SMOKE_GASES),
    pa: z.number().check(z.gte(0), z.lte(MAX_SMOKE_PA)),
  }),
  z.strictObject({ kind: z.literal('swap-unit'), to: z.enum(UNITS) }),
  z.strictObject({ kind: z.literal('drag-test'), cavity }),
  z.strictObject({ kind: z.literal('look'), at: z.enum(EXAMINED_PLACES) }),
  z.strictObject({ kind: z.literal('listen'), at: z.enum(EXAMINED_PLACES) }),
  z.strictObject({ kind: z.literal('wiggle'), at: z.enum(WIGGLE_PLACES) }),
  bare('clear-codes'),
  z.strictObject({
    kind: z.literal('road-test'),
    cycles: z.int().check(z.gte(1), z.lte(MAX_DRIVE_CYCLES)),
  }),
  z.strictObject({ kind: z.literal('command-solenoid'), command: z.enum(SOLENOID_COMMANDS) }),
  z.strictObject({ kind: z.literal('renew'), item: z.enum(ITEMS) }),
  bare('accept-job'),
  bare('log'),
  bare('read-codes'),
  z.strictObject({
    kind: z.literal('wait'),
    seconds: z.number().check(z.gte(LEAST_WAIT_SECONDS), z.lte(MAX_WAIT_SECONDS)),
  }),
  bare('wait-steady'),
  bare('skip-step'),
  z.strictObject({
    kind: z.literal('annotate'),
    entry: z.int().check(z.gte(1)),
    text: z.string().check(z.maxLength(MAX_RECORDED_NOTE)),
  }),
  z.strictObject({
    kind: z.literal('give-verdict'),
    item: z.enum([...ITEMS, 'nothing-wrong']),
    mode: z._default(z.nullable(z.string().check(z.regex(/^[a-z0-9-]{1,40}$/))), null),
    cites,
  }),
  z.strictObject({
    kind: z.literal('mark-item'),
    item: z.enum([...ITEMS, 'nothing-wrong']),
    mark: z.enum(BOARD_MARKS),
    cites,
  }),
  z.strictObject({ kind: z.literal('ask-coach'), depth: z.enum(COACH_DEPTHS) }),
  bare('close-job'),
]) satisfies z.ZodMiniType<SittingAction>;
