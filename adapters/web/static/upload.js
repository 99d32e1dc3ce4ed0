/**
 * Sends one file ahead of its message.
 * @typedef {{ kind: "taken" } | { kind: "broken" } | { kind: "refused", text: string }} UploadOutcome
 */

/** A connection on which nothing moved for this long is given up [ms]. */
const SILENCE_ms = 20_000;

/**
 * @param {string} id
 * @param {string} user
 * @param {Blob} blob
 * @param {(done_B: number) => void} onProgress
 * @returns {Promise<UploadOutcome>}
 */
export function upload(id, user, blob, onProgress) {
  return new Promise((resolve) => {
    // Only this older way of asking says how far an upload is.
    const request = new XMLHttpRequest();
    /** @type {ReturnType<typeof setTimeout> | undefined} */
    let silence;
    const hear = () => {
      clearTimeout(silence);
      silence = setTimeout(() => request.abort(), SILENCE_ms);
    };
    /** @param {UploadOutcome} outcome */
    const end = (outcome) => {
      clearTimeout(silence);
      resolve(outcome);
    };
    request.open("POST", `/uploads/${id}?${new URLSearchParams({ user })}`);
    request.upload.onprogress = ({ loaded }) => {
      hear();
      onProgress(Math.min(loaded, blob.size));
    };
    request.onload = () => {
      if (request.status === 204) end({ kind: "taken" });
      else if (request.status < 500) end({ kind: "refused", text: request.responseText.trim() });
      else end({ kind: "broken" });
    };
    request.onerror = request.onabort = () => end({ kind: "broken" });
    hear();
    request.send(blob);
  });
}
