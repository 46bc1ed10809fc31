import { flapActuator } from './en/rigs/flapActuator.ts';
import { addRigWords } from './translate.ts';

// Adds what the rigs' own things are called, for whoever imports this file.
addRigWords('flap-actuator', 'en', flapActuator);
