import { Button } from '@/components/ui/button';
import { CheckField } from '@/components/ui/check-field';
import { Disclosure } from '@/components/ui/disclosure';
import { FieldGroup } from '@/components/ui/field-group';
import { TextArea } from '@/components/ui/text-area';
import { TextField } from '@/components/ui/text-field';
import styles from './answer-form.module.css';
import type { FormWords } from './sheet-words';
import { tickId } from './tick-id';

/**
 * The answer. One form for yes and for a change, so that neither loses what was typed for the other; nothing is ticked for
 * anybody, except what they ticked themselves for this very revision.
 */
export function AnswerForm({ closedUnder, ...form }: FormWords) {
  if (closedUnder === null) return <Form {...form} />;
  return (
    <Disclosure summary={closedUnder}>
      <Form {...form} />
    </Disclosure>
  );
}

function Form({ words, action, revisionId, formKey, statement, content }: Omit<FormWords, 'closedUnder'>) {
  const { mistakes, ticked } = content;
  return (
    <form method="post" action={action} className={styles.form}>
      <input type="hidden" name="revision" value={revisionId} />
      <input type="hidden" name="key" value={formKey} />
      <FieldGroup id="ticks" label={words.check}>
        {words.ticks.map(({ tick, label }) => (
          <CheckField
            key={tick}
            id={tickId(tick)}
            name="tick"
            value={tick}
            label={label}
            defaultChecked={ticked.includes(tick)}
            required
            error={ticked.includes(tick) ? undefined : mistakes.ticks}
          />
        ))}
      </FieldGroup>
      <TextField
        name="name"
        label={words.name}
        hint={words.nameHint}
        error={mistakes.name}
        defaultValue={content.typedName}
        maxLength={words.longestName}
        autoComplete="name"
        required
      />
      <div className={styles.consent}>
        <p>{words.consent}</p>
        <p className={styles.statement}>{statement}</p>
      </div>
      <Button type="submit" name="word" value="yes" kind="yes" wide>
        {words.yes}
      </Button>
      <details className={styles.change} open={content.changing}>
        <summary>{words.change}</summary>
        <TextArea
          name="words"
          label={words.words}
          hint={words.wordsHint}
          error={mistakes.words}
          defaultValue={content.words}
          maxLength={words.longestChange}
          rows={5}
        />
        <Button type="submit" name="word" value="change" kind="primary" wide formNoValidate>
          {words.send}
        </Button>
      </details>
    </form>
  );
}
