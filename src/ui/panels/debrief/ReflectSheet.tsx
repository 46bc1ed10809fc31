import { say } from '../../../text/translate.ts';
import { Sheet } from './Sheet.tsx';

/** Two questions with room to think in; what is written is kept nowhere. */
export function ReflectSheet() {
  return (
    <Sheet part="reflect" class="debrief-wide">
      <h2>{say('reflect.title')}</h2>
      <p class="quiet">{say('reflect.lead')}</p>
      <div class="reflect">
        {(['first', 'second'] as const).map((question) => (
          <label key={question}>
            {say(`reflect.${question}`)}
            <textarea rows={4} autocomplete="off" />
          </label>
        ))}
      </div>
    </Sheet>
  );
}
