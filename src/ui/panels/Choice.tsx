interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  /** `lang` where a label is in a language of its own. */
  readonly options: readonly { readonly value: T; readonly label: string; readonly lang?: string }[];
  readonly disabled?: boolean;
  readonly onChoose: (value: T) => void;
}

/** One of a few: a radio group drawn as joined buttons. Arrow keys are the browser's own. */
export function Choice<T extends string>({ label, value, options, disabled, onChoose }: ChoiceProps<T>) {
  return (
    <fieldset class="choice" disabled={disabled ?? false}>
      <legend>{label}</legend>
      <div class="choice-row">
        {options.map((option) => (
          <label key={option.value} lang={option.lang} class={option.value === value ? 'chosen' : ''}>
            <input
              type="radio"
              name={label}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
