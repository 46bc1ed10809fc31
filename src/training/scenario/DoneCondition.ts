import { z } from 'zod';
import { ITEMS } from '../../sim/devices/items.ts';
import {
  AIR_SITES,
  CLAMP_SETTINGS,
  EXAMINED_PLACES,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  SMOKE_PLACES,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
  UNITS,
  WIGGLE_PLACES,
} from '../../sim/devices/places.ts';
import { SIGNS } from '../../sim/world/Observation.ts';

/**
 * When a walkthrough step is done: a closed vocabulary of things an eye, an ear or an instrument could tell.
 * Every key that is given must hold at one and the same moment. Counts (`clicks`, `vacuum-cycles`, `logged`, `held`)
 * start when the step becomes the current one; so do `found`, `looked-into`, `codes-read`, `driven` and `coach-asked`.
 * The keys are those of the file.
 */
const inHg = z.number().min(0).max(30);
const inH2O = z.number().min(0).max(30);
const band = z
  .strictObject({ above: z.number().optional(), below: z.number().optional() })
  .refine((value) => value.above !== undefined || value.below !== undefined, {
    params: { code: 'empty-condition' },
  })
  .meta({ minProperties: 1 });

/** What a mark and a verdict may name. */
const verdictItem = z.enum([...ITEMS, 'nothing-wrong']);

export const doneConditionSchema = z
  .strictObject({
    /** The job has come at least as far. */
    phase: z.enum(['bench', 'repair', 'closed']).optional(),
    key: z.enum(KEY_POSITIONS).optional(),
    plug: z.enum(['mated', 'parted']).optional(),
    'meter-on': z.enum(METER_FUNCTIONS).optional(),
    /** Settled reading, volts. */
    'meter-volts': band.optional(),
    /** Settled reading, ohms; over range counts as above everything. */
    'meter-ohms': band.optional(),
    'leads-on': z
      .array(z.strictObject({ end: z.enum(LEAD_ENDS), point: z.enum(LEAD_POINTS) }))
      .min(1)
      .max(6)
      .optional(),
    'leads-off': z.array(z.enum(LEAD_ENDS)).min(1).max(6).optional(),
    'pins-in': z
      .array(z.literal([1, 2, 3]))
      .min(1)
      .max(3)
      .optional(),
    'pins-out': z.literal(true).optional(),
    fitted: z
      .array(z.strictObject({ item: z.enum(FITTINGS), site: z.enum(AIR_SITES) }))
      .min(1)
      .max(8)
      .optional(),
    'taken-off': z.array(z.enum(FITTINGS)).min(1).max(8).optional(),
    clamped: z
      .array(z.strictObject({ port: z.enum(UNIT_PORTS), setting: z.enum(CLAMP_SETTINGS) }))
      .min(1)
      .max(3)
      .optional(),
    'gauge-above-inhg': inHg.optional(),
    'gauge-below-inhg': inHg.optional(),
    release: z.enum(['open', 'shut']).optional(),
    jumper: z.enum(['on', 'off']).optional(),
    solenoid: z.enum(SOLENOID_COMMANDS).optional(),
    /** Clicks of the plunger pulling in. */
    clicks: z.number().int().min(1).max(20).optional(),
    /** Times the gauge went above the figure and came back below 0.5 inHg. */
    'vacuum-cycles': z
      .strictObject({ 'above-inhg': inHg, times: z.number().int().min(1).max(10) })
      .optional(),
    /** The pump untouched, its release shut, for so long after a stroke. */
    'held-seconds': z.number().min(1).max(300).optional(),
    logged: z
      .strictObject({
        function: z.enum(METER_FUNCTIONS).optional(),
        red: z.enum(LEAD_POINTS).optional(),
        black: z.enum(LEAD_POINTS).optional(),
        /** What the entry says, settled, volts. */
        'meter-volts': band.optional(),
        /** The same in ohms; over range counts as above everything. */
        'meter-ohms': band.optional(),
        'gauge-above-inhg': inHg.optional(),
        'gauge-below-inhg': inHg.optional(),
        'clicks-heard': z.number().int().min(1).max(20).optional(),
        times: z.number().int().min(1).max(8).optional(),
      })
      .optional(),
    /** Which unit stands on the bench. */
    unit: z.enum(UNITS).optional(),
    /** A hand is moving this stretch of the harness. */
    moved: z.enum(WIGGLE_PLACES).optional(),
    jack: z.enum(METER_JACKS).optional(),
    supply: z.enum(['on', 'off']).optional(),
    lamp: z.enum(['lit', 'dark']).optional(),
    'manometer-above-inh2o': inH2O.optional(),
    'manometer-below-inh2o': inH2O.optional(),
    /** Smoke comes out at all of these places now. */
    'smoke-at': z.array(z.enum(SMOKE_PLACES)).min(1).max(6).optional(),
    /** An eye, an ear or a hand went there, and found this (left out: found anything). */
    found: z.strictObject({ at: z.enum(EXAMINED_PLACES), sign: z.enum(SIGNS).optional() }).optional(),
    /** An eye went into the open end of this hose: off the unit, nothing in it. */
    'looked-into': z.enum(['canister-hose', 'air-hose', 'engine-hose']).optional(),
    /** The codes were read through the reader. */
    'codes-read': z.literal(true).optional(),
    /** The reader is awake and has no stored and no pending code to show. */
    codes: z.literal('none').optional(),
    /** Drive cycles on the road. */
    driven: z.number().int().min(1).max(20).optional(),
    /** On the last drive the monitor ran, and the last time it passed. */
    monitor: z.literal('passed').optional(),
    /** The coach was asked, so far at least. */
    'coach-asked': z.enum(['question', 'test', 'procedure']).optional(),
    /** The suspect board stands so, each mark with an entry that it cites. */
    marked: z
      .array(z.strictObject({ item: verdictItem, mark: z.enum(['cleared', 'convicted']) }))
      .min(1)
      .max(6)
      .optional(),
    verdict: z.literal('given').optional(),
    /** The verdict was given on this item, and with this said to be wrong with it. */
    named: z.strictObject({ item: verdictItem, mode: z.string().max(60).optional() }).optional(),
    renewed: z.enum(ITEMS).optional(),
  })
  .refine((value) => Object.keys(value).length > 0, { params: { code: 'empty-condition' } })
  .meta({ minProperties: 1 });

export type DoneCondition = z.infer<typeof doneConditionSchema>;
