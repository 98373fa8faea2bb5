/** The bytes of a request's body as they come; whoever stops reading stops the sending. */
export async function* bodyBytes(body: ReadableStream<Uint8Array> | null): AsyncGenerator<Uint8Array> {
  const reader = body?.getReader();
  if (!reader) return;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) yield part.value;
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
