import type { JobText } from './jobTexts.ts';
import type { ScenarioFile } from './scenarioSchema.ts';

/** Every text of a file that may be written in several languages. */
export function textsOf(file: ScenarioFile): readonly JobText[] {
  const order = file['work-order'];
  return [
    file.title,
    file.summary,
    ...file.aims,
    order.vehicle,
    order.complaint,
    ...order.history,
    ...order.cautions,
    ...(file.variants ?? []).flatMap(({ complaint, history, remark }) => [
      ...(complaint === undefined ? [] : [complaint]),
      ...(history ?? []),
      ...(remark === undefined ? [] : [remark]),
    ]),
    ...(file.walkthrough ?? []).flatMap(({ say, how }) => [say, how]),
    file.remark,
  ];
}
