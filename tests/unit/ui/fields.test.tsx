import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { Button } from '@/components/ui/button';
import { CheckField } from '@/components/ui/check-field';
import { FormNotice } from '@/components/ui/form-notice';
import { SelectField } from '@/components/ui/select-field';
import { TextArea } from '@/components/ui/text-area';
import { TextField } from '@/components/ui/text-field';

/** The attributes of the first element with this tag, read back from the HTML itself. */
function attributesOf(element: ReactElement, tag: string): Record<string, string> {
  const opening = new RegExp(`<${tag}\\b([^>]*)>`).exec(renderToStaticMarkup(element))?.[1];
  if (opening === undefined) throw new Error(`no <${tag}> in the markup`);
  return Object.fromEntries([...opening.matchAll(/([\w-]+)(?:="([^"]*)")?/g)].map(([, name, value]) => [name, value]));
}

const options = [
  { value: 'in', label: 'Inches' },
  { value: 'cm', label: 'Centimetres' },
];

// WCAG 2.2: 1.3.1 and 3.3.1 (techniques ARIA1, ARIA21, H44).
describe('a field', () => {
  const withNotes = { label: 'Shop name', hint: 'As customers know it.', error: 'Give the shop a name.' };

  it.each([
    ['input', <TextField key="f" name="shop" {...withNotes} />],
    ['textarea', <TextArea key="f" name="shop" {...withNotes} />],
    ['select', <SelectField key="f" name="shop" options={options} {...withNotes} />],
    ['input', <CheckField key="f" name="shop" {...withNotes} />],
  ])('ties label, hint and error to its %s', (tag, field) => {
    const html = renderToStaticMarkup(field);
    const control = attributesOf(field, tag);
    expect(control).toMatchObject({ id: 'shop', 'aria-describedby': 'shop-hint shop-error', 'aria-invalid': 'true' });
    expect(attributesOf(field, 'label').for).toBe('shop');
    for (const id of control['aria-describedby']?.split(' ') ?? []) expect(html).toContain(`id="${id}"`);
  });

  it('is described by nothing and not invalid when it has neither hint nor error', () => {
    const control = attributesOf(<TextField name="shop" label="Shop name" />, 'input');
    expect(Object.keys(control)).not.toContain('aria-describedby');
    expect(Object.keys(control)).not.toContain('aria-invalid');
  });

  it('shows again what was typed when it is refused', () => {
    expect(attributesOf(<TextField name="shop" {...withNotes} defaultValue="Otter &amp; Co" />, 'input').value).toBe(
      'Otter &amp; Co',
    );
    const select = <SelectField name="unit" label="Unit" options={options} defaultValue="cm" />;
    expect(renderToStaticMarkup(select)).toContain('<option value="cm" selected="">');
  });

  it('gives each of several choices under one name an id of its own', () => {
    const ids = ['a', 'b'].map((value) => (
      <CheckField key={value} type="radio" name="as" value={value} label={value} />
    ));
    expect(ids.map((field) => attributesOf(field, 'input').id)).toEqual(['as-a', 'as-b']);
  });
});

describe('a button', () => {
  it('sends no form unless told to', () => {
    expect(attributesOf(<Button>Turn it over</Button>, 'button').type).toBe('button');
    expect(attributesOf(<Button type="submit">Send Rev 1</Button>, 'button').type).toBe('submit');
  });
});

describe('a notice', () => {
  it('is announced at once when nothing was done, and politely otherwise', () => {
    expect(attributesOf(<FormNotice kind="stop" title="Not sent." />, 'div').role).toBe('alert');
    expect(attributesOf(<FormNotice kind="done" title="Sent." />, 'div').role).toBe('status');
  });

  it('leads from each mistake to its field', () => {
    const notice = <FormNotice kind="stop" title="Look" mistakes={[{ fieldId: 'shop', text: 'Give it a name.' }]} />;
    expect(renderToStaticMarkup(notice)).toContain('<a href="#shop">Give it a name.</a>');
  });
});
