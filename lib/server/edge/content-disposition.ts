/**
 * The Content-Disposition of a file: its name in plain ASCII for old programs and in full beside it (RFC 6266, section 4.3;
 * RFC 8187, section 3.2). `attachment` is saved; `inline` is shown, and saved under its name when saved.
 */
export function contentDisposition(as: 'attachment' | 'inline', fileName: string): string {
  const plain = fileName
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .replace(/[^\x20-\x7E]|["\\%]/g, '_');
  const full = encodeURIComponent(fileName).replace(
    /['()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return `${as}; filename="${plain}"; filename*=UTF-8''${full}`;
}
