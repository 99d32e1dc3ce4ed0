/**
 * The lines of a streamed answer, each as soon as it is complete. A last line that was cut off is not given.
 * @param {ReadableStream<Uint8Array>} body
 * @returns {AsyncGenerator<string, void, undefined>}
 */
export async function* readLines(body) {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = "";
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      const lines = (rest + decoder.decode(value, { stream: true })).split("\n");
      rest = lines.pop() ?? "";
      yield* lines.filter((line) => line !== "");
    }
  } finally {
    reader.releaseLock();
  }
}
