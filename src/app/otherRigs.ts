import { flapActuator } from '../text/en/rigs/flapActuator.ts';
import { flapActuator as flapActuatorInSpanish } from '../text/es/rigs/flapActuator.ts';
import { addRigWords } from '../text/translate.ts';

// What the rigs beside the first have of their own, in both languages: fetched with the first of their jobs.
addRigWords('flap-actuator', 'en', flapActuator);
addRigWords('flap-actuator', 'es', flapActuatorInSpanish);
