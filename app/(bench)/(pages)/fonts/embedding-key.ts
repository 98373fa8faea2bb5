/** Words for what a font's own bits allow; a font that forbids use in documents is never taken in. */
export function embeddingKey(embedding: string) {
  if (embedding === 'editable' || embedding === 'previewAndPrint') return `embedding.${embedding}` as const;
  return 'embedding.installable' as const;
}
