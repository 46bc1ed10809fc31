import { workerUrl as judging } from 'virtual:worker/src/app/evidence/debriefing.ts';
import { workerUrl as working } from 'virtual:worker/src/app/evidence/evidenceWorker.ts';
import { workerUrl as weighing } from 'virtual:worker/src/app/evidence/weighing.ts';
import flapTables from '../../../assets/evidence/flap-actuator.json?url';
import tables from '../../../assets/evidence/shop.json?url';

/**
 * What weighs and judges a closed job, as one name: a built file is named after its content and after the names of what it
 * imports, so another program or other tables have another name. Null where sources are served, which have no such names.
 */
export const weighingVersion: string | null = import.meta.env.PROD
  ? [working, weighing, judging, tables, flapTables].map((address) => address.split('/').at(-1)).join(' ')
  : null;
