/** One part of a message, for people who read it as plain text and for those who read it as a page. */
export type MailPart =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'link'; readonly text: string; readonly url: string }
  /** Somebody's own words, set apart. */
  | { readonly kind: 'quote'; readonly text: string }
  | { readonly kind: 'small'; readonly text: string };

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? character);
}

function lines(text: string): string[] {
  return text.replace(/\r\n?/g, '\n').trim().split('\n');
}

/** A message as plain text. */
export function plainBody(parts: readonly MailPart[]): string {
  const blocks = parts.map((part) => {
    if (part.kind === 'link') return `${part.text}\n${part.url}`;
    if (part.kind === 'quote')
      return lines(part.text)
        .map((line) => `> ${line}`)
        .join('\n');
    return lines(part.text).join('\n');
  });
  return `${blocks.join('\n\n')}\n`;
}

// Mail programs drop style sheets, so each element carries its own; the colours are those of the customer's pages.
const ink = 'color:#24222b';
const paragraph = `margin:0 0 18px;font-size:17px;line-height:1.5;${ink}`;
const styles = {
  page: `margin:0;padding:24px;background:#ffffff;font-family:Verdana,Arial,sans-serif;${ink}`,
  column: 'max-width:560px',
  words: paragraph,
  quote: `${paragraph};padding:0 0 0 14px;border-left:2px solid #24222b`,
  link: 'display:inline-block;padding:12px 18px;border:2px solid #24222b;font-weight:bold;text-decoration:none;color:#24222b',
  small: `margin:0 0 10px;font-size:14px;line-height:1.5;color:#625e68`,
} as const;

function block(part: MailPart): string {
  const text = lines(part.text).map(escaped).join('<br>');
  if (part.kind !== 'link') return `<p style="${styles[part.kind]}">${text}</p>`;
  const url = escaped(part.url);
  return [
    `<p style="${styles.words}"><a href="${url}" style="${styles.link}">${text}</a></p>`,
    `<p style="${styles.small}">${url}</p>`,
  ].join('\n');
}

/** A message as a page: one quiet column, nothing fetched from anywhere. */
export function htmlBody(parts: readonly MailPart[], { locale, title }: { locale: string; title: string }): string {
  return `<!doctype html>
<html lang="${escaped(locale)}">
<head><meta charset="utf-8"><title>${escaped(title)}</title></head>
<body style="${styles.page}">
<div style="${styles.column}">
${parts.map(block).join('\n')}
</div>
</body>
</html>
`;
}
